import type { Draft } from '../../../calculators/exercises/sets/building.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';
import {
  emptyBook,
  readMarkBook,
  writeMarkBook,
  type MarkBook,
} from '../../../calculators/exercises/sets/mark-book.ts';
import {
  readSet,
  writeSet,
  type GradedSet,
  type SetFile,
} from '../../../calculators/exercises/sets/set-file.ts';

/** What graded sets keep on a device: drafts, sets that came or went, a learner's work, an instructor's mark book. */
const draftsKey = 'warm-mould:set-drafts:1';
const setKey = (hash: string): string => `warm-mould:set:1:${hash}`;
export const workKey = (hash: string, learner: string): string => `warm-mould:set-work:1:${hash}:${learner}`;
const photoKey = (hash: string, learner: string, id: string): string =>
  `warm-mould:set-photo:1:${hash}:${learner}:${id}`;
const learnerKeyOf = (hash: string): string => `warm-mould:set-learner:1:${hash}`;
const bookKey = 'warm-mould:set-book:1';

export const full =
  'This device has no more room. Save your work as a file, and hand in before you close the page.';

/** True when it is kept. A full or forbidden store is not an error of the page. */
function put(key: string, value: string): boolean {
  try {
    localStorage.setItem(key, value);
    return true;
  } catch {
    return false;
  }
}

function get(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}

/** A draft, and the hash of the set it last went out as. */
export type KeptDraft = Draft & { readonly given?: string };

export function loadDrafts(): KeptDraft[] {
  const data = parsed(get(draftsKey));
  const whole = (draft: Partial<Draft> | null): boolean =>
    typeof draft?.id === 'string' &&
    typeof draft.title === 'string' &&
    typeof draft.note === 'string' &&
    typeof draft.asks === 'string' &&
    typeof draft.edition === 'number' &&
    typeof draft.rules === 'object' &&
    Array.isArray(draft.picks);
  return Array.isArray(data) ? (data as KeptDraft[]).filter(whole) : [];
}

export const saveDrafts = (drafts: readonly KeptDraft[]): boolean => put(draftsKey, JSON.stringify(drafts));

export const keepSet = (file: SetFile): boolean => put(setKey(file.hash), writeSet(file));

/** The sets on this device that can still be read, newest edition first within a set. */
export function keptSets(): GradedSet[] {
  const keys: string[] = [];
  try {
    for (let at = 0; at < localStorage.length; at += 1) {
      const key = localStorage.key(at) ?? '';
      if (key.startsWith(setKey(''))) keys.push(key);
    }
  } catch {
    return [];
  }
  return keys
    .flatMap((key) => {
      const read = readSet(get(key) ?? '');
      return read.ok ? [read.value] : [];
    })
    .sort((a, b) => (a.title < b.title ? -1 : a.title > b.title ? 1 : b.edition - a.edition));
}

/** The file of a kept set, as it came. */
export function keptFile(hash: string): SetFile | undefined {
  const text = get(setKey(hash));
  return text !== undefined && readSet(text).ok ? (JSON.parse(text) as SetFile) : undefined;
}

/** The kept set whose hash begins so. */
export function keptByStart(start: string): SetFile | undefined {
  const found = keptSets().find(({ hash }) => hash.startsWith(start));
  return found && keptFile(found.hash);
}

export function forgetSet(hash: string): void {
  try {
    localStorage.removeItem(setKey(hash));
  } catch {
    // Nothing was kept.
  }
}

/** A learner's work on one set. */
export interface Work {
  readonly learner: string;
  readonly answers: Readonly<Record<string, Given>>;
  /** When it was last handed in, by this device's clock. */
  readonly handedIn?: string;
}

export function readWork(text: string | null | undefined): Work | undefined {
  const work = parsed(text ?? undefined) as Partial<Work> | null;
  return typeof work?.learner === 'string' && typeof work.answers === 'object' && work.answers !== null
    ? (work as Work)
    : undefined;
}

export function loadWork(hash: string, learner: string): Work | undefined {
  const work = readWork(get(workKey(hash, learner)));
  if (!work) return undefined;
  const answers = Object.entries(work.answers).map(([id, given]) => {
    const photo = parsed(get(photoKey(hash, learner, id))) as Given['photo'] | null;
    return [id, photo ? { ...given, photo } : given] as const;
  });
  return { ...work, answers: Object.fromEntries(answers) };
}

/**
 * My work after a change to one answer, with what another tab kept meanwhile: of every other question its newest
 * answer stands. Photographs stand apart, and mine stay.
 */
export function withTheirs(mine: Work, theirs: Work | undefined, changed: string): Work {
  if (!theirs) return mine;
  const answers = { ...mine.answers };
  for (const [id, { photo: _, ...given }] of Object.entries(theirs.answers)) {
    if (id === changed) continue;
    const photo = answers[id]?.photo;
    answers[id] = photo ? { ...given, photo } : given;
  }
  return { ...mine, answers };
}

/** The answers as they stand in the store, without photographs. */
export const storedWork = (hash: string, learner: string): Work | undefined =>
  readWork(get(workKey(hash, learner)));

/** Photographs stand apart, so that a keystroke does not write them again. */
export function saveWork(hash: string, learner: string, work: Work): boolean {
  const answers = Object.entries(work.answers).map(([id, { photo: _, ...given }]) => [id, given] as const);
  return put(workKey(hash, learner), JSON.stringify({ ...work, answers: Object.fromEntries(answers) }));
}

export function savePhoto(hash: string, learner: string, id: string, photo: Given['photo']): boolean {
  if (photo) return put(photoKey(hash, learner, id), JSON.stringify(photo));
  try {
    localStorage.removeItem(photoKey(hash, learner, id));
  } catch {
    // Nothing was kept.
  }
  return true;
}

/** Who worked on a set here last. */
export const lastLearner = (hash: string): string => get(learnerKeyOf(hash)) ?? '';
export const keepLearner = (hash: string, name: string): boolean => put(learnerKeyOf(hash), name);

export function loadBook(): MarkBook {
  const read = readMarkBook(get(bookKey) ?? '');
  return read.ok ? read.value : emptyBook;
}
export const saveBook = (book: MarkBook): boolean => put(bookKey, writeMarkBook(book));
