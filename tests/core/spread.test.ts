import { describe, expect, it } from 'vitest';
import { defineFormula } from '../../calculators/core/formula.ts';
import { drawOf, interval } from '../../calculators/core/interval.ts';
import { rearrange, solve, usualOf } from '../../calculators/core/solve.ts';
import { formulaSpread, quantile, sampleSpread } from '../../calculators/core/spread.ts';
import { formulas } from '../../calculators/formulas/index.ts';

const box = defineFormula({
  id: 'test/mass',
  title: 'Mass',
  answers: 'How heavy?',
  equation: 'm = rho * V',
  symbols: {
    m: { name: 'mass', unit: 'kg' },
    rho: { name: 'density', unit: 'kg/m³' },
    V: { name: 'volume', unit: 'm³' },
  },
  assumes: [],
  source: { key: 'nist-sp811', at: 'none', how: 'memory' },
  examples: [],
});

describe('the spread of a product', () => {
  // Relative variances add: √(3² + 4²) = 5 per cent (Pythagoras), 9 : 16 of it from each.
  it('adds in squares, and names what dominates', () => {
    const spread = formulaSpread(box, { rho: 8000, V: 1e-3 }, { rho: 240, V: 4e-5 }, 'm')!;
    expect(spread.how).toBe('first order');
    expect(spread.spread).toBeCloseTo(0.05 * 8, 6);
    expect(spread.shares[0]).toMatchObject({ name: 'V' });
    expect(spread.shares[0]!.share).toBeCloseTo(16 / 25, 6);
  });

  it('is sampled when an input is wider than 5 per cent, and stays positive', () => {
    const spread = formulaSpread(box, { rho: 8000, V: 1e-3 }, { V: 5e-4 }, 'm')!;
    expect(spread.how).toBe('sampled');
    // Log-normal with half-width 50 %: 95 % of it lies between 8 / 1.5 and 8 × 1.5.
    expect(spread.low / (8 / 1.5)).toBeCloseTo(1, 1);
    expect(spread.high / (8 * 1.5)).toBeCloseTo(1, 1);
  });

  it('is undefined when nothing is uncertain', () => {
    expect(formulaSpread(box, { rho: 8000, V: 1e-3 }, {}, 'm')).toBeUndefined();
  });
});

describe('the spread of an answer that has to be searched for', () => {
  const searched = Object.values(formulas).flatMap((formula) =>
    Object.keys(formula.symbols)
      .filter((find) => !rearrange(formula, find) && formula.noSolve?.[find] === undefined)
      .map((find) => ({ name: `${formula.id} for ${find}`, formula, find })),
  );

  // The other side looks through the whole range at every sample.
  it.each(searched)(
    '$name: sought near the answer, it is what the whole range gives',
    ({ name: title, formula, find }) => {
      const usual = usualOf(formula);
      const [first = ''] = Object.keys(formula.symbols);
      const start = solve(formula, usual, first);
      const { [find]: _, ...given } = start.ok ? { ...usual, [first]: start.value } : usual;
      const widths = Object.fromEntries(
        Object.entries(given).map(([name, value]) => [name, 0.1 * Math.abs(value)]),
      );
      const spread = formulaSpread(formula, given, widths, find, 60);
      const whole = sampleSpread(
        (values) => {
          const solved = solve(formula, values, find);
          return { answer: solved.ok ? solved.value : Number.NaN };
        },
        given,
        widths,
        { seed: formula.id, count: 60 },
      ).answer;
      if (!spread)
        return expect(solve(formula, given, find).ok && Object.keys(widths).length > 0).toBe(false);
      expect(spread.how).toBe('sampled');
      // A step of the scan may jump over a root close to where the logarithm ends; sought near by, it is found.
      if (spread.answered > whole.answered) return expect(title).toBe('vacuum/pump-down for p_u');
      expect(spread.answered).toBe(whole.answered);
      expect(Math.abs(spread.low / whole.low - 1)).toBeLessThan(1e-9);
      expect(Math.abs(spread.high / whole.high - 1)).toBeLessThan(1e-9);
      expect(spread.shares.map(({ name }) => name)).toEqual(whole.shares.map(({ name }) => name));
    },
  );
});

