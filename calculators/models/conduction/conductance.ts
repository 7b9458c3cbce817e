import { indexOf, sizeOf, type Mesh, type Three } from './mesh.ts';
import { metalRegion, type Stuff } from './substance.ts';

/** Area of the face after a cell, m² (or m² for each metre left out). */
export function faceArea({ axes }: Mesh, d: 0 | 1 | 2, at: Three): number {
  let area = axes[d].face[at[d] + 1]!;
  for (const o of [0, 1, 2] as const) if (o !== d) area *= axes[o].size[at[o]]!;
  return area;
}

/** A face between two cells: what heat meets on its way from the middle of one to the middle of the next. */
export interface Joint {
  /** Length of the way in each cell over the area, 1/m: divided by its conductivity it is K/W. */
  readonly one: number;
  readonly two: number;
  /** Resistance of the face where metal meets something else, K/W; only the true part of a stair counts. */
  readonly gap: number;
}

/** The face after a cell along an axis. */
export function jointAfter(mesh: Mesh, others: readonly Stuff[], d: 0 | 1 | 2, cell: number): Joint {
  const size = sizeOf(mesh);
  const at = indexOf(cell, size);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const { edges, centres } = mesh.axes[d];
  const i = at[d];
  const area = faceArea(mesh, d, at);
  const one = mesh.region[cell]!;
  const other = mesh.region[cell + strides[d]]!;
  const touching = (one === metalRegion) !== (other === metalRegion);
  const share = touching ? (mesh.share?.(d, cell) ?? 1) : 1;
  return {
    one: (edges[i + 1]! - centres[i]!) / area,
    two: (centres[i + 1]! - edges[i + 1]!) / area,
    gap: touching ? 1 / (others[Math.max(one, other) - 1]!.h * share * area) : 0,
  };
}

/** Heat through the face, W for each K between the middles: the half cells and the gap in series. */
export function conductanceOf({ one, two, gap }: Joint, k: number, kNext: number): number {
  return 1 / (one / k + two / kNext + gap);
}
