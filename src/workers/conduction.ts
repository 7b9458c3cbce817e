import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { solvePart, type Means, type Request } from './conduction-work.ts';
import bytes from './kernel/assembly/stage.ts?wasm';
import { canRun, wasmKernels } from './kernel/wasm-kernel.ts';

/**
 * Freezes parts off the main thread, in compiled code where the browser has four-lane arithmetic. A newer
 * request ends an older one; `stop` ends the one it names.
 */
let current = -1;

const kernels: Means['kernels'] = canRun(bytes)
  ? { by: 'simd', maker: wasmKernels(bytes) }
  : { by: 'plain', maker: plainKernel };

/** Lets waiting messages in; a timer would wait its least few milliseconds each time. */
const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();
const turn = (): Promise<void> =>
  new Promise((resolve) => {
    waiting.push(resolve);
    port2.postMessage(undefined);
  });

async function work(asked: number, part: Parameters<typeof solvePart>[1]): Promise<void> {
  const means: Means = { kernels, turn, now: () => performance.now(), stopped: () => current !== asked };
  for await (const reply of solvePart(asked, part, means)) postMessage(reply);
}

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  if ('stop' in data) {
    if (current === data.stop) current = -1;
    return;
  }
  const { asked, part } = data;
  current = asked;
  // The one before sees at its next turn that it is no longer asked for.
  void turn().then(() => (current === asked ? work(asked, part) : undefined));
});
