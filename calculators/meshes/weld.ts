import type { Triangles } from './triangles.ts';

/** The mesh with points closer together than this taken as one, and how many went. Faces stay as they are. */
export function weldWithin(
  { points, corners }: Triangles,
  distance: number,
): { mesh: Triangles; joined: number } {
  const count = points.length / 3;
  const cells = new Map<number, number[]>();
  const to = new Uint32Array(count);
  const kept: number[] = [];
  const key = (x: number, y: number, z: number): number =>
    (Math.imul(x, 73_856_093) ^ Math.imul(y, 19_349_663) ^ Math.imul(z, 83_492_791)) >>> 0;
  for (let p = 0; p < count; p += 1) {
    const [x, y, z] = [points[3 * p]!, points[3 * p + 1]!, points[3 * p + 2]!];
    // Cells twice as wide as the distance: only the eight round the nearest corner can hold a neighbour.
    const [cx, cy, cz] = [x, y, z].map((v) => Math.round(v / (2 * distance))) as [number, number, number];
    let found = -1;
    for (let n = 0; n < 8 && found < 0; n += 1) {
      const list = cells.get(key(cx - (n & 1), cy - ((n >> 1) & 1), cz - (n >> 2)));
      for (const other of list ?? []) {
        const q = 3 * kept[other]!;
        if (Math.hypot(points[q]! - x, points[q + 1]! - y, points[q + 2]! - z) <= distance) {
          found = other;
          break;
        }
      }
    }
    if (found < 0) {
      found = kept.length;
      kept.push(p);
      const own = key(...([x, y, z].map((v) => Math.floor(v / (2 * distance))) as [number, number, number]));
      const list = cells.get(own);
      if (list) list.push(found);
      else cells.set(own, [found]);
    }
    to[p] = found;
  }
  const fewer = new Float64Array(3 * kept.length);
  kept.forEach((p, i) => fewer.set(points.subarray(3 * p, 3 * p + 3), 3 * i));
  return { mesh: { points: fewer, corners: corners.map((p) => to[p]!) }, joined: count - kept.length };
}
