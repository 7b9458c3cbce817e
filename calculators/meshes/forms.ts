import { startMesh, type Point, type Triangles } from './triangles.ts';

/** Closed surfaces made by rule: the mill's fittings, and solids whose volume is known in closed form. */

export interface Box {
  readonly low: Point;
  readonly high: Point;
}

/**
 * The one closed surface round several boxes that may touch or overlap. Every plane of every box cuts all of
 * them, so that no face ends in the middle of another's edge. `cuts` adds planes along an axis, for bending.
 */
export function boxes(list: readonly Box[], cuts: readonly (readonly number[])[] = [[], [], []]): Triangles {
  const planes = [0, 1, 2].map((d) =>
    [...new Set([...list.flatMap(({ low, high }) => [low[d]!, high[d]!]), ...(cuts[d] ?? [])])].sort(
      (a, b) => a - b,
    ),
  );
  const [xs, ys, zs] = planes as [number[], number[], number[]];
  const [nx, ny, nz] = [xs.length - 1, ys.length - 1, zs.length - 1];
  const middle = (of: number[], i: number): number => (of[i]! + of[i + 1]!) / 2;
  const solid = (i: number, j: number, k: number): boolean => {
    if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz) return false;
    const at = [middle(xs, i), middle(ys, j), middle(zs, k)];
    return list.some(({ low, high }) => at.every((x, d) => x > low[d]! && x < high[d]!));
  };
  const builder = startMesh(1024);
  const quad = (a: Point, b: Point, c: Point, d: Point): void => {
    const [p, q, r, s] = [a, b, c, d].map((at) => builder.point(...at)) as [number, number, number, number];
    builder.face(p, q, r);
    builder.face(p, r, s);
  };
  for (let i = 0; i < nx; i += 1)
    for (let j = 0; j < ny; j += 1)
      for (let k = 0; k < nz; k += 1) {
        if (!solid(i, j, k)) continue;
        const [x, X, y, Y, z, Z] = [xs[i]!, xs[i + 1]!, ys[j]!, ys[j + 1]!, zs[k]!, zs[k + 1]!];
        if (!solid(i - 1, j, k)) quad([x, y, z], [x, y, Z], [x, Y, Z], [x, Y, z]);
        if (!solid(i + 1, j, k)) quad([X, y, z], [X, Y, z], [X, Y, Z], [X, y, Z]);
        if (!solid(i, j - 1, k)) quad([x, y, z], [X, y, z], [X, y, Z], [x, y, Z]);
        if (!solid(i, j + 1, k)) quad([x, Y, z], [x, Y, Z], [X, Y, Z], [X, Y, z]);
        if (!solid(i, j, k - 1)) quad([x, y, z], [x, Y, z], [X, Y, z], [X, y, z]);
        if (!solid(i, j, k + 1)) quad([x, y, Z], [X, y, Z], [X, Y, Z], [x, Y, Z]);
      }
  return builder.done();
}

export const box = (x: number, y: number, z: number): Triangles =>
  boxes([{ low: [0, 0, 0], high: [x, y, z] }]);

/**
 * A profile of (radius, height) turned once round the z axis in so many steps. The profile runs anticlockwise
 * seen with the radius to the right and the height upwards; a radius of nought is a point on the axis. `closed`
 * joins its end to its beginning: a ring.
 */
export function turned(
  profile: readonly (readonly [number, number])[],
  steps: number,
  closed = false,
): Triangles {
  const builder = startMesh(2 * steps * profile.length);
  const at = ([r, z]: readonly [number, number], step: number): number => {
    const angle = (2 * Math.PI * (step % steps)) / steps;
    return r === 0 ? builder.point(0, 0, z) : builder.point(r * Math.cos(angle), r * Math.sin(angle), z);
  };
  const pairs = profile.map((from, i) => [from, profile[(i + 1) % profile.length]!] as const);
  for (const [from, to] of closed ? pairs : pairs.slice(0, -1))
    for (let step = 0; step < steps; step += 1) {
      const [a, b, c, d] = [at(from, step), at(from, step + 1), at(to, step + 1), at(to, step)];
      if (from[0] !== 0) builder.face(a, b, c);
      if (to[0] !== 0) builder.face(a, c, d);
    }
  return builder.done();
}

export const rod = (radius: number, length: number, steps: number): Triangles =>
  turned(
    [
      [0, 0],
      [radius, 0],
      [radius, length],
      [0, length],
    ],
    steps,
  );

export const tube = (outer: number, inner: number, length: number, steps: number): Triangles =>
  turned(
    [
      [inner, 0],
      [outer, 0],
      [outer, length],
      [inner, length],
    ],
    steps,
    true,
  );

export const ball = (radius: number, steps: number): Triangles =>
  turned(
    Array.from({ length: steps + 1 }, (_, i) => {
      const angle = Math.PI * (i / steps - 0.5);
      const end = i === 0 || i === steps;
      return [end ? 0 : radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    }),
    2 * steps,
  );

/** An outline swept through places, each with the directions of the outline's two axes there; ends closed. */
export function swept(
  outline: readonly (readonly [number, number])[],
  places: readonly { readonly at: Point; readonly across: Point; readonly up: Point }[],
): Triangles {
  const builder = startMesh(2 * outline.length * places.length);
  const ring = ({ at, across, up }: (typeof places)[number]): number[] =>
    outline.map(([a, b]) =>
      builder.point(
        at[0] + a * across[0] + b * up[0],
        at[1] + a * across[1] + b * up[1],
        at[2] + a * across[2] + b * up[2],
      ),
    );
  const rings = places.map(ring);
  const n = outline.length;
  for (let i = 0; i + 1 < rings.length; i += 1)
    for (let j = 0; j < n; j += 1) {
      const [a, b] = [rings[i]![j]!, rings[i]![(j + 1) % n]!];
      const [d, c] = [rings[i + 1]![j]!, rings[i + 1]![(j + 1) % n]!];
      builder.face(a, b, c);
      builder.face(a, c, d);
    }
  const [first, last] = [rings[0]!, rings.at(-1)!];
  for (let j = 1; j + 1 < n; j += 1) {
    builder.face(first[0]!, first[j + 1]!, first[j]!);
    builder.face(last[0]!, last[j]!, last[j + 1]!);
  }
  return builder.done();
}

/** Every point of a mesh moved by a rule. */
export function moved({ points, corners }: Triangles, rule: (at: Point) => Point): Triangles {
  const there = new Float64Array(points.length);
  for (let i = 0; i < points.length; i += 3) there.set(rule([points[i]!, points[i + 1]!, points[i + 2]!]), i);
  return { points: there, corners };
}