describe('sampling', () => {
  const run = ({ a = 0, b = 0 }: Record<string, number>) => ({ sum: a + b, gap: a - a, root: Math.sqrt(a) });

  it('gives the same answer for the same seed', () => {
    const once = sampleSpread(run, { a: 1, b: 2 }, { a: 0.1, b: 0.1 }, { seed: 'x', count: 500 });
    const again = sampleSpread(run, { a: 1, b: 2 }, { a: 0.1, b: 0.1 }, { seed: 'x', count: 500 });
    expect(again).toEqual(once);
  });

  it('finds the interval of a sum of two normals within sampling error', () => {
    // √(0.1² + 0.1²) = 0.1414; with 20,000 samples the 95 % half-width is known to about 1.5 %.
    const { sum } = sampleSpread(run, { a: 1, b: 2 }, { a: 0.1, b: 0.1 }, { seed: 'sum', count: 20000 });
    expect(sum.spread).toBeGreaterThan(0.1414 * 0.97);
    expect(sum.spread).toBeLessThan(0.1414 * 1.03);
    expect(sum.shares[0]!.share).toBeCloseTo(0.5, 1);
  });

  it('draws a number once for every place it is used in', () => {
    const { gap } = sampleSpread(run, { a: 1, b: 2 }, { a: 0.1 }, { seed: 'gap', count: 100 });
    expect(gap.spread).toBe(0);
  });

  it('counts the samples that have no answer and leaves them out', () => {
    const { root } = sampleSpread(run, { a: 0, b: 0 }, { a: 0.1 }, { seed: 'root', count: 4000 });
    expect(root.answered).toBeCloseTo(0.5, 1);
    expect(root.low).toBeGreaterThanOrEqual(0);
  });
});

describe('an interval', () => {
  it('is even in ratio for a wide positive number and even in width otherwise', () => {
    expect(interval(100, 10)).toEqual([90, 110]);
    expect(interval(100, 100)).toEqual([50, 200]);
    expect(interval(-100, 50)).toEqual([-150, -50]);
  });
  it('ends where 1.96 standard deviations of its draws are', () => {
    expect(drawOf(100, 100)(1.959964)).toBeCloseTo(200, 6);
    expect(drawOf(100, 10)(-1.959964)).toBeCloseTo(90, 6);
    expect(drawOf(100, 0)(3)).toBe(100);
  });
  it('is even in width up to a fifth, and about nothing', () => {
    expect(interval(10, 2)).toEqual([8, 12]);
    expect(interval(0, 1)).toEqual([-1, 1]);
    expect(drawOf(10, 2)(1.959964)).toBeCloseTo(12, 9);
    expect(drawOf(0, 1)(-1.959964)).toBeCloseTo(-1, 9);
    // A half over a fifth: 10 ÷ 1.3 and 10 × 1.3.
    expect(interval(10, 3)).toEqual([10 / 1.3, 13]);
  });
  it('of no width draws the number itself', () => {
    for (const none of [0, -1, Number.NaN]) expect(drawOf(10, none)(2)).toBe(10);
  });
  it('takes its quantiles between order statistics', () => {
    expect(quantile([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantile([], 0.5)).toBeNaN();
  });
});

describe('where a spread comes from', () => {
  const linear = ({ a = 0, b = 0, c = 0 }: Record<string, number>): { y: number } => ({
    y: 3 * a + 4 * b + 0 * c,
  });

  it('shares the variance as a straight sum does: 9 to 16 of 25', () => {
    // Var(3a + 4b) = 9 + 16 for equal widths. Ranks and 20,000 draws keep it within two in a hundred.
    const { y } = sampleSpread(
      linear,
      { a: 10, b: 10, c: 10 },
      { a: 1, b: 1, c: 1 },
      { seed: 's', count: 20_000 },
    );
    const shares = Object.fromEntries(y.shares.map(({ name, share }) => [name, share]));
    expect(shares['a']).toBeCloseTo(9 / 25, 1);
    expect(Math.abs(shares['a']! - 0.36)).toBeLessThan(0.02);
    expect(Math.abs(shares['b']! - 0.64)).toBeLessThan(0.02);
    expect(shares['c']!).toBeLessThan(0.001);
    expect(y.answered).toBe(1);
    // The half-width adds in squares: √(3² + 4²) = 5.
    expect(y.spread).toBeCloseTo(5, 0);
    expect(Math.abs(y.spread - 5)).toBeLessThan(0.12);
  });

  it('leaves out what has no answer, and shares what is left the same way', () => {
    const holed = (values: Record<string, number>): { y: number } =>
      values['c']! > 10 ? { y: Number.NaN } : linear(values);
    const { y } = sampleSpread(
      holed,
      { a: 10, b: 10, c: 10 },
      { a: 1, b: 1, c: 1 },
      { seed: 's', count: 20_000 },
    );
    expect(Math.abs(y.answered - 0.5)).toBeLessThan(0.02);
    const shares = Object.fromEntries(y.shares.map(({ name, share }) => [name, share]));
    expect(Math.abs(shares['a']! - 0.36)).toBeLessThan(0.03);
    expect(Math.abs(shares['b']! - 0.64)).toBeLessThan(0.03);
  });

  it('has no share and no interval where nothing was answered', () => {
    const { y } = sampleSpread(() => ({ y: Number.NaN }), { a: 1 }, { a: 0.5 }, { seed: 's', count: 50 });
    expect(y.answered).toBe(0);
    expect(y.low).toBeNaN();
    expect(y.shares).toEqual([{ name: 'a', share: 0 }]);
  });

  it('draws so many times and no more', () => {
    let runs = 0;
    sampleSpread(() => ((runs += 1), { y: 1 }), { a: 1 }, { a: 0.5 }, { seed: 's', count: 50 });
    expect(runs).toBe(50);
  });
});
