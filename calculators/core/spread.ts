import type { Formula } from './formula.ts';
import { drawn } from './interval.ts';
import { createRandom } from './random.ts';
import { solve } from './solve.ts';

/**
 * The spread of a result: a 95 % interval, and which inputs it comes from.
 *
 * A half-width `s` of an input is taken as 1.96 standard deviations. A positive quantity whose half-width is
 * above 20 % of it is log-normal, so that it never goes below zero: its interval is value ÷ (1+r) to
 * value × (1+r).
 */
export interface Spread {
  readonly low: number;
  readonly high: number;
  /** Half of the interval. */
  readonly spread: number;
  /** Part of the variance by input, largest first; the parts sum to one. */
  readonly shares: readonly Share[];
  readonly how: 'first order' | 'sampled';
  /** Part of the samples that had an answer; one unless the inputs reach where there is none. */
  readonly answered: number;
}

export interface Share {
  readonly name: string;
  readonly share: number;
}

export type Widths = Readonly<Record<string, number>>;

/** Above this relative half-width a straight line through the point no longer stands for the curve. */
const firstOrderUpTo = 0.05;

const uncertain = (given: Readonly<Record<string, number>>, widths: Widths): string[] =>
  Object.keys(given).filter((name) => (widths[name] ?? 0) > 0);

/** The spread of a formula's answer: first order when every input is within 5 %, sampled otherwise. */
export function formulaSpread(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  find: string,
  count = 2000,
): Spread | undefined {
  const answer = (values: Readonly<Record<string, number>>): number => {
    const solved = solve(formula, values, find);
    return solved.ok ? solved.value : Number.NaN;
  };
  const names = uncertain(given, widths);
  const value = answer(given);
  if (names.length === 0 || !Number.isFinite(value)) return undefined;
  const narrow = names.every((name) => widths[name]! <= firstOrderUpTo * Math.abs(given[name]!));
  return narrow
    ? firstOrder(answer, value, given, widths, names)
    : sampleSpread((values) => ({ answer: answer(values) }), given, widths, { seed: formula.id, count })
        .answer;
}

function firstOrder(
  answer: (values: Readonly<Record<string, number>>) => number,
  value: number,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  names: readonly string[],
): Spread {
  const parts = names.map((name) => {
    const width = widths[name]!;
    const up = answer({ ...given, [name]: given[name]! + width / 2 });
    const down = answer({ ...given, [name]: given[name]! - width / 2 });
    const change = Number.isFinite(up) && Number.isFinite(down) ? up - down : 0;
    return { name, variance: change * change };
  });
  const total = parts.reduce((sum, part) => sum + part.variance, 0);
  const spread = Math.sqrt(total);
  return {
    low: value - spread,
    high: value + spread,
    spread,
    shares: sharesOf(parts),
    how: 'first order',
    answered: 1,
  };
}

function sharesOf(parts: readonly { name: string; variance: number }[]): Share[] {
  const total = parts.reduce((sum, part) => sum + part.variance, 0);
  return parts
    .map(({ name, variance }) => ({ name, share: total > 0 ? variance / total : 0 }))
    .sort((a, b) => b.share - a.share);
}

/**
 * The spread of every output of `run`, by seeded sampling: the same inputs give the same interval. A number
 * used in several places is drawn once a sample, so outputs keep what ties them together. `run` may answer
 * NaN where there is no answer; those samples are counted and left out.
 */
export function sampleSpread<Out extends string>(
  run: (values: Record<string, number>) => Readonly<Record<Out, number>>,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  { seed, count }: { readonly seed: string; readonly count: number },
): Record<Out, Spread> {
  const names = uncertain(given, widths);
  const source = createRandom(seed);
  const draws: number[][] = names.map(() => []);
  const results: Readonly<Record<Out, number>>[] = [];
  for (let i = 0; i < count; i += 1) {
    const values = { ...given };
    names.forEach((name, k) => {
      const draw = source.normal();
      draws[k]!.push(draw);
      values[name] = drawn(given[name]!, widths[name]!, draw);
    });
    results.push(run(values));
  }
  const outputs = Object.keys(results[0] ?? {}) as Out[];
  // Ranked once for all outputs: a plan has a hundred of them.
  const places = draws.map(ranksOf);
  return Object.fromEntries(
    outputs.map((output) => [
      output,
      spreadOf(
        names,
        places,
        results.map((result) => result[output]),
      ),
    ]),
  ) as Record<Out, Spread>;
}

/** `places`: by input, the rank of each draw. */
function spreadOf(names: readonly string[], places: readonly number[][], values: readonly number[]): Spread {
  const kept = values.flatMap((value, i) => (Number.isFinite(value) ? [i] : []));
  const sorted = kept.map((i) => values[i]!).sort((a, b) => a - b);
  const low = quantile(sorted, 0.025);
  const high = quantile(sorted, 0.975);
  const ranks = ranksOf(kept.map((i) => values[i]!));
  const parts = names.map((name, k) => {
    const place = places[k]!;
    const correlation = correlationOf(
      kept.map((i) => place[i]!),
      ranks,
    );
    return { name, variance: Number.isFinite(correlation) ? correlation ** 2 : 0 };
  });
  return {
    low,
    high,
    spread: (high - low) / 2,
    shares: sharesOf(parts),
    how: 'sampled',
    answered: values.length === 0 ? 0 : kept.length / values.length,
  };
}

/** Linear between order statistics: Hyndman & Fan (1996), type 7. */
export function quantile(sorted: readonly number[], p: number): number {
  if (sorted.length === 0) return Number.NaN;
  const at = p * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (at - below);
}

function ranksOf(values: readonly number[]): number[] {
  const order = values.map((value, i) => [value, i] as const).sort((a, b) => a[0] - b[0]);
  const ranks = new Array<number>(values.length).fill(0);
  order.forEach(([, i], rank) => {
    ranks[i] = rank;
  });
  return ranks;
}

function correlationOf(a: readonly number[], b: readonly number[]): number {
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const ma = mean(a);
  const mb = mean(b);
  let top = 0;
  let aa = 0;
  let bb = 0;
  for (let i = 0; i < a.length; i += 1) {
    const da = a[i]! - ma;
    const db = b[i]! - mb;
    top += da * db;
    aa += da * da;
    bb += db * db;
  }
  return top / Math.sqrt(aa * bb);
}
