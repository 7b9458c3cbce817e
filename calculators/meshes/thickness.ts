import type { Filled } from './cells.ts';
import type { Distances } from './distance.ts';

/**
 * How thick the metal is at every cell: the width of the largest ball that fits inside the part and covers the cell
 * (Hildebrand, T.; Rüegsegger, P., J. Microscopy 185, 1997). The balls are found from the exact distance to the
 * faces, so that they do not come in whole cells. A ball counts when it touches the surface on two sides that face
 * one another, or when no neighbour's is larger: the small balls that fit into an edge do not make the edge thin.
 */
export interface Thickness {
  /** By cell; nought where there is no metal. */
  readonly thick: Float32Array;
  readonly balls: number;
}

/** Cosine of the least angle between the two touching places, seen from the middle of the ball: 100°. */
const facing = Math.cos((100 * Math.PI) / 180);

export function thicknessIn({ grid, metal }: Filled, { far, at, foot }: Distances): Thickness {
  const { size, from, spacing: h } = grid;
  const [nx, ny, nz] = size;
  const found: number[] = [];
  const reach = 0.75 * h;
  const slack = 0.01 * h;
  /** No place is farther from the surface than its cell's middle is, and from there to it. */
  const bound = (x: number, y: number, z: number): number => {
    const i = Math.floor((x - from[0]) / h);
    const j = Math.floor((y - from[1]) / h);
    const k = Math.floor((z - from[2]) / h);
    if (i < 0 || j < 0 || k < 0 || i >= nx || j >= ny || k >= nz) return Infinity;
    const dx = x - from[0] - (i + 0.5) * h;
    const dy = y - from[1] - (j + 0.5) * h;
    const dz = z - from[2] - (k + 0.5) * h;
    return far[(k * ny + j) * nx + i]! + Math.sqrt(dx * dx + dy * dy + dz * dz);
  };
  for (let k = 1; k < nz - 1; k += 1)
    for (let j = 1; j < ny - 1; j += 1)
      for (let i = 1; i < nx - 1; i += 1) {
        const cell = (k * ny + j) * nx + i;
        if (metal[cell] === 0) continue;
        const x = from[0] + (i + 0.5) * h;
        const y = from[1] + (j + 0.5) * h;
        const z = from[2] + (k + 0.5) * h;
        const own = at(x, y, z);
        // On the surface itself the way inwards is not known; a neighbour's ball covers the cell.
        if (!(own > 0.05 * h)) continue;
        const [px, py, pz] = [foot[0]!, foot[1]!, foot[2]!];
        const [ux, uy, uz] = [(x - px) / own, (y - py) / own, (z - pz) / own];
        const fits = (r: number): boolean => {
          const [bx, by, bz] = [px + r * ux, py + r * uy, pz + r * uz];
          return bound(bx, by, bz) >= r - slack && at(bx, by, bz) >= r - slack;
        };
        if (fits(own + reach)) continue;
        let [low, high] = [own, own + reach];
        for (let step = 0; step < 6; step += 1) {
          const middle = (low + high) / 2;
          if (fits(middle)) low = middle;
          else high = middle;
        }
        // What is thinner than a cell is not seen by cells.
        if (low < 0.4 * h) continue;
        const [cx, cy, cz] = [px + low * ux, py + low * uy, pz + low * uz];
        // Just past the largest ball the nearest place is the one on the other side.
        const past = high + slack;
        const [x2, y2, z2] = [px + past * ux, py + past * uy, pz + past * uz];
        at(x2, y2, z2);
        const [qx, qy, qz] = [foot[0]! - x2, foot[1]! - y2, foot[2]! - z2];
        const cosine = -(ux * qx + uy * qy + uz * qz) / (Math.hypot(qx, qy, qz) || 1);
        if (cosine <= facing) found.push(cx, cy, cz, low);
        else if (isPeak(far, cell, nx, ny, 0.05 * h)) found.push(...climbed(at, [cx, cy, cz], h));
      }
  return paint(grid, metal, Float64Array.from(found));
}

function isPeak(far: Float32Array, cell: number, nx: number, ny: number, slack: number): boolean {
  const own = far[cell]! + slack;
  for (let c = -1; c <= 1; c += 1)
    for (let b = -1; b <= 1; b += 1)
      for (let a = -1; a <= 1; a += 1) if (far[cell + (c * ny + b) * nx + a]! > own) return false;
  return true;
}

