import type { Citation } from '../../core/formula.ts';

/** Per cent of the second metal by mass, and °C. */
export type Point = readonly [percent: number, celsius: number];

/** Freezing of one solid: its liquidus and the solid that forms along it, from its hot end to where it stops. */
export interface Branch {
  readonly solid: string;
  readonly liquidus: readonly Point[];
  readonly solidus: readonly Point[];
}

export interface Diagram {
  readonly name: string;
  readonly first: string;
  readonly second: string;
  /** Compositions it is known for, per cent of the second metal. */
  readonly range: readonly [number, number];
  /** What happens to the last liquid where the branches meet. */
  readonly last?: { readonly celsius: number; readonly kind: 'eutectic' | 'peritectic' };
  readonly branches: readonly Branch[];
  /** The solid composition is known well enough for Scheil's rule. */
  readonly scheil: boolean;
  readonly source: Citation;
  readonly note?: string;
}
