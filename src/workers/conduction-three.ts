import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { cubesBy } from './conduction-cubes.ts';
import type { Part } from './conduction-work.ts';
import bytes from './kernel/assembly/stage.ts?wasm';
import { canRun, wasmKernels } from './kernel/wasm-kernel.ts';

/** What only bodies of equal cubes need: it comes when the first of them is asked for. */
export { solveHalf } from './conduction-halves.ts';
export { wireOver } from './wire.ts';

/** Compiled code where the browser has four-lane arithmetic. */
export const kernels = canRun(bytes) ? wasmKernels(bytes) : plainKernel;
export const cubes = cubesBy(kernels === plainKernel ? 'plain' : 'simd', kernels);

const sand = { name: 'sand', k: 0.6, rhoc: 1.7e6, h: 1000 };

/** A cube of bronze in sand, of a few thousand cells: solved for nobody, so that the first real body meets compiled code. */
export const practice: Part = {
  shape: {
    kind: 'voxels',
    voxels: {
      solids: [{ kind: 'box', region: 0, low: [0, 0, 0], high: [0.004, 0.004, 0.004] }],
      spacing: 0.0005,
      wall: 0.004,
      mirror: [false, false, false],
    },
  },
  metal: {
    solidus: 1100,
    liquidus: 1200,
    latent: 2e5,
    rho: 8000,
    c: { solid: 400, liquid: 400 },
    k: { solid: 50, liquid: 50 },
  },
  others: [sand],
  start: [1300, 300],
  most: 1e5,
  frames: 8,
};
