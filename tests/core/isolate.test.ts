import { describe, expect, it } from 'vitest';
import { parseEquation, printEquation } from '../../calculators/core/expression.ts';
import { compile } from '../../calculators/core/program.ts';
import { isolate } from '../../calculators/core/isolate.ts';

/** Positive numbers, so that an even root is the one meant. */
const at = { a: 1.7, b: 0.6, c: 2.3, x: 0.4 };

describe('an equation rearranged', () => {
  it.each([
    ['y = a + x', 'x = y - a'],
    ['y = x + a', 'x = y - a'],
    ['y = a - x', 'x = a - y'],
    ['y = x - a', 'x = y + a'],
    ['y = a * x', 'x = y / a'],
    ['y = x / a', 'x = y * a'],
    ['y = a / x', 'x = a / y'],
    ['y = x^2', 'x = sqrt(y)'],
    ['y = x^3', 'x = y^(1 / 3)'],
    ['y = x^(-1)', undefined],
    ['y = x^a', 'x = y^(1 / a)'],
    ['y = x^(a / b)', undefined],
    ['y = a^x', 'x = ln(y) / ln(a)'],
    ['y = sqrt(x)', 'x = y^2'],
    ['y = exp(x)', 'x = ln(y)'],
    ['y = ln(x)', 'x = exp(y)'],
    ['y = log10(x)', 'x = 10^y'],
    ['y = sin(x)', 'x = asin(y)'],
    ['y = -x', 'x = -y'],
    ['y = -(x - a)', undefined],
    ['y / c = x / a', 'x = y / c * a'],
    ['y = a * x / b', undefined],
    ['y = x / (a / b)', undefined],
    ['y - a = -x', 'x = a - y'],
    ['-y = -x', 'x = y'],
    ['y / b = c * x', undefined],
    ['y = x * (a / b)', 'x = y * b / a'],
  ])('%s has x as %s', (text, expected) => {
    const isolated = isolate(parseEquation(text), 'x');
    if (!isolated) throw new Error('not rearranged');
    if (expected !== undefined) expect(printEquation(isolated)).toBe(expected);
    // With y from the equation as stated, the rearranged one must give x back.
    const { left, right } = parseEquation(text);
    const found = (y: number): number => compile(left)({ ...at, y }) - compile(right)({ ...at, y });
    let [low, high] = [-1e4, 1e4];
    for (let i = 0; i < 200; i += 1) {
      const middle = (low + high) / 2;
      if (found(low) * found(middle) <= 0) high = middle;
      else low = middle;
    }
    expect(compile(isolated.right)({ ...at, y: low })).toBeCloseTo(at.x, 6);
  });

  it.each(['y = abs(x)', 'y = erf(x)', 'y = min(x, a)', 'y = x * x', 'y = max(a, x)', 'y = a'])(
    '%s is left as it is',
    (text) => {
      expect(isolate(parseEquation(text), 'x')).toBeUndefined();
    },
  );
});
