/**
 * The equations a plan works a thousand times over, written out as code. The equation's text stays the one
 * statement of it: this is made from the text, and a test holds the two together.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  children,
  countOf,
  needsBrackets,
  parseEquation,
  parseExpression,
  precedenceOf,
  type Equation,
  type Expression,
} from '../../calculators/core/expression.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import { rearrange } from '../../calculators/core/solve.ts';
import { toSI } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';

const folder = fileURLToPath(new URL('../../calculators/models/pour-plan', import.meta.url));
export const writtenOutFile = join(folder, 'written-out.ts');

/** What the plan solves some of its formulas for; each is solved for its first symbol besides. */
const alsoFor: Readonly<Record<string, readonly string[]>> = {
  'charge/mass-from-volume': ['V'],
  'filling/flow-time-interface': ['T_m'],
  'inspection/density': ['m_w'],
};

/** Words a local name may not be: the language's, and what the file itself uses. */
const taken = /^(?:do|if|in|is|as|of|for|let|new|try|var|given|near|Math|Number|pi)$/;

/** Every formula the plan's files import, by id, with the constant it is imported as and the file. */
function formulasOfPlan(): { readonly formula: Formula; readonly constant: string; readonly path: string }[] {
  const found = new Map<string, { formula: Formula; constant: string; path: string }>();
  for (const file of readdirSync(folder)) {
    if (!file.endsWith('.ts') || join(folder, file) === writtenOutFile) continue;
    const text = readFileSync(join(folder, file), 'utf8');
    for (const [, names = '', path = ''] of text.matchAll(
      /import \{ (.*?) \} from '\.\.\/\.\.\/(formulas\/.*?)'/g,
    )) {
      const id = path.replace(/^formulas\/|\.ts$/g, '');
      const formula = formulas[id];
      if (formula) found.set(id, { formula, constant: names.split(' as ')[0]!, path });
    }
  }
  return [...found.values()].sort((a, b) => (a.formula.id < b.formula.id ? -1 : 1));
}

const calls: Readonly<Record<string, string>> = { ln: 'Math.log', erf: 'erf', erfc: 'erfc', erfcx: 'erfcx' };

/** An expression as code; `named` may stand in for a whole branch. */
function codeOf(e: Expression, named: (e: Expression) => string | undefined = () => undefined): string {
  const known = named(e);
  if (known !== undefined) return known;
  const code = (one: Expression): string => codeOf(one, named);
  switch (e.kind) {
    case 'number':
      return String(e.value);
    case 'name':
      return e.name === 'pi' ? 'Math.PI' : e.name;
    case 'negate':
      return children(e.operand).length === 0 ? `-${code(e.operand)}` : `-(${code(e.operand)})`;
    case 'binary': {
      const side = (child: Expression, which: 'left' | 'right'): string => {
        // A sign before a power is no code, and a power of a power is read from the right.
        const apart = e.op === '^' ? precedenceOf(child) < 5 : needsBrackets(e.op, child, which);
        return apart && named(child) === undefined ? `(${code(child)})` : code(child);
      };
      return `${side(e.left, 'left')} ${e.op === '^' ? '**' : e.op} ${side(e.right, 'right')}`;
    }
    case 'call':
      return `${calls[e.fn] ?? `Math.${e.fn}`}(${e.args.map(code).join(', ')})`;
  }
}

/** Branches that do not hold the unknown, each named once and worked before the search begins. */
function withoutUnknown(
  equation: Equation,
  unknown: string,
): { lines: string[]; left: string; right: string } {
  const lines: string[] = [];
  const made = new Map<string, string>();
  const named = (e: Expression): string | undefined => {
    if (countOf(unknown, e) > 0 || children(e).length === 0) return undefined;
    const code = codeOf(e);
    let name = made.get(code);
    if (name === undefined) {
      made.set(code, (name = `part${made.size + 1}`));
      lines.push(`const ${name} = ${code};`);
    }
    return name;
  };
  return { lines, left: codeOf(equation.left, named), right: codeOf(equation.right, named) };
}

