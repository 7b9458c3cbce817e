import {
  compiledFor,
  fromOwn,
  gapOf,
  holds,
  placed,
  rearrangedFor,
  sizeOf,
  toOwn,
  type Compiled,
  type Rearranged,
} from './compiled.ts';
import type { Environment, Equation } from './expression.ts';
import type { Formula, SymbolSpec } from './formula.ts';
import { valueOf } from './program.ts';
import { findRoots } from './roots.ts';
import { fromSI, toSI, unit, type UnitSymbol } from './units.ts';

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

/** The formula's equation with `find` alone on the left, or undefined when only a root search can find it. */
export function rearrange(formula: Formula, find: string): Equation | undefined {
  return rearrangedFor(formula, find)?.equation;
}

/** The formula's constants in SI. */
export function constantsOf(formula: Formula): Readonly<Record<string, number>> {
  return compiledFor(formula).constants;
}

/** The formula's usual values in SI. */
export function usualOf(formula: Formula): Record<string, number> {
  return Object.fromEntries(
    compiledFor(formula).symbols.flatMap(([symbol, spec]) =>
      spec.usual === undefined ? [] : [[symbol, toSI(spec.usual, spec.unit)]],
    ),
  );
}

/** How the equation's two sides differ, relative to their size: zero when the values satisfy it. */
export function residual(formula: Formula, si: Environment): number {
  const ready = compiledFor(formula);
  const places = placed(formula, si);
  const scale = sizeOf(ready, places);
  return scale === 0 ? 0 : gapOf(ready, places) / scale;
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

const slackOf = (value: number): number => 1e-9 * Math.abs(value);

/** Past the symbol's limit, where no answer is given. */
export function isPast({ limit, unit: own }: SymbolSpec, si: number): boolean {
  if (!limit) return false;
  const value = fromSI(si, own);
  const slack = slackOf(value);
  return (
    (limit.above !== undefined && value > limit.above + slack) ||
    (limit.below !== undefined && value < limit.below - slack)
  );
}

/** An end of a range as it is told: three figures, a temperature in whole degrees. */
export function rangeEnd(si: number, shown: UnitSymbol): string {
  const value = fromSI(si, shown);
  const told = unit(shown).kind === 'temperature' ? Math.round(value) : Number(value.toPrecision(3));
  return `${told}`.replace(/^-/, '−');
}

/** Notes about one value: outside the range (a warning) or past a limit (a refusal). */
export function warningsFor(spec: SymbolSpec, symbol: string, si: number): readonly Warning[] {
  if (!spec.limit && isWellInside(spec, si)) return none;
  const { limit, range } = spec;
  if (limit && isPast(spec, si)) return [{ symbol, message: limit.why, refuses: true }];
  const value = fromSI(si, spec.unit);
  const slack = slackOf(value);
  if (!range || (value >= range[0] - slack && value <= range[1] + slack)) return [];
  const shown = spec.show ?? spec.unit;
  const edge = (end: number): string => rangeEnd(toSI(end, spec.unit), shown);
  const side = value < range[0] ? 'below' : 'above';
  const between = `${edge(range[0])} to ${edge(range[1])}${shown === '1' ? '' : ` ${shown}`}`;
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
  const ready = compiledFor(formula);
  const { where, symbols, constants } = ready;
  const warnings: Warning[] = [];
  for (const [symbol, other] of symbols) {
    if (symbol === find) continue;
    const value = given[symbol] ?? constants[symbol];
    if (value === undefined || !Number.isFinite(value)) {
      return { ok: false, reason: `${other.name} (${other.sign ?? symbol}) is not given`, warnings };
    }
    const about = warningsFor(other, symbol, value);
    if (about.length > 0) warnings.push(...about);
  }
  const refusal = warnings.find((warning) => warning.refuses);
  if (refusal) return { ok: false, reason: refusal.message, warnings };
  const refused = formula.noSolve?.[find];
  if (refused !== undefined) return { ok: false, reason: refused, warnings };

  const places = placed(formula, given);
  const unknown = symbols.findIndex(([symbol]) => symbol === find);
  const withRoot = (root: number): Float64Array => {
    places[unknown] = root;
    return places;
  };
  const own = ownRoots(formula, ready, withRoot, find, spec);
  const allowed = own.filter((root) => where.every((condition) => holds(condition, withRoot(root))));
  const first = allowed.length > 1 ? preferred(formula, spec, allowed) : allowed[0];
  if (first === undefined) {
    const broken = where.find((condition) =>
      own.length > 0
        ? own.some((root) => !holds(condition, withRoot(root)))
        : !holds(condition, withRoot(Number.NaN)),
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
  ready: Compiled,
  withRoot: (root: number) => Float64Array,
  find: string,
  spec: SymbolSpec,
): number[] {
  const rearranged = rearrangedFor(formula, find);
  if (rearranged) {
    const value = rearrangedValue(ready, rearranged, withRoot);
    return Number.isNaN(value) ? [] : [value];
  }
  const [low, high] = spec.range
    ? spec.range.map((end) => toOwn(formula, spec, toSI(end, spec.unit)))
    : anywhere;
  return findRoots((x) => gapOf(ready, withRoot(x)), low!, high!);
}

/** The answer of a rearranged equation, put back into the equation as stated; NaN when it does not hold there. */
export function rearrangedValue(
  ready: Compiled,
  { value: program, asStated }: Rearranged,
  withRoot: (root: number) => Float64Array,
): number {
  const value = valueOf(program, withRoot(Number.NaN));
  if (!Number.isFinite(value)) return Number.NaN;
  const places = withRoot(value);
  if (asStated) return value;
  // Infinity is within any share of infinity, and no answer.
  const off = Math.abs(gapOf(ready, places));
  return Number.isFinite(off) && off <= 1e-6 * sizeOf(ready, places) ? value : Number.NaN;
}

/** A root inside the range and its limits if there is one, so that the usual branch is the one shown. */
function preferred(formula: Formula, spec: SymbolSpec, roots: readonly number[]): number | undefined {
  return roots.find((root) => warningsFor(spec, '', fromOwn(formula, spec, root)).length === 0) ?? roots[0];
}

function noAnswer(spec: SymbolSpec, find: string): string {
  if (!spec.range)
    return `no value of ${spec.name} (${spec.sign ?? find}) satisfies the equation with these numbers`;
  const shown = spec.show ?? spec.unit;
  const edge = (end: number): string => rangeEnd(toSI(end, spec.unit), shown);
  return `no ${spec.name} between ${edge(spec.range[0])} and ${edge(spec.range[1])}${
    shown === '1' ? '' : ` ${shown}`
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
