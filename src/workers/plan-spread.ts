import { outcomesOf, type Books, type Reply } from './plan-outcome.ts';

/** The pour plan off the main thread. First the materials' numbers, then one message for each question. */
type Message = { readonly books: Books } | { readonly asked: number; readonly texts: Readonly<Record<string, unknown>> };

let books: Books = {};

addEventListener('message', ({ data }: MessageEvent<Message>) => {
  if ('books' in data) {
    books = data.books;
    return;
  }
  for (const outcome of outcomesOf(data.texts, books)) {
    const reply: Reply = { asked: data.asked, outcome, done: outcome.trials > 0 };
    postMessage(reply);
  }
});
