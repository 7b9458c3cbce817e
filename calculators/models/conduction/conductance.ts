import { indexOf, sizeOf, type Mesh } from './mesh.ts';
import { metalRegion, type Stuff } from './substance.ts';

/**
 * Heat that flows from a cell to the next along an axis, W for each K between their middles: the two half
 * cells and the gap at the face in series. The gap counts only the true part of a stair's face.
 */
export function conductanceAcross(
  mesh: Mesh,
  others: readonly Stuff[],
  d: 0 | 1 | 2,
  cell: number,
  next: number,
  k: number,
  kNext: number,
): number {
  const size = sizeOf(mesh);
  const at = indexOf(cell, size);
  const axis = mesh.axes[d];
  const i = at[d];
  const edge = axis.edges[i + 1]!;
  const half = (edge - axis.centres[i]!) / k + (axis.centres[i + 1]! - edge) / kNext;
  const one = mesh.region[cell]!;
  const other = mesh.region[next]!;
  const touching = (one === metalRegion) !== (other === metalRegion);
  const gap = touching ? 1 / (others[Math.max(one, other) - 1]!.h * (mesh.share?.(d, cell) ?? 1)) : 0;
  return faceArea(mesh, d, at) / (half + gap);
}

/** Area of the face after a cell, m² (or m²for each metre left out). */
export function faceArea({ axes }: Mesh, d: 0 | 1 | 2, at: readonly [number, number, number]): number {
  let area = axes[d].face[at[d] + 1]!;
  for (const o of [0, 1, 2] as const) if (o !== d) area *= axes[o].size[at[o]]!;
  return area;
}
