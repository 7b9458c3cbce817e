import { studentT } from '../models/student.ts';
import type { Pour } from './record.ts';

/** A number of your own with its 95 % interval. */
export interface Own {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
  /** How many more like these until the interval is half as wide; undefined when too few to say. */
  readonly toHalve: number | undefined;
}

/** Fewer than these say nothing. */
export const fewest = { constant: 3, losses: 3, filling: 12 } as const;

/**
 * Own mould constant from times to freeze, t = C M²: least squares of ln(t / M²), a share of scatter, interval by
 * Student's t. SI: s/m².
 */
export function ownConstant(
  points: readonly { readonly modulus: number; readonly froze: number }[],
): Own | undefined {
  const logs = points
    .filter(({ modulus, froze }) => modulus > 0 && froze > 0)
    .map(({ modulus, froze }) => Math.log(froze / modulus ** 2));
  const mean = meanOf(logs, fewest.constant);
  return mean && { ...mean, value: Math.exp(mean.value), low: Math.exp(mean.low), high: Math.exp(mean.high) };
}

/** Own melting and pouring loss, a share of the charge: what was weighed out and did not come back. */
export function ownLoss(shares: readonly number[]): Own | undefined {
  return meanOf(shares.filter(Number.isFinite), fewest.losses);
}

function meanOf(values: readonly number[], least: number): Own | undefined {
  const n = values.length;
  if (n < least) return undefined;
  const value = values.reduce((sum, x) => sum + x, 0) / n;
  const scatter = Math.sqrt(values.reduce((sum, x) => sum + (x - value) ** 2, 0) / (n - 1));
  const half = (studentT(n - 1) * scatter) / Math.sqrt(n);
  let more = 1;
  while (studentT(n + more - 1) / Math.sqrt(n + more) > studentT(n - 1) / Math.sqrt(n) / 2) more += 1;
  return { value, low: value - half, high: value + half, count: n, toHalve: more };
}

/** One section of one pour: how far the plan thought it was from stopping, and whether it filled. */
export interface Trial {
  readonly margin: number;
  readonly filled: boolean;
}

export interface Filling extends Own {
  /** How sharply filling turns to not filling, per e-fold of margin. */
  readonly slope: number;
  /** The chance that a section of this margin fills. */
  readonly chance: (margin: number) => number;
  /** The margin of the pour that would narrow the interval most. */
  readonly teaches: number;
}

/** Log-likelihood at slope b and middle x₀ with Firth's penalty, ½ ln det of the information (Firth, Biometrika 80, 1993). */
function likelihood(xs: readonly number[], ys: readonly boolean[], b: number, x0: number): number {
  let sum = 0;
  let [i00, i01, i11] = [0, 0, 0];
  for (let i = 0; i < xs.length; i += 1) {
    const eta = b * (xs[i]! - x0);
    sum -= Math.log1p(Math.exp(ys[i]! ? -eta : eta));
    const p = 1 / (1 + Math.exp(-eta));
    const w = p * (1 - p);
    i00 += w;
    i01 += w * xs[i]!;
    i11 += w * xs[i]! ** 2;
  }
  return sum + 0.5 * Math.log(Math.max(1e-300, i00 * i11 - i01 * i01));
}

/** The largest of a function of one number with one peak, by golden sections. */
function peak(f: (x: number) => number, from: number, to: number): readonly [x: number, value: number] {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  let [c, d] = [b - golden * (b - a), a + golden * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let i = 0; i < 60 && b - a > 1e-7 * (1 + Math.abs(a)); i += 1) {
    if (fc > fd) {
      [b, d, fd] = [d, c, fc];
      c = b - golden * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + golden * (b - a);
      fd = f(d);
    }
  }
  return fc > fd ? [c, fc] : [d, fd];
}

/** 95 % of χ² with one degree of freedom, halved. */
const drop = 3.841459 / 2;
const widest = 6;

/**
 * Own fill factor: the margin at which half the sections fill. Logistic in the logarithm of the margin, penalised
 * so that a log in which everything filled above one margin and nothing below still has an answer; the interval is
 * where the profile of the likelihood has not fallen by more than chance allows.
 */
