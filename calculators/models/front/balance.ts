import { lossAt } from './friction.ts';
import { pocketPressure, type Pocket } from './gas.ts';
import type { Channel } from './channel.ts';

/** A channel with metal in it, as the balance sees it. Flows are of all channels alike together, m³/s. */
export interface Wet {
  readonly channel: Channel;
  /** The fronts fed through it. */
  readonly feeds: readonly number[];
  /** Length filled. */
  readonly x: number;
  /** Flow through it in the step before. */
  readonly before: number;
  /** Heads of its own speed lost besides entry, bends and friction. */
  readonly heads: number;
}

export interface Tip {
  /** Absolute pressure that would hold the front still if nothing moved. */
  readonly drive: number;
  readonly pocket: Pocket;
  readonly pressure: number;
}

export interface Step {
  readonly rho: number;
  readonly mu: number;
  /** Absolute pressure the gas leaves to. */
  readonly outside: number;
  readonly dt: number;
  /** The most the pour gives. */
  readonly most: number;
}

/** Solves the symmetric system H·d = r of the free fronts by elimination, in place. */
function eliminate(H: number[][], r: number[]): void {
  const n = r.length;
  for (let k = 0; k < n; k += 1) {
    const pivot = H[k]!;
    for (let i = k + 1; i < n; i += 1) {
      const row = H[i]!;
      const factor = row[k]! / pivot[k]!;
      if (factor === 0) continue;
      for (let j = k; j < n; j += 1) row[j] = row[j]! - factor * pivot[j]!;
      r[i] = r[i]! - factor * r[k]!;
    }
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    let value = r[k]!;
    for (let j = k + 1; j < n; j += 1) value -= H[k]![j]! * r[j]!;
    r[k] = value / H[k]![k]!;
  }
}

/**
 * The flow into each front over one step, none below nought. Along every way from the gate: the pressure at hand
 * equals what speeds the metal up (ρ·dv/dt over the filled length), entry, bends and friction in each channel,
 * the velocity head at the front and the gas ahead of it. Every term rises with the flow, so this is the lowest
 * point of a convex function: one answer, found by Newton's method over the fronts that move. A front whose
 * mouth holds it back stands at nought. When the pour gives no more, the cup runs down and the pressure with it.
 */
export function balance(
  wet: readonly Wet[],
  tips: readonly Tip[],
  step: Step,
  guess: readonly number[],
): number[] {
  const n = tips.length;
  let scale = 1;
  for (const { drive, pressure } of tips) scale = Math.max(scale, drive - pressure);
  const enough = (1e-8 * scale) ** 2;
  let Q = guess.map((q) => Math.max(0, q));
  let left = tips.map(() => 0);
  let miss = unbalanced(wet, tips, step, scale, Q, left);
  for (let pass = 0; pass < 60 && miss > enough; pass += 1) {
    const H = tips.map(() => tips.map(() => 0));
    unbalanced(wet, tips, step, scale, Q, left, H);
    const free: number[] = [];
    for (let i = 0; i < n; i += 1) if (Q[i]! > 0 || left[i]! > 0) free.push(i);
    const part = free.map((i) => free.map((j) => H[i]![j]! * (i === j ? 1 + 1e-12 : 1)));
    const d = free.map((i) => left[i]!);
    eliminate(part, d);
    for (let share = 1; ; share /= 2) {
      const next = [...Q];
      for (const [k, i] of free.entries()) next[i] = Math.max(0, Q[i]! + share * d[k]!);
      const then = tips.map(() => 0);
      const closer = unbalanced(wet, tips, step, scale, next, then);
      if (closer < miss || share < 1e-4) {
        [Q, left, miss] = [next, then, closer];
        break;
      }
    }
  }
  return Q;
}

/**
 * What is left over of each front's pressure at these flows, into `left`, and how the fronts brake each other,
 * added to `H`. Returns the sum of squares of what is left over, a front that stands counting only if it would go.
 */
function unbalanced(
  wet: readonly Wet[],
  tips: readonly Tip[],
  { rho, mu, dt, outside, most }: Step,
  scale: number,
  Q: readonly number[],
  left: number[],
  H?: number[][],
): number {
  let total = 0;
  for (let i = 0; i < tips.length; i += 1) {
    const { drive, pocket, pressure } = tips[i]!;
    const [p, slope] = pocketPressure(pocket, pressure, outside, Q[i]!, dt);
    left[i] = drive - p;
    if (H) H[i]![i] = H[i]![i]! + slope;
    total += Q[i]!;
  }
  for (const { channel, feeds, x, before, heads } of wet) {
    let flow = 0;
    for (const i of feeds) flow += Q[i]!;
    const area = channel.alike * channel.area;
    const [loss, slope] = lossAt(channel, rho, mu, x, flow / area, heads);
    const inertia = (rho * x) / (area * dt);
    take(feeds, loss + inertia * (flow - before), slope / area + inertia, left, H);
  }
  if (total > most) {
    const stiff = (1000 * scale) / most;
    take([...Q.keys()], stiff * (total - most), stiff, left, H);
  }
  let sum = 0;
  for (let i = 0; i < tips.length; i += 1) {
    const miss = Q[i]! > 0 ? left[i]! : Math.max(0, left[i]!);
    sum += miss * miss;
  }
  return sum;
}

/** Takes a loss that rises with the flow off all the fronts it is shared by. */
function take(fronts: readonly number[], loss: number, slope: number, left: number[], H?: number[][]): void {
  for (const i of fronts) {
    left[i] = left[i]! - loss;
    if (!H) continue;
    const row = H[i]!;
    for (const j of fronts) row[j] = row[j]! + slope;
  }
}
