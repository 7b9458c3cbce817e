import type { Formula, SymbolSpec } from './formula.ts';
import { drawOf } from './interval.ts';
import { createRandom } from './random.ts';
import { solve } from './solve.ts';
import { solverFor, type Solver } from './solver.ts';
import { toSI } from './units.ts';

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
  return atOneGo(formulaSpreadInSteps(formula, given, widths, find, count));
}

/** The same with a pause after each sample, for whoever has to listen in between. */
export function* formulaSpreadInSteps(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  find: string,
  count = 2000,
): Generator<undefined, Spread | undefined, void> {
  const names = uncertain(given, widths);
  const centre = solve(formula, given, find);
  if (names.length === 0 || !centre.ok) return undefined;
  const solver = solverFor(formula, find);
  const answer = centre.rearranged ? solver : answersNear(solver, formula.symbols[find]!, centre.roots);
  const narrow = names.every((name) => widths[name]! <= firstOrderUpTo * Math.abs(given[name]!));
  if (narrow) return firstOrder(answer, centre.value, given, widths, names);
  const sampled = sampleInSteps((values) => ({ answer: answer(values) }), given, widths, {
    seed: formula.id,
    count,
  });
  return (yield* sampled).answer;
}

function atOneGo<T>(steps: Generator<undefined, T, void>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/**
 * What an equation that cannot be rearranged gives for numbers not far from where it has these roots. Where it
 * has one, it is sought from there, which costs a twentieth of looking through the whole range;
 * what is found past the range, or not at all, is looked for again in full.
 */
function answersNear(
  solver: Solver,
  { range, unit }: SymbolSpec,
  [root, ...others]: readonly number[],
): (values: Readonly<Record<string, number>>) => number {
  if (root === undefined || others.length > 0 || !range) return (values) => solver(values);
  const [low, high] = [toSI(range[0], unit), toSI(range[1], unit)];
  return (values) => {
    const value = solver(values, root);
    return value >= low && value <= high ? value : solver(values);
  };
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
 * NaN where there is no answer; those samples are counted and left out. It must not keep the numbers it is
 * handed: they change for the next sample.
 */
export function sampleSpread<Out extends string>(
  run: (values: Readonly<Record<string, number>>) => Readonly<Record<Out, number>>,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  how: { readonly seed: string; readonly count: number },
): Record<Out, Spread> {
  return atOneGo(sampleInSteps(run, given, widths, how));
}

/** The same with a pause after each sample. */
function* sampleInSteps<Out extends string>(
  run: (values: Readonly<Record<string, number>>) => Readonly<Record<Out, number>>,
  given: Readonly<Record<string, number>>,
  widths: Widths,
  { seed, count }: { readonly seed: string; readonly count: number },
): Generator<undefined, Record<Out, Spread>, void> {
  const values = { ...given };
  const results: Readonly<Record<Out, number>>[] = [];
  const drawing = startDrawing(given, widths, { seed, count });
  for (let i = 0; i < count; i += 1) {
    drawing.next((name, value) => {
      values[name] = value;
    });
    results.push(run(values));
    yield undefined;
  }
  const outputs = Object.keys(results[0] ?? {}) as Out[];
  const spread = drawing.done();
  return Object.fromEntries(
    outputs.map((output) => [output, spread(Float64Array.from(results, (result) => result[output]))]),
  ) as Record<Out, Spread>;
}

/** Draws of all uncertain numbers, a sample at a time; afterwards the spread of any result worked from them. */
export interface Drawing {
  readonly next: (take: (name: string, value: number) => void) => void;
  /** To be asked once, after the last sample: what turns a result of each sample into its spread. */
  readonly done: () => (results: Float64Array) => Spread;
}

export function startDrawing(
  given: Readonly<Record<string, number>>,
  widths: Widths,
  { seed, count }: { readonly seed: string; readonly count: number },
): Drawing {
  const names = uncertain(given, widths);
  const source = createRandom(seed);
  const draws = names.map((name) => ({
    name,
    of: drawOf(given[name]!, widths[name]!),
    normals: new Float64Array(count),
  }));
  let sample = 0;
  return {
    next: (take) => {
      for (const { name, of, normals } of draws) {
        const normal = source.normal();
        normals[sample] = normal;
        take(name, of(normal));
      }
      sample += 1;
    },
    done: () => {
      // Ranked once for all outputs: a plan has a hundred of them.
      const places = draws.map(({ normals }) => centred(ranked(normals).ranks));
      return (results) => spreadOf(names, places, results);
    },
  };
}

/** Numbers less their mean, and the sum of their squares. */
interface Centred {
  readonly parts: Float64Array;
  readonly squares: number;
}

function centred(values: Float64Array): Centred {
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  const parts = new Float64Array(values.length);
  let squares = 0;
  for (let i = 0; i < parts.length; i += 1) {
    const part = values[i]! - mean;
    parts[i] = part;
    squares += part * part;
  }
  return { parts, squares };
}

/** `places`: by input, the rank of each draw. */
function spreadOf(names: readonly string[], places: readonly Centred[], values: Float64Array): Spread {
  const answered = answeredIn(values);
  const whole = answered.length === values.length;
  const { sorted, ranks } = ranked(whole ? values : Float64Array.from(answered, (at) => values[at]!));
  const low = quantile(sorted, 0.025);
  const high = quantile(sorted, 0.975);
  const { parts: moved, squares } = centred(ranks);
  const moves = whole ? moved : spreadOut(moved, answered, values.length);
  // One that never moves comes from no input.
  const still = !(squares > 0);
  // As the moves sum to nothing, the mean of the draws that were kept need not be taken off them.
  const sums = still ? [] : productsOf(places, moves);
  const parts = names.map((name, k) => {
    const place = places[k]!;
    const both = still ? 0 : squares * (whole ? place.squares : squaresAt(place.parts, answered));
    return { name, variance: both > 0 ? sums[k]! ** 2 / both : 0 };
  });
  return {
    low,
    high,
    spread: (high - low) / 2,
    shares: sharesOf(parts),
    how: 'sampled',
    answered: values.length === 0 ? 0 : answered.length / values.length,
  };
}

/** The samples that have an answer. */
function answeredIn(values: Float64Array): Int32Array {
  const all = new Int32Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i += 1) if (Number.isFinite(values[i])) all[count++] = i;
  return all.subarray(0, count);
}

/** Back at the samples they come from, nothing at those without an answer. */
function spreadOut(parts: Float64Array, answered: Int32Array, count: number): Float64Array {
  const all = new Float64Array(count);
  for (let i = 0; i < answered.length; i += 1) all[answered[i]!] = parts[i]!;
  return all;
}

/** The squares about their mean of the parts at these samples. */
function squaresAt(parts: Float64Array, samples: Int32Array): number {
  let [sum, squares] = [0, 0];
  for (const sample of samples) {
    const part = parts[sample]!;
    sum += part;
    squares += part * part;
  }
  return squares - (sum * sum) / samples.length;
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

/** Values in rising order, and the place of each among them; equal values share the mean of their places. */
interface Ranked {
  readonly sorted: Float64Array;
  readonly ranks: Float64Array;
}

function ranked(values: Float64Array): Ranked {
  const { length } = values;
  const order = risingOrder(values);
  const sorted = new Float64Array(length);
  for (let i = 0; i < length; i += 1) sorted[i] = values[order[i]!]!;
  const ranks = new Float64Array(length);
  for (let from = 0, to = 1; from < length; from = to, to += 1) {
    while (to < length && sorted[to] === sorted[from]) to += 1;
    const mean = (from + to - 1) / 2;
    for (let i = from; i < to; i += 1) ranks[order[i]!] = mean;
  }
  return { sorted, ranks };
}

/** A drawer with more in it is put in order as a list: one by one would take too long. */
const crowded = 24;

/** Which value comes first, which next: through even drawers, as many as values, so that few lie in each. */
function risingOrder(values: Float64Array): Int32Array {
  const { length } = values;
  const order = new Int32Array(length);
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < length; i += 1) {
    const value = values[i]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const perDrawer = (length - 1) / (most - least);
  // All the same, or nearer together or farther apart than can be told: then all in one drawer.
  const scale = Number.isFinite(perDrawer) ? perDrawer : 0;
  const drawers = new Int32Array(length);
  const ends = new Int32Array(length + 1);
  for (let i = 0; i < length; i += 1) {
    const drawer = Math.floor((values[i]! - least) * scale);
    drawers[i] = drawer;
    ends[drawer + 1]! += 1;
  }
  for (let k = 1; k <= length; k += 1) ends[k]! += ends[k - 1]!;
  // Each drawer's beginning moves on to its end while it is filled.
  for (let i = 0; i < length; i += 1) order[ends[drawers[i]!]!++] = i;
  for (let k = 0, from = 0; from < length; k += 1) {
    const to = ends[k]!;
    if (to - from > crowded) order.subarray(from, to).sort((i, j) => values[i]! - values[j]!);
    else if (to - from > 1) putInOrder(order, from, to, values);
    from = to;
  }
  return order;
}

function putInOrder(order: Int32Array, from: number, to: number, values: Float64Array): void {
  for (let i = from + 1; i < to; i += 1) {
    const one = order[i]!;
    const value = values[one]!;
    let at = i;
    while (at > from && values[order[at - 1]!]! > value) {
      order[at] = order[at - 1]!;
      at -= 1;
    }
    order[at] = one;
  }
}

/** The sum of products of each list with one other, four lists at a pass: a plan asks for seven thousand. */
function productsOf(lists: readonly Centred[], other: Float64Array): Float64Array {
  const sums = new Float64Array(lists.length);
  for (let k = 0; k < lists.length; k += 4) {
    const a = lists[k]!.parts;
    const b = lists[k + 1]?.parts ?? a;
    const c = lists[k + 2]?.parts ?? a;
    const d = lists[k + 3]?.parts ?? a;
    let [ofA, ofB, ofC, ofD] = [0, 0, 0, 0];
    for (let i = 0; i < other.length; i += 1) {
      const factor = other[i]!;
      ofA += a[i]! * factor;
      ofB += b[i]! * factor;
      ofC += c[i]! * factor;
      ofD += d[i]! * factor;
    }
    sums[k] = ofA;
    if (k + 1 < sums.length) sums[k + 1] = ofB;
    if (k + 2 < sums.length) sums[k + 2] = ofC;
    if (k + 3 < sums.length) sums[k + 3] = ofD;
  }
  return sums;
}
