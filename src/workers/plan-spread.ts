import type { ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { outcomes, type Reply, type Request } from './plan-outcome.ts';

/** Works plans off the main thread. It hears nothing while its trials run: whoever asks anew ends it first. */
const trials = 1000;
let books: ResolvedMaterials = {};

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  if ('books' in data) {
    books = data.books;
    return;
  }
  for (const outcome of outcomes(data.texts, books, trials)) {
    postMessage({ asked: data.asked, outcome, done: outcome.trials > 0 } satisfies Reply);
  }
});
