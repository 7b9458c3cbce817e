import type { Case } from './case.ts';
import { conductanceOf, jointAfter } from './conductance.ts';
import type { Engine } from './engine.ts';
import { heatCurve } from './enthalpy.ts';
import { startOf, zeroOf } from './exact-engine.ts';
import { jointsOf } from './joints.ts';
import { metalCells, sizeOf, volumeOf } from './mesh.ts';
import { noSkin, openSkin, outflowOf, skinOf } from './outside.ts';
import { metalRegion } from './substance.ts';
import { plainKernel, type KernelMaker } from './voxel-kernel.ts';

/**
 * Single precision on equal cubes, through a kernel. Share solid falls evenly over the range; the lever rule
 * is left to the exact engine. Throws nothing: what is refused is refused before.
 */
export function voxelEngine(given: Case, kernelOf: KernelMaker = plainKernel): Engine {
  const { metal: substance, others } = given;
  const size = sizeOf(given.mesh);
  const [nx, ny, nz] = size;
  const count = nx * ny * nz;
  const strides = [1, nx, nx * ny] as const;
  const kernel = kernelOf(nx, ny, nz);
  const { guard, heat, temperature, toNext } = kernel;
  kernel.region.set(given.mesh.region);
  // One copy of what each cell is made of: the kernel's.
  const mesh = { ...given.mesh, region: kernel.region.subarray(0, count) };
  // One kelvin below the coldest: counted from the coldest itself, far places would hold numbers so small that
  // single precision takes many times as long over them.
  const zero = zeroOf(given) - 1;
  const curve = heatCurve(substance, zero);
  const volume = volumeOf(mesh, 0);
  const worth = [curve.capacity, ...others.map(({ rhoc }) => rhoc)].map((each) => each * volume);
  kernel.describe({ ...curve, perHeat: worth.map((each) => 1 / each) });
  const metal = metalCells(mesh);
  const { k } = substance;
  const spacing = Math.cbrt(volume);

  const capacity = (cell: number): number => worth[mesh.region[cell]!]!;
  const most = (cell: number): number =>
    mesh.region[cell] === metalRegion ? Math.max(k.solid, k.liquid) : others[mesh.region[cell]! - 1]!.k;
  const isLast = (d: 0 | 1 | 2, cell: number): boolean =>
    Math.floor(cell / strides[d]) % size[d] === size[d] - 1;
  const surface = k.solid === k.liquid ? undefined : surfaceOf();
  const inside = surface ? insideOf() : [];
  // Between two cells of one substance it is the same everywhere.
  const alike = [0, ...others].map((_, region) => {
    const own = region === metalRegion ? Math.max(k.solid, k.liquid) : others[region - 1]!.k;
    return own * spacing;
  });
  for (let cell = 0; cell < count; cell += 1) {
    const warm = startOf(given, mesh, cell) - zero;
    const region = mesh.region[cell]!;
    temperature[0][cell + guard] = warm;
    heat[0][cell + guard] = region === metalRegion ? curve.heatOf(warm) : warm;
    for (const d of [0, 1, 2] as const) {
      if (isLast(d, cell)) continue;
      if (mesh.region[cell + strides[d]] === region) toNext[d][cell + guard] = alike[region]!;
      else
        toNext[d][cell + guard] = conductanceOf(
          jointAfter(mesh, others, d, cell),
          most(cell),
          most(cell + strides[d]),
        );
    }
  }

  kernel.settle(alike.map((each, region) => (region === metalRegion ? 0 : each)));

  const outside = given.outside ?? { kind: 'insulated' as const };
  const closed = outside.kind === 'insulated';
  const skin = closed ? noSkin : skinOf(mesh, given.sides ?? ['+x', '+y', '+z'], most);
  const out = closed ? 0 : outside.temperature - zero;
  openSkin(skin, outside, (cell) => Math.max(temperature[0][cell + guard]!, curve.liquidus) + zero);
  const safeStep = 1 / fastest();

  function fastest(): number {
    const onSkin = new Map<number, number>();
    skin.cells.forEach((cell, n) => onSkin.set(cell, (onSkin.get(cell) ?? 0) + skin.conductance[n]!));
    let rate = 0;
    for (let cell = 0; cell < count; cell += 1) {
      const at = cell + guard;
      let sum = onSkin.get(cell) ?? 0;
      for (const d of [0, 1, 2] as const) sum += toNext[d][at]! + toNext[d][at - strides[d]]!;
      const steepest = mesh.region[cell] === metalRegion ? Math.max(1, curve.inLiquid) : 1;
      rate = Math.max(rate, (sum * steepest) / capacity(cell));
    }
    return rate;
  }

  function refresh(newest: 0 | 1): void {
    openSkin(skin, outside, (cell) => temperature[newest][cell + guard]! + zero);
    if (!surface) return;
    // Between steps the older heats are of no more use: meanwhile they hold conductivities.
    const now = heat[newest];
    const own = heat[newest === 0 ? 1 : 0];
    const range = curve.full - curve.solidus;
    for (const cell of metal) {
      const liquid = Math.min(1, Math.max(0, (now[cell + guard]! - curve.solidus) / range));
      own[cell + guard] = k.solid + (k.liquid - k.solid) * liquid;
    }
    for (const d of [0, 1, 2] as const) {
      const along = toNext[d];
      const stride = strides[d];
      for (const at of inside[d]!) {
        const one = own[at]!;
        const two = own[at + stride]!;
        along[at] = (2 * spacing * one * two) / (one + two);
      }
    }
    const half = 0.5 / spacing;
    for (let n = 0; n < surface.at.length; n += 1)
      toNext[surface.axis[n] as 0 | 1 | 2][surface.at[n]!] =
        1 / (half / own[surface.metal[n]!]! + surface.rest[n]!);
  }

  /** Places of faces within the metal, after which there is metal too, by axis. */
  function insideOf(): readonly Int32Array[] {
    return ([0, 1, 2] as const).map((d) =>
      metal
        .filter((cell) => !isLast(d, cell) && mesh.region[cell + strides[d]] === metalRegion)
        .map((cell) => cell + guard),
    );
  }

  /** Faces of the metal: where the conductance stands, the axis, where the metal lies, K/W of the rest of the way. */
  function surfaceOf() {
    const { cell, axis, gap } = jointsOf(mesh, others, false);
    const next = cell.map((from, n) => from + strides[axis[n] as 0 | 1 | 2]);
    const isFirst = (n: number): boolean => mesh.region[cell[n]!] === metalRegion;
    return {
      at: cell.map((from) => from + guard),
      axis,
      metal: cell.map((from, n) => (isFirst(n) ? from : next[n]!) + guard),
      rest: Float32Array.from(
        cell,
        (from, n) => 0.5 / spacing / most(isFirst(n) ? next[n]! : from) + gap[n]!,
      ),
    };
  }

  function stage(newest: 0 | 1, back: number, seconds: number): void {
    kernel.stage(newest, back, seconds);
    const other = newest === 0 ? 1 : 0;
    for (let n = 0; n < skin.cells.length; n += 1) {
      const cell = skin.cells[n]!;
      const at = cell + guard;
      const flow = skin.conductance[n]! * (out - temperature[newest][at]!);
      const value = heat[other][at]! + (seconds * flow) / capacity(cell);
      heat[other][at] = value;
      temperature[other][at] = mesh.region[cell] === metalRegion ? curve.temperatureOf(value) : value;
    }
  }

  refresh(0);
  // Beside the kernel's arrays, each metal cell keeps its number, its last heat and five results.
  const faces = inside.reduce((sum, { length }) => sum + length, 0);
  const bytes =
    kernel.bytes + 4 * faces + 4 * 7 * metal.length + 28 * skin.cells.length + 13 * (surface?.at.length ?? 0);
  return {
    mesh,
    curve,
    zero,
    metal,
    guard,
    heat,
    temperature,
    capacity,
    safeStep,
    refresh,
    stage,
    outflow: (newest) => outflowOf(skin, temperature[newest], guard, out),
    bytes,
  };
}
