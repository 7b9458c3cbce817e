import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** How long a lesson is and how hard its sentences are. */
export interface Reading {
  readonly words: number;
  /** Years: the school grade of the Flesch–Kincaid formula plus five. */
  readonly age: number;
}

/**
 * Counts the running text of a lesson: sums, sources, exercises, tables and the defined terms are left out,
 * since a term is explained where it is linked.
 */
export function readingOf(body: string): Reading {
  const text = runningText(body);
  const sentences = text.split(/[.?!](?:\s|$)/).filter((part) => /\p{L}{2}/u.test(part));
  const words = text.match(/\p{L}[\p{L}’'-]*/gu) ?? [];
  const syllables = words.reduce((sum, word) => sum + syllable(word), 0);
  if (words.length === 0) return { words: 0, age: 0 };
  const grade = fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
  return { words: words.length, age: grade + 5 };
}

function runningText(body: string): string {
  return (
    body
      .replace(/<Term\b[^>]*>[\s\S]*?<\/Term>/g, ' ')
      .replace(/<Cite\b[^>]*\/>/g, ' ')
      .replace(/<[A-Z]\w*\b(?:[^>"'{]|"[^"]*"|'[^']*'|\{(?:[^{}]|\{[^{}]*\})*\})*\/>/g, ' ')
      .replace(/<\/?[A-Za-z]\w*\b(?:[^>"'{]|"[^"]*"|'[^']*'|\{(?:[^{}]|\{[^{}]*\})*\})*>/g, '\n\n')
      .replace(/^\s*\|.*$/gm, ' ')
      .replace(/\]\([^)]*\)/g, ']')
      .replace(/^#+\s.*$/gm, ' ')
      .replace(/\$[^$]*\$/g, ' ')
      .replace(/[*_`[\]]/g, '')
      // A list item or a paragraph without a stop ends a sentence all the same.
      .replace(/([^.?!:\s])\s*\n(?=\s*(?:\n|-|\d+\.))/g, '$1.\n')
  );
}

/** The questions a lesson asks before it answers: read from its `<Predict>`s. */
export function questionsOf(body: string): string[] {
  return [...body.matchAll(/<Predict\s[^>]*?question=(?:"([^"]+)"|\{?'([^']+)'\}?)/gs)].flatMap(
    ([, one, other]) => one ?? other ?? [],
  );
}
