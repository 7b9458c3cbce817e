import type { ResolvedMaterial } from '../../calculators/core/material.ts';
import type { QuantityInput, Result, Values } from '../../calculators/core/model.ts';
import { printQuantity } from '../../calculators/core/print.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { waysToChange, whatWouldHaveToChange, type Change } from '../../calculators/models/pour-plan/change.ts';
import { planSpread } from '../../calculators/models/pour-plan/spread.ts';

/** Everything the page says about a plan. It comes in parts: the result first, then what would have to change, then the spreads. */
export interface Outcome {
  readonly result: Result;
  /** The 95 % interval of a number of the plan, and the inputs it comes from, the largest first. */
  readonly spreads: Readonly<Record<string, Interval>>;
  /** By check: the share of trials in which it holds. */
  readonly chances: Readonly<Record<string, number>>;
  /** By check that does not hold: sentences, best first. Absent while it is being worked out. */
  readonly changes: Readonly<Record<string, readonly string[]>>;
  /** How many trials stand behind the spreads; zero while they are being made. */
  readonly trials: number;
}

export interface Interval {
  readonly low: number;
  readonly high: number;
  readonly main: readonly string[];
}

export interface Reply {
  readonly asked: number;
  readonly outcome: Outcome;
  /** The last part. */
  readonly done: boolean;
}

export type Books = Readonly<Record<string, ResolvedMaterial>>;

export const trials = 1000;

/** An input behind less of the variance than this is not worth naming. */
const shareNamed = 0.1;

/** The outcome of a plan's written inputs, in three parts, each fuller than the one before. */
export function* outcomesOf(texts: Readonly<Record<string, unknown>>, books: Books, count = trials): Generator<Outcome> {
  const { values, spreads } = completeInputs(pourPlan, texts, books);
  const result = pourPlan.run(values);
  let outcome: Outcome = { result: lean(result), spreads: {}, chances: {}, changes: {}, trials: 0 };
  yield outcome;
  outcome = { ...outcome, changes: changesOf(result, values) };
  yield outcome;
  const sampled = planSpread(values, spreads, { count });
  if (!sampled) return;
  yield {
    ...outcome,
    spreads: Object.fromEntries(
      Object.entries(sampled.outputs).flatMap(([name, { low, high, shares }]) =>
        Number.isFinite(low) && Number.isFinite(high) && high > low
          ? [[name, { low, high, main: shares.filter(({ share }) => share >= shareNamed).slice(0, 3).map((share) => share.name) }]]
          : [],
      ),
    ),
    chances: sampled.chances,
    trials: count,
  };
}

/** Without values that could not be sent or kept as they are. */
const lean = (result: Result): Result => ({
  ...result,
  steps: result.steps.map((step) => {
    const { value, ...rest } = step;
    return value === undefined || !Number.isFinite(value) ? rest : { ...rest, value };
  }),
});

function changesOf(result: Result, values: Values): Record<string, readonly string[]> {
  return Object.fromEntries(
    result.checks
      .filter(({ verdict }) => verdict === 'fails')
      .map(({ id }) => {
        const ways = [...waysToChange(values, id)].sort((a, b) => a.breaks.length - b.breaks.length);
        const found = whatWouldHaveToChange(values, id);
        return [id, 'none' in found ? [found.none] : ways.slice(0, 3).map((way) => changeText(way, result))];
      }),
  );
}

/** `Suction at the gauge: 25.2 kPa or less (now 35 kPa).` rounded to the side where the check holds. */
export function changeText({ lever, value, from, breaks }: Change, result: Result): string {
  const input = pourPlan.inputs[lever] as QuantityInput;
  const unit = input.show ?? input.unit;
  const more = value > from;
  const nudged = value + (more ? 1 : -1) * Math.abs(value - from) * 1e-3;
  const cost = breaks.map((id) => result.checks.find((check) => check.id === id)?.title.toLowerCase() ?? id);
  return [
    `${input.name}: ${printQuantity(nudged, unit)} or ${more ? 'more' : 'less'}, now ${printQuantity(from, unit)}`,
    ...(cost.length > 0 ? [`then this fails: ${cost.join('; ')}`] : []),
  ].join('. ');
}
