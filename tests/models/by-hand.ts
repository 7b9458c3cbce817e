import { expect } from 'vitest';
import { quantityFigures } from '../../calculators/core/quantity.ts';
import type { Result } from '../../calculators/core/model.ts';
import type { Quantity } from '../../calculators/core/units.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';

export type Sheet = Readonly<Record<string, unknown>>;
export type Hand = Readonly<Record<string, Quantity>>;

/** The plan run on a written sheet, with no material of the library behind it. */
export function planned(sheet: Sheet, changes: Sheet = {}): Result {
  const { values, problems } = completeInputs(pourPlan, { ...sheet, ...changes }, {});
  expect(problems).toEqual([]);
  return pourPlan.run(values);
}

/** Every number worked by hand is the plan's number to the digits written. */
export function agree(result: Result, hand: Hand): void {
  for (const [output, text] of Object.entries(hand)) {
    const { value, halfDigit } = quantityFigures(text);
    const found = result.values[output];
    expect(found, `${output} is worked`).toBeDefined();
    expect(Math.abs(found! - value), `${output}: by hand ${text}, by the plan ${found}`).toBeLessThanOrEqual(
      halfDigit * (1 + 1e-9),
    );
  }
}

/** The verdicts of the checks named, no others. */
export function judged(
  result: Result,
  verdicts: Readonly<Record<string, 'holds' | 'close' | 'fails'>>,
): void {
  const found = result.checks.filter(({ id }) => id in verdicts).map(({ id, verdict }) => [id, verdict]);
  expect(Object.fromEntries(found)).toEqual(verdicts);
}
