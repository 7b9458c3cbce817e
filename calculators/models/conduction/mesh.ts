import type { Axis } from './axis.ts';
import { metalRegion } from './substance.ts';

/** Boxes of cells along three axes, x fastest; unused axes hold one cell. */
export interface Mesh {
  readonly axes: readonly [Axis, Axis, Axis];
  /** What each cell is made of. */
  readonly region: Uint8Array;
  /**
   * For stairs that stand for a slope or a curve: the part of a stair's face, across `axis` after that cell,
   * that is true surface. Without it every face is.
   */
  readonly share?: (axis: 0 | 1 | 2, cell: number) => number;
}

export type Place = readonly [x: number, y: number, z: number];
export type Three = readonly [number, number, number];

export const sizeOf = ({ axes }: Pick<Mesh, 'axes'>): Three => [
  axes[0].centres.length,
  axes[1].centres.length,
  axes[2].centres.length,
];

/** Numbers of a cell along each axis. */
export function indexOf(cell: number, [nx, ny]: Three): Three {
  return [cell % nx, Math.floor(cell / nx) % ny, Math.floor(cell / (nx * ny))];
}

/** Middle of a cell, m. */
export function centreOf(mesh: Mesh, cell: number): Place {
  const [i, j, k] = indexOf(cell, sizeOf(mesh));
  const [x, y, z] = mesh.axes;
  return [x.centres[i]!, y.centres[j]!, z.centres[k]!];
}

/** m³, or m³ for each metre or square metre of the axes that are left out. */
export function volumeOf({ axes: [x, y, z] }: Mesh, cell: number): number {
  const nx = x.size.length;
  const ny = y.size.length;
  const row = Math.floor(cell / nx);
  return x.size[cell - nx * row]! * y.size[row % ny]! * z.size[Math.floor(row / ny)]!;
}

/** The cell a place lies in; outside the mesh, the nearest. */
export function cellAt(mesh: Mesh, place: readonly number[]): number {
  const [nx, ny] = sizeOf(mesh);
  const along = mesh.axes.map(({ edges, centres }, d) => {
    const at = place[d] ?? 0;
    let low = 0;
    let high = centres.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (at >= edges[middle + 1]!) low = middle + 1;
      else high = middle;
    }
    return low;
  });
  return along[0]! + nx * (along[1]! + ny * along[2]!);
}

/** Cells of metal, in the order of the mesh. */
export function metalCells({ region }: Pick<Mesh, 'region'>): Int32Array {
  // From the first to the last of them, which the browser finds quicker than a loop that is new to it.
  const first = region.indexOf(metalRegion);
  const end = region.lastIndexOf(metalRegion) + 1;
  let count = 0;
  for (let cell = Math.max(0, first); cell < end; cell += 1) if (region[cell] === metalRegion) count += 1;
  const cells = new Int32Array(count);
  for (let cell = first, n = 0; n < count; cell += 1) if (region[cell] === metalRegion) cells[n++] = cell;
  return cells;
}
