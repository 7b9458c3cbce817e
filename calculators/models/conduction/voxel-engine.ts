import type { Case } from './case.ts';
import type { Border, Engine } from './engine.ts';
import { heatCurve } from './enthalpy.ts';
import { startOf, wholeZero } from './exact-engine.ts';
import { metalCells, sizeOf, type Mesh } from './mesh.ts';
import { noSkin, openSkin, outflowOf, skinOf } from './outside.ts';
import { meshOf, type Slab } from './slab.ts';
import { metalRegion } from './substance.ts';
import { heatPlaces, plainKernel, type KernelMaker, type VoxelKernel } from './voxel-kernel.ts';
import { followMetal } from './voxel-metal.ts';

/**
 * Single precision on equal cubes, through a kernel. Share solid falls evenly over the range; the lever rule
 * is left to the exact engine. With `slab` one half of them, which must not let heat out of its outside.
 * Throws nothing: what is refused is refused before.
 */
export function voxelEngine(given: Case, kernelOf: KernelMaker = plainKernel, slab?: Slab): Engine {
  const { metal: substance, others } = given;
  const held = slab ? meshOf(given.mesh, slab) : given.mesh;
  const size = sizeOf(held);
  const [nx, ny, nz] = size;
  const plane = nx * ny;
  const count = plane * nz;
  const kernel = kernelOf(nx, ny, nz, held.region);
  const { guard, heat, temperature } = kernel;
  // One copy of what each cell is made of: the kernel's.
  const mesh = { ...held, region: kernel.region.subarray(0, count) };
  const own = {
    from: slab?.half === 'upper' ? plane : 0,
    to: slab?.half === 'lower' ? count - plane : count,
  };
  // One kelvin below the coldest: counted from the coldest itself, far places would hold numbers so small that
  // single precision takes many times as long over them.
  const zero = slab?.zero ?? wholeZero(given);
  const curve = heatCurve(substance, zero);
  // A cube's own edge along x, so that it is the same number in a half as in the whole.
  const spacing = mesh.axes[0].size[0]!;
  const worth = [curve.capacity, ...others.map(({ rhoc }) => rhoc)].map((each) => each * spacing ** 3);
  kernel.describe({ ...curve, perHeat: worth.map((each) => 1 / each) });
  const allMetal = metalCells(mesh);
  const allPlaces = heatPlaces(allMetal);
  const ours = [upTo(allMetal, own.from), upTo(allMetal, own.to)] as const;
  const metal = allMetal.subarray(...ours);
  const { k } = substance;
  const kOf = [Math.max(k.solid, k.liquid), ...others.map((other) => other.k)];

  const capacity = (cell: number): number => worth[mesh.region[cell]!]!;
  warm();
  join(given, mesh, kernel, kOf);
  kernel.settle(kOf.map((each, region) => (region === metalRegion ? 0 : each * spacing)));
  const following = followMetal(given, mesh, allMetal, allPlaces, kernel, curve);

  const outside = given.outside ?? { kind: 'insulated' as const };
  const closed = outside.kind === 'insulated';
  const most = (cell: number): number => kOf[mesh.region[cell]!]!;
  const skin = closed ? noSkin : skinOf(mesh, given.sides ?? ['+x', '+y', '+z'], most);
  const out = closed ? 0 : outside.temperature - zero;
  openSkin(skin, outside, (cell) => Math.max(temperature[0][cell + guard]!, curve.liquidus) + zero);
  const onSkin = placesOn(skin.cells, allMetal, allPlaces);
  const fastest = fastestOf();

  /** Every cell as it is at the start. */
  function warm(): void {
    const { start } = given;
    const [firstHeat] = heat;
    const [first] = temperature;
    if (typeof start === 'function') {
      for (let cell = 0; cell < count; cell += 1) {
        first[cell + guard] = startOf(given, mesh, cell) - zero;
      }
      allMetal.forEach((cell, m) => {
        firstHeat[allPlaces[m]!] = curve.heatOf(startOf(given, mesh, cell) - zero);
      });
      return;
    }
    const warmth = Float64Array.from(kOf, (_, region) => start[region]! - zero);
    for (let cell = 0; cell < count; cell += 1) first[cell + guard] = warmth[mesh.region[cell]!]!;
    firstHeat.fill(curve.heatOf(warmth[metalRegion]!));
  }

  /** The largest share of its difference to its surroundings that a cell of its own makes up in a second, 1/s. */
  function fastestOf(): number {
    const outwards = new Map<number, number>();
    skin.cells.forEach((cell, n) => outwards.set(cell, (outwards.get(cell) ?? 0) + skin.conductance[n]!));
    const steepest = worth.map(
      (each, region) => (region === metalRegion ? Math.max(1, curve.inLiquid) : 1) / each,
    );
    const [east, north, up] = kernel.toNext;
    let rate = 0;
    for (let cell = own.from; cell < own.to; cell += 1) {
      const at = cell + guard;
      const sum = east[at]! + east[at - 1]! + north[at]! + north[at - nx]! + up[at]! + up[at - plane]!;
      rate = Math.max(
        rate,
        ((outwards.size > 0 ? (outwards.get(cell) ?? 0) : 0) + sum) * steepest[mesh.region[cell]!]!,
      );
    }
    return rate;
  }

  function refresh(newest: 0 | 1): void {
    openSkin(skin, outside, (cell) => temperature[newest][cell + guard]! + zero);
    following.follow(newest);
  }

  function stage(newest: 0 | 1, back: number, seconds: number): void {
    kernel.stage(newest, back, seconds);
    const other = newest === 0 ? 1 : 0;
    for (let n = 0; n < skin.cells.length; n += 1) {
      const cell = skin.cells[n]!;
      const at = cell + guard;
      const flow = skin.conductance[n]! * (out - temperature[newest][at]!);
      const gain = (seconds * flow) / capacity(cell);
      const place = onSkin[n]!;
      if (place < 0) temperature[other][at]! += gain;
      else {
        const value = heat[other][place]! + gain;
        heat[other][place] = value;
        temperature[other][at] = curve.temperatureOf(value);
      }
    }
  }

  refresh(0);
  // What the cells are made of is held a second time, by whoever laid them out, and by a half for the whole.
  const laid = given.mesh.region.length;
  const bytes = kernel.bytes + following.bytes + laid + 8 * allMetal.length + 32 * skin.cells.length;
  return {
    mesh,
    own,
    curve,
    zero,
    metal,
    heat,
    places: allPlaces.subarray(...ours),
    guard,
    temperature,
    capacity,
    worth,
    fastest,
    refresh,
    stage,
    outflow: (newest) => outflowOf(skin, temperature[newest], guard, out),
    ...(slab && { border: borderOf(slab, kernel, plane, count, allMetal, allPlaces) }),
    bytes,
  };
}

