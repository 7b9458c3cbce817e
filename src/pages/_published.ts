import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { printQuantity } from '../../calculators/core/print.ts';
import { quantity, quantityFigures, readSpread } from '../../calculators/core/quantity.ts';
import { solve } from '../../calculators/core/solve.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import type { PublishedCheck } from '../../tests/published/check.ts';
import { allChecks } from '../../tests/published/index.ts';

/** Every published check, in the order of its chapter. */
export const published = allChecks;

export interface Compared {
  readonly check: PublishedCheck;
  readonly formula: Formula;
  readonly find: SymbolSpec;
  /** What the formula gives, printed one figure finer than the source. */
  readonly ours: string;
  /** Ours less theirs, as a part of theirs. */
  readonly off: number;
  readonly within: boolean;
}

/** The published figure beside what the formula gives for the same numbers; undefined when there is no such formula. */
export function compare(check: PublishedCheck): Compared | undefined {
  const formula = formulas[check.formula];
  const find = formula?.symbols[check.find];
  if (!formula || !find) return undefined;
  const given = Object.fromEntries(
    Object.entries(check.given).map(([symbol, text]) => [symbol, quantity(text)]),
  );
  const expected = quantityFigures(check.expect);
  const solved = solve(formula, given, check.find);
  const value = solved.ok ? solved.value : Number.NaN;
  const tolerance = readSpread(check.tolerance, expected.value, expected.unit);
  return {
    check,
    formula,
    find,
    ours: solved.ok ? printQuantity(value, expected.unit, { figures: expected.figures + 1 }) : solved.reason,
    off: expected.value === 0 ? value : value / expected.value - 1,
    within: Math.abs(value - expected.value) <= tolerance * (1 + 1e-9),
  };
}