/** The body of the solver of one formula for one symbol, line by line. */
function linesOf(formula: Formula, constant: string, find: string): string[] {
  const { symbols } = formula;
  const spec = symbols[find]!;
  if (formula.noSolve?.[find] !== undefined) throw new Error(`${formula.id} is not solved for ${find}`);
  const bad = Object.keys(symbols).find((symbol) => taken.test(symbol));
  if (bad !== undefined) throw new Error(`${formula.id}: "${bad}" can be no name in code`);
  /** An empirical equation is written in its own units. */
  const [own, back] = formula.empirical
    ? [
        (code: string, symbol: string): string => `fromSI(${code}, '${symbols[symbol]!.unit}')`,
        (symbol: string): string => `toSI(${symbol}, '${symbols[symbol]!.unit}')`,
      ]
    : [(code: string): string => code, (symbol: string): string => symbol];
  const others = Object.keys(symbols).filter((symbol) => symbol !== find);
  const si = (symbol: string): string => {
    const { constant: fixed, unit } = symbols[symbol]!;
    return `given['${symbol}']${fixed === undefined ? '!' : ` ?? ${toSI(fixed, unit)}`}`;
  };
  const past = (symbol: string, value: string): string =>
    `isPast(${constant}.symbols['${symbol}']!, ${value})`;
  const nothing = (test: string): string => `if (${test}) return Number.NaN;`;
  const lines = others.map((symbol) => `const ${symbol} = ${own(si(symbol), symbol)};`);
  lines.push(nothing(others.map((symbol) => `!Number.isFinite(${symbol})`).join(' || ')));
  for (const symbol of others) if (symbols[symbol]!.limit) lines.push(nothing(past(symbol, si(symbol))));

  const equation = parseEquation(formula.equation);
  const turned = rearrange(formula, find);
  if (turned) {
    lines.push(`const ${find} = ${codeOf(turned.right)};`);
    const asStated = equation.left.kind === 'name' && equation.left.name === find;
    lines.push(
      nothing(
        asStated
          ? `!Number.isFinite(${find})`
          : `!isAnswer(${find}, ${codeOf(equation.left)}, ${codeOf(equation.right)})`,
      ),
    );
  } else {
    if (formula.empirical) throw new Error(`${formula.id}: no search is written out in units of its own`);
    const { lines: before, left, right } = withoutUnknown(equation, find);
    lines.push(
      ...before,
      `const ${find} = rootNear((${find}) => apart(${left}, ${right}), near);`,
      `if (Number.isNaN(${find})) return solverFor(${constant}, '${find}')(given);`,
    );
  }
  for (const { test } of formula.where ?? []) {
    const [, left = '', sign = '', right = ''] = /^(.*?)(>=|<=|>|<)(.*)$/.exec(test) ?? [];
    lines.push(nothing(`!(${codeOf(parseExpression(left))} ${sign} ${codeOf(parseExpression(right))})`));
  }
  if (spec.limit) lines.push(nothing(past(find, back(find))));
  lines.push(`return ${back(find)};`);
  return lines;
}

const camel = (id: string): string => id.replace(/[-/](\w)/g, (_, letter: string) => letter.toUpperCase());

/** The text the file should have now, and how many equations it holds. */
export function writtenOutText(): { readonly content: string; readonly count: number } {
  const lines: string[] = [];
  const imports: string[] = [];
  let count = 0;
  for (const { formula, constant, path } of formulasOfPlan()) {
    const local = camel(formula.id);
    imports.push(`import { ${constant} as ${local} } from '../../${path}';`);
    const [first = ''] = Object.keys(formula.symbols);
    for (const find of [first, ...(alsoFor[formula.id] ?? [])]) {
      const body = linesOf(formula, local, find).map((line) => `    ${line}`);
      const takes = body.some((line) => line.includes('near)')) ? '(given, near = 0)' : '(given)';
      lines.push(`  [${local}, '${find}', ${takes} => {`, ...body, '  }],');
      count += 1;
    }
  }
  const used = (name: string): boolean => lines.some((line) => new RegExp(`\\b${name}\\(`).test(line));
  const units = ['fromSI', 'toSI'].filter(used);
  const special = ['erf', 'erfc', 'erfcx'].filter(used);
  const content = [
    '// Written by `npm run index` from the equations of the formulas the plan uses; change those and run it again.',
    `import { rootNear } from '../../core/bracket.ts';`,
    `import { isPast } from '../../core/solve.ts';`,
    `import { solverFor } from '../../core/solver.ts';`,
    `import { apart, isAnswer, type Written } from '../../core/written.ts';`,
    ...(units.length > 0 ? [`import { ${units.join(', ')} } from '../../core/units.ts';`] : []),
    ...(special.length > 0 ? [`import { ${special.join(', ')} } from '../../core/special.ts';`] : []),
    ...imports,
    '',
    '// prettier-ignore',
    'export const writtenOut: readonly Written[] = [',
    ...lines,
    '];',
    '',
  ];
  return { content: content.join('\n'), count };
}
