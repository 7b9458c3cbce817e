import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { dimensionOf, DimensionError } from '../../calculators/core/dimensions.ts';
import {
  binary,
  call,
  ExpressionError,
  name,
  negate,
  number,
  parseEquation,
  parseExpression,
  printEquation,
  printExpression,
  symbolsOf,
  type Expression,
} from '../../calculators/core/expression.ts';
import { isolate } from '../../calculators/core/isolate.ts';
import { compile } from '../../calculators/core/program.ts';
import { equationTeX, signToTeX, substituted } from '../../calculators/core/typeset.ts';
import { sameDimension, unit } from '../../calculators/core/units.ts';

const value = (text: string, environment: Record<string, number> = {}): number =>
  compile(parseExpression(text))(environment);

const expressions: fc.Arbitrary<Expression> = fc.letrec<{ e: Expression }>((tie) => ({
  e: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.integer({ min: 0, max: 99 }).map(number),
    fc.constantFrom('a', 'b', 'rho_l', 'T1').map(name),
    fc
      .tuple(fc.constantFrom('+', '-', '*', '/', '^'), tie('e'), tie('e'))
      .map(([op, l, r]) => binary(op, l, r)),
    tie('e').map(negate),
    tie('e').map((e) => call('sqrt', e)),
    tie('e').map((e) => call('exp', e)),
  ),
})).e;

describe('an expression', () => {
  it.each([
    ['2 + 3 * 4', 14],
    ['(2 + 3) * 4', 20],
    ['2 ^ 3 ^ 2', 512],
    ['-2 ^ 2', -4],
    ['2 ^ -1', 0.5],
    ['10 - 4 - 3', 3],
    ['100 / 5 / 2', 10],
    ['1.5e-3 * 2E3', 3],
    ['sqrt(16) + ln(exp(2))', 6],
    ['max(1, 5, 3) - min(4, 2)', 3],
  ])('%s is %d, worked by hand', (text, expected) => {
    expect(value(text)).toBeCloseTo(expected, 12);
  });

  it('reads symbols from its environment and lists them once, in order', () => {
    expect(value('C * sqrt(2 * (g * h + dp / rho))', { C: 1, g: 10, h: 5, dp: 0, rho: 1 })).toBeCloseTo(
      10,
      12,
    );
    expect(symbolsOf(parseExpression('b * a + b * pi'))).toEqual(['b', 'a']);
  });

  it.each([
    ['2 +', 'expected a number or a symbol but found "the end"'],
    ['2 $ 3', 'cannot read "$ 3"'],
    ['(2', 'expected ")"'],
    ['sqroot(2)', 'no function "sqroot"'],
    ['sqrt(1, 2)', 'sqrt takes one value'],
    ['2 3', 'did not expect "3"'],
    ['constructor(2)', 'no function "constructor"'],
  ])('%s is refused and the fault is quoted', (text, message) => {
    expect(() => parseExpression(text)).toThrow(ExpressionError);
    expect(() => parseExpression(text)).toThrow(message);
  });

  it('is an equation only with one equals sign', () => {
    expect(() => parseEquation('a + b')).toThrow('exactly one "="');
    expect(() => parseEquation('a = b = c')).toThrow('exactly one "="');
  });

  property.prop([expressions], { seed: 20261125, numRuns: 1000 })(
    'reads back to the same text and the same value',
    (e) => {
      const text = printExpression(e);
      const back = parseExpression(text);
      expect(printExpression(back)).toBe(text);
      const at = { a: 1.7, b: 0.3, rho_l: 2.1, T1: 0.9 };
      const [before, after] = [compile(e)(at), compile(back)(at)];
      // Brackets that change nothing but the order of rounding are left out.
      if (Number.isFinite(before))
        expect(Math.abs(after - before)).toBeLessThanOrEqual(1e-9 * Math.abs(before));
    },
  );

  property.prop([fc.string()])('refuses any nonsense with an ExpressionError', (text) => {
    try {
      parseExpression(text);
    } catch (error) {
      expect(error).toBeInstanceOf(ExpressionError);
    }
  });
});

