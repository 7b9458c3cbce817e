import { erf, erfc, erfcx } from './special.ts';

/** The language equations are stated in: numbers, names, + − * / ^, and the functions below. Nothing conditional. */
export type Expression =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'negate'; readonly operand: Expression }
  | { readonly kind: 'binary'; readonly op: BinaryOp; readonly left: Expression; readonly right: Expression }
  | { readonly kind: 'call'; readonly fn: FunctionName; readonly args: readonly Expression[] };

export type BinaryOp = '+' | '-' | '*' | '/' | '^';

export interface Equation {
  readonly left: Expression;
  readonly right: Expression;
}

export type Environment = Readonly<Record<string, number>>;

/** What the language can call, and what each is. */
export const functions = {
  sqrt: Math.sqrt,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  abs: Math.abs,
  erf,
  erfc,
  erfcx,
  min: Math.min,
  max: Math.max,
} as const;

export type FunctionName = keyof typeof functions;

const variadic: ReadonlySet<string> = new Set(['min', 'max']);

export const number = (value: number): Expression => ({ kind: 'number', value });
export const name = (text: string): Expression => ({ kind: 'name', name: text });
export const call = (fn: FunctionName, ...args: readonly Expression[]): Expression => ({
  kind: 'call',
  fn,
  args,
});
export const negate = (operand: Expression): Expression => ({ kind: 'negate', operand });
export const binary = (op: BinaryOp, left: Expression, right: Expression): Expression => ({
  kind: 'binary',
  op,
  left,
  right,
});

/** What is wrong with an equation's text, and where. */
export class ExpressionError extends Error {
  override name = 'ExpressionError';
}

interface Token {
  readonly kind: 'number' | 'name' | 'sign' | 'end';
  readonly text: string;
  readonly at: number;
}

const tokenPattern =
  /\s*(?:(\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+(?:[eE][+-]?\d+)?)|([A-Za-z][A-Za-z0-9_]*)|([-+*/^(),]))/y;

function tokens(text: string): Token[] {
  const found: Token[] = [];
  let at = 0;
  const end = text.trimEnd().length;
  while (at < end) {
    tokenPattern.lastIndex = at;
    const match = tokenPattern.exec(text);
    if (!match) throw new ExpressionError(`cannot read "${text.slice(at).trim()}" in "${text}"`);
    at = tokenPattern.lastIndex;
    const [, digits, word, sign] = match;
    const kind = digits !== undefined ? 'number' : word !== undefined ? 'name' : 'sign';
    found.push({ kind, text: digits ?? word ?? sign ?? '', at });
  }
  found.push({ kind: 'end', text: 'the end', at });
  return found;
}

/** Beyond these an equation is no equation, and reading it would use up the stack. */
const longest = 4000;
const deepest = 200;

