import { describe, expect, it } from 'vitest';
import {
  askToLast,
  backUp,
  erase,
  isLasting,
  keptKeys,
  lastSaved,
  noteSaved,
  readBackup,
  restore,
  type Keeper,
} from '../../src/islands/device.ts';

/** A store with room for so many characters. */
function keeper(
  start: Record<string, string> = {},
  room = 1e6,
): Keeper & { readonly all: Map<string, string> } {
  const all = new Map(Object.entries(start));
  return {
    all,
    get length() {
      return all.size;
    },
    key: (at) => [...all.keys()][at] ?? null,
    getItem: (key) => all.get(key) ?? null,
    setItem: (key, value) => {
      const used = [...all].reduce((sum, [k, v]) => sum + (k === key ? 0 : v.length), 0);
      if (used + value.length > room) throw new DOMException('full', 'QuotaExceededError');
      all.set(key, value);
    },
    removeItem: (key) => void all.delete(key),
  };
}

const mine = { 'warm-mould:plans:1': '{"plans":[]}', 'warm-mould:exercise:1:a': '{}' };

describe('a copy of what the device keeps', () => {
  it('holds what is ours and nothing else, and comes back as it was', () => {
    const from = keeper({ ...mine, other: 'theirs' });
    const read = readBackup(JSON.stringify(backUp(from, '2026-03-01')));
    const to = keeper({ 'warm-mould:exercise:1:b': 'stays' });
    if (!read.ok) throw new Error(read.reason);
    expect(restore(to, read.backup)).toBeUndefined();
    expect(Object.fromEntries(to.all)).toEqual({ ...mine, 'warm-mould:exercise:1:b': 'stays' });
  });

  it('takes the log and the photos of pour days along, and nothing in their place', () => {
    const [pours, photos] = [[{ id: 'a' }], [{ id: 'b' }]];
    const text = JSON.stringify(backUp(keeper(mine), '2026-03-01', pours, photos));
    const read = readBackup(text);
    expect(read.ok && read.backup).toMatchObject({ pours, photos });
    expect(readBackup(text.replace('"photos":[{"id":"b"}]', '"photos":7')).ok).toBe(false);
  });

  it('changes nothing where the device runs full, and says so', () => {
    const to = keeper({ 'warm-mould:plans:1': 'old', big: 'x'.repeat(20) }, 30);
    const before = Object.fromEntries(to.all);
    const backup = backUp(keeper(mine), '2026-03-01');
    expect(restore(to, backup)).toMatch(/not enough room/);
    expect(Object.fromEntries(to.all)).toEqual(before);
  });

  it.each([
    ['', /cannot be read/],
    ['{', /cannot be read/],
    ['[]', /not a backup/],
    ['null', /not a backup/],
    ['{"kind":"warm-mould-backup","version":2,"kept":{}}', /later version/],
    ['{"kind":"warm-mould-backup","version":1,"kept":[]}', /nothing that can be restored/],
    ['{"kind":"warm-mould-backup","version":1,"kept":{"other":"x"}}', /never wrote/],
    ['{"kind":"warm-mould-backup","version":1,"kept":{"warm-mould:a":1}}', /never wrote/],
  ])('is refused with a sentence when it is %s', (text, reason) => {
    expect(readBackup(text)).toMatchObject({ ok: false, reason: expect.stringMatching(reason) as string });
  });

  it('erases what is ours and nothing else', () => {
    const store = keeper({ ...mine, other: 'theirs' });
    expect(erase(store)).toBe(2);
    expect(keptKeys(store)).toEqual([]);
    expect(store.all.get('other')).toBe('theirs');
  });
});

describe('the log in a copy', () => {
  it('goes with the rest, and a damaged one stops the restoring', () => {
    const copy = backUp(keeper(mine), '2026-03-03', [{ id: 'p1' }]);
    expect(readBackup(JSON.stringify(copy))).toMatchObject({ ok: true, backup: { pours: [{ id: 'p1' }] } });
    expect(readBackup(JSON.stringify({ ...copy, pours: 'many' })).ok).toBe(false);
  });
});

describe('how long it is kept', () => {
  it('says the day of the last copy, and none when none was saved or the day is damaged', () => {
    const device = keeper();
    expect(lastSaved(device)).toBeUndefined();
    noteSaved(device, '2026-03-03');
    expect(lastSaved(device)).toBe('2026-03-03');
    device.setItem('warm-mould:saved', 'yesterday');
    expect(lastSaved(device)).toBeUndefined();
    expect(() => noteSaved(keeper({}, 3), '2026-03-03')).not.toThrow();
  });

  it('asks the browser, and says what it answered', async () => {
    const answering = (answer: boolean) => ({
      persist: () => Promise.resolve(answer),
      persisted: () => Promise.resolve(answer),
    });
    expect(await askToLast(answering(true))).toMatch(/promises to keep it/);
    expect(await askToLast(answering(false))).toMatch(/no promise/);
    expect(await askToLast({ persist: () => Promise.reject(new Error('no')) })).toMatch(/no promise/);
    expect(await askToLast(undefined)).toMatch(/cannot be asked/);
    expect(await isLasting(answering(true))).toBe(true);
    expect(await isLasting({ persisted: () => Promise.reject(new Error('no')) })).toBe(false);
    expect(await isLasting(undefined)).toBe(false);
  });
});