/** The middle moved to where the ball is largest, and its radius. */
function climbed(
  at: Distances['at'],
  start: readonly [number, number, number],
  h: number,
): [number, number, number, number] {
  let [x, y, z] = start;
  let r = at(x, y, z);
  for (let step = 0.4 * h, tries = 0; step > 0.02 * h && tries < 40; tries += 1) {
    let better: [number, number, number] | undefined;
    for (let n = 0; n < 27; n += 1) {
      const [a, b, c] = [(n % 3) - 1, (Math.floor(n / 3) % 3) - 1, Math.floor(n / 9) - 1];
      const size = Math.hypot(a, b, c);
      if (size === 0) continue;
      const [tx, ty, tz] = [x + (a * step) / size, y + (b * step) / size, z + (c * step) / size];
      const there = at(tx, ty, tz);
      if (there > r + 1e-3 * step) {
        r = there;
        better = [tx, ty, tz];
      }
    }
    if (better) [x, y, z] = better;
    else step /= 2;
  }
  return [x, y, z, r];
}

/** The largest balls first: each cell keeps the first ball that covers it. */
function paint(grid: Filled['grid'], metal: Uint8Array, balls: Float64Array): Thickness {
  const { size, from, spacing: h } = grid;
  const [nx, ny, nz] = size;
  const count = balls.length / 4;
  const order = Uint32Array.from({ length: count }, (_, b) => b).sort(
    (a, b) => balls[4 * b + 3]! - balls[4 * a + 3]!,
  );
  const owner = new Int32Array(metal.length).fill(-1);
  const thick = new Float32Array(metal.length);
  let used = 0;
  for (const ball of order) {
    const [x, y, z, r] = [balls[4 * ball]!, balls[4 * ball + 1]!, balls[4 * ball + 2]!, balls[4 * ball + 3]!];
    const [ci, cj, ck] = [x - from[0], y - from[1], z - from[2]].map((d) => d / h) as [
      number,
      number,
      number,
    ];
    const middle = (Math.floor(ck) * ny + Math.floor(cj)) * nx + Math.floor(ci);
    const kept = owner[middle]!;
    if (kept >= 0) {
      const b = 4 * kept;
      if (Math.hypot(balls[b]! - x, balls[b + 1]! - y, balls[b + 2]! - z) + r <= balls[b + 3]! + 0.3 * h)
        continue;
    }
    used += 1;
    const cover = r / h + 0.25;
    for (let k = Math.max(0, Math.ceil(ck - cover - 0.5)); k <= Math.min(nz - 1, ck + cover - 0.5); k += 1)
      for (
        let j = Math.max(0, Math.ceil(cj - cover - 0.5));
        j <= Math.min(ny - 1, cj + cover - 0.5);
        j += 1
      ) {
        const left = cover * cover - (k + 0.5 - ck) ** 2 - (j + 0.5 - cj) ** 2;
        if (left < 0) continue;
        const half = Math.sqrt(left);
        const row = (k * ny + j) * nx;
        const end = Math.min(nx - 1, ci + half - 0.5);
        for (let i = Math.max(0, Math.ceil(ci - half - 0.5)); i <= end; i += 1) {
          const cell = row + i;
          if (owner[cell]! >= 0 || metal[cell] === 0) continue;
          owner[cell] = ball;
          thick[cell] = 2 * r;
        }
      }
  }
  growInto(thick, metal, nx, ny);
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1 && thick[cell] === 0) thick[cell] = h;
  return { thick, balls: used };
}

/** Corners no ball reaches are as thick as what is next to them. */
function growInto(thick: Float32Array, metal: Uint8Array, nx: number, ny: number): void {
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  let front: number[] = [];
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1 && thick[cell] === 0) front.push(cell);
  while (front.length > 0) {
    const left: number[] = [];
    const found: [number, number][] = [];
    for (const cell of front) {
      let most = 0;
      for (const step of steps) most = Math.max(most, thick[cell + step] ?? 0);
      if (most > 0) found.push([cell, most]);
      else left.push(cell);
    }
    if (found.length === 0) break;
    for (const [cell, value] of found) thick[cell] = value;
    front = left;
  }
}