/** Reads one expression; throws an `ExpressionError` that quotes what could not be read. */
export function parseExpression(text: string): Expression {
  if (text.length > longest)
    throw new ExpressionError(`an equation of ${text.length} characters is too long`);
  const list = tokens(text);
  let position = 0;
  let depth = 0;
  const peek = (): Token => list[position]!;
  const next = (): Token => list[position++]!;
  const takeSign = (...signs: readonly string[]): string | undefined => {
    const token = peek();
    return token.kind === 'sign' && signs.includes(token.text) ? next().text : undefined;
  };
  const expect = (sign: string): void => {
    if (!takeSign(sign))
      throw new ExpressionError(`expected "${sign}" but found "${peek().text}" in "${text}"`);
  };

  function sum(): Expression {
    let left = product();
    for (let op = takeSign('+', '-'); op; op = takeSign('+', '-'))
      left = binary(op as BinaryOp, left, product());
    return left;
  }
  function product(): Expression {
    let left = signed();
    for (let op = takeSign('*', '/'); op; op = takeSign('*', '/'))
      left = binary(op as BinaryOp, left, signed());
    return left;
  }
  function signed(): Expression {
    depth += 1;
    if (depth > deepest) throw new ExpressionError(`brackets and signs are nested more than ${deepest} deep`);
    const e = takeSign('-') ? negate(signed()) : takeSign('+') ? signed() : power();
    depth -= 1;
    return e;
  }
  function power(): Expression {
    const base = atom();
    return takeSign('^') ? binary('^', base, signed()) : base;
  }
  function atom(): Expression {
    const token = next();
    if (token.kind === 'number') return number(Number(token.text));
    if (token.kind === 'name') return takeSign('(') ? functionCall(token.text) : name(token.text);
    if (token.text === '(') {
      const inner = sum();
      expect(')');
      return inner;
    }
    throw new ExpressionError(`expected a number or a symbol but found "${token.text}" in "${text}"`);
  }
  function functionCall(fn: string): Expression {
    if (!Object.hasOwn(functions, fn)) {
      throw new ExpressionError(`no function "${fn}"; there are ${Object.keys(functions).join(', ')}`);
    }
    const args = [sum()];
    while (takeSign(',')) args.push(sum());
    expect(')');
    if (args.length > 1 !== variadic.has(fn)) {
      throw new ExpressionError(
        `${fn} takes ${variadic.has(fn) ? 'two or more values' : 'one value'} in "${text}"`,
      );
    }
    return { kind: 'call', fn: fn as FunctionName, args };
  }

  const result = sum();
  if (peek().kind !== 'end') throw new ExpressionError(`did not expect "${peek().text}" in "${text}"`);
  return result;
}

/** Reads `left = right`. */
export function parseEquation(text: string): Equation {
  const sides = text.split('=');
  if (sides.length !== 2) throw new ExpressionError(`"${text}" is not an equation: it needs exactly one "="`);
  return { left: parseExpression(sides[0]!), right: parseExpression(sides[1]!) };
}

/** Every name in it but `pi`, in the order of first appearance. */
export function symbolsOf(...expressions: readonly Expression[]): string[] {
  const found = new Set<string>();
  const visit = (e: Expression): void => {
    if (e.kind === 'name' && e.name !== 'pi') found.add(e.name);
    children(e).forEach(visit);
  };
  expressions.forEach(visit);
  return [...found];
}

export function children(e: Expression): readonly Expression[] {
  if (e.kind === 'negate') return [e.operand];
  if (e.kind === 'binary') return [e.left, e.right];
  if (e.kind === 'call') return e.args;
  return [];
}

export function countOf(symbol: string, e: Expression): number {
  if (e.kind === 'name') return e.name === symbol ? 1 : 0;
  return children(e).reduce((sum, child) => sum + countOf(symbol, child), 0);
}

const precedence = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 4 } as const;

export function precedenceOf(e: Expression): number {
  if (e.kind === 'binary') return precedence[e.op];
  if (e.kind === 'negate') return 3;
  return e.kind === 'number' && e.value < 0 ? 3 : 5;
}

/** Whether a child must be bracketed where it stands under a binary operator. */
export function needsBrackets(op: BinaryOp, child: Expression, side: 'left' | 'right'): boolean {
  const own = precedenceOf(child);
  const parent = precedence[op];
  if (own !== parent) return own < parent;
  return side === 'right' ? op === '-' || op === '/' : op === '^';
}

/** The text of an expression; reading it back gives the same value and the same text. */
export function printExpression(e: Expression): string {
  switch (e.kind) {
    case 'number':
      return String(e.value);
    case 'name':
      return e.name;
    case 'negate': {
      const inner = printExpression(e.operand);
      return precedenceOf(e.operand) < 3 ? `-(${inner})` : `-${inner}`;
    }
    case 'binary': {
      const side = (child: Expression, which: 'left' | 'right'): string => {
        const text = printExpression(child);
        return needsBrackets(e.op, child, which) ? `(${text})` : text;
      };
      const gap = e.op === '^' ? '' : ' ';
      return `${side(e.left, 'left')}${gap}${e.op}${gap}${side(e.right, 'right')}`;
    }
    case 'call':
      return `${e.fn}(${e.args.map(printExpression).join(', ')})`;
  }
}

export function printEquation({ left, right }: Equation): string {
  return `${printExpression(left)} = ${printExpression(right)}`;
}
