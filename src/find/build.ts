import { kinds, type Document } from './document.ts';
import { signWord, wordsOf } from './words.ts';

/** The index as it is sent: every word with the documents it is in and its weight there, in hundredths. */
export interface FindIndex {
  /** `[kind, title, path, sentence, times pointed to, titles, other names]`, a row a document; names as words. */
  readonly documents: readonly (readonly [
    kind: number,
    title: string,
    path: string,
    says: string,
    pointed: number,
    titles: readonly (readonly string[])[],
    others: readonly (readonly string[])[],
  ])[];
  /** Sorted, joined by spaces. */
  readonly words: string;
  /** For each word, document, weight, document, weight, … with the document as the step from the one before. */
  readonly places: readonly (readonly number[])[];
}

/** What a word is worth by where it stands. */
const worth = {
  title: 7,
  also: 5,
  says: 2.2,
  names: 1.6,
  text: 0.7,
  defines: 9,
  termDefines: 20,
  signs: 4,
} as const;

/** A second and a third time count less and less, and a long text counts no more than a short one. */
const counted = (times: number): number => (times * 1.6) / (times + 0.6);

export function buildIndex(documents: readonly Document[]): FindIndex {
  const weights = new Map<string, Map<number, number>>();
  const add = (word: string, at: number, weight: number): void => {
    const places = weights.get(word) ?? new Map<number, number>();
    places.set(at, (places.get(at) ?? 0) + weight);
    weights.set(word, places);
  };
  documents.forEach((document, at) => {
    const fields: readonly (readonly [number, readonly string[]])[] = [
      [worth.title, wordsOf(document.title)],
      [worth.also, document.also.flatMap((name) => [...wordsOf(name), ...numbersIn(name)])],
      [worth.says, wordsOf(document.says)],
      [worth.names, document.names.flatMap(wordsOf)],
      [worth.text, wordsOf(document.text)],
    ];
    // A word in the name counts once, in the title or beside it; elsewhere again, up to three times.
    const named = new Set<string>();
    for (const [weight, words] of fields) {
      const times = new Map<string, number>();
      for (const word of words) times.set(word, (times.get(word) ?? 0) + 1);
      for (const [word, count] of times) {
        if (weight < worth.also) add(word, at, weight * counted(Math.min(count, 3)));
        else if (!named.has(word)) add(word, at, weight);
        if (weight >= worth.also) named.add(word);
      }
    }
    const defines = document.kind === 'term' ? worth.termDefines : worth.defines;
    for (const sign of new Set(document.defines.map(signWord))) add(sign, at, defines);
    for (const sign of new Set(document.signs.map(signWord))) add(sign, at, worth.signs);
  });
  const words = [...weights.keys()].sort();
  return {
    documents: documents.map(({ kind, title, path, says, also, pointed }) => [
      kinds.indexOf(kind),
      title,
      path,
      says,
      pointed,
      [title, ...heads(title)].map(nameWords),
      also.map(nameWords),
    ]),
    words: words.join(' '),
    places: words.map((word) => {
      let before = 0;
      return [...weights.get(word)!]
        .sort(([a], [b]) => a - b)
        .flatMap(([at, weight]) => {
          const step = at - before;
          before = at;
          return [step, Math.round(weight * 10)];
        });
    }),
  };
}

/** `356` for `A356`: a designation is also asked for without its letters. */
const numbersIn = (name: string): string[] =>
  [...name.matchAll(/[A-Za-z]+(\d{3,})/g)].map(([, digits]) => digits!);

/** `Modulus` for `Modulus: how much metal behind each bit of cooling face`. */
const heads = (title: string): string[] => {
  const head = title.split(/[:,(]/)[0]!.trim();
  return head === title ? [] : [head];
};

const nameWords = (name: string): string[] => [...new Set(wordsOf(name))];
