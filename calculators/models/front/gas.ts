import type { Channel } from './channel.ts';
import { gasViscosity, pushAt, type Pour } from './pour.ts';

/**
 * How readily gas leaves a pocket through the sand and its vents, in m³/s for each pascal. Through the sand by
 * Darcy, straight over the way through it, and spreading as from a disc of the same surface, 4·√(A/π), which is
 * what a small place does (Carslaw & Jaeger §8.2, shape factor of a disc on a half-space). A vent is a round
 * hole as long as the sand is thick, by Hagen and Poiseuille.
 */
function conductanceOf(pour: Pour, surface: number, vents: number): number {
  const { permeability: K, thickness } = pour.mould;
  if (Number.isNaN(K)) return Number.POSITIVE_INFINITY;
  const spread = surface > 0 ? surface / thickness + 4 * Math.sqrt(surface / Math.PI) : 0;
  return ((K > 0 ? K * spread : 0) + vents / thickness) / gasViscosity;
}

export interface Pocket {
  readonly volume: number;
  readonly conductance: number;
}

/** Volume, surface and vents of the empty channels after each channel, all alike together. */
export interface Beyond {
  readonly volume: number;
  readonly surface: number;
  /** Sum of π·d⁴/128. */
  readonly vents: number;
}

export function beyondEach({ channels }: Pour): Beyond[] {
  const wholeOf = (c: number): Beyond => {
    const { children, length, alike, area, rim, vent } = channels[c]!;
    const own = {
      volume: alike * area * length,
      // Face of the blind end included: something is left to leave by until the last.
      surface: alike * (rim * length + (children.length === 0 ? area : 0)),
      vents: (alike * Math.PI * vent ** 4) / 128,
    };
    return children.map(wholeOf).reduce(joined, own);
  };
  return channels.map(({ children }) => children.map(wholeOf).reduce(joined, nothing));
}

const nothing: Beyond = { volume: 0, surface: 0, vents: 0 };
const joined = (a: Beyond, b: Beyond): Beyond => ({
  volume: a.volume + b.volume,
  surface: a.surface + b.surface,
  vents: a.vents + b.vents,
});

/** The empty cavity ahead of a front standing at `x`: the rest of its channel and everything after it. */
export function pocketAhead(pour: Pour, channel: Channel, after: Beyond, x: number): Pocket {
  const { alike, area, rim, length, vent, children } = channel;
  const rest = length - x;
  const face = children.length === 0 ? area : 0;
  const surface = rim * rest + face + after.surface / alike;
  const vents = (Math.PI * vent ** 4) / 128 + after.vents / alike;
  return {
    volume: alike * area * rest + after.volume,
    conductance: alike * conductanceOf(pour, surface, vents),
  };
}

/**
 * Pressure of a pocket after `dt` in which metal pushes in at flow `Q`, and its slope in Q: what is in it at
 * `before` is squeezed at one temperature into V − Q·dt, while part leaves to where the pressure is `outside`.
 * Implicit in time, so it holds from the airtight pocket to the open one; it always rises with Q.
 */
export function pocketPressure(
  { volume, conductance }: Pocket,
  before: number,
  outside: number,
  Q: number,
  dt: number,
): readonly [pressure: number, slope: number] {
  if (conductance === Number.POSITIVE_INFINITY) return [outside, 0];
  const a = conductance * dt;
  const B = Math.max(volume - Q * dt, 1e-6 * volume) - a * outside;
  const C = before * volume;
  const root = Math.sqrt(B * B + 4 * a * C);
  if (root === 0) return [before, 0];
  const pressure = B > 0 ? (2 * C) / (B + root) : (root - B) / (2 * a);
  return [pressure, (dt * pressure) / root];
}

/**
 * Where metal that ran on into an airtight pocket comes to rest: the place at which the gas, squeezed into what is
 * left, presses as hard as the metal. Where gas can leave, where it stands.
 */
export function springsBackTo(pour: Pour, channel: Channel, after: Beyond, x: number, gas: number): number {
  const { volume, conductance } = pocketAhead(pour, channel, after, x);
  if (conductance > 0) return x;
  const outside = pour.drive.ambient - pour.drive.suction;
  const net = (at: number): number =>
    pushAt(pour, channel, at) + outside - (gas * volume) / pocketAhead(pour, channel, after, at).volume;
  if (net(x) >= 0) return x;
  let [low, high] = [0, x];
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (net(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}
