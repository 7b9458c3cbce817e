import { metalRegion } from './substance.ts';

/**
 * The one loop that takes the time in three dimensions, over equal cells in single precision, behind a face
 * so narrow that compiled code can stand in for it. Whoever fills the arrays fills those of either.
 *
 * A cell's neighbours are 1, nx and nx·ny places away. Where there is none the conductance is nought and
 * whatever number stands there does not count; `guard` places before the first cell and after the last
 * keep such reads inside the arrays. Region 0 is the metal.
 */
export interface VoxelKernel {
  readonly name: string;
  readonly guard: number;
  /** Of metal only, where `heatPlaces` says: elsewhere heat is counted in kelvin and is the temperature. */
  readonly heat: readonly [Float32Array, Float32Array];
  readonly temperature: readonly [Float32Array, Float32Array];
  /** To the next cell along x, y, z, W/K. */
  readonly toNext: readonly [Float32Array, Float32Array, Float32Array];
  /** Without guard. */
  readonly region: Uint8Array;
  readonly describe: (substances: Substances) => void;
  /**
   * Once, when the conductances are filled: `alike` is what lies between two cells of each region. Where all around
   * a cell is alike and does not melt that stays so, and a kernel need not look its conductances up.
   */
  readonly settle: (alike: readonly number[]) => void;
  /**
   * other ← newest − back·(newest − other) + seconds·rate(newest), and the temperatures that go with it; of the cells
   * from a whole multiple of four up to but without another, or of all. Up to three cells behind the last
   * may come out as anything.
   */
  readonly stage: (newest: 0 | 1, back: number, seconds: number, from?: number, to?: number) => void;
  readonly bytes: number;
}

export interface Substances {
  /** Kelvin of heat a cell gains from a joule, by region; at most `mostRegions`. */
  readonly perHeat: readonly number[];
  readonly solidus: number;
  /** Heat at the liquidus. */
  readonly full: number;
  readonly inRange: number;
  readonly inLiquid: number;
}

/** For cells of these regions, which it copies. */
export type KernelMaker = (nx: number, ny: number, nz: number, region: Uint8Array) => VoxelKernel;

export const mostRegions = 8;

/** Places a plane of cells takes, in whole groups of four. */
export const guardFor = (nx: number, ny: number): number => Math.ceil((nx * ny) / 4) * 4;

/** How many fours of cells hold metal, of those before a whole multiple of four, or of all. */
export function metalFours(region: Uint8Array, before = region.length): number {
  let fours = 0;
  for (let cell = 0; cell < before; cell += 1)
    if (region[cell] === metalRegion) {
      fours += 1;
      cell |= 3;
    }
  return fours;
}

/** Where each of the cells of metal has its heat: fours of cells with metal among them have theirs one after another. */
export function heatPlaces(metal: Int32Array): Int32Array {
  const places = new Int32Array(metal.length);
  let place = -4;
  for (let m = 0; m < metal.length; m += 1) {
    const cell = metal[m]!;
    if (m === 0 || cell >> 2 !== metal[m - 1]! >> 2) place += 4;
    places[m] = place + (cell & 3);
  }
  return places;
}

/** The reference: what compiled kernels are compared with, and what runs where they cannot. */
export function plainKernel(nx: number, ny: number, nz: number, given: Uint8Array): VoxelKernel {
  const count = nx * ny * nz;
  const plane = nx * ny;
  const guard = guardFor(nx, ny);
  const room = (): Float32Array => new Float32Array(count + 2 * guard);
  const region = given.slice();
  const heats = 4 * metalFours(region);
  const heat = [new Float32Array(heats), new Float32Array(heats)] as const;
  const temperature = [room(), room()] as const;
  const toNext = [room(), room(), room()] as const;
  const perHeat = new Float64Array(mostRegions);
  let solidus = 0;
  let full = 0;
  let inRange = 0;
  let inLiquid = 0;

  function describe(substances: Substances): void {
    perHeat.set(substances.perHeat);
    ({ solidus, full, inRange, inLiquid } = substances);
  }

  function stage(newest: 0 | 1, back: number, seconds: number, from = 0, to = count): void {
    const now = heat[newest];
    const next = heat[newest === 0 ? 1 : 0];
    const t = temperature[newest];
    const tNext = temperature[newest === 0 ? 1 : 0];
    const [east, north, up] = toNext;
    let place = 4 * metalFours(region, from) - 4;
    let four = -1;
    for (let cell = from; cell < to; cell += 1) {
      const at = cell + guard;
      const here = t[at]!;
      const inflow =
        east[at - 1]! * (t[at - 1]! - here) +
        east[at]! * (t[at + 1]! - here) +
        north[at - nx]! * (t[at - nx]! - here) +
        north[at]! * (t[at + nx]! - here) +
        up[at - plane]! * (t[at - plane]! - here) +
        up[at]! * (t[at + plane]! - here);
      const what = region[cell]!;
      const gain = seconds * perHeat[what]! * inflow;
      if (what !== metalRegion) {
        tNext[at] = here - back * (here - tNext[at]!) + gain;
        continue;
      }
      if (cell >> 2 !== four) {
        four = cell >> 2;
        place += 4;
      }
      const n = place + (cell & 3);
      const e = now[n]!;
      const h = e - back * (e - next[n]!) + gain;
      next[n] = h;
      tNext[at] =
        h <= solidus
          ? h
          : solidus + inRange * (Math.min(h, full) - solidus) + inLiquid * Math.max(h - full, 0);
    }
  }
  const bytes = 4 * 5 * (count + 2 * guard) + 4 * 2 * heats + count;
  return {
    name: 'plain',
    guard,
    heat,
    temperature,
    toNext,
    region,
    describe,
    settle: () => undefined,
    stage,
    bytes,
  };
}
