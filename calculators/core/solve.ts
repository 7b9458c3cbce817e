import { compile, parseEquation, parseExpression, type Environment, type Equation } from './expression.ts';
import type { Formula, SymbolSpec } from './formula.ts';
import { isolate } from './isolate.ts';
import { findRoots } from './roots.ts';
import { fromSI, toSI } from './units.ts';

export interface Warning {
  readonly symbol: string;
  readonly message: string;
  /** The number is past a limit: something would fail, so no answer is given. */
  readonly refuses?: boolean;
}

export type Solved =
  | {
      readonly ok: true;
      /** In SI. */
      readonly value: number;
      /** All answers found, in SI; more than one when the equation turns back inside the range. */
      readonly roots: readonly number[];
      /** The equation with the unknown alone on the left, when it can be rearranged. */
      readonly rearranged: Equation | undefined;
      readonly warnings: readonly Warning[];
    }
  | { readonly ok: false; readonly reason: string; readonly warnings: readonly Warning[] };

interface Compiled {
  readonly equation: Equation;
  readonly symbols: readonly (readonly [string, SymbolSpec])[];
  /** In SI. */
  readonly constants: Readonly<Record<string, number>>;
  readonly sides: readonly [
    left: (environment: Environment) => number,
    right: (environment: Environment) => number,
  ];
  readonly gap: (environment: Environment) => number;
  readonly size: (environment: Environment) => number;
  readonly rearranged: Map<
    string,
    { equation: Equation; value: (environment: Environment) => number } | undefined
  >;
  readonly where: readonly { readonly holds: (environment: Environment) => boolean; readonly why: string }[];
}

const compiled = new WeakMap<Formula, Compiled>();

function compiledFor(formula: Formula): Compiled {
  const known = compiled.get(formula);
  if (known) return known;
  const equation = parseEquation(formula.equation);
  const left = compile(equation.left);
  const right = compile(equation.right);
  const symbols = entries(formula);
  const fresh: Compiled = {
    equation,
    symbols,
    constants: Object.fromEntries(
      symbols.flatMap(([symbol, spec]) =>
        spec.constant === undefined ? [] : [[symbol, toSI(spec.constant, spec.unit)]],
      ),
    ),
    sides: [left, right],
    gap: (environment) => left(environment) - right(environment),
    size: (environment) => Math.abs(left(environment)) + Math.abs(right(environment)),
    rearranged: new Map(),
    where: (formula.where ?? []).map(({ test, why }) => ({ holds: comparison(test), why })),
  };
  compiled.set(formula, fresh);
  return fresh;
}

function rearrangedFor(formula: Formula, find: string) {
  const { equation, rearranged } = compiledFor(formula);
  if (!rearranged.has(find)) {
    const isolated = isolate(equation, find);
    rearranged.set(find, isolated && { equation: isolated, value: compile(isolated.right) });
  }
  return rearranged.get(find);
}

/** The formula's equation with `find` alone on the left, or undefined when only a root search can find it. */
export function rearrange(formula: Formula, find: string): Equation | undefined {
  return rearrangedFor(formula, find)?.equation;
}

/** Reads `p1 > p2`, with `>`, `>=`, `<` or `<=`. */
function comparison(text: string): (environment: Environment) => boolean {
  const match = /^(.*?)(>=|<=|>|<)(.*)$/.exec(text);
  if (!match) throw new Error(`"${text}" is not a comparison of two expressions`);
  const left = compile(parseExpression(match[1]!));
  const right = compile(parseExpression(match[3]!));
  const tests: Record<string, (a: number, b: number) => boolean> = {
    '>=': (a, b) => a >= b,
    '<=': (a, b) => a <= b,
    '>': (a, b) => a > b,
    '<': (a, b) => a < b,
  };
  const test = tests[match[2]!]!;
  return (environment) => test(left(environment), right(environment));
}

const entries = (formula: Formula): [string, SymbolSpec][] => Object.entries(formula.symbols);

/** The formula's constants in SI. */
export function constantsOf(formula: Formula): Readonly<Record<string, number>> {
  return compiledFor(formula).constants;
}

/** The formula's usual values in SI. */
export function usualOf(formula: Formula): Record<string, number> {
  return Object.fromEntries(
    entries(formula).flatMap(([symbol, spec]) =>
      spec.usual === undefined ? [] : [[symbol, toSI(spec.usual, spec.unit)]],
    ),
  );
}

