import { boundsOf } from './measure.ts';
import type { Point, Triangles } from './triangles.ts';

/** What a part shows to a direction: what the metal lifts the cope by, and what would lock in the sand. */
export interface Shadow {
  readonly direction: Point;
  /** Area of its outline seen along the direction. */
  readonly area: number;
  /** Area of faces looking that way, seen along it: more than the outline where one lies behind another. */
  readonly facing: number;
  /** How much of the outline hides a face behind another: nought when a mould of two halves draws straight off. */
  readonly undercut: number;
}

/** Outline and facing area along a direction; the outline to about a hundredth of a per cent for a simple part. */
export function shadowOf(mesh: Triangles, direction: Point, across = 900): Shadow {
  const { points, corners } = mesh;
  const long = Math.hypot(...direction);
  const w: Point = [direction[0] / long, direction[1] / long, direction[2] / long];
  const helper: Point = Math.abs(w[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const u = unit(cross(w, helper));
  const v = cross(w, u);
  const flat = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 3) {
    const at: Point = [points[i]!, points[i + 1]!, points[i + 2]!];
    flat[i] = dot(at, u);
    flat[i + 1] = dot(at, v);
  }
  const [low, high] = boundsOf(flat);
  const [dx, dy] = [high[0] - low[0], high[1] - low[1]];
  if (!(dx > 0 && dy > 0)) return { direction: w, area: 0, facing: 0, undercut: 0 };
  const h = Math.max(dx, dy) / across;
  // Middles off the round numbers of a drawing.
  const [x0, y0] = [low[0] - 0.4371 * h, low[1] - 0.4533 * h];
  const nx = Math.ceil((high[0] - x0) / h) + 1;
  const ny = Math.ceil((high[1] - y0) / h) + 1;
  const seen = new Uint8Array(nx * ny);
  let facing = 0;
  for (let f = 0; f < corners.length; f += 3) {
    const [a, b, c] = [3 * corners[f]!, 3 * corners[f + 1]!, 3 * corners[f + 2]!];
    const [ax, ay, bx, by, cx, cy] = [flat[a]!, flat[a + 1]!, flat[b]!, flat[b + 1]!, flat[c]!, flat[c + 1]!];
    const double = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
    if (double <= 0) continue;
    facing += double / 2;
    const i1 = Math.floor((Math.max(ax, bx, cx) - x0) / h);
    const j1 = Math.floor((Math.max(ay, by, cy) - y0) / h);
    for (let j = Math.ceil((Math.min(ay, by, cy) - y0) / h); j <= j1; j += 1) {
      const y = y0 + j * h;
      for (let i = Math.ceil((Math.min(ax, bx, cx) - x0) / h); i <= i1; i += 1) {
        const x = x0 + i * h;
        if ((bx - ax) * (y - ay) - (x - ax) * (by - ay) < 0) continue;
        if ((cx - bx) * (y - by) - (x - bx) * (cy - by) < 0) continue;
        if ((ax - cx) * (y - cy) - (x - cx) * (ay - cy) < 0) continue;
        seen[j * nx + i] = 1;
      }
    }
  }
  let count = 0;
  for (const one of seen) count += one;
  const area = count * h * h;
  const hidden = area > 0 ? facing / area - 1 : 0;
  return { direction: w, area, facing, undercut: hidden < 0.004 ? 0 : hidden };
}

/** The three axes, and which of them draws best: the least undercut, then the flattest part. */
export function partingOf(mesh: Triangles): { readonly axes: readonly Shadow[]; readonly best: 0 | 1 | 2 } {
  const axes = (
    [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const
  ).map((direction) => shadowOf(mesh, direction));
  const [low, high] = boundsOf(mesh.points);
  const order = ([0, 1, 2] as const)
    .slice()
    .sort(
      (a, b) =>
        Math.round(50 * axes[a]!.undercut) - Math.round(50 * axes[b]!.undercut) ||
        high[a] - low[a] - (high[b] - low[b]),
    );
  return { axes, best: order[0]! };
}

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
function unit(a: Point): Point {
  const long = Math.hypot(...a);
  return [a[0] / long, a[1] / long, a[2] / long];
}
