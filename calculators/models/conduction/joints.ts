import { jointAfter } from './conductance.ts';
import { sizeOf, type Mesh } from './mesh.ts';
import { metalRegion, type Stuff } from './substance.ts';

/** Faces of the metal, kept because their conductances follow how much of the metal is solid. */
export interface Joints {
  readonly count: number;
  readonly axis: Uint8Array;
  /** The cell before the face. */
  readonly cell: Int32Array;
  readonly one: Float64Array;
  readonly two: Float64Array;
  readonly gap: Float64Array;
}

/** Faces between metal and something else, and those within the metal. */
export function jointsOf(mesh: Mesh, others: readonly Stuff[]): Joints {
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const axis: number[] = [];
  const cells: number[] = [];
  const found: { one: number; two: number; gap: number }[] = [];
  for (let cell = 0; cell < mesh.region.length; cell += 1)
    for (const d of [0, 1, 2] as const) {
      if (Math.floor(cell / strides[d]) % size[d] === size[d] - 1) continue;
      const here = mesh.region[cell] === metalRegion;
      const there = mesh.region[cell + strides[d]] === metalRegion;
      if (!here && !there) continue;
      axis.push(d);
      cells.push(cell);
      found.push(jointAfter(mesh, others, d, cell));
    }
  const all = (part: 'one' | 'two' | 'gap'): Float64Array => Float64Array.from(found, (joint) => joint[part]);
  return {
    count: cells.length,
    axis: Uint8Array.from(axis),
    cell: Int32Array.from(cells),
    one: all('one'),
    two: all('two'),
    gap: all('gap'),
  };
}
