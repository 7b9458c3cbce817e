import { centreOfCell, type Filled } from './cells.ts';
import type { Surface } from './surface.ts';
import type { Point } from './triangles.ts';

/** A stretch of the part of about one thickness, as a row of the pour plan would have it. Lengths in the mesh's unit. */
export interface PartSection {
  readonly shape: 'bar' | 'plate' | 'block' | 'rod';
  readonly thickness: number;
  readonly width: number;
  /** Of one piece; alike pieces are counted. */
  readonly length: number;
  readonly pieces: number;
  /** Volume over cooled surface of the pieces, joints left out. */
  readonly modulus: number;
  readonly volume: number;
  /** Longest run from the gate to its far end, and how much of that lies upstream of it. */
  readonly run: number;
  readonly before: number;
  /** Which section the metal comes through; −1 at the gate. */
  readonly through: number;
  /** Pieces the metal enters at once. */
  readonly fronts: number;
  readonly at: Point;
}

/** The plan takes no more. */
const mostSections = 8;
/** Thicknesses that differ by less than this factor are one. */
const alike = 1.15;
/** A stretch smaller than this part of the metal is counted to its neighbour. */
const leastShare = 0.012;

/**
 * Parts the metal by thickness. Thicknesses fall into classes where few cells lie between; what hangs together
 * within a class is a stretch. Small stretches go to the neighbour they touch most; stretches of like thickness,
 * volume and modulus are pieces of one section.
 */
export function sectionsOf(
  { grid, metal }: Filled,
  thick: Float32Array,
  surface: Surface,
  runs: Float32Array,
): PartSection[] {
  const classOf = classesOf(metal, thick, surface.volume);
  const face = grid.spacing ** 2;
  const { list, owner } = stretchesOf(grid, metal, classOf, thick, surface, runs);
  const groups = grouped(joinSmall(list, surface.volumeOfAll, face));
  const groupOf = list.map((one) => groups.findIndex((group) => group.includes(standing(one))));
  const groupAt = new Int8Array(owner.length).fill(-1);
  for (let cell = 0; cell < owner.length; cell += 1)
    if (owner[cell]! >= 0) groupAt[cell] = groupOf[owner[cell]!]!;
  return groups.map((group, own) => {
    const section = sectionFrom(group, groups, grid.spacing);
    const entries = section.through < 0 ? 1 : entriesOf(grid, groupAt, own, section.through);
    return { ...section, fronts: Math.max(1, entries) };
  });
}

/** A class for each cell: bounds between thicknesses where the least metal lies. */
function classesOf(metal: Uint8Array, thick: Float32Array, volume: Float64Array): Int16Array {
  const steps = 48;
  let low = Infinity;
  let high = 0;
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1) {
      low = Math.min(low, thick[cell]!);
      high = Math.max(high, thick[cell]!);
    }
  const span = Math.log(high / low) + 1e-9;
  const bin = (t: number): number => Math.min(steps - 1, Math.floor((Math.log(t / low) / span) * steps));
  const holds = new Float64Array(steps);
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1) holds[bin(thick[cell]!)]! += volume[cell]!;
  // Peaks, the heaviest first, none within the factor of another; each cell goes to the nearest peak.
  const width = (Math.log(alike) / span) * steps;
  const whole = holds.reduce((sum, x) => sum + x, 0);
  const around = (i: number): number => [i - 1, i, i + 1].reduce((sum, n) => sum + (holds[n] ?? 0), 0);
  const peaks: number[] = [];
  for (const i of Array.from({ length: steps }, (_, n) => n).sort((a, b) => around(b) - around(a)))
    if (around(i) > leastShare * whole && peaks.every((p) => Math.abs(p - i) > width) && peaks.length < 6)
      peaks.push(i);
  const nearest = Array.from({ length: steps }, (_, i) =>
    peaks.reduce((best, p, n) => (Math.abs(p - i) < Math.abs(peaks[best]! - i) ? n : best), 0),
  );
  return Int16Array.from(metal, (one, cell) => (one === 1 ? nearest[bin(thick[cell]!)]! : -1));
}

interface Stretch {
  volume: number;
  area: number;
  thickTimes: number;
  cells: number;
  readonly touches: Map<Stretch, number>;
  far: number;
  near: number;
  readonly sum: [number, number, number];
  readonly low: [number, number, number];
  readonly high: [number, number, number];
  into: Stretch | undefined;
}

const thicknessOf = (one: Stretch): number => one.thickTimes / one.volume;

