import type { Filled } from './cells.ts';
import type { Triangles } from './triangles.ts';

/** How far from the surface: by cell for the metal, and at any place in it. */
export interface Distances {
  /** From the middle of each metal cell to the surface; nought elsewhere. */
  readonly far: Float32Array;
  /** The face nearest to each metal cell; −1 where there is none. */
  readonly face: Int32Array;
  /** Distance of any place to the surface, asking the faces nearest to the cells round it. Sets `foot`. */
  readonly at: (x: number, y: number, z: number) => number;
  /** The nearest place on the surface, from the last question. */
  readonly foot: Float64Array;
}

/**
 * Nearest faces by sweeping: cells at the surface are given their face, and each cell tries the faces its neighbours
 * were given, in the eight orders of going through the grid (Zhao, Math. Comp. 74, 2005, with faces in place of
 * distances). The distance to a face is exact, so that it is not rounded to cells.
 */
export function distancesIn(mesh: Triangles, { grid, metal }: Filled): Distances {
  const { points, corners } = mesh;
  const { size, from, spacing } = grid;
  const [nx, ny, nz] = size;
  const count = nx * ny * nz;
  const best = new Float32Array(count).fill(Infinity);
  const face = new Int32Array(count).fill(-1);
  const foot = new Float64Array(3);
  const near = (f: number, x: number, y: number, z: number): number =>
    squareToFace(points, corners, f, x, y, z, foot);
  const reach = 1.8 * spacing;
  for (let f = 0; f < corners.length / 3; f += 1) {
    const a = 3 * corners[3 * f]!;
    const b = 3 * corners[3 * f + 1]!;
    const c = 3 * corners[3 * f + 2]!;
    const ux = points[b]! - points[a]!;
    const uy = points[b + 1]! - points[a + 1]!;
    const uz = points[b + 2]! - points[a + 2]!;
    const vx = points[c]! - points[a]!;
    const vy = points[c + 1]! - points[a + 1]!;
    const vz = points[c + 2]! - points[a + 2]!;
    let mx = uy * vz - uz * vy;
    let my = uz * vx - ux * vz;
    let mz = ux * vy - uy * vx;
    const long = Math.hypot(mx, my, mz) || 1;
    mx /= long;
    my /= long;
    mz /= long;
    const low = (d: number): number =>
      Math.max(
        0,
        Math.floor((Math.min(points[a + d]!, points[b + d]!, points[c + d]!) - reach - from[d]!) / spacing),
      );
    const high = (d: number): number =>
      Math.min(
        size[d]! - 1,
        Math.floor((Math.max(points[a + d]!, points[b + d]!, points[c + d]!) + reach - from[d]!) / spacing),
      );
    const [i0, i1, j0, j1, k0, k1] = [low(0), high(0), low(1), high(1), low(2), high(2)];
    for (let k = k0; k <= k1; k += 1) {
      const z = from[2] + (k + 0.5) * spacing;
      for (let j = j0; j <= j1; j += 1) {
        const y = from[1] + (j + 0.5) * spacing;
        const plane = my * (y - points[a + 1]!) + mz * (z - points[a + 2]!);
        for (let i = i0; i <= i1; i += 1) {
          const cell = (k * ny + j) * nx + i;
          const x = from[0] + (i + 0.5) * spacing;
          if (Math.abs(plane + mx * (x - points[a]!)) > reach) continue;
          const square = near(f, x, y, z);
          if (square < best[cell]!) {
            best[cell] = square;
            face[cell] = f;
          }
        }
      }
    }
  }
  for (let order = 0; order < 8; order += 1) {
    const dx = order & 1 ? -1 : 1;
    const dy = order & 2 ? -1 : 1;
    const dz = order & 4 ? -1 : 1;
    for (let kk = 1; kk < nz - 1; kk += 1) {
      const k = dz > 0 ? kk : nz - 1 - kk;
      const z = from[2] + (k + 0.5) * spacing;
      for (let jj = 1; jj < ny - 1; jj += 1) {
        const j = dy > 0 ? jj : ny - 1 - jj;
        const y = from[1] + (j + 0.5) * spacing;
        for (let ii = 1; ii < nx - 1; ii += 1) {
          const i = dx > 0 ? ii : nx - 1 - ii;
          const cell = (k * ny + j) * nx + i;
          if (metal[cell] === 0) continue;
          const x = from[0] + (i + 0.5) * spacing;
          const one = face[cell - dx]!;
          const two = face[cell - dy * nx]!;
          const three = face[cell - dz * nx * ny]!;
          const own = face[cell]!;
          for (let n = 0; n < 3; n += 1) {
            const f = n === 0 ? one : n === 1 ? two : three;
            if (f < 0 || f === own || (n === 1 && f === one) || (n === 2 && (f === one || f === two)))
              continue;
            const square = near(f, x, y, z);
            if (square < best[cell]!) {
              best[cell] = square;
              face[cell] = f;
            }
          }
        }
      }
    }
  }
  for (let cell = 0; cell < count; cell += 1)
    best[cell] = metal[cell] === 1 && face[cell]! >= 0 ? Math.sqrt(best[cell]!) : 0;

  // Of large faces the nearest one may be nearest to no cell close by, along a sharp edge: look a cell farther.
  const wide = 4 * corners.length < count ? 3 : 2;
  const tried = new Int32Array(wide ** 3);
  const steps = Int32Array.from(tried, (_, n) => {
    const [a, b, c] = [n % wide, Math.floor(n / wide) % wide, Math.floor(n / wide ** 2)];
    return (c * ny + b) * nx + a;
  });
  const offset = wide === 3 ? 0 : 0.5;
  const at = (x: number, y: number, z: number): number => {
    const back = wide === 3 ? 1 : 0;
    const i = Math.floor((x - from[0]) / spacing - offset) - back;
    const j = Math.floor((y - from[1]) / spacing - offset) - back;
    const k = Math.floor((z - from[2]) / spacing - offset) - back;
    let least = Infinity;
    let fx = 0;
    let fy = 0;
    let fz = 0;
    let used = 0;
    // Metal has a layer of empty cells round it: only a place outside of them has neighbours off the grid.
    const inside = i >= 0 && j >= 0 && k >= 0 && i + wide <= nx && j + wide <= ny && k + wide <= nz;
    const first = (k * ny + j) * nx + i;
    let last = -1;
    for (let n = 0; n < steps.length; n += 1) {
      if (!inside) {
        const ci = i + (n % wide);
        const cj = j + (((n / wide) | 0) % wide);
        const ck = k + ((n / (wide * wide)) | 0);
        if (ci < 0 || cj < 0 || ck < 0 || ci >= nx || cj >= ny || ck >= nz) continue;
      }
      const f = face[first + steps[n]!]!;
      if (f < 0 || f === last) continue;
      last = f;
      let again = false;
      for (let t = 0; t < used; t += 1) if (tried[t] === f) again = true;
      if (again) continue;
      tried[used] = f;
      used += 1;
      const square = near(f, x, y, z);
      if (square < least) {
        least = square;
        fx = foot[0]!;
        fy = foot[1]!;
        fz = foot[2]!;
      }
    }
    foot[0] = fx;
    foot[1] = fy;
    foot[2] = fz;
    return used === 0 ? 0 : Math.sqrt(least);
  };
  return { far: best, face, at, foot };
}

