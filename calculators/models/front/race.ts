/**
 * How a front ended: its channel `filled`; the metal `froze`; the pressure `held` it no farther; `gas` ahead of
 * it kept it back until it froze; it `waited` at the mouth, others taking the metal, until it froze; or the metal
 * `never` came.
 */
export type Ending = 'filled' | 'froze' | 'held' | 'gas' | 'waited' | 'never';

export interface Front {
  readonly ended: Ending;
  /** Length of the channel filled, m. */
  readonly reached: number;
  /** When metal first stood at its mouth and when the front came to its end, s; NaN where it never came. */
  readonly entered: number;
  readonly time: number;
  /** At the front when it ended: temperature in kelvin, share solid, speed in m/s. */
  readonly temperature: number;
  readonly solid: number;
  readonly speed: number;
  /** Heat the front had to give before it stops, over what it gave: at the end of a full channel, one or more. */
  readonly spare: number;
  /** Pressure at hand at its end, with the mouth's resistance not yet taken off, and that resistance, Pa. */
  readonly pressure: number;
  readonly resists: number;
}

export interface Moment {
  readonly time: number;
  /** By channel: length filled, temperature and speed of the front. */
  readonly reached: readonly number[];
  readonly temperature: readonly number[];
  readonly speed: readonly number[];
}

export interface Cell {
  /** Middle of the parcel, from the channel's near end. */
  readonly at: number;
  readonly length: number;
  readonly temperature: number;
  readonly solid: number;
}

export interface Race {
  readonly fronts: readonly Front[];
  readonly time: number;
  readonly steps: number;
  /** Metal through the gate, and metal in the channels, m³. */
  readonly poured: number;
  readonly held: number;
  /** Heat above the liquidus through the gate, still in the metal, and given to the mould, J. */
  readonly brought: number;
  readonly kept: number;
  readonly given: number;
  /** Only when asked for. */
  readonly history: readonly Moment[];
  /** Metal in each channel at the end, from the gate outwards. */
  readonly cells: readonly (readonly Cell[])[];
}
