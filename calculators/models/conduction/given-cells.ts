import type { SolverCells } from '../../meshes/solver-cells.ts';
import { axis, even } from './axis.ts';
import type { Mesh } from './mesh.ts';

/** Equal cubes filled elsewhere, from a part's own mesh. Metres. */
export type GivenCells = SolverCells;

/** A stair's face counts for as much as the surface it stands for. */
export function givenMesh({ size, from, spacing, region, share }: GivenCells): Mesh {
  const axes = ([0, 1, 2] as const).map((d) =>
    axis(even(from[d], from[d] + size[d] * spacing, size[d])),
  ) as unknown as Mesh['axes'];
  const strides = [1, size[0], size[0] * size[1]] as const;
  return {
    axes,
    region,
    share: (d, cell) => (region[cell] === 0 ? share[cell]! : share[cell + strides[d]]!) || 1,
  };
}
