import { describe, expect, it } from 'vitest';
import { formulaAsModel } from '../../calculators/core/calculation.ts';
import { defineFormula } from '../../calculators/core/formula.ts';
import { findRoots } from '../../calculators/core/roots.ts';
import { evaluate, rearrange, residual, solve } from '../../calculators/core/solve.ts';
import { printEquation } from '../../calculators/core/expression.ts';

const fall = defineFormula({
  id: 'test/fall',
  title: 'Speed after a fall',
  answers: 'How fast after a fall?',
  equation: 'v = C * sqrt(2 * g * h)',
  symbols: {
    v: { name: 'speed', unit: 'm/s', range: [0, 10], why: 'above this the stream breaks up' },
    C: { name: 'discharge coefficient', unit: '1', range: [0.3, 1], usual: 0.7 },
    g: { name: 'gravity', unit: 'm/s²', constant: 9.80665 },
    h: {
      name: 'head',
      unit: 'm',
      show: 'mm',
      range: [0, 1],
      why: 'taller than a bench sprue',
      limit: { above: 5, why: 'no flask is that tall' },
    },
  },
  assumes: ['the sprue runs full'],
  source: { key: 'ghosh-mallik', at: 'ch. 2', how: 'memory' },
  examples: [],
  where: [{ test: 'h > 0', why: 'metal at or below the gate does not run in' }],
});

describe('solving a formula', () => {
  it('finds any symbol, and shows how it was rearranged', () => {
    // √(2 × 9.80665 × 0.2) = 1.98057 by hand; × 0.5 = 0.990285.
    const speed = solve(fall, { C: 0.5, h: 0.2 }, 'v');
    expect(speed).toMatchObject({ ok: true, warnings: [] });
    expect(speed.ok && speed.value).toBeCloseTo(0.990285, 5);
    const head = solve(fall, { C: 0.5, v: 0.990285 }, 'h');
    expect(head.ok && head.value).toBeCloseTo(0.2, 6);
    expect(printEquation(rearrange(fall, 'h')!)).toBe('h = (v / C)^2 / (2 * g)');
  });

  it('warns outside a range and says why, but still answers', () => {
    const solved = solve(fall, { C: 0.5, h: 2 }, 'v');
    expect(solved.ok).toBe(true);
    expect(solved.warnings).toEqual([
      { symbol: 'h', message: 'above the range 0 to 1000 mm: taller than a bench sprue' },
    ]);
  });

  it('refuses past a limit with the reason', () => {
    expect(solve(fall, { C: 0.5, h: 6 }, 'v')).toMatchObject({ ok: false, reason: 'no flask is that tall' });
    expect(solve(fall, { C: 0.3, v: 9 }, 'h')).toMatchObject({ ok: false, reason: 'no flask is that tall' });
  });

  it('has no answer outside the joint domain, in words', () => {
    const reason = 'metal at or below the gate does not run in';
    expect(solve(fall, { C: 0.5, h: 0 }, 'v')).toMatchObject({ ok: false, reason });
    expect(solve(fall, { C: 0.5, h: -0.1 }, 'v')).toMatchObject({ ok: false, reason });
  });

  it('names what is missing and never throws for it', () => {
    expect(solve(fall, { C: 0.5 }, 'v')).toMatchObject({ ok: false, reason: 'head (h) is not given' });
    expect(solve(fall, { C: 0.5, h: Number.NaN }, 'v')).toMatchObject({ ok: false });
    expect(() => solve(fall, {}, 'w')).toThrow('"test/fall" has no symbol "w"');
  });

  it('refuses a negative speed rather than answering with the wrong branch of a square', () => {
    expect(solve(fall, { C: 0.5, v: -1 }, 'h')).toMatchObject({ ok: false });
  });

  it('evaluates the left side for code that builds on it', () => {
    expect(evaluate(fall, { C: 1, h: 0.2 })).toBeCloseTo(1.98057, 5);
    expect(() => evaluate(fall, { C: 1, h: -1 })).toThrow('test/fall: metal at or below');
    expect(residual(fall, { v: 1.98057, C: 1, h: 0.2 })).toBeCloseTo(0, 5);
  });

  it('lifts to the shape of a model', () => {
    const model = formulaAsModel(fall);
    expect(Object.keys(model.inputs)).toEqual(['C', 'h']);
    expect(model.run({ C: 1, h: 0.2 }).values.v).toBeCloseTo(1.98057, 5);
    expect(model.run({ C: 1, h: -1 }).notes[0]).toContain('does not run in');
  });
});

describe('solving where nothing can be rearranged', () => {
  const twice = defineFormula({
    id: 'test/twice',
    title: fall.title,
    answers: fall.answers,
    assumes: fall.assumes,
    source: fall.source,
    equation: 'y = x * (x - 3)',
    symbols: {
      y: { name: 'y', unit: '1', range: [-10, 10] },
      x: { name: 'x', unit: '1', range: [-5, 5] },
    },
    examples: [],
    where: [],
  });

  it('lists every root inside the range', () => {
    // x² − 3x + 2 = 0 has roots 1 and 2.
    const solved = solve(twice, { y: -2 }, 'x');
    if (!solved.ok) throw new Error(solved.reason);
    expect(solved.rearranged).toBeUndefined();
    expect(solved.roots.map((root) => root.toFixed(9))).toEqual(['1.000000000', '2.000000000']);
  });

  it('says so when there is none', () => {
    expect(solve(twice, { y: -3 }, 'x')).toMatchObject({
      ok: false,
      reason: 'no x between −5 and 5 satisfies the equation with these numbers',
    });
  });
});

describe('the root search', () => {
  it('does not take a pole for a root', () => {
    expect(findRoots((x) => 1 / (x - 1), 0, 3)).toEqual([]);
  });
  it('finds the roots of a cosine as tabulated', () => {
    const roots = findRoots(Math.cos, 0.1, 8).map((x) => x / (Math.PI / 2));
    expect(roots).toHaveLength(3);
    roots.forEach((root, i) => expect(root).toBeCloseTo(2 * i + 1, 12));
  });
  it('reaches over decades when both ends are positive', () => {
    const [root] = findRoots((x) => Math.log10(x) + 7, 1e-12, 1e3);
    expect(root).toBeCloseTo(1e-7, 15);
  });
});
