import type { HeatCurve } from './enthalpy.ts';
import type { Mesh } from './mesh.ts';
import { metalRegion } from './substance.ts';

export type Reals = Float32Array | Float64Array;

/** Heat and temperature of every cell, and how to carry them one stage on. What marches does not ask how. */
export interface Engine {
  readonly mesh: Mesh;
  readonly curve: HeatCurve;
  /** K; heat and temperature below are above it. */
  readonly zero: number;
  readonly metal: Int32Array;
  /** Cell n is at place n + guard of the arrays. */
  readonly guard: number;
  /** Newest and the one before, in turns. Only of metal: elsewhere heat is counted in kelvin and is the temperature. */
  readonly heat: readonly [Reals, Reals];
  readonly temperature: readonly [Reals, Reals];
  /** J/K of a cell. */
  readonly capacity: (cell: number) => number;
  /** The longest explicit step, s. */
  readonly safeStep: number;
  /** Brings up to date what follows temperature and share solid: once a step, not once a stage. */
  readonly refresh: (newest: 0 | 1) => void;
  /** other ← newest − back·(newest − other) + seconds·rate(newest). */
  readonly stage: (newest: 0 | 1, back: number, seconds: number) => void;
  /** Heat leaving the mesh, W. */
  readonly outflow: (newest: 0 | 1) => number;
  readonly bytes: number;
}

/** Heat of all cells, J above `zero`. */
export function totalHeat(engine: Engine, newest: 0 | 1): number {
  const heat = engine.heat[newest];
  const temperature = engine.temperature[newest];
  const { region } = engine.mesh;
  let sum = 0;
  // The rounding of a plain sum would pass for heat lost (Kahan's compensation).
  let left = 0;
  for (let cell = 0; cell < region.length; cell += 1) {
    const own = region[cell] === metalRegion ? heat : temperature;
    const add = own[cell + engine.guard]! * engine.capacity(cell) - left;
    const next = sum + add;
    left = next - sum - add;
    sum = next;
  }
  return sum;
}

/** Of every cell, K. Asked many times while a part freezes: a plain loop, for a mapped copy takes thirty times as long. */
export function temperatures({ temperature, mesh, guard, zero }: Engine, newest: 0 | 1): Float32Array {
  const own = temperature[newest];
  const all = new Float32Array(mesh.region.length);
  for (let cell = 0; cell < all.length; cell += 1) all[cell] = own[cell + guard]! + zero;
  return all;
}
