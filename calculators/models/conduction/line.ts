import { axis, even, flat, graded, type AxisShape } from './axis.ts';
import type { Mesh } from './mesh.ts';

export interface Line {
  readonly shape: AxisShape;
  /** Half-thickness or radius of the metal, m. */
  readonly half: number;
  /** Outside of the mould from the middle, m. */
  readonly outer: number;
  /** Cells of metal from the middle to the face. */
  readonly cells: number;
  /** Width of the first cell of mould, m, and how much wider each next one is. */
  readonly first: number;
  readonly ratio: number;
}

/** A plate (half of it), a long bar or a ball in its mould: metal evenly divided, mould graded. Region 1 is the mould. */
export function lineMesh({ shape, half, outer, cells, first, ratio }: Line): Mesh {
  const metal = even(0, half, cells);
  const mould = graded(half, outer, first, ratio).slice(1);
  const region = new Uint8Array(cells + mould.length);
  region.fill(1, cells);
  return { axes: [axis([...metal, ...mould], shape), flat, flat], region };
}
