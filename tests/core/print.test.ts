import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  plainNumber,
  printNumber,
  printQuantity,
  printWithSpread,
  printWritten,
  unitLabel,
} from '../../calculators/core/print.ts';
import { toSI, unitSymbols } from '../../calculators/core/units.ts';

describe('a written quantity', () => {
  it.each([
    ['-5 J·s^-½/(m²·K)', '−5 J/(m²·K·√s)'],
    ['0.7 1', '0.7'],
    ['30 deg', '30°'],
    ['40 Δ°C', '40 °C'],
    ['sixty', 'sixty'],
  ])('%s is shown as %s', (text, shown) => {
    expect(printWritten(text)).toBe(shown);
  });
});

describe('printing a number', () => {
  it.each<[number, Parameters<typeof printNumber>[1], string]>([
    [0.4234, {}, '0.423'],
    [9.996, {}, '10.0'],
    [7523, {}, '7520'],
    [7523, { figures: 2 }, '7500'],
    [12345, { figures: 4 }, '12\u202f350'],
    [0, {}, '0'],
    [-5.678, {}, '−5.68'],
    [1234567, {}, '1.23 × 10⁶'],
    [0.00001234, { figures: 2 }, '1.2 × 10⁻⁵'],
    [0.4234, { spread: 0.13 }, '0.42'],
    [0.4234, { spread: 0.03 }, '0.42'],
    [0.4234, { spread: 0.5 }, '0.4'],
    [1234, { spread: 40 }, '1230'],
    [1234, { spread: 150 }, '1230'],
    [3, { spread: 40 }, '0'],
    [-0.001, { spread: 0.1 }, '0.00'],
    // A spread of nothing or without end says nothing of the digits: three figures.
    [0.4234, { spread: 0 }, '0.423'],
    [0.4234, { spread: Number.POSITIVE_INFINITY }, '0.423'],
    [0.4234, { figures: 2.4 }, '0.42'],
    [0.4234, { figures: 0 }, '0.4'],
    [0.5, { figures: 40 }, '0.50000000000000000'],
    // A power of ten from a million on and below a ten-thousandth.
    [1e6, {}, '1.00 × 10⁶'],
    [999_900, { figures: 4 }, '999\u202f900'],
    [1e-4, {}, '0.000100'],
    [0.00009, {}, '9.00 × 10⁻⁵'],
    [-2.345e23, {}, '−2.35 × 10²³'],
    [4.5e10, { figures: 2 }, '4.5 × 10¹⁰'],
    [2e6, { spread: 4e6 }, '2 × 10⁶'],
    [2e6, { spread: 4e7 }, '0'],
    [-0.3, { spread: 5 }, '0'],
    // What is smaller than the last place worth printing is one of that place, or nothing when nearer to that.
    [0.7, { spread: 5 }, '1'],
    [63, { spread: 400 }, '100'],
    [-50, { spread: 400 }, '−100'],
    [49, { spread: 400 }, '0'],
    [7e29, { spread: 4e30 }, '1 × 10³⁰'],
    [4e-6, { spread: 3e-5 }, '0.00000'],
    [-7e-6, { spread: 3e-5 }, '−1 × 10⁻⁵'],
    [-12345.6, { figures: 6 }, '−12\u202f345.6'],
    [9999, { figures: 4 }, '9999'],
    [123_456, { figures: 6 }, '123\u202f456'],
    [999_999.6, { figures: 6 }, '1\u202f000\u202f000'],
    [Number.NaN, {}, 'no number'],
    [Number.POSITIVE_INFINITY, { spread: 1 }, 'no number'],
  ])('prints %d with %o as %s', (value, fineness, text) => {
    expect(printNumber(value, fineness)).toBe(text);
  });

  it('is never further off than half of the last digit it shows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (value, spread) => {
          const shown = printNumber(value, { spread })
            .replace('−', '-')
            .replaceAll('\u202f', '')
            .replace(
              / × 10(.*)/,
              (_, power: string) =>
                `e${[...power]
                  .map((c) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))
                  .join('')
                  .replace('-1', '-')}`,
            );
          expect(Math.abs(Number(shown) - value)).toBeLessThanOrEqual(
            0.51 * spread + 1e-12 * Math.abs(value),
          );
        },
      ),
    );
  });
});

