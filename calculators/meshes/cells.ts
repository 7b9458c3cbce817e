import { boundsOf } from './measure.ts';
import type { Point, Triangles } from './triangles.ts';

/** Equal cubes over the box of a part, with one empty layer round it. x runs fastest. */
export interface Grid {
  readonly size: readonly [number, number, number];
  /** The low corner of the first cell. */
  readonly from: Point;
  /** Edge of a cell. */
  readonly spacing: number;
}

export interface Filled {
  readonly grid: Grid;
  /** One where the middle of a cell is metal. */
  readonly metal: Uint8Array;
  readonly cells: number;
  /** Metal cells about which the three directions did not agree, or no ray could say. */
  readonly doubtful: number;
  /** How many bodies a cell lies in, where more than one. */
  readonly shared: ReadonlyMap<number, number>;
}

export const cellAt = ({ size }: Grid, i: number, j: number, k: number): number =>
  (k * size[1] + j) * size[0] + i;

export function centreOfCell({ size, from, spacing }: Grid, cell: number): Point {
  const i = cell % size[0];
  const j = Math.floor(cell / size[0]) % size[1];
  const k = Math.floor(cell / (size[0] * size[1]));
  return [from[0] + (i + 0.5) * spacing, from[1] + (j + 0.5) * spacing, from[2] + (k + 0.5) * spacing];
}

/** The cell a place lies in; −1 outside. */
export function cellOf({ size, from, spacing }: Grid, [x, y, z]: Point): number {
  const i = Math.floor((x - from[0]) / spacing);
  const j = Math.floor((y - from[1]) / spacing);
  const k = Math.floor((z - from[2]) / spacing);
  return i < 0 || j < 0 || k < 0 || i >= size[0] || j >= size[1] || k >= size[2]
    ? -1
    : (k * size[1] + j) * size[0] + i;
}

/** The grid with this spacing round a mesh. */
export function gridRound({ points }: Triangles, spacing: number): Grid {
  const [low, high] = boundsOf(points);
  const size = [0, 1, 2].map((d) => Math.max(1, Math.ceil((high[d]! - low[d]!) / spacing - 1e-9)) + 2);
  // Off the middle by odd parts of a cell: a drawing in round numbers must not have its faces on middles or edges.
  const odd = [0.0371, 0.0533, 0.0719];
  const from = [0, 1, 2].map((d) => (low[d]! + high[d]! - size[d]! * spacing) / 2 + odd[d]! * spacing);
  return { size: size as unknown as Grid['size'], from: from as unknown as Point, spacing };
}

/** The finest spacing with which a mesh's box has no more than so many cells. */
export function spacingFor(mesh: Triangles, most: number): number {
  const [low, high] = boundsOf(mesh.points);
  const extent = [0, 1, 2].map((d) => high[d]! - low[d]!);
  const cellsAt = (spacing: number): number =>
    extent.reduce((product, x) => product * (Math.ceil(x / spacing) + 2), 1);
  let spacing = Math.max(...extent) / 1000;
  while (cellsAt(spacing) > most) spacing *= 1.02;
  return spacing;
}

/**
 * Fills a part with cells: rays through the middles of all cells along each of the three axes, a cell is metal
 * where the surface has been entered more often than left. A ray that does not come out where it went in, because
 * the surface has a fault there, is not asked; the rest decide by majority.
 */
export function fillWithCells(mesh: Triangles, grid: Grid): Filled {
  const count = grid.size[0] * grid.size[1] * grid.size[2];
  const asked = new Uint8Array(count);
  const inside = new Uint8Array(count);
  const shared = new Map<number, number>();
  for (const axis of [0, 1, 2] as const) castAlong(mesh, grid, axis, asked, inside, shared);
  const metal = new Uint8Array(count);
  let cells = 0;
  let doubtful = 0;
  for (let cell = 0; cell < count; cell += 1) {
    if (2 * inside[cell]! <= asked[cell]!) continue;
    metal[cell] = 1;
    cells += 1;
    if (inside[cell] !== asked[cell] || asked[cell] === 0) doubtful += 1;
  }
  return { grid, metal, cells, doubtful, shared };
}