/** An empirical equation is written in its own units; any other is evaluated in SI. */
function environmentOf(formula: Formula, si: Record<string, number>): Record<string, number> {
  if (!formula.empirical) return si;
  return Object.fromEntries(
    Object.entries(si).map(([symbol, value]) => [
      symbol,
      fromSI(value, formula.symbols[symbol]?.unit ?? '1'),
    ]),
  );
}

const toOwn = (formula: Formula, spec: SymbolSpec, si: number): number =>
  formula.empirical ? fromSI(si, spec.unit) : si;
const fromOwn = (formula: Formula, spec: SymbolSpec, own: number): number =>
  formula.empirical ? toSI(own, spec.unit) : own;

/** How the equation's two sides differ, relative to their size: zero when the values satisfy it. */
export function residual(formula: Formula, si: Environment): number {
  const { gap, size, constants } = compiledFor(formula);
  const environment = environmentOf(formula, { ...constants, ...si });
  const scale = size(environment);
  return scale === 0 ? 0 : gap(environment) / scale;
}

/** The residual as a function of one symbol, the others as given: for a search that asks often. */
export function residualOf(formula: Formula, si: Environment, find: string): (value: number) => number {
  const { sides, constants, symbols } = compiledFor(formula);
  const [left, right] = sides;
  const values: Record<string, number> = {};
  for (const [symbol] of symbols) values[symbol] = si[symbol] ?? constants[symbol] ?? Number.NaN;
  return (value) => {
    values[find] = value;
    const environment = environmentOf(formula, values);
    const [a, b] = [left(environment), right(environment)];
    const scale = Math.abs(a) + Math.abs(b);
    return scale === 0 ? 0 : (a - b) / scale;
  };
}

const none: readonly Warning[] = [];
const rangesInSI = new WeakMap<SymbolSpec, readonly [number, number]>();

/** The common case, told apart without converting the value. */
function isWellInside(spec: SymbolSpec, si: number): boolean {
  if (!spec.range) return true;
  let ends = rangesInSI.get(spec);
  if (!ends) {
    ends = [toSI(spec.range[0], spec.unit), toSI(spec.range[1], spec.unit)];
    rangesInSI.set(spec, ends);
  }
  return si > ends[0] && si < ends[1];
}

/** Notes about one value: outside the range (a warning) or past a limit (a refusal). */
export function warningsFor(spec: SymbolSpec, symbol: string, si: number): readonly Warning[] {
  if (!spec.limit && isWellInside(spec, si)) return none;
  const value = fromSI(si, spec.unit);
  const slack = 1e-9 * Math.abs(value);
  const { limit, range } = spec;
  const past =
    (limit?.above !== undefined && value > limit.above + slack) ||
    (limit?.below !== undefined && value < limit.below - slack);
  if (limit && past) return [{ symbol, message: limit.why, refuses: true }];
  if (!range || (value >= range[0] - slack && value <= range[1] + slack)) return [];
  const unit = spec.show ?? spec.unit;
  const edge = (end: number): string => `${Number(fromSI(toSI(end, spec.unit), unit).toPrecision(3))}`;
  const side = value < range[0] ? 'below' : 'above';
  const between = `${edge(range[0])} to ${edge(range[1])}${unit === '1' ? '' : ` ${unit}`}`;
  return [{ symbol, message: `${side} the range ${between}${spec.why ? `: ${spec.why}` : ''}` }];
}

/** Where to look for a root of a symbol that has no range: anything positive a workshop could mean. */
const anywhere: readonly [number, number] = [1e-12, 1e12];

/**
 * Solves the formula for one symbol. `given` is in SI and must have every other symbol that is not a
 * constant; usual values are not filled in. Ranges only warn; a limit, a broken `where` and an equation
 * without an answer are refused in words. Nothing throws but an unknown symbol.
 */
