import { givenMesh } from '../../calculators/models/conduction/given-cells.ts';
import { spacingThatFits, voxelMesh, voxelSize } from '../../calculators/models/conduction/voxels.ts';
import { sidesOf, tooMany, type CubeShape, type Laid, type Pass } from './conduction-shape.ts';

/** How many equal cubes a shape takes. */
export const cubesOf = (shape: CubeShape): number =>
  shape.kind === 'cells'
    ? shape.fine.region.length
    : voxelSize(shape.voxels).size.reduce((product, n) => product * n, 1);

/** The mesh of a pass in equal cubes; a sentence when the fine one has more of them than may be. */
export function layCubes(shape: CubeShape, pass: Pass, most: number): Laid | string {
  if (shape.kind === 'cells') {
    const given = pass === 'coarse' ? (shape.coarse ?? shape.fine) : shape.fine;
    if (!(given.region.length <= most)) return tooMany(given.region.length);
    const mirror = [false, false, false];
    return { mesh: givenMesh(given), sides: sidesOf(mirror), mirror, cubes: true };
  }
  const { voxels } = shape;
  const { mirror } = voxels;
  const count = cubesOf(shape);
  if (!(count <= most)) return tooMany(count, spacingThatFits(voxels, most));
  const spacing = (pass === 'coarse' ? 2 : 1) * voxels.spacing;
  return { mesh: voxelMesh({ ...voxels, spacing }), sides: sidesOf(mirror), mirror, cubes: true };
}
