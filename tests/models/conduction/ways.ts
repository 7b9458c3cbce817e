import type { Case } from '../../../calculators/models/conduction/case.ts';
import { freeze, type Freezing } from '../../../calculators/models/conduction/freeze.ts';
import { lineMesh } from '../../../calculators/models/conduction/line.ts';
import type { AxisShape } from '../../../calculators/models/conduction/axis.ts';
import { sectionMesh } from '../../../calculators/models/conduction/section.ts';
import type { Mesh } from '../../../calculators/models/conduction/mesh.ts';
import { voxelEngine } from '../../../calculators/models/conduction/voxel-engine.ts';
import { voxelMesh } from '../../../calculators/models/conduction/voxels.ts';

/** A bronze in dry sand. */
export const bronze = {
  k: { solid: 55, liquid: 45 },
  rho: 8360,
  c: { solid: 435, liquid: 480 },
  latent: 190e3,
  solidus: 1133.15,
  liquidus: 1243.15,
};
export const sand = { name: 'mould', k: 0.6, rhoc: 1.7e6, h: 700 };
export const chill = { name: 'chill', k: 40, rhoc: 3.6e6, h: 2000 };

export const partOf = (mesh: Mesh, more: Partial<Case> = {}): Case => ({
  metal: bronze,
  others: [sand, chill],
  mesh,
  start: [1373.15, 293.15, 293.15],
  ...more,
});

export const lineOf = (shape: AxisShape, cells: number, half = 0.003): Mesh =>
  lineMesh({ shape, half, outer: half + 0.03, cells, first: half / 24, ratio: 1.12 });

/** A bar of 8 by 16 mm, a quarter of its section. */
export const barOf = (spacing: number): Mesh =>
  sectionMesh({
    turned: true,
    rectangles: [{ x: 0, y: 0, width: 0.004, height: 0.008, region: 0 }],
    spacing,
    wall: 0.02,
    ratio: 1.2,
    mirror: { x: true, y: true },
  });

/** A cube of 8 mm, an eighth of it. */
export const blockOf = (spacing: number): Mesh =>
  voxelMesh({
    solids: [{ kind: 'box', region: 0, low: [0, 0, 0], high: [0.004, 0.004, 0.004] }],
    spacing,
    wall: 0.012,
    mirror: [true, true, true],
  });

/** A web with a boss and a chill below it. */
export const bossOf = (spacing: number): Mesh =>
  voxelMesh({
    solids: [
      { kind: 'box', region: 0, low: [-0.006, -0.006, 0], high: [0.006, 0.006, 0.002] },
      { kind: 'box', region: 0, low: [-0.003, -0.003, 0], high: [0.003, 0.003, 0.006] },
      { kind: 'box', region: 2, low: [-0.003, -0.003, -0.003], high: [0.003, 0.003, 0] },
    ],
    spacing,
    wall: 0.006,
    mirror: [false, false, false],
  });

export function done(given: Case, single = false): Freezing {
  const found = single ? freeze(given, {}, voxelEngine) : freeze(given);
  if (!found.ok) throw new Error(found.why);
  return found;
}