describe('printing a quantity', () => {
  it.each([
    [0.42, 's', '0.420 s'],
    [0.12, '%', '12.0 %'],
    [0.5, '1', '0.500'],
    [Math.PI / 2, 'deg', '90.0°'],
    [toSI(10, 'AFS'), 'AFS', '10.0 AFS'],
    [373.15, '°C', '100 °C'],
    [100, 'Δ°C', '100 °C'],
    [268.15, '°C', '−5.00 °C'],
    [1200, 'J·s^-½/(m²·K)', '1200 J/(m²·K·√s)'],
  ] as const)('prints %d in %s as %s', (si, symbol, text) => {
    expect(printQuantity(si, symbol)).toBe(text);
  });

  it('gives every unit a label, and a plain number none', () => {
    expect(unitLabel('1')).toBe('');
    expect(unitLabel('deg')).toBe('°');
    expect(unitLabel('inH2O')).toBe('inH₂O');
    for (const symbol of unitSymbols) if (symbol !== '1') expect(unitLabel(symbol)).not.toBe('');
  });

  it('prints the spread of a temperature as a width', () => {
    expect(printQuantity(toSI(1043.2, '°C'), '°C', { spread: 30 })).toBe('1040 °C');
    // 5 kelvins are 9 of Fahrenheit: to the degree.
    expect(printQuantity(toSI(1913.4, '°F'), '°F', { spread: 5 })).toBe('1913 °F');
    expect(printQuantity(toSI(1913.4, '°F'), '°F', { spread: 6 })).toBe('1913 °F');
    expect(printQuantity(toSI(1913.4, '°F'), '°F', { figures: 5 })).toBe('1913.4 °F');
  });
});

describe('printing with a spread', () => {
  it.each([
    [0.15, 'mm', 0.002, '150 mm (148 to 152)'],
    // By hand: 0.43 ÷ 1.45 = 0.297, 0.43 × 1.45 = 0.624, and the near side is 0.13 wide.
    [0.43, 's', 0.45 * 0.43, '0.43 s (0.30 to 0.62)'],
    [1273.15, '°C', 20, '1000 °C (980 to 1020)'],
    [0.02, 's', 0.05, '0.020 s (0.006 to 0.070)'],
    [-2, 'm', 1.9, '−2.0 m (−3.9 to −0.1)'],
    [0.42, 's', 0, '0.420 s'],
  ] as const)('prints %d %s ± %d as %s', (si, symbol, spread, text) => {
    expect(printWithSpread(si, symbol, spread)).toBe(text);
  });

  it('takes the two ends where they are known', () => {
    expect(printWithSpread(0.42, 's', [0.3, 0.61])).toBe('0.42 s (0.30 to 0.61)');
    // The nearer end says how fine; an end at the value itself does not, and then half of the whole does.
    expect(printWithSpread(0.42, 's', [0.41, 0.9])).toBe('0.420 s (0.410 to 0.900)');
    expect(printWithSpread(0.42, 's', [0.1, 0.43])).toBe('0.420 s (0.100 to 0.430)');
    expect(printWithSpread(0.42, 's', [0.42, 0.6])).toBe('0.42 s (0.42 to 0.60)');
    expect(printWithSpread(0.42, 's', [0.24, 0.42])).toBe('0.42 s (0.24 to 0.42)');
    expect(printWithSpread(0.42, 's', [0.42, 0.42])).toBe('0.420 s');
    expect(printWithSpread(0.42, 's', [0.3, Number.POSITIVE_INFINITY])).toBe('0.420 s');
    expect(printWithSpread(0.42, 's', Number.NaN)).toBe('0.420 s');
  });

  it('never lets a positive quantity fall below zero', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.double({ min: 0.001, max: 20, noNaN: true }),
        (value, ratio) => {
          expect(printWithSpread(value, 'kg', value * ratio)).not.toContain('−0');
          expect(printWithSpread(value, 'kg', value * ratio)).not.toMatch(/\(−/);
        },
      ),
    );
  });
});

describe('a number to copy', () => {
  it('is plain', () => {
    expect(plainNumber(-0.42)).toBe('-0.42');
    expect(plainNumber(0.1 + 0.2)).toBe('0.3');
    expect(plainNumber(1234567)).toBe('1234567');
    expect(plainNumber(0.4234, { spread: 0.13 })).toBe('0.42');
    expect(plainNumber(3, { spread: 400 })).toBe('0');
    expect(plainNumber(-70, { spread: 400 })).toBe('-100');
    expect(plainNumber(0, { spread: 400 })).toBe('0');
    expect(plainNumber(300, { spread: 400 })).toBe('300');
    expect(plainNumber(1 / 3)).toBe('0.333333333333');
    expect(plainNumber(0.1, { figures: 40 })).toBe('0.1');
    expect(plainNumber(Number.NEGATIVE_INFINITY)).toBe('');
    expect(plainNumber(0)).toBe('0');
    expect(plainNumber(Number.NaN)).toBe('');
  });
});
