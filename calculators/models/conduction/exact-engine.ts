import type { Case } from './case.ts';
import { conductanceOf, jointAfter } from './conductance.ts';
import type { Engine } from './engine.ts';
import { heatCurve } from './enthalpy.ts';
import { jointsOf } from './joints.ts';
import { centreOf, metalCells, sizeOf, volumeOf, type Mesh } from './mesh.ts';
import { noSkin, openSkin, outflowOf, skinOf } from './outside.ts';
import { metalRegion } from './substance.ts';

/** Starting temperature of each cell, K. */
export function startOf({ start }: Pick<Case, 'start'>, mesh: Mesh, cell: number): number {
  const region = mesh.region[cell]!;
  return typeof start === 'function' ? start(centreOf(mesh, cell), region) : start[region]!;
}

/** The coldest start, K: heats are counted from here. */
export function zeroOf(given: Case): number {
  let zero = Infinity;
  const { start, mesh } = given;
  if (typeof start !== 'function') {
    for (let region = 0; region < start.length; region += 1)
      if (start[region]! < zero && mesh.region.includes(region)) zero = start[region]!;
    return zero;
  }
  for (let cell = 0; cell < mesh.region.length; cell += 1) zero = Math.min(zero, startOf(given, mesh, cell));
  return zero;
}

/** K: what all heats of equal cubes are counted from. */
export const wholeZero = (given: Case): number => zeroOf(given) - 1;

/** Double precision on any mesh: the equations as they are written, for lines, sections and for checking. */
export function exactEngine(given: Case): Engine {
  const { mesh, metal: substance, others } = given;
  const zero = zeroOf(given);
  const curve = heatCurve(substance, zero);
  const [nx, ny, nz] = sizeOf(mesh);
  const count = nx * ny * nz;
  const strides = [1, nx, nx * ny] as const;
  const guard = nx * ny;
  const room = (): Float64Array => new Float64Array(count + 2 * guard);
  const heat = [room(), room()] as const;
  const temperature = [room(), room()] as const;
  const toNext = [room(), room(), room()] as const;
  const perHeat = room();
  const metal = metalCells(mesh);
  const { k } = substance;
  const joints = k.solid === k.liquid ? undefined : jointsOf(mesh, others);

  const capacity = (cell: number): number =>
    volumeOf(mesh, cell) *
    (mesh.region[cell] === metalRegion ? curve.capacity : others[mesh.region[cell]! - 1]!.rhoc);
  const kOf = (cell: number, newest: 0 | 1): number => {
    const region = mesh.region[cell]!;
    if (region !== metalRegion) return others[region - 1]!.k;
    return joints ? k.liquid + (k.solid - k.liquid) * curve.solidOf(heat[newest][cell + guard]!) : k.solid;
  };
  const isLast = [
    (cell: number) => cell % nx === nx - 1,
    (cell: number) => Math.floor(cell / nx) % ny === ny - 1,
    (cell: number) => cell >= count - nx * ny,
  ] as const;
  for (let cell = 0; cell < count; cell += 1) {
    const warm = startOf(given, mesh, cell) - zero;
    temperature[0][cell + guard] = warm;
    heat[0][cell + guard] = mesh.region[cell] === metalRegion ? curve.heatOf(warm) : warm;
    perHeat[cell + guard] = 1 / capacity(cell);
  }

  /** The most that can leave a cell for each kelvin, over its capacity: two over it is a stable step. */
  const most = (cell: number): number =>
    mesh.region[cell] === metalRegion ? Math.max(k.solid, k.liquid) : kOf(cell, 0);
  for (let cell = 0; cell < count; cell += 1)
    for (const d of [0, 1, 2] as const)
      if (!isLast[d](cell))
        toNext[d][cell + guard] = conductanceOf(
          jointAfter(mesh, others, d, cell),
          most(cell),
          most(cell + strides[d]),
        );
  const outside = given.outside ?? { kind: 'insulated' as const };
  const skin = outside.kind === 'insulated' ? noSkin : skinOf(mesh, given.sides ?? ['+x', '+y', '+z'], most);
  const out = outside.kind === 'insulated' ? 0 : outside.temperature - zero;
  openSkin(skin, outside, (cell) => Math.max(temperature[0][cell + guard]!, curve.liquidus) + zero);
  const fastest = fastestOf();

  function fastestOf(): number {
    const sums = room();
    for (let at = guard; at < guard + count; at += 1)
      for (const d of [0, 1, 2] as const) sums[at] = sums[at]! + toNext[d][at]! + toNext[d][at - strides[d]]!;
    skin.cells.forEach((cell, n) => {
      sums[cell + guard] = sums[cell + guard]! + skin.conductance[n]!;
    });
    let rate = 0;
    for (let cell = 0; cell < count; cell += 1) {
      const steepest = mesh.region[cell] === metalRegion ? Math.max(1, curve.inLiquid) : 1;
      rate = Math.max(rate, sums[cell + guard]! * perHeat[cell + guard]! * steepest);
    }
    return rate;
  }

  function refresh(newest: 0 | 1): void {
    openSkin(skin, outside, (cell) => temperature[newest][cell + guard]! + zero);
    if (!joints) return;
    for (let n = 0; n < joints.count; n += 1) {
      const cell = joints.cell[n]!;
      const d = joints.axis[n] as 0 | 1 | 2;
      toNext[d][cell + guard] =
        1 /
        (joints.one[n]! / kOf(cell, newest) +
          joints.two[n]! / kOf(cell + strides[d], newest) +
          joints.gap[n]!);
    }
  }

  const [east, north, up] = toNext;
  function stage(newest: 0 | 1, back: number, seconds: number): void {
    const now = heat[newest];
    const next = heat[newest === 0 ? 1 : 0];
    const t = temperature[newest];
    const tNext = temperature[newest === 0 ? 1 : 0];
    const plane = nx * ny;
    for (let at = guard; at < guard + count; at += 1) {
      const here = t[at]!;
      let inflow = east[at - 1]! * (t[at - 1]! - here) + east[at]! * (t[at + 1]! - here);
      if (ny > 1) inflow += north[at - nx]! * (t[at - nx]! - here) + north[at]! * (t[at + nx]! - here);
      if (nz > 1) inflow += up[at - plane]! * (t[at - plane]! - here) + up[at]! * (t[at + plane]! - here);
      const value = now[at]! - back * (now[at]! - next[at]!) + seconds * perHeat[at]! * inflow;
      next[at] = value;
      tNext[at] = value;
    }
    for (let n = 0; n < skin.cells.length; n += 1) {
      const at = skin.cells[n]! + guard;
      const gain = seconds * perHeat[at]! * skin.conductance[n]! * (out - t[at]!);
      next[at] = next[at]! + gain;
      tNext[at] = next[at]!;
    }
    for (const cell of metal) tNext[cell + guard] = curve.temperatureOf(next[cell + guard]!);
  }

  refresh(0);
  const places = metal.map((cell) => cell + guard);
  const bytes = 8 * 8 * (count + 2 * guard) + count + 8 * metal.length;
  return {
    mesh,
    own: { from: 0, to: count },
    curve,
    zero,
    metal,
    heat,
    places,
    guard,
    temperature,
    capacity,
    fastest,
    refresh,
    stage,
    outflow: (newest) => outflowOf(skin, temperature[newest], guard, out),
    bytes,
  };
}
