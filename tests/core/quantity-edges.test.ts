import { describe, expect, it } from 'vitest';
import { quantityFigures, readSpread, type QuantityField } from '../../calculators/core/quantity.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import { difference, heat, length, mass, read, refusal, share } from './reading.ts';

const pressure: QuantityField = { unit: 'Pa', show: 'kPa' };
const number: QuantityField = { unit: '1' };

describe('what is typed at a bench', () => {
  it.each<[string, QuantityField, number, UnitSymbol]>([
    ['120 degree C', heat, 120, '°C'],
    ['120 degree Celsius', heat, 120, '°C'],
    ['248 °Fahrenheit', heat, 248, '°F'],
    ['5 MPas', pressure, 5, 'MPa'],
    ['2 square inches', { unit: 'm²' }, 2, 'in²'],
    ['2 square metres', { unit: 'm²' }, 2, 'm²'],
    ['2 metres per second', { unit: 'm/s' }, 2, 'm/s'],
    ['2 litres per minute', { unit: 'm³/s' }, 2, 'L/min'],
    ['5 1/K', { unit: '1/K' }, 5, '1/K'],
    ['12 3/8 in', length, 12.375, 'in'],
    ['11/16 in', length, 0.6875, 'in'],
    ['1/16 in', length, 0.0625, 'in'],
    ['5/4 in', length, 1.25, 'in'],
    ['-1 1/2 in', length, -1.5, 'in'],
    ['1 - 3/8 in', length, 1.375, 'in'],
    ['⅜ in', length, 0.375, 'in'],
    ['-½ in', length, -0.5, 'in'],
    ['1⅛ in', length, 1.125, 'in'],
    ['+ 5', length, 5, 'mm'],
    ['1.234.567', length, 1234567, 'mm'],
    ['1 234 567', length, 1234567, 'mm'],
    ['1,234,567.5', length, 1234567.5, 'mm'],
    ['1234,567', length, 1234.567, 'mm'],
    ['1,2345', length, 1.2345, 'mm'],
    ['1,23', length, 1.23, 'mm'],
    [',5', length, 0.5, 'mm'],
    ['.25', length, 0.25, 'mm'],
    ['1  200', length, 1200, 'mm'],
    ['12,', length, 12, 'mm'],
    ['5E-4 m', length, 5e-4, 'm'],
    ['5e+2', length, 500, 'mm'],
    ['5*10^-4 m', length, 5e-4, 'm'],
    ['5x10-4 m', length, 5e-4, 'm'],
    ['5×10+2', length, 500, 'mm'],
    ['0 · 5', length, 0.5, 'mm'],
    ['-273.15 °C', heat, -273.15, '°C'],
    ['0 K', heat, 0, 'K'],
    ['-459.67 °F', heat, -459.67, '°F'],
    ['9e102', length, 9e102, 'mm'],
    ['12 ± 5 %', share, 12, '%'],
  ])('takes %s', (text, field, written, symbol) => {
    const reading = read(text, field);
    expect(reading.unit).toBe(symbol);
    expect(reading.written / (written || 1)).toBeCloseTo(written === 0 ? 0 : 1, 12);
  });

  it.each<[string, QuantityField, string]>([
    ['1 lb 4 oz', mass, '“lb 4 oz” makes two units of one number'],
    ['1 lb. 4oz.', mass, '“lb. 4oz.” makes two units of one number'],
    ['3 ft 4 in', length, '“ft 4 in” makes two units of one number'],
    ['1 lb 4 oz of it', mass, 'No unit “lb 4 oz of it” here'],
    ['5 Mbar', pressure, 'No unit “Mbar” here'],
    ['20 deg', heat, 'Celsius or Fahrenheit'],
    ['20 degree', heat, 'Celsius or Fahrenheit'],
    ['20 degs', heat, 'measures an angle; this wants a temperature'],
    ['20 xdeg', heat, 'No unit “xdeg” here'],
    ['3*4', length, '“*4” does not belong to a number.'],
    ['5 qqqqqqqq', length, 'No unit “qqqqqqqq” here; type it in mm.'],
    ['5 qqqqqqqq', number, 'No unit “qqqqqqqq” here; type the number alone.'],
    ['5 milimeters', length, 'the nearest is mm.'],
    ['about 1/2 in', length, 'Start with a number, for example 10 mm.'],
    ['about 5', number, 'Start with a number, for example 10.'],
    ['1 4/4 in', length, '“1 4/4” is not a number and a fraction.'],
    ['1 5/4 in', length, '“1 5/4” is not a number and a fraction.'],
    ['1/2.5 in', length, 'does not belong to a number'],
    ['12,345', length, '“12,345” could be 12.345 or 12345: type it without the comma.'],
    ['12,34.5', length, '“12,34.5” has its points and commas where a number has none.'],
    ['1,2,3', length, 'points and commas'],
    ['1.234.56', length, 'points and commas'],
    ['1234,567,890', length, 'points and commas'],
    ['1 20', length, '“1 20” looks like two numbers: type one.'],
    ['15 - 16', length, 'A range is not read here'],
    ['15–16 mm', length, 'A range is not read here'],
    ['15--16', length, 'A range is not read here'],
    ['1e104', length, 'That number is too large.'],
    ['-1e104', length, 'That number is too large.'],
    ['   ', length, 'Type a number, for example 10 mm.'],
    ['5 mm e5', length, 'No unit “mm e5” here'],
    ['150 mm ± 2 %x', length, 'No unit “%x” here'],
    ['150 mm ± 2 xpercent', length, 'No unit “xpercent” here'],
    [' ± 2', length, 'Type a number, for example 10 mm.'],
    ['-273.16', heat, 'Nothing is colder than −273.15 °C.'],
    ['100 Δ°C', heat, 'Δ°C is a difference; this wants a temperature, for example 10 °C.'],
    ['5 kg', difference, 'this wants a temperature difference'],
    ['150 ± 5 kg', length, 'kilogram measures a mass; this wants a length'],
    ['150 mm ± 5 kg', length, 'Write the spread as ± 2 % or ± 0.5 of the unit.'],
    ['150 mm ± 5 qqqqqqqq', length, 'No unit “qqqqqqqq” here'],
    ['150 mm ± x', length, 'Write the spread'],
    ['150 mm ± 1e999', length, 'That spread is too large.'],
  ])('refuses %s', (text, field, words) => {
    expect(refusal(text, field)).toContain(words);
  });

  it.each<[string, QuantityField, string | undefined]>([
    ['1/2 in', length, undefined],
    ['1 1/2 in', length, '1 1/2 in → 1.5 in'],
    ['1.5', length, undefined],
    ['1.234.567', length, '1.234.567 → 1234567 mm'],
    ['1,5', number, '1,5 → 1.5'],
    ['1,5 oz', mass, '1,5 oz → 1.5 oz; oz is the avoirdupois ounce, 28.35 g; the troy ounce is ozt'],
    ['5', { unit: 'kg', show: 'oz' }, undefined],
    ['100 K', difference, '100 K read as a difference'],
    ['100 ΔK', difference, undefined],
    ['12 % ± 5 %', share, '± 5 % is taken of the value'],
    ['150 mm ± 5 %', length, undefined],
  ])('says of %s: %s', (text, field, note) => {
    expect(read(text, field).note).toBe(note);
  });

  it.each<[string, QuantityField, number]>([
    ['150 ± 2e-1 mm', length, 2e-4],
    ['150 ± 2e1 mm', length, 0.02],
    ['150 ± 2e01 mm', length, 0.02],
    ['150±2mm', length, 2e-3],
    ['150 + / - 2', length, 2e-3],
    ['150 +- 2 cm', length, 0.02],
    ['150 mm ± 2 per cent', length, 3e-3],
    ['150 mm ± 2 percent', length, 3e-3],
    // The unit after the spread is the unit of both, so these are five points of a hundred.
    ['12 ± 5 %', share, 0.05],
    ['-10 °C ± 10 %', heat, 1],
    ['150 mm ± 0', length, 0],
    ['-150 mm ± 2 %', length, 3e-3],
  ])('takes the spread of %s', (text, field, spread) => {
    expect(read(text, field).spread).toBeCloseTo(spread, 12);
  });

  it('has no spread where none was typed', () => {
    expect(read('150 mm', length)).not.toHaveProperty('spread');
  });

  it('counts figures from the first that is not zero, and four for a fraction', () => {
    for (const [text, figures] of [
      ['0', 1],
      ['0.00', 1],
      ['007', 1],
      ['10.0', 3],
      ['1,50 mm', 3],
      ['5.00e-4 m', 3],
      ['1/2 in', 4],
    ] as const)
      expect(read(text, length).figures, text).toBe(figures);
  });
});

