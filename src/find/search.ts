import type { FindIndex } from './build.ts';
import { kinds, type Kind } from './document.ts';
import { othersFor } from './synonyms.ts';
import { asSign, edits, withoutSizes, wordsOf } from './words.ts';

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

  /** Words of the index that may be meant by one typed word, each with how surely. */
  const meant = (word: string, whole: boolean): ReadonlyMap<number, number> => {
    const found = new Map<number, number>();
    const put = (place: number | undefined, sure: number): void => {
      if (place !== undefined) found.set(place, Math.max(found.get(place) ?? 0, sure));
    };
    put(at.get(word), 1);
    for (const other of othersFor(word)) put(at.get(other), 0.5);
    const known = found.size > 0;
    const slips = word.length < 4 || /\d/.test(word) ? 0 : word.length < 8 ? 1 : 2;
    words.forEach((candidate, place) => {
      if (candidate === word || candidate.startsWith('=')) return;
      if (word.length > 1 && candidate.startsWith(word))
        put(place, (whole ? 0.55 : 0.75) * (word.length / candidate.length) ** 0.7);
      else if (!known && slips > 0 && !/\d/.test(candidate)) {
        const wrong = edits(word, candidate, slips);
        if (wrong <= slips) put(place, 0.6 / wrong ** 0.7);
        else if (candidate.length > word.length && word.length > 4) {
          const begun = edits(word, candidate.slice(0, word.length), 1);
          if (begun === 1) put(place, 0.35);
        }
      }
    });
    return found;
  };

  return (typed, limit = 12) => {
    const asked = wordsOf(withoutSizes(typed));
    const scores = new Float64Array(count);
    const hits = new Float64Array(count);
    let parts = 0;
    const gather = (candidates: ReadonlyMap<number, number>, share: number): void => {
      const best = new Map<number, number>();
      const surest = new Map<number, number>();
      for (const [place, sure] of candidates)
        for (const [document, weight] of places[place]!) {
          const score = sure * weight * rarity[place]!;
          if (score > (best.get(document) ?? 0)) best.set(document, score);
          if (sure > (surest.get(document) ?? 0)) surest.set(document, sure);
        }
      for (const [document, score] of best) {
        scores[document]! += share * score;
        hits[document]! += share * (0.5 + 0.5 * surest.get(document)!);
      }
    };
    const read = asked.map((word, i) => {
      parts += 1;
      const candidates = meant(word, i < asked.length - 1 || /\s$/.test(typed));
      gather(candidates, 1);
      if (at.has(word)) return word;
      const [nearest] = [...candidates].sort(([, a], [, b]) => b - a);
      return nearest ? words[nearest[0]]! : word;
    });
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
    const found: Found[] = [];
    index.documents.forEach(([kind, title, path, says, pointed, titles, others], document) => {
      const score = scores[document]!;
      if (score <= 0) return;
      const covered = (hits[document]! / parts) ** 2;
      const name = kinds[kind]!;
      // The title of an exercise is a tale, not a name.
      const worth = name === 'exercise' ? 1 : 3.6;
      const titled = Math.max(
        0,
        ...titles.map((words) => Math.max(overlap(read, words), begins(read, words))),
      );
      const called = Math.max(0, ...others.map((words) => overlap(read, words)));
      found.push({
        kind: name,
        title,
        path,
        says,
        score:
          score *
          covered *
          (1 + Math.max(worth * titled ** 4, 1.8 * called ** 4)) *
          standing[name] *
          (1 + 0.04 * Math.log2(1 + pointed)),
      });
    });
    return found.sort((a, b) => b.score - a.score || (a.path < b.path ? -1 : 1)).slice(0, limit);
  };
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
