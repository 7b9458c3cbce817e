import { describe, expect, it } from 'vitest';
import { rootBetween, rootNear } from '../../calculators/core/bracket.ts';
import { defineFormula, type Formula } from '../../calculators/core/formula.ts';
import { createRandom } from '../../calculators/core/random.ts';
import { rearrange, solve, usualOf } from '../../calculators/core/solve.ts';
import { solverFor } from '../../calculators/core/solver.ts';
import { formulas } from '../../calculators/formulas/index.ts';

const all = Object.values(formulas) as readonly Formula[];

/** Usual values pushed about by factors, far enough that some points are refused. */
function pointsOf(formula: Formula, count: number): Record<string, number>[] {
  const random = createRandom(formula.id);
  const usual = Object.entries(usualOf(formula));
  const [first = ''] = Object.keys(formula.symbols);
  return Array.from({ length: count }, (_, i) => {
    const point = Object.fromEntries(
      usual.map(([name, value]) => [name, value * Math.exp((i / 4) * random.normal())]),
    );
    const solved = solve(formula, point, first);
    return solved.ok ? { ...point, [first]: solved.value } : point;
  });
}

describe('a solver without words', () => {
  it('gives what solve gives, for every symbol of every formula, and NaN where it refuses', () => {
    let [answered, refused] = [0, 0];
    for (const formula of all) {
      for (const find of Object.keys(formula.symbols)) {
        for (const point of pointsOf(formula, rearrange(formula, find) ? 6 : 2)) {
          const solved = solve(formula, point, find);
          const value = solverFor(formula, find)(point);
          expect(value, `${formula.id} for ${find}`).toBe(solved.ok ? solved.value : Number.NaN);
          if (solved.ok) answered += 1;
          else refused += 1;
        }
      }
    }
    expect(answered).toBeGreaterThan(2000);
    expect(refused).toBeGreaterThan(100);
  });

  it('finds the same root from near it as by looking through the whole range', () => {
    const searched = all.filter(({ id, symbols }) => id.startsWith('freezing/time') && 't' in symbols);
    let found = 0;
    for (const formula of searched) {
      for (const point of pointsOf(formula, 4)) {
        const solved = solve(formula, point, 't');
        if (!solved.ok) continue;
        found += 1;
        for (const off of [0.01, 0.7, 1, 3, 200]) {
          const near = solverFor(formula, 't')(point, off * solved.value);
          expect(Math.abs(near / solved.value - 1), formula.id).toBeLessThan(1e-10);
        }
      }
    }
    expect(found).toBeGreaterThan(6);
  });

  it('seeks from a guess first, beyond the range too, and looks through the range where that finds nothing', () => {
    // 1 + ln 1 = 1, and 15 + ln 15 = 17.708.
    const implicit = (unit: 'mm' | '1', empirical: boolean): Formula =>
      defineFormula({
        id: 'test/implicit',
        title: 'Implicit',
        answers: '',
        equation: 'y = x + ln(x)',
        symbols: {
          y: { name: 'y', unit: '1' },
          x: { name: 'x', unit, range: [10, 20], limit: { above: 30, why: 'far' } },
        },
        empirical,
        assumes: [],
        source: { key: 'nist-sp811', at: 'none', how: 'memory' },
        examples: [],
      });
    const x = solverFor(implicit('1', false), 'x');
    expect(x({ y: 1 }, 2)).toBeCloseTo(1, 10);
    expect(x({ y: 1 }, 0.01)).toBeCloseTo(1, 10);
    for (const near of [undefined, 0, -2]) expect(x({ y: 1 }, near)).toBeNaN();
    for (const near of [undefined, 0, -2, 12, 1e308])
      expect(x({ y: 15 + Math.log(15) }, near)).toBeCloseTo(15, 9);
    // e to the −1e9 is no number here: nothing is found near, and nothing in the range.
    expect(x({ y: -1e9 }, 2)).toBeNaN();
    expect(x({ y: 100 }, 2)).toBeNaN();
    // In millimetres, as the equation is written.
    expect(solverFor(implicit('mm', true), 'x')({ y: 1 }, 0.003)).toBeCloseTo(0.001, 12);
  });

  it('is made once', () => {
    const [formula] = all as [Formula];
    expect(solverFor(formula)).toBe(solverFor(formula));
    expect(solverFor(formula, 'no such symbol')({})).toBeNaN();
  });

  it('refuses past a limit, outside the domain and where a number is missing', () => {
    const fall = defineFormula({
      id: 'test/root',
      title: 'Root',
      answers: '',
      equation: 'v = sqrt(a - b)',
      symbols: {
        v: { name: 'speed', unit: 'm/s', limit: { above: 3, why: 'too fast' } },
        a: { name: 'a', unit: '1', limit: { below: 1, why: 'too little' } },
        b: { name: 'b', unit: '1' },
      },
      where: [{ test: 'b >= 0', why: 'b is no distance' }],
      assumes: [],
      source: { key: 'nist-sp811', at: 'none', how: 'memory' },
      examples: [],
    });
    const v = solverFor(fall);
    expect(v({ a: 5, b: 1 })).toBe(2);
    expect(v({ a: 17, b: 1 })).toBeNaN();
    expect(v({ a: 0.5, b: 0 })).toBeNaN();
    expect(v({ a: 3, b: -1 })).toBeNaN();
    expect(v({ a: 1, b: 2 })).toBeNaN();
    expect(v({ a: 5 })).toBeNaN();
    expect(v({ a: Number.POSITIVE_INFINITY, b: 1 })).toBeNaN();
  });
});

describe('a bracketed root', () => {
  // Roots written down beforehand: √2, ln 10, and a jump at 0.3.
  it.each([
    ['a parabola', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['the ends the other way round', (x: number) => x * x - 2, 2, 0, Math.SQRT2],
    ['an exponential, flat on the left', (x: number) => Math.exp(x) - 10, -30, 5, Math.LN10],
    ['a high power', (x: number) => x ** 9 - 512, 0, 100, 2],
    ['a jump', (x: number) => (x < 0.3 ? -1 : 1), 0, 1, 0.3],
    ['an end', (x: number) => x, 0, 1, 0],
  ] as const)('of %s is found', (_name, f, from, to, expected) => {
    expect(rootBetween(f, from, to)).toBeCloseTo(expected, 11);
  });

  it('takes few looks at a smooth curve', () => {
    let looks = 0;
    rootBetween((x) => ((looks += 1), Math.exp(x) - 10), 1.8, 2.8);
    expect(looks).toBeLessThan(10);
  });

  it('is sought among positive numbers, decades away if need be', () => {
    expect(rootNear((x) => x / 3e-7 - 1, 1) / 3e-7).toBeCloseTo(1, 10);
    expect(rootNear((x) => 1 - x / 5e6, 1) / 5e6).toBeCloseTo(1, 10);
    expect(rootNear((x) => x + 1, 1)).toBeNaN();
  });
});