export function ownFilling(trials: readonly Trial[]): Filling | undefined {
  const used = trials.filter(({ margin }) => margin > 0 && Number.isFinite(margin));
  const xs = used.map(({ margin }) => Math.log(margin));
  const ys = used.map(({ filled }) => filled);
  if (used.length < fewest.filling || ys.every(Boolean) || !ys.some(Boolean)) return undefined;
  const middle = xs.reduce((sum, x) => sum + x, 0) / xs.length;
  const slopeAt = (x0: number): readonly [number, number] => {
    const [logB, value] = peak((s) => likelihood(xs, ys, Math.exp(s), x0), -3, 4.5);
    return [Math.exp(logB), value];
  };
  const profile = (x0: number): number => slopeAt(x0)[1];
  const [best, top] = peak(profile, middle - widest, middle + widest);
  const [slope] = slopeAt(best);
  const end = (direction: 1 | -1): number => {
    let [inside, outside] = [best, best + direction * 0.05];
    while (profile(outside) > top - drop) {
      if (Math.abs(outside - best) > widest) return direction * Infinity;
      inside = outside;
      outside = best + 1.6 * (outside - best);
    }
    for (let i = 0; i < 40; i += 1) {
      const half = (inside + outside) / 2;
      if (profile(half) > top - drop) inside = half;
      else outside = half;
    }
    return inside;
  };
  const [low, high] = [end(-1), end(1)];
  return {
    value: Math.exp(best),
    low: Math.exp(low),
    high: Math.exp(high),
    count: used.length,
    // Four times as many for half the width.
    toHalve: 3 * used.length,
    slope,
    chance: (margin) => 1 / (1 + Math.exp(-slope * (Math.log(margin) - best))),
    teaches: Math.exp(bestNext(xs, slope, best)),
  };
}

/** Variance of x₀ = −a / b by the delta method, from the information of these places. */
function varianceOf(places: readonly number[], b: number, x0: number): number {
  let [i00, i01, i11] = [0, 0, 0];
  for (const x of places) {
    const p = 1 / (1 + Math.exp(-b * (x - x0)));
    const w = p * (1 - p);
    i00 += w;
    i01 += w * x;
    i11 += w * x * x;
  }
  const det = i00 * i11 - i01 * i01;
  return (i11 - 2 * x0 * i01 + x0 * x0 * i00) / (det * b * b);
}

/** Where one more pour narrows the middle most, among margins from a fifth to five times it. */
function bestNext(xs: readonly number[], b: number, x0: number): number {
  let best = x0;
  let least = Infinity;
  for (let step = -40; step <= 40; step += 1) {
    const x = x0 + (step / 40) * Math.log(5);
    const variance = varianceOf([...xs, x], b, x0);
    if (variance < least) {
      least = variance;
      best = x;
    }
  }
  return best;
}

/** The metal a pour's plan names; the plan's usual one where it names none. */
export const metalOf = ({ plan }: Pour): string =>
  typeof plan.inputs['metal'] === 'string' ? plan.inputs['metal'] : 'silicon-bronze';

/** What the log has to learn from. Mould constants belong to one metal: give it pours of one. */
export function pointsOf(pours: readonly Pour[]) {
  return {
    timed: pours.flatMap(({ found }) =>
      found.sections.flatMap(({ modulus, froze }) =>
        modulus !== undefined && froze !== undefined ? [{ modulus, froze }] : [],
      ),
    ),
    trials: pours.flatMap(({ found }) =>
      found.sections.flatMap(({ margin, filled }): Trial[] =>
        margin !== undefined && filled !== 'not looked at' ? [{ margin, filled: filled === 'full' }] : [],
      ),
    ),
    losses: pours.flatMap(({ did, found }) =>
      did.charge !== undefined && did.charge > 0 && found.casting !== undefined && found.rest !== undefined
        ? [1 - (found.casting + found.rest) / did.charge]
        : [],
    ),
  };
}
