import type { Values, Watch } from '../../core/model.ts';
import { sampleSpread, type Spread } from '../../core/spread.ts';
import { numbersOf, withNumbers } from '../inputs.ts';
import { pourPlan } from '../pour-plan.ts';
import { runPlan } from './run.ts';

export interface PlanSpread {
  /** The 95 % interval of every output the plan gives, and the inputs it comes from. */
  readonly outputs: Readonly<Record<string, Spread>>;
  /** Of so many castings poured like this, the share for which each check holds. */
  readonly chances: Readonly<Record<string, number>>;
  /** The inputs each check's margin depends on most, and the margin's own interval. */
  readonly margins: Readonly<Record<string, Spread>>;
  /** The share of samples in which every check holds that holds now. */
  readonly together: number;
  readonly count: number;
}

/**
 * All quantity inputs drawn together within their spreads, each number once a sample however many rows use
 * it. The same inputs and seed give the same answer. Undefined when cancelled.
 */
export function planSpread(
  inputs: Values,
  spreads: Readonly<Record<string, number>>,
  {
    seed = 'pour-plan',
    count = 400,
    watch = {},
  }: { readonly seed?: string; readonly count?: number; readonly watch?: Watch } = {},
): PlanSpread | undefined {
  const now = runPlan(inputs, { warming: false });
  const names = Object.keys(now.values);
  const holding = now.checks.filter(({ margin }) => margin >= 0).map(({ id }) => id);
  const held: Record<string, number> = Object.fromEntries(now.checks.map(({ id }) => [id, 0]));
  let together = 0;
  let done = 0;
  let stopped = false;

  const nothing = Object.fromEntries(
    [...names, ...now.checks.map(({ id }) => `margin of ${id}`)].map((key) => [key, Number.NaN]),
  );
  const sampled = sampleSpread(
    (numbers) => {
      stopped ||= watch.cancelled?.() ?? false;
      if (stopped) return nothing;
      const { values, checks } = runPlan(withNumbers(pourPlan, inputs, numbers), { warming: false });
      const margins = new Map(checks.map(({ id, margin }) => [id, margin]));
      for (const { id, margin } of checks) if (id in held && margin >= 0) held[id]! += 1;
      if (holding.every((id) => (margins.get(id) ?? -1) >= 0)) together += 1;
      done += 1;
      if (done % 20 === 0) watch.progress?.(done / count);
      return Object.fromEntries([
        ...names.map((name) => [name, values[name] ?? Number.NaN]),
        ...now.checks.map(({ id }) => [`margin of ${id}`, margins.get(id) ?? Number.NaN]),
      ]) as Record<string, number>;
    },
    numbersOf(pourPlan, inputs),
    spreads,
    { seed, count },
  );
  if (stopped) return undefined;
  return {
    outputs: Object.fromEntries(names.map((name) => [name, sampled[name]!])),
    margins: Object.fromEntries(now.checks.map(({ id }) => [id, sampled[`margin of ${id}`]!])),
    chances: Object.fromEntries(Object.entries(held).map(([id, times]) => [id, times / count])),
    together: together / count,
    count,
  };
}