describe('what is written in code', () => {
  it.each([
    ['.5 mm', 0.0005, 1, 0.00005],
    ['1.50e2 mm', 0.15, 3, 0.0005],
    ['15e-1 mm', 0.0015, 2, 0.00005],
    ['+5 mm', 0.005, 1, 0.0005],
    ['.25 mm', 0.00025, 2, 0.000005],
    ['5e10 s', 5e10, 1, 5e9],
    ['20 Δ°F', 100 / 9, 2, 2.5 / 9],
    ['68 °F', 293.15, 2, 2.5 / 9],
  ])('%s is %d with %d figures, good to %d', (text, value, figures, half) => {
    const known = quantityFigures(text);
    expect(known.value).toBeCloseTo(value, 10);
    expect(known.figures).toBe(figures);
    expect(known.halfDigit).toBeCloseTo(half, 12);
  });

  it('is refused with its words', () => {
    for (const text of ['200  mm', ' 200 mm', '200 mm ', '1.2.3 mm', 'e5 mm', '5. mm'])
      expect(() => quantityFigures(text), text).toThrow('is not a number, a space and a unit of the table');
    expect(() => readSpread('2 kg', 0.2, 'mm')).toThrow(
      '"2 kg" is not a spread in mm: Write the spread as ± 2 % or ± 0.5 of the unit.',
    );
    expect(() => readSpread('0.05 1', 0.7, 'mm')).toThrow();
    expect(() => readSpread('0.05 1/2', 0.7, '1')).toThrow('is not a spread');
    expect(() => readSpread('-0.05 1', 0.7, '1')).toThrow();
  });
});
