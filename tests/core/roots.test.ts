import { describe, expect, it } from 'vitest';
import { findRoots } from '../../calculators/core/roots.ts';

describe('the search for roots', () => {
  it('finds every root a scan can part, in rising order, to the last digits', () => {
    // (x − 1)(x − 2)(x − 3)
    const found = findRoots((x) => (x - 1) * (x - 2) * (x - 3), 0.55, 3.61);
    expect(found).toHaveLength(3);
    found.forEach((root, at) => expect(Math.abs(root - at - 1)).toBeLessThan(1e-12));
  });

  it('takes a root at either end', () => {
    expect(findRoots((x) => x - 1, 1, 4)).toEqual([1]);
    expect(findRoots((x) => x - 4, 1, 4)).toEqual([4]);
    expect(findRoots((x) => x - 100, 1e-3, 100)).toEqual([100]);
    expect(findRoots((x) => x - 1e-3, 1e-3, 100)).toEqual([1e-3]);
  });

  it('does not take a pole for a root, however steep', () => {
    expect(findRoots((x) => 1 / (x - 1.234), 0, 3)).toEqual([]);
    expect(findRoots((x) => Math.tan(x), 1.1, 2.1)).toEqual([]);
  });

  it('takes a steep crossing for a root', () => {
    const [root] = findRoots((x) => 1e9 * (x - 1.234), 0, 3);
    expect(root).toBeCloseTo(1.234, 12);
  });

  it('finds nothing where nothing crosses', () => {
    expect(findRoots((x) => x * x + 1, -5, 5)).toEqual([]);
    expect(findRoots(() => Number.NaN, -5, 5)).toEqual([]);
  });

  it('looks at equal ratios over a wide range of positive numbers', () => {
    // Two roots close to the small end: equal steps of 4 would pass both by.
    const found = findRoots((x) => Math.log(x / 0.002) * Math.log(x / 0.02), 1e-3, 1000);
    expect(found.map((x) => x.toPrecision(9))).toEqual(['0.00200000000', '0.0200000000']);
  });

  it('looks at equal steps over a narrow range or one through nought', () => {
    const asked: number[] = [];
    findRoots((x) => (asked.push(x), 1), 1, 20);
    expect(asked[1]! - asked[0]!).toBeCloseTo(19 / 240, 12);
    expect(asked[120]).toBeCloseTo(10.5, 9);
    expect(asked).toHaveLength(241);
    const through: number[] = [];
    findRoots((x) => (through.push(x), 1), 0, 1000);
    expect(through[120]).toBeCloseTo(500, 9);
    const wide: number[] = [];
    findRoots((x) => (wide.push(x), 1), 1, 20.001);
    expect(wide[120]).toBeCloseTo(Math.sqrt(20.001), 9);
  });

  it('closes in within a few dozen trials, even on a flat or a kinked curve', () => {
    const trials = (f: (x: number) => number, low: number, high: number): [number | undefined, number] => {
      let count = 0;
      const [root] = findRoots((x) => ((count += 1), f(x)), low, high);
      return [root, count - 241];
    };
    const [smooth, few] = trials((x) => Math.exp(x) - 2, 0, 3);
    expect(smooth).toBeCloseTo(Math.LN2, 14);
    expect(few).toBeLessThan(12);
    const [flat, more] = trials((x) => (x - 1.0071) ** 9, 0, 3);
    expect(Math.abs(flat! - 1.0071)).toBeLessThan(0.02);
    // It gives up on a ninefold root after a hundred halvings at the latest.
    expect(more).toBeLessThanOrEqual(102);
    const [kink, some] = trials((x) => (x < 1.0071 ? x - 1.0071 : 1e6 * (x - 1.0071)), 0, 3);
    expect(kink).toBeCloseTo(1.0071, 12);
    expect(some).toBeLessThan(70);
  });
});
