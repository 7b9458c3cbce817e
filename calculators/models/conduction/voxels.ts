import { axis, even } from './axis.ts';
import { centreOf, type Mesh, type Place, type Three } from './mesh.ts';
import { boundsOf, distanceTo, distanceToMetal, type Solid } from './solids.ts';

export interface Voxels {
  readonly solids: readonly Solid[];
  /** Edge of a cell, m. */
  readonly spacing: number;
  /** Mould around the outermost body, m. */
  readonly wall: number;
  /** Planes of symmetry at x = 0, y = 0, z = 0: what lies beyond is left out. */
  readonly mirror: readonly [boolean, boolean, boolean];
}

/** Cells along each axis, and where the first begins. */
export function voxelSize({ solids, spacing, wall, mirror }: Voxels): { size: Three; from: Place } {
  const bounds = solids.map(boundsOf);
  const along = ([0, 1, 2] as const).map((d) => {
    const low = mirror[d] ? 0 : Math.min(...bounds.map(([from]) => from[d]));
    const high = Math.max(...bounds.map(([, to]) => to[d]));
    const around = Math.ceil(wall / spacing - 1e-6);
    const count = Math.ceil((high - low) / spacing - 1e-6) + around * (mirror[d] ? 1 : 2);
    return { count, from: mirror[d] ? 0 : low - around * spacing };
  });
  return {
    size: [along[0]!.count, along[1]!.count, along[2]!.count],
    from: [along[0]!.from, along[1]!.from, along[2]!.from],
  };
}

/** Equal cubes: a cube is of the body its middle lies in. Faces of stairs know what part of them is surface. */
export function voxelMesh(voxels: Voxels): Mesh {
  const { size, from } = voxelSize(voxels);
  const axes = ([0, 1, 2] as const).map((d) =>
    axis(even(from[d], from[d] + size[d] * voxels.spacing, size[d])),
  ) as unknown as Mesh['axes'];
  const region = new Uint8Array(size[0] * size[1] * size[2]).fill(1);
  const mesh = { axes, region };
  for (const solid of voxels.solids) fill(mesh, solid);
  if (voxels.solids.every(({ kind }) => kind === 'box')) return mesh;
  return { ...mesh, share: surfaceShare(mesh, voxels) };
}

/** Makes the cells whose middles lie in a body of its substance. A later body is laid over an earlier one. */
function fill({ axes, region }: Mesh, solid: Solid): void {
  const [low, high] = boundsOf(solid);
  const [x, y, z] = axes.map(({ centres }, d) => {
    let [from, to] = [0, centres.length];
    while (from < to && centres[from]! <= low[d]!) from += 1;
    while (to > from && centres[to - 1]! >= high[d]!) to -= 1;
    return { from, to };
  }) as [Span, Span, Span];
  const [nx, ny] = [axes[0].centres.length, axes[1].centres.length];
  for (let k = z.from; k < z.to; k += 1)
    for (let j = y.from; j < y.to; j += 1) {
      const row = nx * (j + ny * k);
      if (solid.kind === 'box') region.fill(solid.region, row + x.from, row + x.to);
      else
        for (let i = x.from; i < x.to; i += 1) {
          const place = [axes[0].centres[i]!, axes[1].centres[j]!, axes[2].centres[k]!] as const;
          if (distanceTo(solid, place) < 0) region[row + i] = solid.region;
        }
    }
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Part of a stair's face that is surface: the component of the surface's normal across the face. Summed
 * over the stairs of a slope it gives the area of the slope, where plain faces give up to 1.7 times as much.
 */
function surfaceShare(mesh: Mesh, { solids, spacing }: Voxels): (d: 0 | 1 | 2, cell: number) => number {
  const step = 0.05 * spacing;
  return (d, cell) => {
    const face = [...centreOf(mesh, cell)] as [number, number, number];
    face[d] += spacing / 2;
    const slope = [0, 1, 2].map((o) => {
      const [low, high] = [[...face], [...face]] as unknown as [typeof face, typeof face];
      low[o]! -= step;
      high[o]! += step;
      return distanceToMetal(solids, high) - distanceToMetal(solids, low);
    });
    const length = Math.hypot(...slope);
    return length > 0 ? Math.max(0.05, Math.abs(slope[d]!) / length) : 1;
  };
}

/** The finest spacing, to two figures, with which that many cells are enough, m. */
export function spacingThatFits(voxels: Voxels, most: number): number {
  const cellsAt = (spacing: number): number =>
    voxelSize({ ...voxels, spacing }).size.reduce((product, n) => product * n, 1);
  const { size } = voxelSize(voxels);
  let spacing = voxels.spacing * Math.max(1, (size[0] * size[1] * size[2]) / most) ** (1 / 3) * 0.9;
  for (;;) {
    const place = 10 ** (Math.floor(Math.log10(spacing)) - 1);
    spacing = Math.ceil(spacing / place - 1e-9) * place;
    if (cellsAt(spacing) <= most) return spacing;
    spacing += place;
  }
}
