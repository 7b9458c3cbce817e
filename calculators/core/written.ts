import type { Formula } from './formula.ts';
import { firstSymbol } from './compiled.ts';
import { solverFor, type Solver } from './solver.ts';

/** An equation written out as code beforehand: of which formula, for which symbol, and the code. */
export type Written = readonly [formula: Formula, find: string, solver: Solver];

/** What finds the solver of a formula for one of its symbols, the first unless told. */
export type SolverOf = (formula: Formula, find?: string) => Solver;

/** Takes the code where an equation is written out, and the solver made from its text where it is not. */
export function withWritten(written: readonly Written[]): SolverOf {
  const first = new Map<Formula, Solver>();
  const all = new Map<Formula, Map<string, Solver>>();
  for (const [formula, find, solver] of written) {
    if (find === firstSymbol(formula)) first.set(formula, solver);
    const known = all.get(formula);
    if (known) known.set(find, solver);
    else all.set(formula, new Map([[find, solver]]));
  }
  return (formula, find) =>
    (find === undefined ? first.get(formula) : all.get(formula)?.get(find)) ?? solverFor(formula, find);
}

/** The difference of an equation's two sides, relative to their size. */
export function apart(left: number, right: number): number {
  const scale = Math.abs(left) + Math.abs(right);
  return scale === 0 ? 0 : (left - right) / scale;
}

/** Whether the answer of a rearranged equation holds in the equation as stated, of whose sides these are the values. */
export function isAnswer(value: number, left: number, right: number): boolean {
  const off = Math.abs(left - right);
  return Number.isFinite(value) && Number.isFinite(off) && off <= 1e-6 * (Math.abs(left) + Math.abs(right));
}
