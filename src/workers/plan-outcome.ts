import type { Check, QuantityInput, Result, Values } from '../../calculators/core/model.ts';
import { printQuantity } from '../../calculators/core/print.ts';
import { completeInputs, type ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { waysToChange } from '../../calculators/models/pour-plan/change.ts';
import { planSpread } from '../../calculators/models/pour-plan/spread.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';

/** What the plan page shows of a plan: the result at once, what would have to change and the spread as they come. */
export interface Outcome {
  readonly result: Result;
  /** Intervals in SI of the numbers of the plan, by step, and the inputs each comes from most. */
  readonly spreads: Readonly<Record<string, SpreadOf>>;
  /** Share of the trials in which a check holds. */
  readonly chances: Readonly<Record<string, number>>;
  /** Single changes that would make a check hold, as sentences; empty when none in its range does. */
  readonly changes: Readonly<Record<string, readonly string[]>>;
  readonly trials: number;
}

export interface SpreadOf {
  readonly low: number;
  readonly high: number;
  readonly main: readonly string[];
}

export type Texts = Readonly<Record<string, unknown>>;

/** To the worker: the materials once, then each plan with a number of its own. */
export type Request =
  { readonly books: ResolvedMaterials } | { readonly asked: number; readonly texts: Texts };

export interface Reply {
  readonly asked: number;
  readonly outcome: Outcome;
}

/** An input that gives less of the variance than this is not worth naming. */
const worthNaming = 0.15;

/** The outcome in three helpings: the result, then with changes, then with the spread. */
export function* outcomes(texts: Texts, books: ResolvedMaterials, trials: number): Generator<Outcome> {
  const { values, spreads } = completeInputs(pourPlan, texts, books);
  const result = pourPlan.run(values);
  const first: Outcome = { result, spreads: {}, chances: {}, changes: {}, trials: 0 };
  yield first;
  const second = { ...first, changes: changesOf(result.checks, values) };
  yield second;
  const spread = planSpread(values, spreads, { count: trials });
  if (!spread) return;
  yield {
    ...second,
    trials: spread.count,
    chances: spread.chances,
    spreads: Object.fromEntries(
      Object.entries(spread.outputs)
        .filter(([, { low, high }]) => Number.isFinite(low) && high > low)
        .map(([name, { low, high, shares }]) => [
          name,
          {
            low,
            high,
            main: shares
              .filter(({ share }) => share > worthNaming)
              .slice(0, 3)
              .map(({ name: from }) => from),
          },
        ]),
    ),
  };
}

function changesOf(checks: readonly Check[], values: Values): Record<string, string[]> {
  const title = (id: string): string => checks.find((check) => check.id === id)?.title ?? id;
  return Object.fromEntries(
    checks
      .filter(({ verdict }) => verdict !== 'holds')
      .map(({ id }) => [
        id,
        waysToChange(values, id).map(({ lever, value, from, breaks }) => {
          const input = pourPlan.inputs[lever] as QuantityInput;
          const print = (si: number): string => printQuantity(si, input.show ?? input.unit);
          const costs = breaks.length === 0 ? '' : ` But then this fails: ${breaks.map(title).join('; ')}.`;
          return `${input.name}: ${print(value)} instead of ${print(from)}.${costs}`;
        }),
      ]),
  );
}
