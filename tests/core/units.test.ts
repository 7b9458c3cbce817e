import { describe, expect, it } from 'vitest';
import {
  dimensionText,
  fromSI,
  sameDimension,
  toSI,
  unit,
  unitSymbols,
  unitsLike,
  widthFromSI,
  widthToSI,
  type UnitSymbol,
} from '../../calculators/core/units.ts';
import { elsewhere, inMath, inUcum } from './units-elsewhere.ts';

const withUcum = Object.entries(elsewhere).filter(([, other]) => other.ucum !== undefined);
const withMath = Object.entries(elsewhere).filter(([, other]) => other.math !== undefined);

/** Coherent units: their factor is one by definition, so there is nothing to compare. */
const coherent = unitSymbols.filter((symbol) => unit(symbol).factor === 1 && unit(symbol).offset === 0);

/**
 * Factors of NIST SP 811 (2008), Appendix B.8, recalled and not read again. Each is given there to seven
 * figures, so half a unit of the seventh is the tolerance.
 */
const nist: readonly (readonly [UnitSymbol, number])[] = [
  ['atm', 1.01325e5],
  ['inHg', 3.386389e3],
  ['mmHg', 1.333224e2],
  ['torr', 1.333224e2],
  ['psi', 6.894757e3],
  ['inH2O', 2.490889e2],
  ['cmH2O', 98.0665],
  ['BTU', 1.055056e3],
  ['cal', 4.184],
  ['BTU/h', 2.930711e-1],
  ['hp', 7.456999e2],
  ['lbf', 4.448222],
  ['kgf', 9.80665],
  ['lb', 0.45359237],
  ['oz', 2.834952e-2],
  ['ozt', 3.110348e-2],
  ['dwt', 1.555174e-3],
  ['gr', 6.479891e-5],
  ['ct', 2e-4],
  ['in³', 1.638706e-5],
  ['ft³', 2.831685e-2],
  ['ft²', 9.290304e-2],
  ['in²', 6.4516e-4],
  ['thou', 2.54e-5],
  ['darcy', 9.869233e-13],
  ['cfm', 4.719474e-4],
  ['lb/in³', 2.76799e4],
];

describe('the table of units', () => {
  it.each(withUcum)('%s agrees with the Unified Code for Units of Measure', (symbol, { si, ucum: name }) => {
    expect(unit(symbol).factor / inUcum(name!, si[0])).toBeCloseTo(1, 6);
  });

  it.each(withMath)('%s agrees with a second library', (symbol, { si, math: name }) => {
    expect(unit(symbol).factor / inMath(name!, si[1])).toBeCloseTo(1, 6);
  });

  it.each(nist)('%s has the factor of NIST SP 811', (symbol, factor) => {
    expect(Math.abs(unit(symbol).factor / factor - 1)).toBeLessThan(6e-7);
  });

  it('uses conventional mercury, which is 3 parts in a million above the rounded mercury of UCUM', () => {
    const off = unit('inHg').factor / inUcum("[in_i'Hg]", 'Pa') - 1;
    expect(off).toBeGreaterThan(2e-6);
    expect(off).toBeLessThan(4e-6);
    expect(unit('mmHg').factor / inUcum('mm[Hg]', 'Pa')).toBeCloseTo(1, 5);
  });

  it('keeps the torr at its definition, which one library rounds to 133.322 Pa', () => {
    expect(unit('torr').factor / inMath('torr', 'Pa')).toBeCloseTo(1, 5);
  });

  it('takes the AFS number as cm³ of air · cm / (gf/cm² · cm² · minute) at 20 °C', () => {
    // 2000 cm³ through a 2 in by 2 in specimen under 10 gf/cm² in 60 s is AFS 50.12 by definition (501.2 / 10 / 1 min).
    const area = (Math.PI / 4) * 0.0508 ** 2;
    const pressure = 10 * 98.0665;
    const flow = 2000e-6 / 60;
    const darcyArea = (flow * 1.8e-5 * 0.0508) / (area * pressure);
    expect(fromSI(darcyArea, 'AFS')).toBeCloseTo(50.12, 1);
  });

  it('leaves no unit unchecked but the coherent ones', () => {
    const temperatures = unitSymbols.filter((symbol) => unit(symbol).kind !== 'plain');
    const checked = new Set<string>([
      ...Object.keys(elsewhere),
      ...nist.map(([symbol]) => symbol),
      ...coherent,
      ...temperatures,
      'AFS',
    ]);
    expect(unitSymbols.filter((symbol) => !checked.has(symbol))).toEqual([]);
  });

  it.each([
    [32, '°F', 273.15],
    [-40, '°F', 233.15],
    [-40, '°C', 233.15],
    [1000, '°C', 1273.15],
    [0, 'K', 0],
  ] as const)('reads %d %s as a point on the kelvin scale', (value, symbol, kelvin) => {
    expect(toSI(value, symbol)).toBeCloseTo(kelvin, 9);
    expect(fromSI(kelvin, symbol)).toBeCloseTo(value, 9);
  });

  it('keeps the offset of a scale out of a width', () => {
    expect(widthToSI(180, '°F')).toBeCloseTo(100, 12);
    expect(widthFromSI(100, '°C')).toBe(100);
    expect(widthFromSI(100, '°F')).toBeCloseTo(180, 12);
    expect(toSI(180, 'Δ°F')).toBeCloseTo(100, 12);
  });

  it('names a unit it has not', () => {
    expect(() => unit('furlong')).toThrow('no unit "furlong"');
  });

  it('never offers a difference for a temperature', () => {
    expect(unitsLike('°C').map((other) => other.symbol)).toEqual(['K', '°C', '°F']);
    expect(unitsLike('Δ°C').map((other) => other.symbol)).toEqual(['ΔK', 'Δ°C', 'Δ°F']);
  });

  it('returns to the written number through SI', () => {
    for (const symbol of unitSymbols) expect(fromSI(toSI(12.3, symbol), symbol)).toBeCloseTo(12.3, 9);
  });

  it('writes a dimension for an error message', () => {
    expect(dimensionText(unit('W/(m·K)').dimension)).toBe('m·kg·s^-3·K^-1');
    expect(dimensionText(unit('%').dimension)).toBe('1');
    expect(sameDimension(unit('L').dimension, unit('ft³').dimension)).toBe(true);
  });
});
