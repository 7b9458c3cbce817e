import type { FromSecond, HalfJob, ToSecond, Wire } from './conduction-halves.ts';
import { solvePart, type Means, type Request } from './conduction-work.ts';
import { oneOrTwo } from './one-or-two.ts';
import { buffersIn, type WireEnd } from './wire.ts';

/**
 * Freezes parts off the main thread, in compiled code where the browser has four-lane arithmetic. A newer
 * request ends an older one; `stop` ends the one it names. For many cells it starts itself a second time, under the
 * name below, and gives that half of them.
 */
const asSecond = 'second half';
let current = -1;

let inThree: typeof import('./conduction-three.ts') | undefined;
const cubes = async () => (inThree ??= await import('./conduction-three.ts')).cubes;

/** Lets waiting messages in; a timer would wait its least few milliseconds each time. */
const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();
const turn = (): Promise<void> =>
  new Promise((resolve) => {
    waiting.push(resolve);
    port2.postMessage(undefined);
  });

/** What goes between the two: of which half, so that what is left of one that was stopped is not taken for the next. */
interface Letter<Message> {
  readonly half: number;
  readonly message: Message;
}

let second: Worker | undefined;
let ready = false;
let half = 0;
let wire: WireEnd<ToSecond, FromSecond> | undefined;

const way = oneOrTwo(navigator.hardwareConcurrency);

function wake(): void {
  if (second || navigator.hardwareConcurrency < 2) return;
  try {
    second = new Worker(location.href, { type: 'module', name: asSecond });
    second.onmessage = ({ data }: MessageEvent<Letter<FromSecond> | 'ready'>) => {
      if (data === 'ready') ready = true;
      else if (data.half === half) wire?.heard(data.message);
    };
    second.onerror = () => {
      ready = false;
      wire?.cut();
    };
  } catch {
    // One worker will do.
  }
}

function ask(job: HalfJob): Wire<ToSecond, FromSecond> | undefined {
  if (!inThree || !second || !ready || way.next() === 'one') return undefined;
  const to = second;
  half += 1;
  const own = half;
  // Straight from worker to worker: by a channel of ports each message takes the browser several times as long.
  wire = inThree.wireOver((message, moved) => to.postMessage({ half: own, message }, moved));
  to.postMessage({ half, message: job } satisfies Letter<HalfJob>);
  return wire;
}

let practised = false;

/** One after the other: what was asked before sees at its next turn that it is no longer wanted. */
let before = Promise.resolve();

async function work(asked: number, part: Parameters<typeof solvePart>[1]): Promise<void> {
  const stopped = (): boolean => current !== asked;
  const means: Means = {
    cubes,
    turn,
    now: () => performance.now(),
    stopped,
    second: { wake, ask, took: way.took },
  };
  for await (const reply of solvePart(asked, part, means))
    postMessage(reply, { transfer: reply.kind === 'going' ? buffersIn(reply) : [] });
}

/** Solves a small cube for nobody until something is asked: the browser compiles what is run, and the second wakes. */
async function practise(): Promise<void> {
  const stopped = (): boolean => current !== -1;
  if (practised || stopped()) return;
  practised = true;
  wake();
  for await (const _ of solvePart(-1, inThree!.practice, {
    cubes,
    turn,
    now: () => performance.now(),
    stopped,
  }));
}

function asFirst({ data }: MessageEvent<Request>): void {
  if ('soon' in data) {
    void cubes()
      .then(() => (before = before.then(practise)))
      .catch(reportError);
    return;
  }
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

async function beOther(): Promise<void> {
  const { kernels, solveHalf, wireOver } = await import('./conduction-three.ts');
  let other: { readonly half: number; readonly wire: WireEnd<FromSecond, ToSecond> } | undefined;
  addEventListener('message', ({ data }: MessageEvent<Letter<HalfJob | ToSecond>>) => {
    const { half: of, message } = data;
    if ('kind' in message) {
      if (other?.half === of) other.wire.heard(message);
      return;
    }
    const end = wireOver<FromSecond, ToSecond>((said, moved) =>
      postMessage({ half: of, message: said }, { transfer: moved }),
    );
    other = { half: of, wire: end };
    void solveHalf(message, kernels, end);
  });
  postMessage('ready');
}

if (self.name === asSecond) void beOther();
else addEventListener('message', asFirst);
