import type { Formula } from '../../calculators/core/formula.ts';
import { solve } from '../../calculators/core/solve.ts';
import { fromSI, toSI, type UnitSymbol } from '../../calculators/core/units.ts';
import type { CurveProps } from './curve-numbers.ts';

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
function valuesAt({ formula, find, against, x, y, lines }: CurveFormula, place: number): (number | null)[] {
  return lines.map((given) => {
    const solved = solve(formula, { ...given, [against]: toSI(place, x) }, find);
    return solved.ok && Number.isFinite(solved.value) ? Number(fromSI(solved.value, y).toPrecision(5)) : null;
  });
}

/** The steps and lines of a curve with one place more, worked now, and where it stands among them. */
export function withPlace(
  { steps, lines }: Pick<CurveProps, 'steps' | 'lines'>,
  exact: CurveFormula,
  place: number,
): Pick<CurveProps, 'steps' | 'lines' | 'at'> {
  const values = valuesAt(exact, place);
  const at = steps.findIndex((step) => step > place);
  const withOne = <T>(list: readonly T[], one: T): T[] => [...list.slice(0, at), one, ...list.slice(at)];
  return {
    at,
    steps: withOne(steps, place),
    lines: lines.map((line, i) => ({ ...line, values: withOne(line.values, values[i] ?? null) })),
  };
}
