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
  const places = draws.map((list) => centred(ranksOf(Float64Array.from(list))));
  return Object.fromEntries(
    outputs.map((output) => [
      output,
      spreadOf(
        names,
        places,
        Float64Array.from(results, (result) => result[output]),
      ),
    ]),
  ) as Record<Out, Spread>;
}

/** Numbers less their mean, and the sum of their squares. */
interface Centred {
  readonly parts: Float64Array;
  readonly squares: number;
}

function centred(values: Float64Array): Centred {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const parts = values.map((value) => value - mean);
  return { parts, squares: parts.reduce((sum, part) => sum + part * part, 0) };
}

/** `places`: by input, the rank of each draw. */
function spreadOf(names: readonly string[], places: readonly Centred[], values: Float64Array): Spread {
  const whole = values.every(Number.isFinite);
  const kept = whole ? values : values.filter(Number.isFinite);
  const at = whole ? undefined : [...values.keys()].filter((i) => Number.isFinite(values[i]));
  const sorted = Float64Array.from(kept).sort();
  const low = quantile(sorted, 0.025);
  const high = quantile(sorted, 0.975);
  const ranks = centred(ranksOf(kept));
  const parts = names.map((name, k) => {
    const place = places[k]!;
    const correlation = correlationOf(
      at ? centred(Float64Array.from(at, (i) => place.parts[i]!)) : place,
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
export function quantile(sorted: ArrayLike<number>, p: number): number {
  if (sorted.length === 0) return Number.NaN;
  const at = p * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (at - below);
}

function ranksOf(values: Float64Array): Float64Array {
  const order = Uint32Array.from(values.keys()).sort((a, b) => values[a]! - values[b]!);
  const ranks = new Float64Array(values.length);
  order.forEach((i, rank) => {
    ranks[i] = rank;
  });
  return ranks;
}

function correlationOf(a: Centred, b: Centred): number {
  let top = 0;
  for (let i = 0; i < a.parts.length; i += 1) top += a.parts[i]! * b.parts[i]!;
  return top / Math.sqrt(a.squares * b.squares);
}
