import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainNumber, printQuantity } from '../../calculators/core/print.ts';
import {
  quantity,
  quantityFigures,
  readQuantity,
  readSpread,
  unitChoices,
  type QuantityField,
} from '../../calculators/core/quantity.ts';
import { fromSI, toSI, unit, unitSymbols, widthToSI, type UnitSymbol } from '../../calculators/core/units.ts';
import { difference, heat, length, mass, read, refusal, share } from './reading.ts';

const pressure: QuantityField = { unit: 'Pa', show: 'inHg' };

describe('reading a quantity', () => {
  it.each<[string, QuantityField, number, UnitSymbol]>([
    ['150', length, 150, 'mm'],
    ['150 mm', length, 150, 'mm'],
    ['+5mm', length, 5, 'mm'],
    ['.5', length, 0.5, 'mm'],
    ['1,5 mm', length, 1.5, 'mm'],
    ['0·5', length, 0.5, 'mm'],
    ['0,125', length, 0.125, 'mm'],
    ['1/2 in', length, 0.5, 'in'],
    ['1 3/8 in', length, 1.375, 'in'],
    ['1-3/8 in', length, 1.375, 'in'],
    ['1½"', length, 1.5, 'in'],
    ['½ inch', length, 0.5, 'in'],
    ['12"', length, 12, 'in'],
    ['3 feet', length, 3, 'ft'],
    ['12 inches', length, 12, 'in'],
    ['2 metres', length, 2, 'm'],
    ['2 meters', length, 2, 'm'],
    ['25 um', length, 25, 'µm'],
    ['25 μm', length, 25, 'µm'],
    ['5e-4 m', length, 5e-4, 'm'],
    ['5×10^-4 m', length, 5e-4, 'm'],
    ['5 x 10^-4 m', length, 5e-4, 'm'],
    ['5×10⁻⁴ m', length, 5e-4, 'm'],
    ['1 200 mm', length, 1200, 'mm'],
    ['1\u202f200 mm', length, 1200, 'mm'],
    ['1\u00a0200,5\u00a0mm', length, 1200.5, 'mm'],
    ['1.234,5', length, 1234.5, 'mm'],
    ['1,234.5', length, 1234.5, 'mm'],
    ['1,234,567', length, 1234567, 'mm'],
    ['-29 inHg', pressure, -29, 'inHg'],
    ['−29', pressure, -29, 'inHg'],
    ['15 in Hg', pressure, 15, 'inHg'],
    ['5 hPa', pressure, 5, 'mbar'],
    ['120C', heat, 120, '°C'],
    ['120 °C', heat, 120, '°C'],
    ['120 ℃', heat, 120, '°C'],
    ['120ºC', heat, 120, '°C'],
    ['120 degC', heat, 120, '°C'],
    ['120 deg C', heat, 120, '°C'],
    ['120 degrees Celsius', heat, 120, '°C'],
    ['248 F', heat, 248, '°F'],
    ['300 K', heat, 300, 'K'],
    ['50 grams', mass, 50, 'g'],
    ['50 grammes', mass, 50, 'g'],
    ['5 Kg', mass, 5, 'kg'],
    ['5 lbs', mass, 5, 'lb'],
    ['2 troy ounces', mass, 2, 'ozt'],
    ['1.2 troy oz', mass, 1.2, 'ozt'],
    ['1.2 oz troy', mass, 1.2, 'ozt'],
    ['45 pwt', mass, 45, 'dwt'],
    ['15" Hg', pressure, 15, 'inHg'],
    ['15 inches of mercury', pressure, 15, 'inHg'],
    ['12 %', share, 12, '%'],
    ['12 per cent', share, 12, '%'],
    ['8770 kg/m3', { unit: 'kg/m³' }, 8770, 'kg/m³'],
    ['8.77 g/cc', { unit: 'kg/m³' }, 8.77, 'g/cm³'],
    ['8.77 g/cm^3', { unit: 'kg/m³' }, 8.77, 'g/cm³'],
    ['0.6 W/mK', { unit: 'W/(m·K)' }, 0.6, 'W/(m·K)'],
    ['0.6 W/m/K', { unit: 'W/(m·K)' }, 0.6, 'W/(m·K)'],
    ['5 cc', { unit: 'm³' }, 5, 'cm³'],
    ['5 ml', { unit: 'm³' }, 5, 'mL'],
    ['90°', { unit: 'rad', show: 'deg' }, 90, 'deg'],
    ['1200 J·s^-½/(m²·K)', { unit: 'J·s^-½/(m²·K)' }, 1200, 'J·s^-½/(m²·K)'],
  ])('takes %s', (text, field, written, symbol) => {
    const reading = read(text, field);
    expect(reading.unit).toBe(symbol);
    expect(reading.written).toBeCloseTo(written, 12);
    expect(reading.value).toBeCloseTo(toSI(written, symbol), 9);
  });

  it.each<[string, QuantityField, string]>([
    ['1,5 mm', length, '1,5 mm → 1.5 mm'],
    ['1 3/8 in', length, '1 3/8 in → 1.375 in'],
    ['1 200', length, '1 200 → 1200 mm'],
    ['1.234,5', length, '1.234,5 → 1234.5 mm'],
    ['5 oz', mass, 'avoirdupois'],
    ['50 gr', mass, 'the gram is g'],
    ['100 °C', difference, 'read as a difference'],
    ['12 % ± 5 %', share, 'of the value'],
  ])('says how it read %s', (text, field, note) => {
    expect(read(text, field).note).toContain(note);
  });

  it.each(['150', '1.5 mm', '5e-4 m', '120 °C'])('has nothing to add to %s', (text) => {
    expect(read(text, text.endsWith('C') ? heat : length)).not.toHaveProperty('note');
  });

  it.each<[string, QuantityField, string[]]>([
    ['1,234 mm', length, ['1.234', '1234']],
    ['14 kt', mass, ['kilotonnes', 'karat']],
    ['3 tons', mass, ['kg']],
    ['5 gal', { unit: 'm³' }, ['imperial', 'US']],
    ['5 mil', length, ['thousandth', 'millimetre']],
    ['120°', heat, ['°C', '°F']],
    ['20 degrees', heat, ['°C', '°F']],
    ['12 psig', pressure, ['vacuum', 'ambient']],
    ['15-16 mm', length, ['±']],
    ['1 20', length, ['two numbers']],
    ['1..2', length, ['points']],
    ['5 kg', length, ['a mass', 'a length', '10 mm']],
    ['5 lb', { unit: 'N' }, ['a mass', 'a force']],
    ['5 lbf', mass, ['a force', 'a mass']],
    ['12 deg', share, ['an angle']],
    ['5 mPa', pressure, ['MPa']],
    ['5 milimeters', length, ['mm']],
    ['120 celcius', heat, ['°C']],
    ['100 Δ°C', heat, ['difference', '°C']],
    ['-300', heat, ['−273.15 °C']],
    ['-500 °F', heat, ['−459.67 °F']],
    ['-1 K', heat, ['0 K']],
    ['1e999', length, ['too large']],
    ['1/0 in', length, ['zero']],
    ['', length, ['10 mm']],
    ['abc', length, ['10 mm']],
    ['3*4', length, ['*4']],
    ['12 ± -3', length, ['±']],
    ['12 ± 1 ± 2', length, ['One']],
  ])('refuses %s and says why', (text, field, words) => {
    const message = refusal(text, field);
    for (const word of words) expect(message).toContain(word);
  });

  it('keeps a temperature and a difference apart', () => {
    expect(read('100 °C', heat).value).toBeCloseTo(373.15, 9);
    expect(read('100 °C', difference).value).toBeCloseTo(100, 9);
    expect(read('180 °F', difference).value).toBeCloseTo(100, 9);
    expect(read('100 Δ°C', difference).value).toBeCloseTo(100, 9);
  });

  it.each<[string, QuantityField, number]>([
    ['150 ± 2 mm', length, 0.002],
    ['150 mm ± 2', length, 0.002],
    ['150 mm +/- 0,2 cm', length, 0.002],
    ['150 ± 5 %', length, 0.0075],
    ['6 in ± 1/16', length, 0.0254 / 16],
    ['1000 °C ± 20', heat, 20],
    ['1000 ± 20 °C', heat, 20],
    ['1000 °C ± 2 %', heat, 20],
    ['12 % ± 5 %', share, 0.006],
  ])('reads the spread of %s', (text, field, spread) => {
    expect(read(text, field).spread).toBeCloseTo(spread, 12);
  });

  it.each<[string, number]>([
    ['150', 3],
    ['1.50 mm', 3],
    ['0.05', 1],
    ['1 200', 4],
    ['5e-4 m', 1],
  ])('counts the figures of %s', (text, figures) => {
    expect(read(text, length).figures).toBe(figures);
  });

  it('reads every unit of the table by its symbol, in capitals where that changes nothing, and by its name', () => {
    for (const symbol of unitSymbols) {
      if (symbol === '1') continue;
      expect(read(`12 ${symbol}`, { unit: symbol }).unit, symbol).toBe(symbol);
      expect(read(`12 ${symbol}`, { unit: symbol }).written, symbol).toBe(12);
      if (unit(symbol).kind !== 'difference')
        expect(read(`12 ${unit(symbol).name}`, { unit: symbol }).unit).toBe(symbol);
    }
  });

  it('never mistakes the case of a unit for another a thousand times off', () => {
    for (const symbol of unitSymbols) {
      for (const typed of [symbol.toUpperCase(), symbol.toLowerCase()]) {
        const reading = readQuantity(`12 ${typed}`, { unit: symbol });
        if (reading.ok && unit(symbol).kind === 'plain')
          expect(reading.value, typed).toBeCloseTo(toSI(12, reading.unit), 12);
        if (reading.ok) expect([symbol, reading.unit], typed).toContain(reading.unit);
      }
    }
  });

  it('reads back what was printed, within its rounding', () => {
    const symbols = unitSymbols.filter((symbol) => symbol !== '1' && unit(symbol).kind !== 'difference');
    fc.assert(
      fc.property(
        fc.constantFrom(...symbols),
        fc.double({ min: -9e8, max: 9e8, noNaN: true }),
        fc.integer({ min: 2, max: 8 }),
        (symbol, written, figures) => {
          const temperature = unit(symbol).kind === 'temperature';
          const value = temperature ? Math.abs(written) : written;
          const text = printQuantity(toSI(value, symbol), symbol, { figures });
          const again = readQuantity(text, { unit: symbol });
          if (!again.ok) throw new Error(`${text}: ${again.message}`);
          const tolerance = Math.abs(value) * 0.6 * 10 ** (1 - figures) + 1e-9 * (temperature ? 500 : 1e-3);
          expect(Math.abs(again.written - value)).toBeLessThanOrEqual(tolerance);
          expect(fromSI(again.value, symbol)).toBeCloseTo(again.written, 4);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('reads back what was copied', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e12, max: 1e12, noNaN: true, noDefaultInfinity: true }), (value) => {
        const again = read(plainNumber(value), { unit: 'm' });
        expect(Math.abs(again.written - value)).toBeLessThanOrEqual(1e-11 * Math.abs(value));
      }),
    );
  });

  it('survives any text, and never gives a number that is not finite', () => {
    const fragments = fc.constantFrom(
      ...[
        '1',
        '23',
        ',',
        '.',
        ' ',
        '/',
        '-',
        '−',
        '±',
        '%',
        'e',
        '×10^',
        '"',
        '°',
        '½',
        'mm',
        'K',
        'kt',
        '\u202f',
        '1e308',
        'Δ',
        '(',
        '^',
      ],
    );
    const anyText = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(fragments).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(anyText, fc.constantFrom(...unitSymbols), (text, symbol) => {
        const reading = readQuantity(text, { unit: symbol });
        if (reading.ok) {
          expect(Number.isFinite(reading.value)).toBe(true);
          expect(Number.isFinite(reading.written)).toBe(true);
          expect(Number.isFinite(reading.spread ?? 0)).toBe(true);
        } else expect(reading.message.length).toBeGreaterThan(5);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('units a field offers', () => {
  it('are of its kind: no angle for a percentage', () => {
    expect(unitChoices('%').map((other) => other.symbol)).toEqual(['1', '%', '‰', 'ppm']);
    expect(unitChoices('deg').map((other) => other.symbol)).toEqual(['rad', 'deg']);
    expect(unitChoices('AFS').map((other) => other.symbol)).toEqual(['darcy', 'AFS']);
    expect(unitChoices('cm²').map((other) => other.symbol)).toEqual(['m²', 'cm²', 'mm²', 'in²', 'ft²']);
    expect(unitChoices('kg/m³').map((other) => other.symbol)).toEqual(['kg/m³', 'g/cm³', 'lb/in³']);
  });
});

describe('quantities written in code', () => {
  it('are in SI', () => {
    expect(quantity('200 mm')).toBeCloseTo(0.2, 15);
    expect(quantity('100 °C')).toBeCloseTo(373.15, 12);
    expect(quantity('1e-3 m')).toBe(1e-3);
  });

  it.each<[string, number, number]>([
    ['4.20 s', 3, 0.005],
    ['1200 s', 4, 0.5],
    ['1.2e3 s', 2, 50],
    ['0.05 s', 1, 0.005],
    ['-3.0 s', 2, 0.05],
  ])('%s has its figures and half of its last place', (text, figures, half) => {
    const known = quantityFigures(text);
    expect(known.figures).toBe(figures);
    expect(known.halfDigit).toBeCloseTo(half, 12);
    expect(known.unit).toBe('s');
  });

  it('are refused when they are not a number and a unit', () => {
    for (const text of ['200mm', '200', 'mm', '1,5 mm', '200 mmm'])
      expect(() => quantityFigures(text)).toThrow(text);
  });

  it('take a spread as a part or as a width', () => {
    expect(readSpread('2 %', 0.2, 'mm')).toBeCloseTo(0.004, 15);
    expect(readSpread('0.5 mm', 0.2, 'mm')).toBeCloseTo(0.0005, 15);
    expect(readSpread('2 %', toSI(100, '°C'), '°C')).toBeCloseTo(2, 9);
    expect(readSpread('10 °C', toSI(100, '°C'), '°C')).toBeCloseTo(10, 9);
    expect(readSpread('18 °F', toSI(100, '°C'), '°C')).toBeCloseTo(widthToSI(18, '°F'), 9);
    expect(readSpread('10 %', 0.05, '%')).toBeCloseTo(0.005, 12);
    expect(readSpread('0.05 1', 0.7, '1')).toBeCloseTo(0.05, 15);
    expect(readSpread('0.05 1', 0.7, '%')).toBeCloseTo(0.05, 15);
    expect(() => readSpread('2 kg', 0.2, 'mm')).toThrow('2 kg');
    expect(() => readSpread('about 2', 0.2, 'mm')).toThrow('about 2');
  });
});
