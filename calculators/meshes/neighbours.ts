import { pointCount, type Triangles } from './triangles.ts';

/** How the faces of a mesh hang together along their edges. */
export interface Neighbours {
  /** By half edge (3 × face + side): the half edge on the other side; `none` at a hole, `many` where more than two meet. */
  readonly across: Int32Array;
  readonly open: number;
  /** Edges that two faces run along in the same direction: one of the two is inside out. */
  readonly clashing: number;
  readonly crowded: number;
  /** Faces without area. */
  readonly flat: number;
}

export const none = -1;
export const many = -2;

const next = (half: number): number => (half % 3 === 2 ? half - 2 : half + 1);

/** Pairs the half edges, by their lower point: one pass to count, one to sort, one to pair. */
export function neighboursOf(mesh: Triangles, flat: Uint8Array): Neighbours {
  const { corners } = mesh;
  const count = pointCount(mesh);
  const start = new Uint32Array(count + 1);
  for (let half = 0; half < corners.length; half += 1)
    if (flat[(half / 3) | 0] === 0) start[Math.min(corners[half]!, corners[next(half)]!) + 1]! += 1;
  for (let p = 0; p < count; p += 1) start[p + 1]! += start[p]!;
  const fill = start.slice(0, count);
  const sorted = new Uint32Array(start[count]!);
  const highs = new Uint32Array(start[count]!);
  for (let half = 0; half < corners.length; half += 1) {
    if (flat[(half / 3) | 0] !== 0) continue;
    const one = corners[half]!;
    const other = corners[next(half)]!;
    const low = Math.min(one, other);
    const at = fill[low]!;
    sorted[at] = half;
    highs[at] = Math.max(one, other);
    fill[low] = at + 1;
  }
  const across = new Int32Array(corners.length).fill(none);
  let open = 0;
  let clashing = 0;
  let crowded = 0;
  const pair = (one: number, other: number): void => {
    across[one] = other;
    across[other] = one;
    if (corners[one] === corners[other]) clashing += 1;
  };
  const gather = (halves: readonly number[]): void => {
    if (halves.length === 1) open += 1;
    else if (halves.length === 2) pair(halves[0]!, halves[1]!);
    else {
      crowded += 1;
      for (const half of halves) across[half] = many;
    }
  };
  for (let p = 0; p < count; p += 1) {
    const from = start[p]!;
    const to = start[p + 1]!;
    if (to - from > 24) {
      const lists = new Map<number, number[]>();
      for (let i = from; i < to; i += 1) {
        const list = lists.get(highs[i]!);
        if (list) list.push(sorted[i]!);
        else lists.set(highs[i]!, [sorted[i]!]);
      }
      for (const halves of lists.values()) gather(halves);
      continue;
    }
    // A point has about six edges: looking along the list is quicker than any table.
    for (let i = from; i < to; i += 1) {
      const high = highs[i]!;
      let same = 0;
      let other = i;
      let before = false;
      for (let j = from; j < to; j += 1) {
        if (j === i || highs[j] !== high) continue;
        if (j < i) {
          before = true;
          break;
        }
        same += 1;
        other = j;
      }
      if (before) continue;
      if (same === 0) open += 1;
      else if (same === 1) pair(sorted[i]!, sorted[other]!);
      else gather(Array.from(sorted.subarray(from, to)).filter((_, j) => highs[from + j] === high));
    }
  }
  let flats = 0;
  for (const one of flat) flats += one;
  return { across, open, clashing, crowded, flat: flats };
}

/** Marks faces without area: two corners the same, or all three on a line. */
export function flatFaces({ points, corners }: Triangles): Uint8Array {
  const flat = new Uint8Array(corners.length / 3);
  for (let f = 0; f < flat.length; f += 1) {
    const a = corners[3 * f]!;
    const b = corners[3 * f + 1]!;
    const c = corners[3 * f + 2]!;
    if (a === b || b === c || a === c) {
      flat[f] = 1;
      continue;
    }
    const ux = points[3 * b]! - points[3 * a]!;
    const uy = points[3 * b + 1]! - points[3 * a + 1]!;
    const uz = points[3 * b + 2]! - points[3 * a + 2]!;
    const vx = points[3 * c]! - points[3 * a]!;
    const vy = points[3 * c + 1]! - points[3 * a + 1]!;
    const vz = points[3 * c + 2]! - points[3 * a + 2]!;
    const x = uy * vz - uz * vy;
    const y = uz * vx - ux * vz;
    const z = ux * vy - uy * vx;
    const long = Math.max(ux * ux + uy * uy + uz * uz, vx * vx + vy * vy + vz * vz);
    if (x * x + y * y + z * z <= 1e-24 * long * long) flat[f] = 1;
  }
  return flat;
}
