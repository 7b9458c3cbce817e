import type { Channel } from './channel.ts';

/** Metal at the front, in SI; temperatures in kelvin. */
export interface Metal {
  readonly rho: number;
  readonly c: number;
  readonly latent: number;
  readonly solidus: number;
  readonly liquidus: number;
  readonly gamma: number;
  /** Contact angle in radians: above π/2 the mould is not wetted. */
  readonly theta: number;
  readonly mu: number;
  /** Share solid at which it stops flowing. */
  readonly stop: number;
  /** Temperature at the gate. */
  readonly gate: number;
}

export interface Mould {
  readonly temperature: number;
  /** Heat diffusivity √(kρc), and the coefficient between metal and mould in series with it. */
  readonly b: number;
  readonly h: number;
  /** Permeability in m²; nought lets nothing through, NaN is not known and counts as open. */
  readonly permeability: number;
  /** Way of the gas through the sand. */
  readonly thickness: number;
}

export interface Drive {
  /** Metal above the gate. */
  readonly head: number;
  /** Ambient pressure, and how far the cavity is below it. */
  readonly ambient: number;
  readonly suction: number;
  /** Other gas pressing back, such as steam, in pascal. */
  readonly gas: number;
  /** The most metal you pour, m³/s; Infinity keeps the cup full. */
  readonly flow: number;
}

/** All that a race of fronts needs: in SI, with sizes that were looked at before. */
export interface Pour {
  readonly channels: readonly Channel[];
  readonly metal: Metal;
  readonly mould: Mould;
  readonly drive: Drive;
  /** Cells along the longest way from the gate. */
  readonly cells: number;
}

export const gravity = 9.80665;
/** Viscosity of the gas in the sand: air at 20 °C; hot gas is thicker, steam thinner. */
export const gasViscosity = 1.8e-5;

/** What the mouth of a channel resists with: tension round its rim over its area. Below nought it draws in. */
export const entryResistance = ({ rim, area }: Channel, { gamma, theta }: Metal): number =>
  (-gamma * Math.cos(theta) * rim) / area;

/**
 * Pressure that is left to move metal standing at `x` in a channel: head and suction, less the weight of the
 * metal above the gate, less what the mouth and other gas resist with.
 */
export function pushAt({ metal, drive }: Pour, channel: Channel, x: number): number {
  const height = channel.foot + (channel.rise * x) / channel.length;
  const weight = metal.rho * gravity * (drive.head - height);
  return weight + drive.suction - drive.gas - entryResistance(channel, metal);
}

/** The farthest place in a channel that the pressure can hold metal at; a surge beyond it falls back. */
export function heldTo(pour: Pour, channel: Channel): number {
  const [near, far] = [pushAt(pour, channel, 0), pushAt(pour, channel, channel.length)];
  if (near <= 0) return 0;
  return far >= 0 ? channel.length : (channel.length * near) / (near - far);
}
