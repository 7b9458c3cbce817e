import type { FindIndex } from './build.ts';
import { kinds, type Kind } from './document.ts';
import { othersFor } from './synonyms.ts';
import { asSign, edits, amountOf, withoutSizes, wordsOf } from './words.ts';

export interface Found {
  readonly kind: Kind;
  readonly title: string;
  readonly path: string;
  readonly says: string;
  readonly score: number;
}

/** How much a page of a kind is worth against another that answers as well. */
const standing: Readonly<Record<Kind, number>> = {
  formula: 1.12,
  model: 1.1,
  lesson: 1,
  material: 1.15,
  term: 0.93,
  defect: 1.05,
  exercise: 0.6,
  page: 1,
};

/** How many times its own worth a name that is just what was asked adds to a page. */
const worthOfName = 3.6;

export type Search = (typed: string, limit?: number) => readonly Found[];

/** A search over an index that has been fetched. Made once; each call is one look through the words. */
export function searchOf(index: FindIndex): Search {
  const words = index.words.split(' ');
  const count = index.documents.length;
  const places = index.places.map((row) => {
    const pairs: [number, number][] = [];
    for (let i = 0, at = 0; i < row.length; i += 2) {
      at += row[i]!;
      pairs.push([at, row[i + 1]! / 10]);
    }
    return pairs;
  });
  const rarity = places.map((pairs) => Math.log(1 + count / (pairs.length + 1)));
  const at = new Map(words.map((word, i) => [word, i]));
  const letters = Int32Array.from(words, lettersOf);

  /** Words of the index that may be meant by one typed word, each with how surely. */
  const meant = (word: string, whole: boolean): ReadonlyMap<number, number> => {
    const found = new Map<number, number>();
    const put = (place: number | undefined, sure: number): void => {
      if (place !== undefined) found.set(place, Math.max(found.get(place) ?? 0, sure));
    };
    put(at.get(word), 1);
    for (const other of othersFor(word)) put(at.get(other), 0.5);
    const known = found.size > 0;
    if (word.length > 1)
      for (let place = firstFrom(words, word); words[place]?.startsWith(word); place += 1) {
        const candidate = words[place]!;
        if (candidate !== word) put(place, (whole ? 0.55 : 0.75) * (word.length / candidate.length) ** 0.7);
      }
    const slips = word.length < 4 || /\d/.test(word) ? 0 : word.length < 8 ? 1 : 2;
    if (known || slips === 0) return found;
    const own = lettersOf(word.replace(/[°%]/g, ''));
    letters.forEach((theirs, place) => {
      // A slip takes away one letter at most, and most words lack more: they need not be compared.
      if (theirs < 0 || bits(own & ~theirs) > slips) return;
      const candidate = words[place]!;
      if (candidate.startsWith(word)) return;
      const wrong = bits(theirs & ~own) > slips ? slips + 1 : edits(word, candidate, slips);
      if (wrong <= slips) put(place, 0.6 / wrong ** 0.7);
      else if (candidate.length > word.length && word.length > 4) {
        const begun = edits(word, candidate.slice(0, word.length), 1);
        if (begun === 1) put(place, 0.35);
      }
    });
    return found;
  };

  /** The best and the surest of one typed word in each document; emptied again as it is read. */
  const best = new Float64Array(count);
  const surest = new Float64Array(count);
  const scores = new Float64Array(count);
  const hits = new Float64Array(count);

  return (typed, limit = 12) => {
    const amount = amountOf(typed);
    const asked = wordsOf(amount ?? withoutSizes(typed));
    scores.fill(0);
    hits.fill(0);
    let parts = 0;
    const gather = (candidates: ReadonlyMap<number, number>, share: number): void => {
      for (const [place, sure] of candidates)
        for (const [document, weight] of places[place]!) {
          const score = sure * weight * rarity[place]!;
          if (score > best[document]!) best[document] = score;
          if (sure > surest[document]!) surest[document] = sure;
        }
      best.forEach((score, document) => {
        if (score === 0) return;
        scores[document]! += share * score;
        hits[document]! += share * (0.5 + 0.5 * surest[document]!);
      });
      best.fill(0);
      surest.fill(0);
    };
    const read = asked.map((word, i) => {
      parts += 1;
      const candidates = meant(word, i < asked.length - 1 || /\s$/.test(typed));
      gather(candidates, 1);
      if (at.has(word)) return word;
      const [nearest] = [...candidates].sort(([, a], [, b]) => b - a);
      return nearest ? words[nearest[0]]! : word;
    });
    // The rest of such a question only tells pages apart that answer it alike.
    if (amount !== undefined)
      for (const word of wordsOf(withoutSizes(typed)))
        if (!asked.includes(word)) gather(meant(word, true), 0.1);
    const sign = asSign(typed);
    const signAt = sign === undefined ? undefined : at.get(sign);
    if (signAt !== undefined) {
      const share = asked.length === 0 || typed.trim().length <= 4 ? 1.4 : 1;
      for (const [document, weight] of places[signAt]!) {
        scores[document]! += share * weight * 3;
        hits[document] = Math.max(hits[document] ?? 0, 1);
      }
      parts = Math.max(parts, 1);
    }
    if (parts === 0) return [];
    const likely: { readonly document: number; readonly plain: number }[] = [];
    index.documents.forEach(([kind, , , , pointed], document) => {
      if (scores[document]! <= 0) return;
      const covered = (hits[document]! / parts) ** 2;
      const plain =
        scores[document]! * covered * standing[kinds[kind]!] * (1 + 0.04 * Math.log2(1 + pointed));
      likely.push({ document, plain });
    });
    // A name raises a page so many times and no more, so names are compared only where that can still matter.
    likely.sort((a, b) => b.plain - a.plain);
    const found: Found[] = [];
    for (const { document, plain } of likely) {
      if (found.length >= limit && plain * (1 + worthOfName) < found[limit - 1]!.score) break;
      const [kind, title, path, says, , titles, others] = index.documents[document]!;
      const name = kinds[kind]!;
      // The title of an exercise is a tale, not a name.
      const worth = name === 'exercise' ? 1 : worthOfName;
      const titled = Math.max(
        0,
        ...titles.map((words) => Math.max(overlap(read, words), begins(read, words))),
      );
      const called = Math.max(0, ...others.map((words) => overlap(read, words)));
      const score = plain * (1 + Math.max(worth * titled ** 4, 1.8 * called ** 4));
      if (found.length >= limit && score < found[limit - 1]!.score) continue;
      found.push({ kind: name, title, path, says, score });
      found.sort((a, b) => b.score - a.score || (a.path < b.path ? -1 : 1));
    }
    return found.slice(0, limit);
  };
}

/** The place of the first word not before this one, in sorted words. */
function firstFrom(words: readonly string[], word: string): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (words[middle]! < word) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The letters a word is made of, a bit each; below nothing for a word that no slip leads to. */
function lettersOf(word: string): number {
  if (/[^a-z]/.test(word)) return -1;
  let set = 0;
  for (let i = 0; i < word.length; i += 1) set |= 1 << (word.charCodeAt(i) - 97);
  return set;
}

function bits(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}

/** How far what was asked and a name are the same words: 1 when they are. */
function overlap(asked: readonly string[], name: readonly string[]): number {
  if (asked.length === 0 || name.length === 0) return 0;
  const common = asked.filter((word) => name.includes(word)).length;
  return (2 * common) / (asked.length + name.length);
}

/** A title that begins with what was asked is nearly what was asked. */
const begins = (asked: readonly string[], title: readonly string[]): number =>
  asked.length > 0 && asked.every((word, i) => title[i] === word) ? 0.85 : 0;
