import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { solveHalf, type FromSecond, type HalfJob, type ToSecond } from './conduction-halves.ts';
import { solvePart, type Means, type Request } from './conduction-work.ts';
import bytes from './kernel/assembly/stage.ts?wasm';
import { canRun, wasmKernels } from './kernel/wasm-kernel.ts';
import { buffersIn, wireOver } from './wire.ts';

/**
 * Freezes parts off the main thread, in compiled code where the browser has four-lane arithmetic. A newer
 * request ends an older one; `stop` ends the one it names. For many cells it starts itself a second time, under the
 * name below, and gives that half of them.
 */
const asSecond = 'second half';
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

let second: Worker | undefined;
let ready = false;
let cut: (() => void) | undefined;
const fellOut = (): void => {
  ready = false;
  cut?.();
};

function wake(): void {
  if (second || navigator.hardwareConcurrency < 2) return;
  try {
    second = new Worker(location.href, { type: 'module', name: asSecond });
    second.onmessage = () => (ready = true);
    second.onerror = fellOut;
  } catch {
    // One worker will do.
  }
}

function ask(job: HalfJob): ReturnType<NonNullable<Means['second']>['ask']> {
  if (!second || !ready) return undefined;
  // A channel for each half: what is left in it from one that was stopped is never taken for the next one's.
  const channel = new MessageChannel();
  const wire = wireOver<ToSecond, FromSecond>(channel.port1);
  cut = wire.cut;
  second.postMessage(job, [channel.port2]);
  return wire;
}

/** One after the other: what was asked before sees at its next turn that it is no longer wanted. */
let before = Promise.resolve();

async function work(asked: number, part: Parameters<typeof solvePart>[1]): Promise<void> {
  const stopped = (): boolean => current !== asked;
  const means: Means = { kernels, turn, now: () => performance.now(), stopped, second: { wake, ask } };
  for await (const reply of solvePart(asked, part, means))
    postMessage(reply, { transfer: reply.kind === 'going' ? buffersIn(reply) : [] });
}

function asFirst({ data }: MessageEvent<Request>): void {
  if ('stop' in data) {
    if (current === data.stop) current = -1;
    return;
  }
  const { asked, part } = data;
  current = asked;
  before = before
    .then(turn)
    .then(() => (current === asked ? work(asked, part) : undefined))
    .catch(reportError);
}

function asOther({ data, ports }: MessageEvent<HalfJob>): void {
  const [port] = ports;
  if (!port) return;
  const done = solveHalf(data, kernels.maker, wireOver<FromSecond, ToSecond>(port));
  void done.then(() => port.close());
}

if (self.name === asSecond) {
  addEventListener('message', asOther);
  postMessage('ready');
} else addEventListener('message', asFirst);
