import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { reworked } from './by-hand/examples.ts';
import { claimsIn } from './by-hand/working.ts';

describe('working written by hand', () => {
  it.each([
    ['7520 × 9.80665 = 73 746 Pa', true],
    ['7520 × 9.80665 = 73 764 Pa', false],
    ['2 × 9.80665 × 0.013 = 0.254973; root 0.50495.', true],
    ['2 × 9.80665 × 0.013 = 0.254973; root 0.50395.', false],
    ['cos 130° = −0.64279', true],
    ['cos 130° = 0.64279', false],
    ['over 1000 × 765 = 765 000 W/m² is 0.340 s', true],
    ['8 − 2 − 1 = 5', true],
    ['8 − 2 − 1 = 7', false],
    ['0.06 / 7520 = 7.9787e-6 m³/s', true],
  ])('%s: %s', (text, right) => {
    const before = text.startsWith('over') ? '7520 × 0.000428 × 80 800 = 260 060 J/m². ' : '';
    const claims = claimsIn(before + text);
    expect(claims.length).toBeGreaterThan(0);
    expect(claims.every(({ holds }) => holds)).toBe(right);
  });

  it('keeps a written number to its digits', () => {
    const [claim] = claimsIn('1 ÷ 3 = 0.33');
    expect(claim?.holds).toBe(true);
    expect(claim?.written.low.eq(new Decimal('0.325'))).toBe(true);
  });
});

describe('examples worked by hand', () => {
  const all = reworked();

  it('hold, sum for sum, worked again to fifty digits from their text alone', () => {
    const wrong = all.flatMap(({ of, title, wrong: claims }) =>
      claims.map(({ text }) => `${of}, ${title}: ${text}`),
    );
    expect(wrong).toEqual([]);
  });

  it('are read in most, and most come to the answer they state', () => {
    const sums = all.reduce((count, { claims }) => count + claims.length, 0);
    expect(sums).toBeGreaterThan(2 * all.length);
    // What is told in words, or by a table read off, is listed by `npm run -s by-hand`.
    expect(all.filter(({ concluded }) => concluded).length / all.length).toBeGreaterThan(0.7);
  });
});
