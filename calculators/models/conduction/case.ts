import type { Mesh, Place } from './mesh.ts';
import type { Outside, Side } from './outside.ts';
import type { Metal, Stuff } from './substance.ts';

/** One casting to freeze. SI units, temperatures K. */
export interface Case {
  readonly metal: Metal;
  /** Regions 1, 2, … of the mesh. */
  readonly others: readonly Stuff[];
  readonly mesh: Mesh;
  /** By region, or at each place. */
  readonly start: readonly number[] | ((place: Place, region: number) => number);
  /** Left out: no heat leaves the mesh. */
  readonly outside?: Outside;
  /** The sides it is at; the others are planes of symmetry. */
  readonly sides?: readonly Side[];
  readonly pace?: Pace;
  /** Stop here even when not all is solid, s. */
  readonly until?: number;
  readonly probes?: readonly (readonly number[])[];
}

/** How steps grow: each is that part of the time so far, but no shorter and no longer than these, s. */
export interface Pace {
  readonly growth: number;
  readonly shortest: number;
  readonly longest: number;
}
