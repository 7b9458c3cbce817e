import { fillWithCells, type Filled, type Grid } from './cells.ts';
import { boundsOf } from './measure.ts';
import { shareSurface } from './surface.ts';
import type { Triangles } from './triangles.ts';

/** A part as equal cubes with mould round it, for following the heat. Unit of the mesh; x runs fastest. */
export interface SolverCells {
  readonly size: readonly [number, number, number];
  /** Low corner of the first. */
  readonly from: readonly [number, number, number];
  readonly spacing: number;
  /** 0 metal, 1 mould. */
  readonly region: Uint8Array<ArrayBuffer>;
  /** By metal cell at the surface: true area over the area of its faces against the mould; nought elsewhere. */
  readonly share: Float32Array<ArrayBuffer>;
}

/** Cells to either side over which surface and stairs are summed. */
const reach = 1;

/** Cells that a part with so much mould round it comes to. */
export function cellsWith({ points }: Triangles, spacing: number, wall: number): number {
  const [low, high] = boundsOf(points);
  return [0, 1, 2].reduce((product, d) => product * (high[d]! - low[d]! + 2 * wall), 1) / spacing ** 3;
}

/** The finest spacing, no finer than `wanted`, with which mould and part come to no more than so many cells. */
export function spacingWithin(mesh: Triangles, wanted: number, wall: number, most: number): number {
  let spacing = wanted;
  while (cellsWith(mesh, spacing, wall) > most) spacing *= 1.02;
  return spacing;
}

/**
 * Cells for the solver, and what of the metal's volume they leave out or add. `mesh` decides what is metal, `skin`
 * which of its faces meet the mould. A stair's faces share out the true area of the slope they stand for.
 */
export function solverCells(
  mesh: Triangles,
  skin: Triangles,
  spacing: number,
  wall: number,
): { readonly filled: Filled; readonly cells: SolverCells; readonly volume: number } {
  const grid = gridWith(mesh, spacing, wall);
  const filled = fillWithCells(mesh, grid);
  const { metal } = filled;
  const surface = shareSurface(skin, filled);
  const region = new Uint8Array(metal.length);
  for (let cell = 0; cell < metal.length; cell += 1) region[cell] = metal[cell] === 1 ? 0 : 1;
  const [nx, ny] = grid.size;
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  const faces = new Uint8Array(metal.length);
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1) for (const step of steps) if (metal[cell + step] !== 1) faces[cell]! += 1;
  // Over a cell and those round it: alone, a stair has all of its slope's surface or none, as it happens.
  const share = new Float32Array(metal.length);
  const face = spacing * spacing;
  let counted = 0;
  for (let cell = 0; cell < metal.length; cell += 1) {
    if (faces[cell] === 0) continue;
    let area = 0;
    let stairs = 0;
    for (let c = -reach; c <= reach; c += 1)
      for (let b = -reach; b <= reach; b += 1)
        for (let a = -reach; a <= reach; a += 1) {
          const other = cell + (c * ny + b) * nx + a;
          area += surface.area[other] ?? 0;
          stairs += faces[other] ?? 0;
        }
    share[cell] = Math.min(1.2, Math.max(0.3, area / (stairs * face)));
    counted += share[cell]! * faces[cell]! * face;
  }
  const right = counted > 0 ? surface.areaOfAll / counted : 1;
  for (let cell = 0; cell < metal.length; cell += 1) share[cell]! *= right;
  const { size, from } = grid;
  return { filled, cells: { size, from, spacing, region, share }, volume: surface.volumeOfAll };
}

function gridWith({ points }: Triangles, spacing: number, wall: number): Grid {
  const [low, high] = boundsOf(points);
  const around = Math.max(1, Math.ceil(wall / spacing));
  const along = [0, 1, 2].map((d) => Math.max(1, Math.ceil((high[d]! - low[d]!) / spacing - 1e-9)));
  // Off the middle by odd parts of a cell, as where a part is measured.
  const odd = [0.0371, 0.0533, 0.0719];
  const from = [0, 1, 2].map(
    (d) => (low[d]! + high[d]!) / 2 - (along[d]! / 2 + around) * spacing + odd[d]! * spacing,
  );
  return {
    size: along.map((n) => n + 2 * around) as unknown as Grid['size'],
    from: from as unknown as Grid['from'],
    spacing,
  };
}
