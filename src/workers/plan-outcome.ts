import type { Check, QuantityInput, Result, Values } from '../../calculators/core/model.ts';
import { printQuantity } from '../../calculators/core/print.ts';
import { habitUnit, type Habit } from '../../calculators/core/shop-units.ts';
import { fromSI, toSI } from '../../calculators/core/units.ts';
import { completeInputs, type ResolvedMaterials } from '../../calculators/models/inputs.ts';
import {
  waysToChange,
  whatWouldHaveToChange,
  type Change,
} from '../../calculators/models/pour-plan/change.ts';
import { planTrials, type PlanSpread } from '../../calculators/models/pour-plan/spread.ts';
import { saidIn } from '../../calculators/models/pour-plan/say.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';

/** What the plan page shows of a plan: the result at once, what would have to change and the spread as they come. */
export interface Outcome {
  readonly result: Result;
  /** Intervals in SI of the numbers of the plan, by step, and the inputs each comes from most. */
  readonly spreads: Readonly<Record<string, SpreadOf>>;
  /** Share of the trials in which a check holds. */
  readonly chances: Readonly<Record<string, number>>;
  /** By failing check: single changes that would make it hold, as sentences, or the sentence that none does. */
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
  | { readonly books: ResolvedMaterials }
  | { readonly asked: number; readonly texts: Texts; readonly habit: Habit };

export interface Reply {
  readonly asked: number;
  readonly outcome: Outcome;
}

/** An input that gives less of the variance than this is not worth naming. */
const worthNaming = 0.15;

/** The outcome in three helpings: the result, then with changes, then with the spread. */
export function* outcomes(
  texts: Texts,
  books: ResolvedMaterials,
  trials: number,
  habit: Habit = 'metric',
): Generator<Outcome> {
  for (const helping of outcomesInSteps(texts, books, trials, habit)) if (helping) yield helping;
}

/** The same with a pause after each piece of the work, where it may be left: nothing is handed over there. */
export function* outcomesInSteps(
  texts: Texts,
  books: ResolvedMaterials,
  trials: number,
  habit: Habit = 'metric',
): Generator<Outcome | undefined> {
  const { values, spreads } = completeInputs(pourPlan, texts, books);
  const result = saidIn(habit, () => pourPlan.run(values));
  const first: Outcome = { result, spreads: {}, chances: {}, changes: {}, trials: 0 };
  yield first;
  const changes: Record<string, readonly string[]> = {};
  for (const { id, verdict } of result.checks) {
    if (verdict !== 'fails') continue;
    changes[id] = changesOf(id, result.checks, values, habit);
    yield undefined;
  }
  const second = { ...first, changes };
  yield second;
  const running = planTrials(values, spreads, { count: trials });
  for (let step = running.next(); ; step = running.next()) {
    if (step.done) {
      yield withSpread(second, step.value);
      return;
    }
    yield undefined;
  }
}

function withSpread(outcome: Outcome, { count, chances, outputs }: PlanSpread): Outcome {
  return {
    ...outcome,
    trials: count,
    chances,
    spreads: Object.fromEntries(
      Object.entries(outputs)
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

function changesOf(id: string, checks: readonly Check[], values: Values, habit: Habit): readonly string[] {
  // What breaks nothing else comes first.
  const ways = waysToChange(values, id).sort((a, b) => a.breaks.length - b.breaks.length);
  if (ways.length > 0) return ways.map((way) => changeText(way, checks, habit));
  const found = whatWouldHaveToChange(values, id);
  return 'none' in found ? [found.none] : [];
}

/** `Suction at the gauge: 25.2 kPa or less instead of 35 kPa.` */
export function changeText(
  { lever, value, from, breaks }: Change,
  checks: readonly Check[],
  habit: Habit = 'metric',
): string {
  const input = pourPlan.inputs[lever] as QuantityInput;
  const unit = habitUnit(input.show ?? input.unit, habit, input);
  const more = value > from;
  const wanted = towards(fromSI(value, unit), more);
  const enough = printQuantity(toSI(wanted, unit), unit, { figures: Math.max(3, whole(wanted)) });
  const title = (id: string): string => checks.find((check) => check.id === id)?.title ?? id;
  const costs = breaks.length === 0 ? '' : ` But then this fails: ${breaks.map(title).join('; ')}.`;
  return `${input.name}: ${enough} or ${more ? 'more' : 'less'} instead of ${printQuantity(from, unit, { figures: Math.max(3, whole(fromSI(from, unit))) })}.${costs}`;
}

/** Figures before the decimal point: 1135 °C is not to be called 1140. */
const whole = (value: number): number => Math.floor(Math.log10(Math.max(1, Math.abs(value)))) + 1;

/** To three figures and never coarser than one, on the side where the check holds. */
function towards(value: number, more: boolean): number {
  if (value === 0) return 0;
  const place = 10 ** Math.min(0, Math.floor(Math.log10(Math.abs(value))) - 2);
  const slack = more ? -1e-9 : 1e-9;
  return (more ? Math.ceil(value / place + slack) : Math.floor(value / place + slack)) * place;
}