/** Square of the distance of a point to a face, by the regions of its corners, edges and middle; sets the foot. */
export function squareToFace(
  points: Float64Array,
  corners: Uint32Array,
  f: number,
  x: number,
  y: number,
  z: number,
  foot: Float64Array,
): number {
  const a = 3 * corners[3 * f]!;
  const b = 3 * corners[3 * f + 1]!;
  const c = 3 * corners[3 * f + 2]!;
  const ax = points[a]!;
  const ay = points[a + 1]!;
  const az = points[a + 2]!;
  const bx = points[b]! - ax;
  const by = points[b + 1]! - ay;
  const bz = points[b + 2]! - az;
  const cx = points[c]! - ax;
  const cy = points[c + 1]! - ay;
  const cz = points[c + 2]! - az;
  const px = x - ax;
  const py = y - ay;
  const pz = z - az;
  const d1 = bx * px + by * py + bz * pz;
  const d2 = cx * px + cy * py + cz * pz;
  let s = 0;
  let t = 0;
  if (d1 > 0 || d2 > 0) {
    const bb = bx * bx + by * by + bz * bz;
    const bc = bx * cx + by * cy + bz * cz;
    const cc = cx * cx + cy * cy + cz * cz;
    const d3 = d1 - bb;
    const d4 = d2 - bc;
    const d5 = d1 - bc;
    const d6 = d2 - cc;
    const va = d3 * d6 - d5 * d4;
    const vb = d5 * d2 - d1 * d6;
    const vc = d1 * d4 - d3 * d2;
    if (d3 >= 0 && d4 <= d3) s = 1;
    else if (d6 >= 0 && d5 <= d6) t = 1;
    else if (vc <= 0 && d1 >= 0 && d3 <= 0) s = d1 / (d1 - d3);
    else if (vb <= 0 && d2 >= 0 && d6 <= 0) t = d2 / (d2 - d6);
    else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
      t = (d4 - d3) / (d4 - d3 + d5 - d6);
      s = 1 - t;
    } else {
      const sum = va + vb + vc;
      s = vb / sum;
      t = vc / sum;
    }
  }
  const qx = s * bx + t * cx;
  const qy = s * by + t * cy;
  const qz = s * bz + t * cz;
  foot[0] = ax + qx;
  foot[1] = ay + qy;
  foot[2] = az + qz;
  return (px - qx) ** 2 + (py - qy) ** 2 + (pz - qz) ** 2;
}
