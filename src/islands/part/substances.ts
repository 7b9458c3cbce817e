import type { Metal, Stuff } from '../../../calculators/models/conduction/substance.ts';

/** Numbers of a metal that freezing needs, SI. */
export type FreezingMetal = Metal & {
  /** K: as it fills the mould, unless said otherwise. */
  readonly pour: number;
};

/** A mould by its numbers, SI. */
export interface FreezingMould extends Stuff {
  readonly id: string;
  /** The hottest it may be, K. */
  readonly limit: number;
}
