import type { ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { outcomesInSteps, type Reply, type Request } from './plan-outcome.ts';

/** Works plans off the main thread. Whoever asks anew is answered instead, without waiting for the rest. */
const trials = 1000;
/** Milliseconds of work between two looks for a newer question. */
const stretch = 12;
let books: ResolvedMaterials = {};
let newest = 0;

const { port1, port2 } = new MessageChannel();
const heard: (() => void)[] = [];
port1.onmessage = () => heard.shift()?.();
/** Lets the messages in that wait: a timer would be held back by the browser. */
const listen = (): Promise<void> =>
  new Promise((resolve) => {
    heard.push(resolve);
    port2.postMessage(0);
  });

async function work({ asked, texts, habit }: Exclude<Request, { books: unknown }>): Promise<void> {
  newest = asked;
  let until = performance.now() + stretch;
  for (const outcome of outcomesInSteps(texts, books, trials, habit)) {
    if (outcome) postMessage({ asked, outcome } satisfies Reply);
    if (performance.now() < until) continue;
    await listen();
    if (newest !== asked) return;
    until = performance.now() + stretch;
  }
}

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  if ('books' in data) books = data.books;
  else work(data).catch(reportError);
});
