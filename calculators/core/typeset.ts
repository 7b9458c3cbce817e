import {
  call,
  needsBrackets,
  precedenceOf,
  printExpression,
  type Equation,
  type Expression,
} from './expression.ts';
import type { Formula } from './formula.ts';

const greek: Readonly<Record<string, string>> = {
  α: '\\alpha', β: '\\beta', γ: '\\gamma', δ: '\\delta', Δ: '\\Delta', ε: '\\varepsilon', η: '\\eta', θ: '\\theta',
  Θ: '\\Theta', κ: '\\kappa', λ: '\\lambda', μ: '\\mu', ν: '\\nu', π: '\\pi', ρ: '\\rho', σ: '\\sigma',
  τ: '\\tau', φ: '\\varphi', ψ: '\\psi', ω: '\\omega',
}; // prettier-ignore

/** A letter with a dot over it is a rate. */
function letterTeX(letter: string): string {
  const [plain = '', dot] = letter.normalize('NFD');
  const tex = greek[plain] ? `${greek[plain]} ` : plain;
  return dot === '\u0307' ? `\\dot{${tex.trim()}}` : tex;
}

/** TeX of a sign as it is written for readers: `Δp` → `\Delta p`, `ρ_l` → `\rho_{\mathrm{l}}`. */
export function signToTeX(sign: string): string {
  const [head = '', ...rest] = sign.split('_');
  const letters = [...head].map(letterTeX).join('').trim();
  const body = /^[A-Za-z]{2,}$/.test(letters) ? `\\mathrm{${letters}}` : letters;
  const subscript = rest
    .join(',')
    .replace(/[Α-ω]/g, (letter) => (greek[letter] ? `${greek[letter]} ` : letter));
  return subscript ? `${body}_{\\mathrm{${subscript}}}` : body;
}

const functionTeX: Readonly<Record<string, string>> = {
  exp: '\\exp', ln: '\\ln', log10: '\\log_{10}', sin: '\\sin', cos: '\\cos', tan: '\\tan', asin: '\\arcsin',
  acos: '\\arccos', atan: '\\arctan', erf: '\\operatorname{erf}', erfc: '\\operatorname{erfc}',
  erfcx: '\\operatorname{erfcx}', min: '\\min', max: '\\max',
}; // prettier-ignore

/** TeX of an expression; `sign` gives the TeX of a symbol. */
export function toTeX(e: Expression, sign: (symbol: string) => string): string {
  const tex = (inner: Expression): string => toTeX(inner, sign);
  const bracketed = (inner: Expression): string => `\\left(${tex(inner)}\\right)`;
  switch (e.kind) {
    case 'number':
      return numberTeX(e.value);
    case 'name':
      return e.name === 'pi' ? '\\pi' : sign(e.name);
    case 'negate':
      return `-${precedenceOf(e.operand) < 2 ? bracketed(e.operand) : tex(e.operand)}`;
    case 'call': {
      const args = e.args.map(tex).join(',\\,');
      if (e.fn === 'sqrt') return `\\sqrt{${args}}`;
      if (e.fn === 'abs') return `\\left|${args}\\right|`;
      return `${functionTeX[e.fn]}\\left(${args}\\right)`;
    }
    case 'binary':
      return binaryTeX(e, tex, bracketed);
  }
}

function binaryTeX(
  e: Extract<Expression, { kind: 'binary' }>,
  tex: (inner: Expression) => string,
  bracketed: (inner: Expression) => string,
): string {
  const { op, left, right } = e;
  if (op === '/') return `\\frac{${tex(left)}}{${tex(right)}}`;
  if (op === '^') {
    if (right.kind === 'number' && right.value === 0.5) return tex(call('sqrt', left));
    const fraction = left.kind === 'binary' && left.op === '/';
    const base = precedenceOf(left) < 5 || fraction || left.kind === 'call' ? bracketed(left) : tex(left);
    return `${base}^{${tex(right)}}`;
  }
  const side = (child: Expression, which: 'left' | 'right'): string => {
    const fraction = child.kind === 'binary' && child.op === '/';
    return needsBrackets(op, child, which) && !fraction ? bracketed(child) : tex(child);
  };
  if (op !== '*') return `${side(left, 'left')} ${op} ${side(right, 'right')}`;
  const dot = startsWithDigit(right) ? ' \\cdot ' : ' \\, ';
  return `${side(left, 'left')}${dot}${side(right, 'right')}`;
}

function startsWithDigit(e: Expression): boolean {
  if (e.kind === 'number') return true;
  return e.kind === 'binary' && e.op !== '/' && startsWithDigit(e.left);
}

function numberTeX(value: number): string {
  const [mantissa = '', exponent] = String(value).split('e');
  return exponent ? `${mantissa} \\times 10^{${Number(exponent)}}` : mantissa;
}

/** A formula's symbols as TeX. */
export function signsOf(formula: Formula): (symbol: string) => string {
  return (symbol) => signToTeX(formula.symbols[symbol]?.sign ?? symbol);
}

export function equationTeX({ left, right }: Equation, sign: (symbol: string) => string): string {
  return `${toTeX(left, sign)} = ${toTeX(right, sign)}`;
}

/** An expression with text put in for its symbols, read left to right: `0.7 × √(2 × (9.81 × 0.04))`. */
export function substituted(e: Expression, text: (symbol: string) => string): string {
  const inner = (child: Expression): string => substituted(child, text);
  switch (e.kind) {
    case 'number':
      return printExpression(e);
    case 'name':
      return e.name === 'pi' ? 'π' : text(e.name);
    case 'negate':
      return precedenceOf(e.operand) < 3 ? `−(${inner(e.operand)})` : `−${inner(e.operand)}`;
    case 'call':
      return `${e.fn === 'sqrt' ? '√' : e.fn}(${e.args.map(inner).join(', ')})`;
    case 'binary': {
      const side = (child: Expression, which: 'left' | 'right'): string =>
        needsBrackets(e.op, child, which) ? `(${inner(child)})` : inner(child);
      const sign = { '+': ' + ', '-': ' − ', '*': ' × ', '/': ' / ', '^': '^' }[e.op];
      return `${side(e.left, 'left')}${sign}${side(e.right, 'right')}`;
    }
  }
}
