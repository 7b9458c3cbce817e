import type { Neighbours } from './neighbours.ts';
import type { Point, Triangles } from './triangles.ts';

/** Faces that hang together by their edges. */
export interface Shell {
  readonly faces: number;
  /** Of the closed body, with its faces looking outwards; at least nought. */
  readonly volume: number;
  readonly low: Point;
  readonly high: Point;
  /** How many other shells it lies inside. */
  readonly depth: number;
  /** Every face of it looked the wrong way in the file. */
  readonly insideOut: boolean;
}

export interface Shelled {
  readonly shells: readonly Shell[];
  /** By face. */
  readonly shellOf: Uint32Array;
  /** Faces to turn round so that metal is on the inner side of all of them. */
  readonly turn: Uint8Array;
  readonly turned: number;
  /** A surface with one side, like a twisted band, cannot be told inside from outside. */
  readonly oneSided: boolean;
}

/** Beyond so many shells nobody drew hollows: each is taken as a body of its own. */
const mostNested = 64;
/** Beyond so many, what is left is counted as one: a file of loose triangles has as many shells as faces. */
export const mostShells = 20_000;
/** Points of a shell asked whether they lie inside another. */
const looks = 24;

/** Parts the faces into shells and finds which faces look the wrong way. */
export function shellsOf(mesh: Triangles, { across }: Neighbours, flat: Uint8Array): Shelled {
  const { points, corners } = mesh;
  const faces = corners.length / 3;
  const shellOf = new Uint32Array(faces).fill(0xffffffff);
  const turn = new Uint8Array(faces);
  const stack = new Uint32Array(faces);
  const seeds: number[] = [];
  let oneSided = false;
  for (let seed = 0; seed < faces; seed += 1) {
    if (flat[seed] === 1 || shellOf[seed] !== 0xffffffff) continue;
    const shell = Math.min(seeds.length, mostShells - 1);
    if (seeds.length < mostShells) seeds.push(seed);
    shellOf[seed] = shell;
    let height = 0;
    stack[height++] = seed;
    while (height > 0) {
      const face = stack[--height]!;
      for (let half = 3 * face; half < 3 * face + 3; half += 1) {
        const other = across[half]!;
        if (other < 0) continue;
        const there = (other / 3) | 0;
        const wants = turn[face]! ^ Number(corners[half] === corners[other]);
        if (shellOf[there] === 0xffffffff) {
          shellOf[there] = shell;
          turn[there] = wants;
          stack[height++] = there;
        } else if (turn[there] !== wants) oneSided = true;
      }
    }
  }
  const sums = sumsOf(mesh, shellOf, turn, seeds.length);
  const depths = depthsOf(points, corners, shellOf, flat, sums);
  const flips = sums.map(({ volume }, i) => volume < 0 !== (depths[i]! % 2 === 1));
  const changed = new Uint32Array(sums.length);
  let turned = 0;
  for (let face = 0; face < faces; face += 1) {
    const shell = shellOf[face]!;
    if (shell === 0xffffffff) continue;
    if (flips[shell]) turn[face]! ^= 1;
    if (turn[face] === 1) {
      turned += 1;
      changed[shell]! += 1;
    }
  }
  const shells = sums.map(({ faces: count, volume, low, high }, i) => ({
    faces: count,
    volume: Math.abs(volume),
    low,
    high,
    depth: depths[i]!,
    insideOut: changed[i] === count,
  }));
  return { shells, shellOf, turn, turned, oneSided };
}

interface Sum {
  faces: number;
  volume: number;
  readonly low: [number, number, number];
  readonly high: [number, number, number];
  seed: number;
}

function sumsOf(
  { points, corners }: Triangles,
  shellOf: Uint32Array,
  turn: Uint8Array,
  count: number,
): Sum[] {
  const sums = Array.from({ length: count }, (): Sum => ({
    faces: 0,
    volume: 0,
    low: [Infinity, Infinity, Infinity],
    high: [-Infinity, -Infinity, -Infinity],
    seed: -1,
  }));
  const [ox, oy, oz] = [points[0] ?? 0, points[1] ?? 0, points[2] ?? 0];
  for (let face = 0; face < shellOf.length; face += 1) {
    const sum = sums[shellOf[face]!];
    if (!sum) continue;
    if (sum.seed < 0) sum.seed = face;
    sum.faces += 1;
    const a = 3 * corners[3 * face]!;
    const b = 3 * corners[3 * face + 1]!;
    const c = 3 * corners[3 * face + 2]!;
    widen(sum, points, a);
    widen(sum, points, b);
    widen(sum, points, c);
    const ax = points[a]! - ox;
    const ay = points[a + 1]! - oy;
    const az = points[a + 2]! - oz;
    const bx = points[b]! - ox;
    const by = points[b + 1]! - oy;
    const bz = points[b + 2]! - oz;
    const cx = points[c]! - ox;
    const cy = points[c + 1]! - oy;
    const cz = points[c + 2]! - oz;
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    sum.volume += (turn[face] === 1 ? -six : six) / 6;
  }
  return sums;
}