function stretchesOf(
  grid: Filled['grid'],
  metal: Uint8Array,
  classOf: Int16Array,
  thick: Float32Array,
  surface: Surface,
  runs: Float32Array,
): { list: Stretch[]; owner: Int32Array } {
  const [nx, ny] = grid.size;
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  const owner = new Int32Array(metal.length).fill(-1);
  const list: Stretch[] = [];
  const stack: number[] = [];
  for (let seed = 0; seed < metal.length; seed += 1) {
    if (metal[seed] === 0 || owner[seed]! >= 0) continue;
    const id = list.length;
    const one: Stretch = {
      volume: 0,
      area: 0,
      thickTimes: 0,
      cells: 0,
      touches: new Map(),
      far: 0,
      near: Infinity,
      sum: [0, 0, 0],
      low: [Infinity, Infinity, Infinity],
      high: [-Infinity, -Infinity, -Infinity],
      into: undefined,
    };
    list.push(one);
    owner[seed] = id;
    stack.push(seed);
    for (let cell = stack.pop(); cell !== undefined; cell = stack.pop()) {
      const volume = surface.volume[cell]!;
      one.volume += volume;
      one.area += surface.area[cell]!;
      one.thickTimes += volume * thick[cell]!;
      one.cells += 1;
      const run = runs[cell]!;
      if (run < Infinity) one.far = Math.max(one.far, run);
      one.near = Math.min(one.near, run);
      const at = centreOfCell(grid, cell);
      for (let d = 0; d < 3; d += 1) {
        one.sum[d]! += at[d]!;
        one.low[d] = Math.min(one.low[d]!, at[d]!);
        one.high[d] = Math.max(one.high[d]!, at[d]!);
      }
      for (const step of steps) {
        const other = cell + step;
        if (metal[other] !== 1) continue;
        if (owner[other]! < 0 && classOf[other] === classOf[cell]) {
          owner[other] = id;
          stack.push(other);
        }
      }
    }
  }
  for (let cell = 0; cell < metal.length; cell += 1) {
    if (metal[cell] === 0) continue;
    for (const step of steps) {
      const other = owner[cell + step] ?? -1;
      if (other < 0 || other === owner[cell]) continue;
      const [a, b] = [list[owner[cell]!]!, list[other]!];
      a.touches.set(b, (a.touches.get(b) ?? 0) + 1);
    }
  }
  return { list, owner };
}

/** Places where the metal enters one section from another: patches of touching cells that hang together. */
function entriesOf(grid: Filled['grid'], groupAt: Int8Array, own: number, from: number): number {
  const [nx, ny, nz] = grid.size;
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  const border = new Set<number>();
  for (let cell = 0; cell < nx * ny * nz; cell += 1) {
    if (groupAt[cell] !== own) continue;
    for (const step of steps)
      if (groupAt[cell + step] === from) {
        border.add(cell);
        break;
      }
  }
  let patches = 0;
  while (border.size > 0) {
    const [seed] = border;
    const stack = [seed!];
    border.delete(seed!);
    let cells = 0;
    for (let cell = stack.pop(); cell !== undefined; cell = stack.pop()) {
      cells += 1;
      for (let c = -1; c <= 1; c += 1)
        for (let b = -1; b <= 1; b += 1)
          for (let a = -1; a <= 1; a += 1)
            if (border.delete(cell + (c * ny + b) * nx + a)) stack.push(cell + (c * ny + b) * nx + a);
    }
    if (cells >= 4) patches += 1;
  }
  return patches;
}

const standing = (one: Stretch): Stretch => {
  let at = one;
  while (at.into) at = at.into;
  return at;
};

/** The neighbours a stretch stands beside now, with how many cell faces they share. */
function besides(one: Stretch): Map<Stretch, number> {
  const found = new Map<Stretch, number>();
  for (const [other, count] of one.touches) {
    const there = standing(other);
    if (there !== one) found.set(there, (found.get(there) ?? 0) + count);
  }
  return found;
}

function joinSmall(list: readonly Stretch[], whole: number, face: number): Stretch[] {
  for (const one of [...list].sort((a, b) => a.volume - b.volume)) {
    // Little, or a fringe between thick and thin: shallower behind where it touches them than it is thick.
    const own = thicknessOf(one);
    const touching = face * [...besides(one).values()].reduce((sum, count) => sum + count, 0);
    const speck = one.volume < Math.min(leastShare * whole, 3 * own ** 3) || one.volume < 0.6 * own ** 3;
    if (!speck && one.volume > 0.7 * touching * own) continue;
    const [to] = [...besides(one)].sort((a, b) => b[1] - a[1])[0] ?? [];
    if (!to) continue;
    one.into = to;
    to.volume += one.volume;
    to.area += one.area;
    to.thickTimes += one.volume * thicknessOf({ ...to, volume: to.volume - one.volume });
    to.far = Math.max(to.far, one.far);
    to.near = Math.min(to.near, one.near);
    for (const [other, count] of one.touches) to.touches.set(other, (to.touches.get(other) ?? 0) + count);
  }
  return list.filter((one) => !one.into);
}