function castAlong(
  mesh: Triangles,
  grid: Grid,
  axis: 0 | 1 | 2,
  asked: Uint8Array,
  inside: Uint8Array,
  shared: Map<number, number>,
): void {
  const { points, corners } = mesh;
  const { size, from, spacing } = grid;
  const u = (axis + 1) % 3;
  const v = (axis + 2) % 3;
  const [nu, nv, nt] = [size[u]!, size[v]!, size[axis]!];
  // Off the middles by an odd part of a cell, so that rays do not run along edges of what was drawn in round numbers.
  const shift = 3.7e-5 * spacing;
  const [u0, v0] = [from[u]! + 0.5 * spacing + shift, from[v]! + 0.5 * spacing + 1.31 * shift];
  const hits = new Uint32Array(nu * nv + 1);
  let times = new Float64Array(0);
  let signs = new Int8Array(0);
  for (const pass of [0, 1] as const) {
    const fill = pass === 1 ? hits.slice(0, nu * nv) : hits;
    for (let f = 0; f < corners.length; f += 3) {
      const a = 3 * corners[f]!;
      const b = 3 * corners[f + 1]!;
      const c = 3 * corners[f + 2]!;
      const au = points[a + u]!;
      const av = points[a + v]!;
      const bu = points[b + u]!;
      const bv = points[b + v]!;
      const cu = points[c + u]!;
      const cv = points[c + v]!;
      const area = (bu - au) * (cv - av) - (cu - au) * (bv - av);
      if (area === 0) continue;
      const i0 = Math.max(0, Math.ceil((Math.min(au, bu, cu) - u0) / spacing));
      const i1 = Math.min(nu - 1, Math.floor((Math.max(au, bu, cu) - u0) / spacing));
      const j0 = Math.max(0, Math.ceil((Math.min(av, bv, cv) - v0) / spacing));
      const j1 = Math.min(nv - 1, Math.floor((Math.max(av, bv, cv) - v0) / spacing));
      for (let j = j0; j <= j1; j += 1) {
        const pv = v0 + j * spacing;
        for (let i = i0; i <= i1; i += 1) {
          const pu = u0 + i * spacing;
          // The same edge gives the same answer from both of its faces: it is always asked from its lower point.
          const ab = side(a, b, au, av, bu, bv, pu, pv);
          const bc = side(b, c, bu, bv, cu, cv, pu, pv);
          if (ab !== bc) continue;
          if (side(c, a, cu, cv, au, av, pu, pv) !== ab) continue;
          const ray = j * nu + i;
          if (pass === 0) {
            hits[ray + 1]! += 1;
            continue;
          }
          const wb = ((pu - au) * (cv - av) - (cu - au) * (pv - av)) / area;
          const wc = ((bu - au) * (pv - av) - (pu - au) * (bv - av)) / area;
          const at = fill[ray]!;
          const t = points[a + axis]!;
          times[at] = t + wb * (points[b + axis]! - t) + wc * (points[c + axis]! - t);
          signs[at] = area < 0 ? 1 : -1;
          fill[ray] = at + 1;
        }
      }
    }
    if (pass === 0) {
      for (let ray = 0; ray < nu * nv; ray += 1) hits[ray + 1]! += hits[ray]!;
      times = new Float64Array(hits[nu * nv]!);
      signs = new Int8Array(hits[nu * nv]!);
    }
  }
  const strides = [1, size[0], size[0] * size[1]] as const;
  const first = from[axis]! + 0.5 * spacing;
  for (let ray = 0; ray < nu * nv; ray += 1) {
    const [start, end] = [hits[ray]!, hits[ray + 1]!];
    sortHits(times, signs, start, end);
    let winding = 0;
    for (let h = start; h < end; h += 1) winding += signs[h]!;
    if (winding !== 0) continue;
    let cell = (ray % nu) * strides[u]! + Math.floor(ray / nu) * strides[v]!;
    let at = start;
    for (let k = 0; k < nt; k += 1, cell += strides[axis]) {
      const t = first + k * spacing;
      while (at < end && times[at]! <= t) {
        winding += signs[at]!;
        at += 1;
      }
      asked[cell]! += 1;
      if (winding > 0) inside[cell]! += 1;
      if (winding > 1 && axis === 0) shared.set(cell, winding);
    }
  }
}

/** Which side of an edge a point lies on; true to the left going from the first to the second. */
function side(
  p: number,
  q: number,
  pu: number,
  pv: number,
  qu: number,
  qv: number,
  u: number,
  v: number,
): boolean {
  return p < q
    ? (qu - pu) * (v - pv) - (u - pu) * (qv - pv) > 0
    : !((pu - qu) * (v - qv) - (u - qu) * (pv - qv) > 0);
}

function sortHits(times: Float64Array, signs: Int8Array, start: number, end: number): void {
  if (end - start > 64) {
    const order = Array.from({ length: end - start }, (_, i) => start + i).sort(
      (a, b) => times[a]! - times[b]!,
    );
    const t = order.map((i) => times[i]!);
    const s = order.map((i) => signs[i]!);
    times.set(t, start);
    signs.set(s, start);
    return;
  }
  for (let i = start + 1; i < end; i += 1) {
    const t = times[i]!;
    const s = signs[i]!;
    let j = i - 1;
    for (; j >= start && times[j]! > t; j -= 1) {
      times[j + 1] = times[j]!;
      signs[j + 1] = signs[j]!;
    }
    times[j + 1] = t;
    signs[j + 1] = s;
  }
}
