import type { ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { outcomes, type Reply, type Request } from './plan-outcome.ts';

/** Works plans off the main thread. A newer plan takes the place of one still being worked. */
const trials = 1000;
let books: ResolvedMaterials = {};
let latest = 0;

async function work(asked: number, texts: Readonly<Record<string, unknown>>): Promise<void> {
  for (const outcome of outcomes(texts, books, trials)) {
    if (asked !== latest) return;
    postMessage({ asked, outcome } satisfies Reply);
    // Lets a newer request in between the helpings.
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
}

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  if ('books' in data) books = data.books;
  else {
    latest = data.asked;
    void work(data.asked, data.texts);
  }
});