describe('rearranging', () => {
  it.each([
    ['v = C * sqrt(2 * g * h)', 'h', 'h = (v / C)^2 / (2 * g)'],
    ['t = B * M^n', 'M', 'M = (t / B)^(1 / n)'],
    ['t = B * M^n', 'n', 'n = ln(t / B) / ln(M)'],
    ['y = a / (b - x)', 'x', 'x = b - a / y'],
    ['p = -x', 'x', 'x = -p'],
    ['p = 1 - exp(-x / a)', 'x', 'x = -(ln(1 - p) * a)'],
  ])('%s for %s gives %s', (equation, symbol, expected) => {
    expect(printEquation(isolate(parseEquation(equation), symbol)!)).toBe(expected);
  });

  it('declines a symbol that is written twice', () => {
    expect(isolate(parseEquation('y = x + x^2'), 'x')).toBeUndefined();
  });
});

describe('dimensions', () => {
  const of = (text: string, units: Record<string, string>) =>
    dimensionOf(
      parseExpression(text),
      Object.fromEntries(Object.entries(units).map(([symbol, u]) => [symbol, unit(u).dimension])),
    );

  it('of the head of a pressure is a length', () => {
    expect(of('dp / (rho * g)', { dp: 'Pa', rho: 'kg/m³', g: 'm/s²' })).toEqual(unit('m').dimension);
  });
  it('follow roots and fractional powers', () => {
    expect(of('sqrt(2 * g * h)', { g: 'm/s²', h: 'm' })).toEqual(unit('m/s').dimension);
    expect(of('(a^2)^(1/2)', { a: 'mm' })).toEqual(unit('m').dimension);
  });
  it.each([
    ['-a', 'm'],
    ['abs(a)', 'm'],
    ['min(a, 2 * a)', 'm'],
    ['a * a', 'm²'],
    ['a^2', 'm²'],
    ['a^(4 / 2)', 'm²'],
    ['a^(2 * 0.5)', 'm'],
    ['1 / a^-2', 'm²'],
    ['a^-(-(1))', 'm'],
    ['a / a', '1'],
    ['pi', '1'],
    ['exp(a / a)', '1'],
    ['(a / a)^(b / b)', '1'],
    ['ln(pi) + 2', '1'],
  ])('of %s are those of %s', (text, like) => {
    expect(sameDimension(of(text, { a: 'm', b: 'kg' }), unit(like).dimension)).toBe(true);
  });
  it.each([
    ['a + b', 'adds m to kg'],
    ['a - b', 'adds m to kg'],
    ['exp(a)', 'exp needs a bare number'],
    ['exp(a)', 'gives it m'],
    ['a ^ b', 'not a fixed number'],
    // An exponent is fixed when it is numbers multiplied and divided; nobody adds in one.
    ['a ^ (1 + 1)', 'raises m to a power'],
    ['a ^ -(b / b)', 'not a fixed number'],
    ['a ^ (2 * (b / b))', 'not a fixed number'],
    ['a ^ ((b / b) / 2)', 'not a fixed number'],
    ['2 ^ a', 'not a fixed number'],
    ['(a / a) ^ b', 'raises 1 to a power'],
    ['max(a, b)', 'different dimension'],
    ['min(a, b)', 'different dimension'],
    ['min(a / a, a)', 'different dimension'],
    ['a * c', '"c" is not a declared symbol'],
  ])('of %s do not fit, and it says why', (text, message) => {
    expect(() => of(text, { a: 'm', b: 'kg' })).toThrow(DimensionError);
    expect(() => of(text, { a: 'm', b: 'kg' })).toThrow(message);
  });
});

describe('typesetting', () => {
  it('writes signs with Greek letters and upright subscripts', () => {
    expect(signToTeX('Δp')).toBe('\\Delta p');
    expect(signToTeX('ρ_l')).toBe('\\rho_{\\mathrm{l}}');
  });
  it('writes a quotient as a fraction and a root as a root', () => {
    const equation = parseEquation('v = C * sqrt(2 * (g * h + dp / rho))');
    expect(equationTeX(equation, (symbol) => symbol)).toBe(
      'v = C \\, \\sqrt{2 \\, \\left(g \\, h + \\frac{dp}{rho}\\right)}',
    );
  });
  it('puts numbers in, in the order of the equation', () => {
    const { right } = parseEquation('v = C * sqrt(2 * g * h)');
    const text: Record<string, string> = { C: '0.7', g: '9.81 m/s²', h: '0.04 m' };
    expect(substituted(right, (symbol) => text[symbol]!)).toBe('0.7 × √(2 × 9.81 m/s² × 0.04 m)');
  });
});