/** Stretches of like thickness and like modulus together; the heaviest groups stay when there are too many. */
function grouped(stretches: readonly Stretch[]): Stretch[][] {
  const groups: Stretch[][] = [];
  for (const one of [...stretches].sort((a, b) => b.volume - a.volume)) {
    const own = groups.find(([first]) => {
      const t = thicknessOf(one) / thicknessOf(first!);
      const v = one.volume / first!.volume;
      return t < 1.1 && t > 1 / 1.1 && v > 0.55;
    });
    if (own) own.push(one);
    else groups.push([one]);
  }
  return groups.sort((a, b) => volumeOf(b) - volumeOf(a)).slice(0, mostSections);
}

const volumeOf = (group: readonly Stretch[]): number => group.reduce((sum, { volume }) => sum + volume, 0);

function sectionFrom(
  group: readonly Stretch[],
  groups: readonly (readonly Stretch[])[],
  spacing: number,
): PartSection {
  const pieces = group.length;
  const volume = volumeOf(group);
  const area = group.reduce((sum, one) => sum + one.area, 0);
  const thickness = group.reduce((sum, one) => sum + one.thickTimes, 0) / volume;
  const modulus = volume / area;
  const far = group.reduce((a, b) => (b.far > a.far ? b : a));
  const cells = group.reduce((sum, one) => sum + one.cells, 0);
  const at = [0, 1, 2].map(
    (d) => group.reduce((sum, one) => sum + one.sum[d]!, 0) / cells,
  ) as unknown as Point;
  const extent = spacing + Math.max(...group.flatMap(({ low, high }) => high.map((x, d) => x - low[d]!)));
  let through = -1;
  if (far.near > 0) {
    // The neighbour the metal reaches first.
    const [first] = [...besides(far).keys()].sort((a, b) => a.near - b.near);
    through = first && first.near < far.near ? groups.findIndex((other) => other.includes(first)) : -1;
  }
  const before =
    through < 0 ? 0 : Math.min(...group.map(({ near }) => near).filter(Number.isFinite), far.far);
  return {
    ...shaped(thickness, modulus, volume / pieces, extent),
    pieces,
    modulus,
    volume,
    run: Math.max(far.far, thickness),
    before: Number.isFinite(before) ? before : 0,
    through,
    fronts: 1,
    at,
  };
}

/**
 * A shape with this thickness, modulus and volume. Half the thickness over the modulus says how many pairs of
 * sides cool: one on a plate, two on a square bar, three on a cube.
 */
function shaped(
  t: number,
  modulus: number,
  volume: number,
  extent: number,
): Pick<PartSection, 'shape' | 'thickness' | 'width' | 'length'> {
  const pairs = t / 2 / modulus;
  const side = Math.sqrt(volume / t);
  const asPlate = volume / (2 * side * side + 4 * side * t);
  // As wide as long: its edge cools as well, and it does not reach as far as a bar of this modulus would.
  const compact = Math.abs(modulus / asPlate - 1) < 0.2 && extent < 1.6 * side && side > 1.2 * t;
  if (pairs < 1.12 || compact)
    return {
      shape: pairs < 1.12 || side > 3 * t ? 'plate' : 'block',
      thickness: t,
      width: side,
      length: side,
    };
  // A bar of t by w: M = t w / 2 (t + w); a round one has the modulus of a square one and less metal.
  const width = pairs < 1.95 ? Math.max(t, t / Math.max(0.02, pairs - 1)) : t;
  const length = volume / (t * width);
  if (length > 1.06 * extent && length < 2 * extent && length < 6 * t) {
    const wide = volume / (t * extent);
    return { shape: 'block', thickness: t, width: Math.max(t, wide), length: extent };
  }
  const round = volume / ((Math.PI / 4) * t * t);
  if (width < 1.05 * t && extent > 0.92 * round && extent < 1.08 * round)
    return { shape: 'rod', thickness: t, width: t, length: round };
  return { shape: 'bar', thickness: t, width, length };
}
