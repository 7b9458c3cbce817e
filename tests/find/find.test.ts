import { readdirSync } from 'node:fs';
import { sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { buildIndex } from '../../src/find/build.ts';
import { gather } from '../../src/find/gather.ts';
import { searchOf } from '../../src/find/search.ts';
import { asSign, edits, signWord, stem, wordsOf } from '../../src/find/words.ts';
import { amountQueries, findQueries } from '../site/find-queries.ts';

const documents = gather(fileURLToPath(new URL('../..', import.meta.url)));
const index = buildIndex(documents);
const search = searchOf(index);

describe('the words of a search', () => {
  it('are one spelling, whatever side of the ocean', () => {
    expect(wordsOf('Mold gages of aluminum')).toEqual(wordsOf('mould gauges of aluminium'));
    expect(wordsOf('vapor of sulfur')).toEqual(wordsOf('vapour of sulphur'));
  });

  it('share a stem in all their forms', () => {
    for (const word of ['freeze', 'freezes', 'freezing']) expect(stem(word)).toBe('freez');
    expect(stem('gases')).toBe(stem('gas'));
    expect(stem('brass')).toBe('brass');
  });

  it('write Greek out and know a symbol however it is typed', () => {
    expect(signWord('Δp')).toBe(signWord('dp'));
    expect(signWord('ρ')).toBe(signWord('rho'));
    expect(asSign('V/A')).toBe(signWord('V / A'));
    expect(asSign('how much metal')).toBeUndefined();
  });

  it('are counted apart by edits, a swap as one', () => {
    expect(edits('riser', 'risre', 2)).toBe(1);
    expect(edits('sprue', 'sprue', 2)).toBe(0);
    expect(edits('permability', 'permeability', 2)).toBe(1);
    expect(edits('gate', 'chaplet', 2)).toBe(3);
  });
});

describe('what can be found', () => {
  it('has every page that is not of a kind', () => {
    const folder = fileURLToPath(new URL('../../src/pages', import.meta.url));
    const own = readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((file) => file.split(sep).join('/'))
      .filter((file) => file.endsWith('.astro') && !/\[|404|^index|^find\./.test(file))
      .map((file) => file.replace(/(index)?\.astro$/, '').replace(/\/?$/, '/'));
    const paths = documents.map(({ path }) => path);
    expect(own.filter((path) => !paths.includes(path))).toEqual([]);
  });
});

describe('the search', () => {
  it('knows every page once', () => {
    const paths = documents.map(({ path }) => path);
    expect(paths.length).toBeGreaterThan(500);
    expect(new Set(paths).size).toBe(paths.length);
    for (const { title, says, path } of documents) {
      expect(title, path).not.toBe('');
      expect(says, path).not.toBe('');
    }
  });

  it('puts the page a caster means first, in 57 of 60', () => {
    expect(findQueries).toHaveLength(60);
    const missed = findQueries.flatMap(({ typed, first }) => {
      expect(
        documents.some(({ path }) => path === first),
        first,
      ).toBe(true);
      const found = search(typed, 4).map(({ path, score }) => `${path} ${score.toFixed(0)}`);
      return found[0]?.split(' ')[0] === first ? [] : [{ typed, first, found }];
    });
    expect(missed.length, JSON.stringify(missed, null, 1)).toBeLessThanOrEqual(3);
  });

  it.each(Object.entries(amountQueries))('leads “%s” to %s among the first three', (typed, wanted) => {
    expect(search(typed, 3).map(({ path }) => path)).toContain(wanted);
  });

  it('answers while a word is still being typed', () => {
    for (let length = 4; length <= 'chvorinov'.length; length += 1)
      expect(search('chvorinov'.slice(0, length), 8).map(({ path }) => path)).toContain(
        'formulas/freezing/time-rule/',
      );
  });

  it('hears the matter of a question and not its sizes', () => {
    expect(search('30 g bronze')[0]?.path).toMatch(/^materials\/.*bronze/);
    const metal = ['lessons/how-much-metal/', 'formulas/charge/total/'];
    expect(
      search('how much metal do I need', 2)
        .map(({ path }) => path)
        .sort(),
    ).toEqual(metal.sort());
    expect(search('can I suck 40 kPa on a 120 mm span', 6).map(({ path }) => path)).toContain(
      'formulas/sand/cake-bending/',
    );
    // Sizes alone still lead to the gauge.
    expect(search('12 inHg')[0]?.path).toBe('formulas/vacuum/gauge/');
  });

  it('finds nothing where there is nothing', () => {
    expect(search('')).toEqual([]);
    expect(search('   ')).toEqual([]);
    expect(search('qqqqqxzzk')).toEqual([]);
  });
});
