import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyBook } from '../../calculators/exercises/sets/mark-book.ts';
import {
  keepNumbers,
  keepLarge,
  forgetNumbers,
  isLarge,
  lastNumbers,
} from '../../src/islands/card-memory.ts';
import { blank, loadDiary, saveDiary } from '../../src/islands/day/diary.ts';
import { fresh, keep, keptFrom, readKept, type Kept } from '../../src/islands/exercise-store.ts';
import { keepPours, readKept as readPours } from '../../src/islands/log/keep.ts';
import { loadShelf, saveShelf, shelfKey, type Plan } from '../../src/islands/plan/store.ts';
import { countOf, countWords, whereNext } from '../../src/islands/progress.ts';
import {
  keepLearner,
  keptSets,
  lastLearner,
  loadBook,
  loadDrafts,
  loadWork,
  saveDrafts,
  saveWork,
  workKey,
} from '../../src/islands/sets/shelf.ts';

/** One device, which every tab on it shares, with room for so many characters. */
class Device {
  readonly all = new Map<string, string>();
  room = Number.POSITIVE_INFINITY;
  get length(): number {
    return this.all.size;
  }
  key(at: number): string | null {
    return [...this.all.keys()][at] ?? null;
  }
  getItem(key: string): string | null {
    return this.all.get(key) ?? null;
  }
  setItem(key: string, value: string): void {
    const used = [...this.all].reduce((sum, [k, v]) => sum + (k === key ? 0 : k.length + v.length), 0);
    if (used + key.length + value.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    this.all.set(key, value);
  }
  removeItem(key: string): void {
    this.all.delete(key);
  }
}

let device = new Device();
beforeEach(() => {
  device = new Device();
  vi.stubGlobal('localStorage', device);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

/** A browser that keeps nothing: even asking for its store throws. */
function forbid(): void {
  vi.stubGlobal('localStorage', undefined);
}

const answered: Kept = { ...fresh, answers: { answer: '0.5 kg' }, tried: true, hints: 1 };
const plan: Plan = { name: 'Latch keeper', texts: { head: '90 mm' } };
const sample: Plan = { name: 'Lamp shield', texts: {} };
const exerciseKey = 'warm-mould:exercise:1:a';

describe('on a full device', () => {
  it('an exercise, a card and a diary keep what they had and do not throw', () => {
    keep('a', answered);
    keepNumbers('filling/velocity', 'h=40mm');
    saveDiary('p', { ...blank, at: 2 });
    device.room = 0;
    keep('a', { ...answered, hints: 3 });
    keepNumbers('filling/velocity', 'h=90mm');
    keepLarge(true);
    expect(saveDiary('p', { ...blank, at: 3 })).toBe(false);
    expect(readKept('a')).toEqual(answered);
    expect(lastNumbers('filling/velocity')).toBe('h=40mm');
    expect(loadDiary('p').at).toBe(2);
    expect(isLarge()).toBe(false);
  });

  it('plans, drafts and work say that they are not kept, and what was there stays whole', () => {
    expect(saveShelf({ plans: [plan], open: 0 })).toBeUndefined();
    expect(saveWork('h', 'Ada', { learner: 'Ada', answers: {} })).toBe(true);
    device.room = 0;
    expect(saveShelf({ plans: [plan, sample], open: 1 })).toMatch(/not kept on this device/);
    expect(saveWork('h', 'Ada', { learner: 'Ada', answers: { q: {} as never } })).toBe(false);
    expect(saveDrafts([])).toBe(false);
    expect(keepLearner('h', 'Ada')).toBe(false);
    expect(loadShelf(sample).shelf.plans).toEqual([plan]);
    expect(loadWork('h', 'Ada')?.answers).toEqual({});
  });

  it('eighty cards are remembered, and the one unused longest goes first', () => {
    vi.useFakeTimers({ now: 1_000_000 });
    for (let i = 0; i < 80; i += 1) {
      keepNumbers(`card-${i}`, 'x=1');
      vi.advanceTimersByTime(1000);
    }
    keepNumbers('card-0', 'x=2');
    vi.advanceTimersByTime(1000);
    keepNumbers('one-more', 'x=3');
    vi.useRealTimers();
    expect([lastNumbers('card-0'), lastNumbers('card-1'), lastNumbers('one-more')]).toEqual([
      'x=2',
      undefined,
      'x=3',
    ]);
    expect(device.length).toBe(80);
  });
});

describe('in a browser that keeps nothing', () => {
  it('everything starts anew, and nothing throws', () => {
    forbid();
    keep('a', answered);
    keepNumbers('c', 'x=1');
    forgetNumbers('c');
    expect([readKept('a'), lastNumbers('c'), isLarge(), lastLearner('h')]).toEqual([
      undefined,
      undefined,
      false,
      '',
    ]);
    expect([loadDrafts(), keptSets(), loadWork('h', 'Ada'), loadDiary('p')]).toEqual([
      [],
      [],
      undefined,
      blank,
    ]);
    expect(loadBook()).toEqual(emptyBook);
    expect(loadShelf(sample)).toMatchObject({ shelf: { plans: [sample] } });
    expect(loadShelf(sample).problems.join()).toMatch(/keeps nothing for this page/);
    expect(saveShelf({ plans: [plan], open: 0 })).toMatch(/not kept/);
    expect(countWords(countOf(['a', 'b']))).toBe('');
  });

  it('a log says so', async () => {
    vi.stubGlobal('indexedDB', undefined);
    expect(await readPours()).toEqual({
      pours: [],
      problem: expect.stringMatching(/keeps nothing/) as string,
    });
    expect((await keepPours([])).problem).toMatch(/keeps nothing/);
  });
});

describe('a log whose write is broken off', () => {
  /** A database whose every change ends as told. */
  function logEnding(error: DOMException | null): void {
    const store = { put: () => undefined, delete: () => undefined };
    vi.stubGlobal('indexedDB', {
      open: () => {
        const asked: Record<string, unknown> = {
          result: {
            close: () => undefined,
            transaction: () => {
              const change: Record<string, unknown> = { error, objectStore: () => store };
              queueMicrotask(() => (change[error ? 'onabort' : 'oncomplete'] as () => void)());
              return change;
            },
          },
        };
        queueMicrotask(() => (asked['onsuccess'] as () => void)());
        return asked;
      },
    });
  }

  it('says there is no room, or that nothing is kept, and never claims it was', async () => {
    logEnding(new DOMException('full', 'QuotaExceededError'));
    expect((await keepPours([])).problem).toMatch(/not enough room/);
    logEnding(new DOMException('stopped', 'AbortError'));
    expect((await keepPours([])).problem).toMatch(/Export the log/);
    logEnding(null);
    expect((await keepPours([])).problem).toBeUndefined();
  });
});

describe('damaged or cut-off text', () => {
  it('every beginning of a kept exercise is read as nothing or as the whole', () => {
    const text = JSON.stringify(answered);
    for (let length = 0; length < text.length; length += 1)
      expect(keptFrom(text.slice(0, length))).toBeUndefined();
    expect(keptFrom(text)).toEqual(answered);
  });

  it.each([
    ['null', undefined],
    ['[]', undefined],
    ['{"answers":{}}', undefined],
    ['{"seed":"2","answers":null,"chosen":"all","hints":"x","tried":1,"marked":null}', { seed: '2' }],
    ['{"seed":"2","hints":1e999}', { seed: '2' }],
    [
      '{"seed":"2","answers":{"a":"1 g","b":7},"chosen":[0,"1",2.5],"marked":{"a":null}}',
      { seed: '2', answers: { a: '1 g' }, chosen: [0] },
    ],
  ])('an exercise kept as %s', (text, expected) => {
    device.setItem(exerciseKey, text);
    expect(readKept('a')).toEqual(expected === undefined ? undefined : { ...fresh, ...expected });
    expect(() => countOf(['a'])).not.toThrow();
    expect(() => whereNext([{ title: 'A', href: '#', exercises: ['a'] }])).not.toThrow();
  });

  it('every beginning of a kept shelf leaves a working one, and puts the text aside before it is kept over', () => {
    const text = JSON.stringify({ plans: [plan, sample], open: 1 });
    for (let length = 1; length < text.length; length += 1) {
      device.setItem(shelfKey, text.slice(0, length));
      const { shelf, problems } = loadShelf(sample);
      expect(shelf.plans).toHaveLength(1);
      expect(problems).toHaveLength(1);
      expect(device.getItem(`${shelfKey}:unread`)).toBe(text.slice(0, length));
    }
  });

  it('drafts, work, sets and the mark book drop what is no such thing', () => {
    device.setItem('warm-mould:set-drafts:1', '[{"id":"x"},7,null]');
    device.setItem(workKey('h', 'Ada'), '{"learner":"Ada","answers":null}');
    device.setItem('warm-mould:set:1:h', '{"kind":"other"}');
    device.setItem('warm-mould:set-book:1', '{"kind":');
    expect([loadDrafts(), loadWork('h', 'Ada'), keptSets()]).toEqual([[], undefined, []]);
    expect(() => loadBook()).not.toThrow();
  });
});

describe('an older or a newer shape', () => {
  it('is left where it is: its name carries the version', () => {
    device.setItem('warm-mould:exercise:0:a', '{"seed":"9"}');
    device.setItem('warm-mould:plans:2', '{"plans":"another shape"}');
    expect(readKept('a')).toBeUndefined();
    expect(loadShelf(sample).problems).toEqual([]);
    keep('a', answered);
    saveShelf({ plans: [plan], open: 0 });
    expect(device.getItem('warm-mould:exercise:0:a')).toBe('{"seed":"9"}');
    expect(device.getItem('warm-mould:plans:2')).toBe('{"plans":"another shape"}');
  });

  it('with a field more or less is read for what it has', () => {
    expect(keptFrom('{"seed":"3","later":true}')).toEqual({ ...fresh, seed: '3' });
  });
});

describe('two tabs of one device', () => {
  it('read what the other kept last, each exercise and card by itself', () => {
    keep('a', answered);
    keep('b', fresh);
    keep('a', { ...answered, hints: 2 });
    expect([readKept('a')?.hints, readKept('b')]).toEqual([2, fresh]);
  });
});
