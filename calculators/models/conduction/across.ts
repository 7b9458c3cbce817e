import { metalRegion } from './substance.ts';
import { metalCells, sizeOf, type Mesh } from './mesh.ts';

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
  const metal = metalCells(mesh);
  const { region } = mesh;
  const thickness = new Float64Array(metal.length).fill(Infinity);
  const cells = new Int32Array(metal.length);
  const strides = [1, size[0], size[0] * size[1]] as const;
  for (const d of [2, 1, 0] as const) {
    const { edges } = mesh.axes[d];
    const stride = strides[d];
    if (size[d] === 1) continue;
    for (let m = 0; m < metal.length; m += 1) {
      const cell = metal[m]!;
      const at = Math.floor(cell / stride) % size[d];
      const found = thickness[m]!;
      // A run that is longer than the shortest so far need not be followed to its end.
      let low = at;
      while (low > 0 && region[cell + (low - 1 - at) * stride] === metalRegion) {
        low -= 1;
        if (edges[at + 1]! - edges[low]! > found) break;
      }
      const twice = low === 0 && mirror[d] ? 2 : 1;
      let high = at;
      while (high < size[d] - 1 && region[cell + (high + 1 - at) * stride] === metalRegion) {
        high += 1;
        if (edges[high + 1]! - edges[low]! > found) break;
      }
      const across = twice * (edges[high + 1]! - edges[low]!);
      if (across > found) continue;
      thickness[m] = across;
      cells[m] = twice * (high - low + 1);
    }
  }
  // In order of their counts, and among equal counts as they come in the mesh.
  const many: number[] = [];
  for (const count of cells) many[count] = (many[count] ?? 0) + 1;
  let rank = Math.floor(leftOut * metal.length);
  let count = 0;
  while (count < many.length && rank >= (many[count] ?? 0)) rank -= many[count++] ?? 0;
  for (let m = 0; m < metal.length; m += 1)
    if (cells[m] === count && rank-- === 0) return { cells: count, thickness: thickness[m]! };
  return { cells: 0, thickness: 0 };
}
