import { describe, expect, it } from 'vitest';
import { defineFormula, type Formula, type SymbolSpec } from '../../calculators/core/formula.ts';
import {
  constantsOf,
  evaluate,
  isPast,
  residual,
  solve,
  usualOf,
  warningsFor,
  type Solved,
} from '../../calculators/core/solve.ts';

const formulaOf = (
  equation: string,
  symbols: Record<string, SymbolSpec>,
  more: Partial<Formula> = {},
): Formula =>
  defineFormula({
    id: 'test/edges',
    title: 'Edges',
    answers: 'Where does it end?',
    equation,
    symbols,
    assumes: [],
    source: { key: 'nist-sp811', at: 'none', how: 'memory' },
    examples: [],
    ...more,
  });
const plain = (name: string, more: Partial<SymbolSpec> = {}): SymbolSpec => ({ name, unit: '1', ...more });
const reasonOf = (solved: Solved): string => {
  if (solved.ok) throw new Error(`answers ${solved.value}`);
  return solved.reason;
};
const valueOf = (solved: Solved): number => {
  if (!solved.ok) throw new Error(solved.reason);
  return solved.value;
};

const web: SymbolSpec = { name: 'web', unit: 'mm', show: 'in', range: [25.4, 508], why: 'webs of the bench' };

describe('a range', () => {
  const messages = (spec: SymbolSpec, si: number) => warningsFor(spec, 'a', si).map(({ message }) => message);

  it('tells a range in whole degrees, and in the unit that is shown', () => {
    // 250 K is −23.15 °C and −9.67 °F; 1100 K is 826.85 °C and 1520.33 °F.
    const sand = plain('T', { unit: 'K', range: [250, 1100] });
    expect(messages({ ...sand, show: '°C' }, 200)).toEqual(['below the range −23 to 827 °C']);
    expect(messages({ ...sand, show: '°F' }, 1200)).toEqual(['above the range −10 to 1520 °F']);
  });

  it.each([
    [0.1, []],
    // The ends belong to it, and so does what rounding makes of them.
    [0.0254, []],
    [0.0254 * (1 - 5e-10), []],
    [0.508 * (1 + 5e-10), []],
    [0.508, []],
    [0.0253, ['below the range 1 to 20 in: webs of the bench']],
    [0.51, ['above the range 1 to 20 in: webs of the bench']],
  ])('of 1 to 20 in says of %d m: %j', (si, expected) => {
    expect(messages(web, si)).toEqual(expected);
  });

  it('has a slack that goes with the size of the number', () => {
    const pressure: SymbolSpec = { name: 'p', unit: 'Pa', range: [0, 1e6] };
    expect(messages(pressure, 1e6 + 5e-4)).toEqual([]);
    expect(messages(pressure, 1e6 + 5e-3)).toEqual(['above the range 0 to 1000000 Pa']);
    expect(messages(plain('n', { range: [0, 2] }), 3)).toEqual(['above the range 0 to 2']);
    expect(messages(plain('n', { range: [0, 2] }), -1)).toEqual(['below the range 0 to 2']);
    expect(messages(plain('n'), 1e300)).toEqual([]);
  });

  it('of the answer warns too, and of what was given', () => {
    const area = formulaOf('A = a * b', { A: plain('area', { range: [0, 1] }), a: web, b: plain('b') });
    const solved = solve(area, { a: 2, b: 3 }, 'A');
    expect(valueOf(solved)).toBe(6);
    expect(solved.warnings.map(({ symbol }) => symbol)).toEqual(['a', 'A']);
  });
});

describe('a limit', () => {
  const oven: SymbolSpec = {
    name: 'oven',
    unit: '°C',
    range: [0, 500],
    limit: { above: 700, below: 10, why: 'it breaks' },
  };
  const at = (celsius: number): number => celsius + 273.15;

  it.each([
    [10, false],
    [9, true],
    [700, false],
    [700 * (1 + 5e-10), false],
    [10 * (1 - 5e-10), false],
    [701, true],
    [300, false],
  ])('of 10 to 700 °C at %d °C is past: %s', (celsius, past) => {
    expect(isPast(oven, at(celsius))).toBe(past);
    expect(warningsFor(oven, 'T', at(celsius)).some(({ refuses }) => refuses)).toBe(past);
  });

  it('may have one side, or none', () => {
    expect(isPast(plain('a', { limit: { above: 1, why: '' } }), -1e9)).toBe(false);
    expect(isPast(plain('a', { limit: { below: 1, why: '' } }), 1e9)).toBe(false);
    expect(isPast(plain('a', { limit: { below: 1, why: '' } }), 0.9)).toBe(true);
    expect(isPast(plain('a'), 1e300)).toBe(false);
  });

  it('lets a number between range and limit through with a warning', () => {
    expect(warningsFor(oven, 'T', at(600))).toEqual([
      { symbol: 'T', message: 'above the range 0 to 500 °C' },
    ]);
    expect(warningsFor(oven, 'T', at(250))).toEqual([]);
  });
});

describe('what a formula holds', () => {
  const drop = formulaOf('y = a * b * g', {
    y: plain('y'),
    a: { name: 'a', unit: 'mm', usual: 40 },
    b: plain('b'),
    g: { name: 'gravity', unit: 'g', constant: 5 },
  });

  it('usual values and constants are in SI, and nothing else is there', () => {
    expect(usualOf(drop)).toEqual({ a: 0.04 });
    expect(constantsOf(drop)).toEqual({ g: 0.005 });
  });

  it('the residual is the gap over the size of both sides', () => {
    const product = formulaOf('y = a * b', { y: plain('y'), a: plain('a'), b: plain('b') });
    // (3 − 2) / (3 + 2), (−3 − 2) / (3 + 2), and two sides of nothing.
    expect(residual(product, { y: 3, a: 1, b: 2 })).toBeCloseTo(0.2, 15);
    expect(residual(product, { y: -3, a: 1, b: 2 })).toBe(-1);
    expect(residual(product, { y: 0, a: 0, b: 2 })).toBe(0);
  });
});

