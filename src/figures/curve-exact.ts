import type { Formula } from '../../calculators/core/formula.ts';
import { solve } from '../../calculators/core/solve.ts';
import { fromSI, toSI, type UnitSymbol } from '../../calculators/core/units.ts';

/** What a curve needs to work a place between its steps: its formula, and the givens of each line in SI. */
export interface CurveFormula {
  readonly formula: Formula;
  readonly find: string;
  readonly against: string;
  readonly x: UnitSymbol;
  readonly y: UnitSymbol;
  readonly lines: readonly Readonly<Record<string, number>>[];
}

/** The answer of each line at a place, in the unit it is drawn in; null where there is none. */
export function valuesAt(
  { formula, find, against, x, y, lines }: CurveFormula,
  place: number,
): (number | null)[] {
  return lines.map((given) => {
    const solved = solve(formula, { ...given, [against]: toSI(place, x) }, find);
    return solved.ok && Number.isFinite(solved.value) ? Number(fromSI(solved.value, y).toPrecision(5)) : null;
  });
}
