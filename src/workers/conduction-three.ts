import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { cubesBy } from './conduction-cubes.ts';
import bytes from './kernel/assembly/stage.ts?wasm';
import { canRun, wasmKernels } from './kernel/wasm-kernel.ts';

/** What only bodies of equal cubes need: it comes when the first of them is asked for. */
export { solveHalf } from './conduction-halves.ts';
export { wireOver } from './wire.ts';

/** Compiled code where the browser has four-lane arithmetic. */
export const kernels = canRun(bytes) ? wasmKernels(bytes) : plainKernel;
export const cubes = cubesBy(kernels === plainKernel ? 'plain' : 'simd', kernels);