function widen({ low, high }: Sum, points: Float64Array, p: number): void {
  for (let d = 0; d < 3; d += 1) {
    const x = points[p + d]!;
    if (x < low[d]!) low[d] = x;
    if (x > high[d]!) high[d] = x;
  }
}

function depthsOf(
  points: Float64Array,
  corners: Uint32Array,
  shellOf: Uint32Array,
  flat: Uint8Array,
  sums: readonly Sum[],
): number[] {
  const depths = sums.map(() => 0);
  if (sums.length < 2 || sums.length > mostNested) return depths;
  const inside = (inner: Sum, outer: Sum): boolean =>
    inner.low.every((x, d) => x > outer.low[d]! && inner.high[d]! < outer.high[d]!);
  const samplesOf = (shell: number): Point[] => {
    const every = Math.max(1, Math.floor(sums[shell]!.faces / looks));
    const found: Point[] = [];
    for (let face = sums[shell]!.seed, seen = 0; face < shellOf.length && found.length < looks; face += 1) {
      if (shellOf[face] !== shell) continue;
      if (seen % every === 0) {
        const p = 3 * corners[3 * face]!;
        found.push([points[p]!, points[p + 1]!, points[p + 2]!]);
      }
      seen += 1;
    }
    return found;
  };
  sums.forEach((inner, i) => {
    sums.forEach((outer, o) => {
      if (i === o || !inside(inner, outer)) return;
      // Bodies that run into one another have points on both sides: a hollow has all of them within.
      const within = samplesOf(i).every((at) =>
        oddCrossings(points, corners, at, (face) => flat[face] === 0 && shellOf[face] === o),
      );
      if (within) depths[i]! += 1;
    });
  });
  return depths;
}

/** Along a slant that no drawing has. */
export const slant: Point = [0.5417, 0.6891, 0.4813];

/** Whether a ray from this place crosses the chosen faces an odd number of times. */
export function oddCrossings(
  points: Float64Array,
  corners: Uint32Array,
  [px, py, pz]: Point,
  chosen: (face: number) => boolean,
): boolean {
  const [dx, dy, dz] = slant;
  let odd = false;
  for (let face = 0; face < corners.length / 3; face += 1) {
    if (!chosen(face)) continue;
    const a = 3 * corners[3 * face]!;
    const b = 3 * corners[3 * face + 1]!;
    const c = 3 * corners[3 * face + 2]!;
    const e1x = points[b]! - points[a]!;
    const e1y = points[b + 1]! - points[a + 1]!;
    const e1z = points[b + 2]! - points[a + 2]!;
    const e2x = points[c]! - points[a]!;
    const e2y = points[c + 1]! - points[a + 1]!;
    const e2z = points[c + 2]! - points[a + 2]!;
    const hx = dy * e2z - dz * e2y;
    const hy = dz * e2x - dx * e2z;
    const hz = dx * e2y - dy * e2x;
    const det = e1x * hx + e1y * hy + e1z * hz;
    if (det === 0) continue;
    const sx = px - points[a]!;
    const sy = py - points[a + 1]!;
    const sz = pz - points[a + 2]!;
    const u = (sx * hx + sy * hy + sz * hz) / det;
    if (u < 0 || u > 1) continue;
    const qx = sy * e1z - sz * e1y;
    const qy = sz * e1x - sx * e1z;
    const qz = sx * e1y - sy * e1x;
    const v = (dx * qx + dy * qy + dz * qz) / det;
    if (v < 0 || u + v > 1) continue;
    if ((e2x * qx + e2y * qy + e2z * qz) / det > 0) odd = !odd;
  }
  return odd;
}
