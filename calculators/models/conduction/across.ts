import { metalRegion } from './substance.ts';
import { indexOf, metalCells, sizeOf, type Mesh } from './mesh.ts';

/** Cells that span the thinnest section of the metal, and how thick that is. */
export interface Across {
  readonly cells: number;
  /** m. */
  readonly thickness: number;
}

/**
 * At each cell the shortest run of metal through it is its thickness; the thinnest section is what all but
 * that share of the metal exceeds, so that the rim of a curve is not mistaken for one. `mirror`: the mesh
 * begins at planes of symmetry, across which a run goes on.
 */
export function acrossThinnest(mesh: Mesh, mirror: readonly boolean[], leftOut = 0): Across {
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const cells = metalCells(mesh);
  const found: Across[] = [];
  const isMetal = (cell: number): boolean => mesh.region[cell] === metalRegion;
  for (const cell of cells) {
    const at = indexOf(cell, size);
    let least: Across = { cells: Infinity, thickness: Infinity };
    for (const d of [0, 1, 2] as const) {
      if (size[d] === 1) continue;
      let low = at[d];
      let high = at[d];
      while (low > 0 && isMetal(cell + (low - 1 - at[d]) * strides[d])) low -= 1;
      while (high < size[d] - 1 && isMetal(cell + (high + 1 - at[d]) * strides[d])) high += 1;
      const twice = low === 0 && mirror[d] ? 2 : 1;
      const { edges } = mesh.axes[d];
      const thickness = twice * (edges[high + 1]! - edges[low]!);
      if (thickness < least.thickness) least = { cells: twice * (high - low + 1), thickness };
    }
    found.push(least);
  }
  found.sort((a, b) => a.cells - b.cells);
  return found[Math.floor(leftOut * found.length)] ?? { cells: 0, thickness: 0 };
}