describe('solving', () => {
  const product = formulaOf('y = a * b / 3', { y: plain('y'), a: plain('a', { sign: 'α' }), b: plain('b') });

  it('takes rounding for no fault, however large the numbers, and nothing for an answer', () => {
    for (const y of [1e12 / 7, 1e-12 / 7, 3e8, -5e200])
      expect(valueOf(solve(product, { y, b: 0.3 }, 'a')) / (y * 10)).toBeCloseTo(1, 12);
    expect(valueOf(solve(product, { y: 0, b: 0.3 }, 'a'))).toBe(0);
  });

  it('says what is missing when it is no number', () => {
    for (const a of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(reasonOf(solve(product, { a, b: 1 }, 'y'))).toBe('a (α) is not given');
    expect(reasonOf(solve(product, { b: 1 }, 'y'))).toBe('a (α) is not given');
  });

  it('gives no answer that is infinite or no number', () => {
    const over = formulaOf('y = b / a', { y: plain('y'), a: plain('a'), b: plain('b') });
    expect(reasonOf(solve(over, { a: 0, b: 1 }, 'y'))).toBe(
      'no value of y (y) satisfies the equation with these numbers',
    );
    const root = formulaOf('y = sqrt(a)', { y: { ...web, sign: 'w' }, a: plain('a') });
    expect(reasonOf(solve(root, { a: -1 }, 'y'))).toBe(
      'no web between 1 and 20 in satisfies the equation with these numbers',
    );
  });

  it('refuses a root of the other sign, however small', () => {
    const root = formulaOf('y = sqrt(a)', { y: plain('y'), a: plain('a') });
    for (const y of [-1, -1e-4, -1e-9]) expect(solve(root, { y }, 'a').ok).toBe(false);
    expect(valueOf(solve(root, { y: 1e-9 }, 'a'))).toBeCloseTo(1e-18, 27);
  });

  it('is refused where the formula says so', () => {
    const one = formulaOf('y = a', { y: plain('y'), a: plain('a') }, { noSolve: { a: 'a is chosen' } });
    expect(solve(one, { y: 2 }, 'a')).toEqual({ ok: false, reason: 'a is chosen', warnings: [] });
    expect(valueOf(solve(one, { a: 2 }, 'y'))).toBe(2);
  });

  // x² − 3x = y: for −2 the roots are 1 and 2, for 4 they are −1 and 4.
  const twice = (x: Partial<SymbolSpec>, where: Formula['where'] = []): Formula =>
    formulaOf('y = x * (x - 3)', { y: plain('y'), x: plain('x', { range: [-5, 5], ...x }) }, { where });

  it('prefers the root that may stand', () => {
    expect(valueOf(solve(twice({}), { y: 4 }, 'x'))).toBeCloseTo(-1, 9);
    const solved = solve(twice({ limit: { below: 0, why: 'less than nothing' } }), { y: 4 }, 'x');
    expect(valueOf(solved)).toBeCloseTo(4, 9);
    expect(solved.ok && solved.roots.map((root) => Math.round(root))).toEqual([-1, 4]);
    const past = solve(twice({ limit: { below: 5, why: 'too little of it' } }), { y: 4 }, 'x');
    expect(reasonOf(past)).toBe('too little of it');
    expect(valueOf(solve(twice({}, [{ test: 'x > 0', why: 'behind the wall' }]), { y: 4 }, 'x'))).toBeCloseTo(
      4,
      9,
    );
  });

  it('names the condition that the roots break', () => {
    const reason = (...tests: string[]): string =>
      reasonOf(
        solve(
          twice(
            {},
            tests.map((test) => ({ test, why: `not ${test}` })),
          ),
          { y: -2 },
          'x',
        ),
      );
    expect(reason('x > -100', 'x > 5')).toBe('not x > 5');
    // Each root breaks another.
    expect(reason('x > 1.5', 'x < 1.5')).toBe('not x > 1.5');
  });

  it('finds a root with no range to look in, over decades', () => {
    const implicit = formulaOf('y = x + ln(x)', { y: plain('y'), x: plain('x') });
    expect(valueOf(solve(implicit, { y: 1 }, 'x'))).toBeCloseTo(1, 9);
    expect(valueOf(solve(implicit, { y: 1e6 + Math.log(1e6) }, 'x')) / 1e6).toBeCloseTo(1, 9);
  });

  it('evaluates an empirical equation in its own units', () => {
    // 2 × 40 (mm) + 1 = 81 (s), whatever SI says of 40 mm.
    const rule = formulaOf(
      't = 2 * d + 1',
      { t: { name: 't', unit: 'min' }, d: { name: 'd', unit: 'mm' } },
      { empirical: true },
    );
    expect(evaluate(rule, { d: 0.04 })).toBeCloseTo(81 * 60, 9);
    expect(valueOf(solve(rule, { t: 81 * 60 }, 'd'))).toBeCloseTo(0.04, 12);
  });

  it('evaluates the first symbol where no single one stands on the left', () => {
    const turned = formulaOf('2 * y = a', { y: plain('y'), a: plain('a') });
    expect(evaluate(turned, { a: 3 })).toBe(1.5);
    const late = formulaOf('b = a / 2', { a: plain('a'), b: plain('b') });
    expect(evaluate(late, { a: 3 })).toBe(1.5);
  });
});
