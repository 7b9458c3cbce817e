import erfcxReference from '@stdlib/math-base-special-erfcx';
import { describe, expect, it } from 'vitest';
import { erf, erfc, erfcx } from '../../calculators/core/special.ts';

// Abramowitz & Stegun, Handbook of Mathematical Functions (1964), Table 7.1 (from memory).
const table: readonly [number, number][] = [
  [0.1, 0.112462916],
  [0.5, 0.5204998778],
  [1, 0.8427007929],
  [1.5, 0.9661051465],
  [2, 0.995322265],
];

describe('the error functions', () => {
  it.each(table)('erf(%d) is as tabulated to ten figures', (x, expected) => {
    expect(erf(x)).toBeCloseTo(expected, 9);
    expect(erfc(x)).toBeCloseTo(1 - expected, 9);
    expect(erf(-x)).toBeCloseTo(-expected, 9);
  });
  it('erfcx agrees with an independent library over the whole line', () => {
    for (let x = -5; x < 60; x += 0.037) {
      expect(Math.abs(erfcx(x) / erfcxReference(x) - 1)).toBeLessThan(5e-15);
    }
  });
});