/** Fills the conductances between neighbours, W/K, for the metal at its most conducting. */
function join({ others }: Case, mesh: Mesh, { toNext, guard }: VoxelKernel, kOf: readonly number[]): void {
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const spacing = mesh.axes[0].size[0]!;
  const area = spacing * spacing;
  const half = 0.5 / spacing;
  const { region } = mesh;
  const alike = Float64Array.from(kOf, (each) => each * spacing);
  for (const d of [0, 1, 2] as const) {
    const along = toNext[d];
    const stride = strides[d];
    const run = stride * size[d];
    // Cells before the last along this axis lie in one piece.
    for (let start = 0; start < region.length; start += run)
      for (let cell = start; cell < start + run - stride; cell += 1) {
        const one = region[cell]!;
        const two = region[cell + stride]!;
        if (one === two) {
          along[cell + guard] = alike[one]!;
          continue;
        }
        const touching = one === metalRegion || two === metalRegion;
        const gap = touching
          ? 1 / (others[Math.max(one, two) - 1]!.h * (mesh.share?.(d, cell) ?? 1) * area)
          : 0;
        along[cell + guard] = 1 / (half / kOf[one]! + half / kOf[two]! + gap);
      }
  }
}

/** How many of the cells of metal come before a cell. */
function upTo(metal: Int32Array, cell: number): number {
  let [low, high] = [0, metal.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (metal[middle]! < cell) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Where cells, in ascending order, have their heat; below nought where they are no metal. */
function placesOn(cells: Int32Array, metal: Int32Array, places: Int32Array): Int32Array {
  let m = 0;
  return cells.map((cell) => {
    while (m < metal.length && metal[m]! < cell) m += 1;
    return metal[m] === cell ? places[m]! : -1;
  });
}

/** How a half hands over its last plane and takes in the other's. */
function borderOf(
  slab: Slab,
  kernel: VoxelKernel,
  plane: number,
  count: number,
  metal: Int32Array,
  places: Int32Array,
): Border {
  const lower = slab.half === 'lower';
  const { guard, heat, temperature } = kernel;
  const mine = guard + (lower ? count - 2 * plane : plane);
  const theirs = guard + (lower ? count - plane : 0);
  const four = (cell: number): number => 4 * Math.floor(cell / 4);
  const [first, rest] = lower
    ? [
        [four(count - 2 * plane), count - plane],
        [0, four(count - 2 * plane)],
      ]
    : [
        [four(plane), four(2 * plane + 3)],
        [four(2 * plane + 3), count],
      ];
  const hotIn = (from: number): Int32Array =>
    places.subarray(upTo(metal, from - guard), upTo(metal, from - guard + plane));
  const [hotHere, hotThere] = [hotIn(mine), hotIn(theirs)];
  // What came in is sent out again with other numbers in it.
  const spare: Float32Array[] = [];
  return {
    half: slab.half,
    first: (newest, back, seconds) => kernel.stage(newest, back, seconds, first![0], first![1]),
    rest: (newest, back, seconds) => kernel.stage(newest, back, seconds, rest![0], rest![1]),
    warmth: (newest) => {
      const into = spare.pop() ?? new Float32Array(plane);
      into.set(temperature[newest].subarray(mine, mine + plane));
      return into;
    },
    heats: (newest) => Float32Array.from(hotHere, (place) => heat[newest][place]!),
    takeWarmth: (newest, told) => {
      temperature[newest].set(told, theirs);
      spare.push(told);
    },
    takeHeats: (newest, told) => {
      for (let n = 0; n < hotThere.length; n += 1) heat[newest][hotThere[n]!] = told[n]!;
    },
  };
}
