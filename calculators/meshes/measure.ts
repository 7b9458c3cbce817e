import type { Point, Triangles } from './triangles.ts';

/** What follows from the faces alone, in the unit of the mesh. */
export interface Measures {
  /** Enclosed volume; right when the surface is closed and every face looks outwards. */
  readonly volume: number;
  readonly area: number;
  readonly low: Point;
  readonly high: Point;
  /** Centre of the enclosed volume: where the part balances. */
  readonly centre: Point;
}

/**
 * Volume and centre by adding up the tetrahedra between each face and the middle of the box (divergence theorem),
 * area by adding up the faces. Units cubed and squared.
 */
export function measure({ points, corners }: Triangles): Measures {
  const [low, high] = boundsOf(points);
  const mid = [0, 1, 2].map((d) => (low[d]! + high[d]!) / 2);
  const [mx, my, mz] = mid as [number, number, number];
  let six = 0;
  let area = 0;
  let sx = 0;
  let sy = 0;
  let sz = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const a = 3 * corners[i]!;
    const b = 3 * corners[i + 1]!;
    const c = 3 * corners[i + 2]!;
    const ax = points[a]! - mx;
    const ay = points[a + 1]! - my;
    const az = points[a + 2]! - mz;
    const bx = points[b]! - mx;
    const by = points[b + 1]! - my;
    const bz = points[b + 2]! - mz;
    const cx = points[c]! - mx;
    const cy = points[c + 1]! - my;
    const cz = points[c + 2]! - mz;
    const part = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    six += part;
    sx += part * (ax + bx + cx);
    sy += part * (ay + by + cy);
    sz += part * (az + bz + cz);
    const ux = bx - ax;
    const uy = by - ay;
    const uz = bz - az;
    const vx = cx - ax;
    const vy = cy - ay;
    const vz = cz - az;
    area += Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2);
  }
  const centre: Point =
    six === 0 ? [mx, my, mz] : [mx + sx / (4 * six), my + sy / (4 * six), mz + sz / (4 * six)];
  return { volume: six / 6, area: area / 2, low, high, centre };
}

export function boundsOf(points: Float64Array): readonly [low: Point, high: Point] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 3)
    for (let d = 0; d < 3; d += 1) {
      const x = points[i + d]!;
      if (x < low[d]!) low[d] = x;
      if (x > high[d]!) high[d] = x;
    }
  return [low as unknown as Point, high as unknown as Point];
}

export const extentOf = ({ low, high }: Pick<Measures, 'low' | 'high'>): Point => [
  high[0] - low[0],
  high[1] - low[1],
  high[2] - low[2],
];
