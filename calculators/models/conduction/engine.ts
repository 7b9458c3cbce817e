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
  /** Cells that are carried on here, from the first up to but without the last: all but what is another half's. */
  readonly own: { readonly from: number; readonly to: number };
  readonly metal: Int32Array;
  /** Newest and the one before, in turns. Only of metal: elsewhere heat is counted in kelvin and is the temperature. */
  readonly heat: readonly [Reals, Reals];
  /** Where each cell of `metal` has its heat. */
  readonly places: Int32Array;
  /** Cell n is at place n + guard. */
  readonly guard: number;
  readonly temperature: readonly [Reals, Reals];
  /** J/K of a cell. */
  readonly capacity: (cell: number) => number;
  /** The same by region, where cells are equal. */
  readonly worth?: readonly number[];
  /** One over the longest explicit step, 1/s. */
  readonly fastest: number;
  /** Brings up to date what follows temperature and share solid: once a step, not once a stage. */
  readonly refresh: (newest: 0 | 1) => void;
  /** other ← newest − back·(newest − other) + seconds·rate(newest). */
  readonly stage: (newest: 0 | 1, back: number, seconds: number) => void;
  /** Heat leaving the mesh, W. */
  readonly outflow: (newest: 0 | 1) => number;
  /** Where these cells are one half of a mesh: the way to the other. */
  readonly border?: Border;
  readonly bytes: number;
}

/** A stage in two parts, what the other half waits for before the rest, and the plane of cells handed over. */
export interface Border {
  readonly half: 'lower' | 'upper';
  readonly first: Engine['stage'];
  readonly rest: Engine['stage'];
  /** Temperatures of the plane beside the other half and heats of its metal, copied. */
  readonly warmth: (newest: 0 | 1) => Float32Array;
  readonly heats: (newest: 0 | 1) => Float32Array;
  /** Those of the other half's plane; what is taken in is not to be used again by who gave it. */
  readonly takeWarmth: (newest: 0 | 1, told: Float32Array) => void;
  readonly takeHeats: (newest: 0 | 1, told: Float32Array) => void;
}

/** Heat of all cells, J above `zero`. */
export function totalHeat(engine: Engine, newest: 0 | 1): number {
  const heat = engine.heat[newest];
  const temperature = engine.temperature[newest];
  const { places, worth } = engine;
  const { region } = engine.mesh;
  let m = 0;
  let sum = 0;
  // The rounding of a plain sum would pass for heat lost (Kahan's compensation).
  let left = 0;
  for (let cell = engine.own.from; cell < engine.own.to; cell += 1) {
    const kept = region[cell] === metalRegion ? heat[places[m++]!]! : temperature[cell + engine.guard]!;
    const add = kept * (worth ? worth[region[cell]!]! : engine.capacity(cell)) - left;
    const next = sum + add;
    left = next - sum - add;
    sum = next;
  }
  return sum;
}

/** Of every cell of its own, K. Asked many times while a part freezes: a plain loop, for a mapped copy takes thirty times as long. */
export function temperatures({ temperature, own, guard, zero }: Engine, newest: 0 | 1): Float32Array {
  const warm = temperature[newest];
  const first = own.from + guard;
  const all = new Float32Array(own.to - own.from);
  for (let n = 0; n < all.length; n += 1) all[n] = warm[n + first]! + zero;
  return all;
}
