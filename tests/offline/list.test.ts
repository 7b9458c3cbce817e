import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bytesOf, fileOf, missing, needed, printBytes, readList } from '../../src/offline/list.ts';
import { listFiles, writeOffline } from '../../src/offline/write.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-'));
  mkdirSync(join(folder, 'lessons/one'), { recursive: true });
  mkdirSync(join(folder, 'tour'));
  writeFileSync(join(folder, 'index.html'), 'home');
  writeFileSync(join(folder, 'lessons/one/index.html'), 'lesson');
  writeFileSync(join(folder, 'tour/card.png'), 'picture');
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('the list of what a device keeps', () => {
  it('has every file with a hash of its content, and no picture of the tour', () => {
    const list = listFiles(folder, '2026-01-01');
    expect(Object.keys(list.files)).toEqual(['index.html', 'lessons/one/index.html']);
    // SHA-256 of "home", by sha256sum: 4ea140588150773ce3aace786aeef7f4049ce100fa649c94fbbddb960f1da942.
    expect(list.files['index.html']).toEqual([
      Buffer.from('4ea140588150773ce3aace786aeef7f4049ce100fa649c94fbbddb960f1da942', 'hex')
        .toString('base64url')
        .slice(0, 22),
      4,
    ]);
    expect(bytesOf(list)).toBe(10);
  });

  it('is the same version for the same files, and another for one letter', () => {
    const [first, again] = [listFiles(folder, '2026-01-01'), listFiles(folder, '2026-02-02')];
    expect(again.version).toBe(first.version);
    writeFileSync(join(folder, 'index.html'), 'hame');
    expect(listFiles(folder, '2026-01-01').version).not.toBe(first.version);
  });

  it('names only what changed, and lets go of nothing an open page may still need', () => {
    const first = listFiles(folder, '2026-01-01');
    writeFileSync(join(folder, 'index.html'), 'a newer home');
    const second = listFiles(folder, '2026-01-02');
    const held = needed(first);
    expect(missing(second, held).map(({ path }) => path)).toEqual(['index.html']);
    const stay = needed(second, first.files);
    for (const hash of held) expect(stay.has(hash)).toBe(true);
  });

  it('takes a folder for its index page', () => {
    expect(fileOf('')).toBe('index.html');
    expect(fileOf('lessons/one/')).toBe('lessons/one/index.html');
    expect(fileOf('find.json')).toBe('find.json');
  });

  it('reads a list, a stop, and nothing else', () => {
    expect(readList(listFiles(folder, 'd'))?.constructor).toBe(Object);
    expect(readList({ stop: true })).toEqual({ stop: true });
    for (const other of [null, 3, 'x', {}, { version: 'a' }, { stop: false }])
      expect(readList(other)).toBeUndefined();
  });

  it('never says less than it is', () => {
    expect(printBytes(12_000_001)).toBe('13 MB');
    expect(printBytes(1_200_001)).toBe('1.3 MB');
    expect(printBytes(850_400)).toBe('851 kB');
  });
});

describe('the worker', () => {
  it('is written beside the list, small and whole', async () => {
    await writeOffline(folder);
    const text = readFileSync(join(folder, 'sw.js'), 'utf8');
    expect(text.length).toBeLessThan(6000);
    expect(text).not.toMatch(/\bSTOP\b|^\s*(?:import|export)\s/m);
    expect(JSON.parse(readFileSync(join(folder, 'offline.json'), 'utf8'))).toHaveProperty('version');
  });

  it('can be written to take every kept copy away', async () => {
    await writeOffline(folder, { stop: true });
    expect(JSON.parse(readFileSync(join(folder, 'offline.json'), 'utf8'))).toEqual({ stop: true });
    const text = readFileSync(join(folder, 'sw.js'), 'utf8');
    expect(text).toContain('unregister');
    expect(text).not.toMatch(/["'`]fetch["'`]/);
  });
});
