import { parentPort } from 'node:worker_threads';
import {
  solveHalf,
  type FromSecond,
  type HalfJob,
  type ToSecond,
} from '../../src/workers/conduction-halves.ts';
import { compileKernel } from '../../src/workers/kernel/compile.ts';
import { wasmKernels } from '../../src/workers/kernel/wasm-kernel.ts';
import { wireOver, type WireEnd } from '../../src/workers/wire.ts';

/** The second worker of the solver, in Node: solves the halves it is sent, one after another. */
const kernels = wasmKernels(await compileKernel());
let wire: WireEnd<FromSecond, ToSecond> | undefined;
parentPort?.on('message', (message: HalfJob | ToSecond) => {
  if ('kind' in message) {
    wire?.heard(message);
    return;
  }
  wire = wireOver((said, moved) => parentPort?.postMessage(said, moved));
  void solveHalf(message, kernels, wire);
});
parentPort?.postMessage('ready');
