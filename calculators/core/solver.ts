import { rootNear } from './bracket.ts';
import { compiledFor, firstSymbol, fromOwn, holds, rearrangedFor, toOwn } from './compiled.ts';
import type { Environment } from './expression.ts';
import type { Formula, SymbolSpec } from './formula.ts';
import { valueOf } from './program.ts';
import { isPast, rearrangedValue, solve } from './solve.ts';

/**
 * The number `solve` gives, NaN where it refuses, and no words: for what is worked a thousand times over.
 *
 * `near` is a guess for an equation that cannot be rearranged and whose sides cross once as the unknown rises
 * over the positive numbers; it is then sought from there, and the whole range is looked through only where
 * that finds nothing.
 */
export type Solver = (given: Environment, near?: number) => number;

const solvers = new WeakMap<Formula, Map<string, Solver>>();

/** The solver of a formula for one of its symbols, the first unless told; made once. */
export function solverFor(formula: Formula, find = ''): Solver {
  let known = solvers.get(formula);
  if (!known) solvers.set(formula, (known = new Map<string, Solver>()));
  let solver = known.get(find);
  if (!solver) known.set(find, (solver = makeSolver(formula, find || firstSymbol(formula))));
  return solver;
}

function makeSolver(formula: Formula, find: string): Solver {
  const ready = compiledFor(formula);
  const { symbols, constants, places, where } = ready;
  const unknown = symbols.findIndex(([symbol]) => symbol === find);
  const spec = symbols[unknown]?.[1];
  const rearranged = rearrangedFor(formula, find);
  if (!spec || formula.noSolve?.[find] !== undefined) return () => Number.NaN;
  const others = symbols.flatMap(([symbol, other], at) =>
    at === unknown ? [] : [{ symbol, other, at, constant: constants[symbol] ?? Number.NaN }],
  );
  const withRoot = (root: number): Float64Array => {
    places[unknown] = root;
    return places;
  };
  /** The two sides’ difference, relative to their size. */
  const off = (root: number): number => {
    withRoot(toOwn(formula, spec, root));
    const left = valueOf(ready.left, places);
    const right = valueOf(ready.right, places);
    const scale = Math.abs(left) + Math.abs(right);
    return scale === 0 ? 0 : (left - right) / scale;
  };
  const allowed = (own: number): boolean => where.every((condition) => holds(condition, withRoot(own)));

  const fill = (given: Environment): boolean => {
    for (const { symbol, other, at, constant } of others) {
      const value = given[symbol] ?? constant;
      if (!Number.isFinite(value) || isPast(other, value)) return false;
      places[at] = toOwn(formula, other, value);
    }
    return true;
  };

  return (given, near) => {
    if (!fill(given)) return Number.NaN;
    if (rearranged) return answer(formula, spec, rearrangedValue(ready, rearranged, withRoot), allowed);
    if (near !== undefined && near > 0) {
      const root = rootNear(off, near);
      if (!Number.isNaN(root)) return answer(formula, spec, toOwn(formula, spec, root), allowed);
    }
    const solved = solve(formula, given, find);
    return solved.ok ? solved.value : Number.NaN;
  };
}

function answer(formula: Formula, spec: SymbolSpec, own: number, allowed: (own: number) => boolean): number {
  if (Number.isNaN(own) || !allowed(own)) return Number.NaN;
  const value = fromOwn(formula, spec, own);
  return isPast(spec, value) ? Number.NaN : value;
}
