import { cellOf, centreOfCell, type Filled } from './cells.ts';
import type { Triangles } from './triangles.ts';

/** The surface and the volume of a part, shared out to its cells. */
export interface Surface {
  /** By cell: area of the surface that cools it. */
  readonly area: Float64Array;
  /** By cell: volume of metal, not rounded to whole cells. */
  readonly volume: Float64Array;
  /** Sums over the part: what bodies share counts once. */
  readonly areaOfAll: number;
  readonly volumeOfAll: number;
}

/**
 * Small pieces of every face are given to the cell half a cell behind them. A piece lying nearer to the middle of
 * its cell than half a cell takes volume from it, one lying farther adds some: so a plate of 4.7 cells is not one of
 * 5. Give it the skin of the part.
 */
export function shareSurface(mesh: Triangles, { grid, metal }: Filled): Surface {
  const { points, corners } = mesh;
  const { spacing: h, size } = grid;
  const [nx, ny] = size;
  const area = new Float64Array(metal.length);
  const volume = new Float64Array(metal.length);
  let all = 0;
  let given = 0;
  for (let cell = 0; cell < metal.length; cell += 1) if (metal[cell] === 1) volume[cell] = h ** 3;
  const nearby = (cell: number): number => {
    let best = Infinity;
    let found = -1;
    for (let c = -1; c <= 1; c += 1)
      for (let b = -1; b <= 1; b += 1)
        for (let a = -1; a <= 1; a += 1) {
          const other = cell + (c * ny + b) * nx + a;
          const far = a * a + b * b + c * c;
          if (metal[other] === 1 && far < best) {
            best = far;
            found = other;
          }
        }
    return found;
  };
  const finest = (0.6 * h) ** 2;
  const put = (x: number, y: number, z: number, n0: number, n1: number, n2: number, piece: number): void => {
    let cell = cellOf(grid, [x - 0.5 * h * n0, y - 0.5 * h * n1, z - 0.5 * h * n2]);
    if (cell < 0) return;
    all += piece;
    if (metal[cell] === 0) cell = nearby(cell);
    if (cell < 0) return;
    const middle = centreOfCell(grid, cell);
    const beyond = (x - middle[0]) * n0 + (y - middle[1]) * n1 + (z - middle[2]) * n2;
    area[cell]! += piece;
    given += piece;
    volume[cell]! += piece * Math.max(-0.6 * h, Math.min(0.6 * h, beyond - 0.5 * h));
  };
  for (let f = 0; f < corners.length; f += 3) {
    const [a, b, c] = [3 * corners[f]!, 3 * corners[f + 1]!, 3 * corners[f + 2]!];
    const u = [
      points[b]! - points[a]!,
      points[b + 1]! - points[a + 1]!,
      points[b + 2]! - points[a + 2]!,
    ] as const;
    const v = [
      points[c]! - points[a]!,
      points[c + 1]! - points[a + 1]!,
      points[c + 2]! - points[a + 2]!,
    ] as const;
    const m = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
    const double = Math.hypot(m[0], m[1], m[2]);
    if (double === 0) continue;
    const [n0, n1, n2] = [m[0] / double, m[1] / double, m[2] / double];
    /** Cuts across the longest side until no side is longer than half a cell. */
    const pieces = (
      ax: number,
      ay: number,
      az: number,
      bx: number,
      by: number,
      bz: number,
      cx: number,
      cy: number,
      cz: number,
      own: number,
    ): void => {
      const ab = (ax - bx) ** 2 + (ay - by) ** 2 + (az - bz) ** 2;
      const bc = (bx - cx) ** 2 + (by - cy) ** 2 + (bz - cz) ** 2;
      const ca = (cx - ax) ** 2 + (cy - ay) ** 2 + (cz - az) ** 2;
      if (ab <= finest && bc <= finest && ca <= finest) {
        put((ax + bx + cx) / 3, (ay + by + cy) / 3, (az + bz + cz) / 3, n0, n1, n2, own);
      } else if (ab >= bc && ab >= ca) {
        const [mx, my, mz] = [(ax + bx) / 2, (ay + by) / 2, (az + bz) / 2];
        pieces(ax, ay, az, mx, my, mz, cx, cy, cz, own / 2);
        pieces(mx, my, mz, bx, by, bz, cx, cy, cz, own / 2);
      } else if (bc >= ca) {
        const [mx, my, mz] = [(bx + cx) / 2, (by + cy) / 2, (bz + cz) / 2];
        pieces(ax, ay, az, bx, by, bz, mx, my, mz, own / 2);
        pieces(ax, ay, az, mx, my, mz, cx, cy, cz, own / 2);
      } else {
        const [mx, my, mz] = [(ax + cx) / 2, (ay + cy) / 2, (az + cz) / 2];
        pieces(ax, ay, az, bx, by, bz, mx, my, mz, own / 2);
        pieces(mx, my, mz, bx, by, bz, cx, cy, cz, own / 2);
      }
    };
    pieces(
      points[a]!,
      points[a + 1]!,
      points[a + 2]!,
      points[b]!,
      points[b + 1]!,
      points[b + 2]!,
      points[c]!,
      points[c + 1]!,
      points[c + 2]!,
      double / 2,
    );
  }
  let volumeOfAll = 0;
  for (let cell = 0; cell < metal.length; cell += 1) {
    if (metal[cell] === 0) continue;
    area[cell]! *= given > 0 ? all / given : 1;
    volume[cell] = Math.max(volume[cell]!, 0.02 * h ** 3);
    volumeOfAll += volume[cell]!;
  }
  return { area, volume, areaOfAll: all, volumeOfAll };
}
