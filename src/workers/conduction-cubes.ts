import type { Case } from '../../calculators/models/conduction/case.ts';
import type { Engine } from '../../calculators/models/conduction/engine.ts';
import type { Slab } from '../../calculators/models/conduction/slab.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import type { KernelMaker } from '../../calculators/models/conduction/voxel-kernel.ts';

import { halfOf, lowerOf, solveTogether, worthTwo } from './conduction-halves.ts';
import { cubesOf, layCubes } from './conduction-lay-cubes.ts';

const ways = { cubesOf, halfOf, layCubes, lowerOf, solveTogether, worthTwo };

/** What solves bodies of equal cubes, what it is called, and how two share the work. */
export interface Cubes extends Readonly<typeof ways> {
  readonly by: string;
  readonly engine: (given: Case, slab?: Slab) => Engine;
}

export const cubesBy = (by: string, maker: KernelMaker): Cubes => ({
  by,
  engine: (given, slab) => voxelEngine(given, maker, slab),
  ...ways,
});