export function solve(formula: Formula, given: Environment, find: string): Solved {
  const spec = formula.symbols[find];
  if (!spec) {
    throw new Error(
      `"${formula.id}" has no symbol "${find}"; it has ${Object.keys(formula.symbols).join(', ')}`,
    );
  }
  const { where, symbols, constants } = compiledFor(formula);
  // Filled in the order of the symbols, so that every call of a formula makes an object of the same shape.
  const values: Record<string, number> = {};
  const warnings: Warning[] = [];
  for (const [symbol, other] of symbols) {
    if (symbol === find) continue;
    const value = given[symbol] ?? constants[symbol];
    if (value === undefined || !Number.isFinite(value)) {
      return { ok: false, reason: `${other.name} (${other.sign ?? symbol}) is not given`, warnings };
    }
    values[symbol] = value;
    const about = warningsFor(other, symbol, value);
    if (about.length > 0) warnings.push(...about);
  }
  const refusal = warnings.find((warning) => warning.refuses);
  if (refusal) return { ok: false, reason: refusal.message, warnings };
  const refused = formula.noSolve?.[find];
  if (refused !== undefined) return { ok: false, reason: refused, warnings };

  const environment = environmentOf(formula, values);
  // One object for every trial of the unknown: a search makes hundreds of them.
  const withRoot = (root: number): Environment => {
    environment[find] = root;
    return environment;
  };
  const own = ownRoots(formula, withRoot, find, spec);
  const allowed = own.filter((root) => where.every(({ holds }) => holds(withRoot(root))));
  const [first] = allowed.length > 1 ? preferInRange(formula, spec, allowed) : allowed;
  if (first === undefined) {
    const broken = where.find(({ holds }) =>
      own.length > 0 ? own.some((root) => !holds(withRoot(root))) : !holds(withRoot(Number.NaN)),
    );
    return { ok: false, reason: broken?.why ?? noAnswer(spec, find), warnings };
  }
  const value = fromOwn(formula, spec, first);
  const about = warningsFor(spec, find, value);
  warnings.push(...about);
  const past = about.find((warning) => warning.refuses);
  if (past) return { ok: false, reason: past.message, warnings };
  return {
    ok: true,
    value,
    roots: allowed.map((root) => fromOwn(formula, spec, root)),
    rearranged: rearrange(formula, find),
    warnings,
  };
}

function ownRoots(
  formula: Formula,
  withRoot: (root: number) => Environment,
  find: string,
  spec: SymbolSpec,
): number[] {
  const { gap, size } = compiledFor(formula);
  const rearranged = rearrangedFor(formula, find);
  if (rearranged) {
    const value = rearranged.value(withRoot(Number.NaN));
    if (!Number.isFinite(value)) return [];
    const check = withRoot(value);
    const off = Math.abs(gap(check));
    // Infinity is within any share of infinity, and no answer.
    return Number.isFinite(off) && off <= 1e-6 * size(check) ? [value] : [];
  }
  const [low, high] = spec.range
    ? spec.range.map((end) => toOwn(formula, spec, toSI(end, spec.unit)))
    : anywhere;
  return findRoots((x) => gap(withRoot(x)), low!, high!);
}

/** Inside the range first, so that the usual branch is the one shown. */
function preferInRange(formula: Formula, spec: SymbolSpec, roots: readonly number[]): number[] {
  const inside = (root: number): boolean => warningsFor(spec, '', fromOwn(formula, spec, root)).length === 0;
  return [...roots.filter(inside), ...roots.filter((root) => !inside(root))];
}

function noAnswer(spec: SymbolSpec, find: string): string {
  if (!spec.range)
    return `no value of ${spec.name} (${spec.sign ?? find}) satisfies the equation with these numbers`;
  const unit = spec.show ?? spec.unit;
  const edge = (end: number): string => `${Number(fromSI(toSI(end, spec.unit), unit).toPrecision(4))}`;
  return `no ${spec.name} between ${edge(spec.range[0])} and ${edge(spec.range[1])}${
    unit === '1' ? '' : ` ${unit}`
  } satisfies the equation with these numbers`;
}

/**
 * The symbol alone on the left of the formula's equation, in SI. For code that builds on a formula: throws
 * a sentence where `solve` would refuse.
 */
export function evaluate(formula: Formula, given: Environment): number {
  const { left } = compiledFor(formula).equation;
  const find = left.kind === 'name' ? left.name : Object.keys(formula.symbols)[0]!;
  const solved = solve(formula, given, find);
  if (!solved.ok) throw new Error(`${formula.id}: ${solved.reason}`);
  return solved.value;
}
