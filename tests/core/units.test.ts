// @ts-expect-error the package has no type declarations
import ucumPackage from '@lhncbc/ucum-lhc';
import { all, create } from 'mathjs';
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

interface Converter {
  convertUnitTo(
    from: string,
    value: number,
    to: string,
  ): { status: string; toVal: number | null; msg?: string[] };
}
const ucum: Converter = ucumPackage.UcumLhcUtils.getInstance();
const math = create(all!);

/**
 * What two independent libraries call each unit, and the coherent SI unit to compare in. An absent name is a
 * unit that library does not know, or knows by another definition (said beside it).
 */
const elsewhere: Partial<
  Record<UnitSymbol, { si: [ucum: string, mathjs: string]; ucum?: string; math?: string }>
> = {
  '%': { si: ['1', ''], ucum: '%' },
  '‰': { si: ['1', ''], ucum: '[ppth]' },
  ppm: { si: ['1', ''], ucum: '[ppm]' },
  deg: { si: ['rad', 'rad'], ucum: 'deg', math: 'deg' },
  mm: { si: ['m', 'm'], ucum: 'mm', math: 'mm' },
  cm: { si: ['m', 'm'], ucum: 'cm', math: 'cm' },
  µm: { si: ['m', 'm'], ucum: 'um', math: 'um' },
  in: { si: ['m', 'm'], ucum: '[in_i]', math: 'in' },
  thou: { si: ['m', 'm'], ucum: '[mil_i]', math: 'mil' },
  ft: { si: ['m', 'm'], ucum: '[ft_i]', math: 'ft' },
  'cm²': { si: ['m2', 'm^2'], ucum: 'cm2', math: 'cm^2' },
  'mm²': { si: ['m2', 'm^2'], ucum: 'mm2', math: 'mm^2' },
  'in²': { si: ['m2', 'm^2'], ucum: '[in_i]2', math: 'sqin' },
  'ft²': { si: ['m2', 'm^2'], ucum: '[ft_i]2', math: 'sqft' },
  'cm³': { si: ['m3', 'm^3'], ucum: 'cm3', math: 'cc' },
  'mm³': { si: ['m3', 'm^3'], ucum: 'mm3', math: 'mm^3' },
  mL: { si: ['m3', 'm^3'], ucum: 'mL', math: 'mL' },
  L: { si: ['m3', 'm^3'], ucum: 'L', math: 'L' },
  'in³': { si: ['m3', 'm^3'], ucum: '[in_i]3', math: 'cuin' },
  'ft³': { si: ['m3', 'm^3'], ucum: '[ft_i]3', math: 'cuft' },
  g: { si: ['kg', 'kg'], ucum: 'g', math: 'g' },
  mg: { si: ['kg', 'kg'], ucum: 'mg', math: 'mg' },
  lb: { si: ['kg', 'kg'], ucum: '[lb_av]', math: 'lbm' },
  oz: { si: ['kg', 'kg'], ucum: '[oz_av]', math: 'oz' },
  ozt: { si: ['kg', 'kg'], ucum: '[oz_tr]' },
  dwt: { si: ['kg', 'kg'], ucum: '[pwt_tr]' },
  ct: { si: ['kg', 'kg'], ucum: '[car_m]' },
  gr: { si: ['kg', 'kg'], ucum: '[gr]', math: 'grain' },
  ms: { si: ['s', 's'], ucum: 'ms', math: 'ms' },
  min: { si: ['s', 's'], ucum: 'min', math: 'minute' },
  h: { si: ['s', 's'], ucum: 'h', math: 'hour' },
  kPa: { si: ['Pa', 'Pa'], ucum: 'kPa', math: 'kPa' },
  MPa: { si: ['Pa', 'Pa'], ucum: 'MPa', math: 'MPa' },
  GPa: { si: ['Pa', 'Pa'], ucum: 'GPa', math: 'GPa' },
  bar: { si: ['Pa', 'Pa'], ucum: 'bar', math: 'bar' },
  mbar: { si: ['Pa', 'Pa'], ucum: 'mbar', math: 'mbar' },
  atm: { si: ['Pa', 'Pa'], ucum: 'atm', math: 'atm' },
  psi: { si: ['Pa', 'Pa'], ucum: '[psi]', math: 'psi' },
  mmH2O: { si: ['Pa', 'Pa'], ucum: 'mm[H2O]', math: 'mmH2O' },
  cmH2O: { si: ['Pa', 'Pa'], ucum: 'cm[H2O]', math: 'cmH2O' },
  inH2O: { si: ['Pa', 'Pa'], ucum: "[in_i'H2O]" },
  'g/cm³': { si: ['kg/m3', 'kg/m^3'], ucum: 'g/cm3', math: 'g/cm^3' },
  'lb/in³': { si: ['kg/m3', 'kg/m^3'], ucum: '[lb_av]/[in_i]3', math: 'lbm/in^3' },
  'mg/m³': { si: ['kg/m3', 'kg/m^3'], ucum: 'mg/m3', math: 'mg/m^3' },
  'µg/m³': { si: ['kg/m3', 'kg/m^3'], ucum: 'ug/m3', math: 'ug/m^3' },
  'mm/s': { si: ['m/s', 'm/s'], ucum: 'mm/s', math: 'mm/s' },
  'ft/s': { si: ['m/s', 'm/s'], ucum: '[ft_i]/s', math: 'ft/s' },
  kgf: { si: ['N', 'N'], ucum: 'kgf', math: 'kgf' },
  lbf: { si: ['N', 'N'], ucum: '[lbf_av]', math: 'lbf' },
  kJ: { si: ['J', 'J'], ucum: 'kJ', math: 'kJ' },
  MJ: { si: ['J', 'J'], ucum: 'MJ', math: 'MJ' },
  cal: { si: ['J', 'J'], ucum: 'cal_th' },
  kcal: { si: ['J', 'J'], ucum: 'kcal_th' },
  Wh: { si: ['J', 'J'], ucum: 'W.h', math: 'Wh' },
  kWh: { si: ['J', 'J'], ucum: 'kW.h', math: 'kWh' },
  BTU: { si: ['J', 'J'], ucum: '[Btu_IT]', math: 'BTU' },
  kW: { si: ['W', 'W'], ucum: 'kW', math: 'kW' },
  hp: { si: ['W', 'W'], ucum: '[HP]' },
  'BTU/h': { si: ['W', 'W'], ucum: '[Btu_IT]/h', math: 'BTU/hour' },
  'kJ/(kg·K)': { si: ['J/kg/K', 'J/kg/K'], ucum: 'kJ/kg/K', math: 'kJ/kg/K' },
  'kJ/kg': { si: ['J/kg', 'J/kg'], ucum: 'kJ/kg', math: 'kJ/kg' },
  'kW/m²': { si: ['W/m2', 'W/m^2'], ucum: 'kW/m2', math: 'kW/m^2' },
  's/mm²': { si: ['s/m2', 's/m^2'], ucum: 's/mm2', math: 's/mm^2' },
  's/cm²': { si: ['s/m2', 's/m^2'], ucum: 's/cm2', math: 's/cm^2' },
  'min/cm²': { si: ['s/m2', 's/m^2'], ucum: 'min/cm2', math: 'minute/cm^2' },
  'mm²/s': { si: ['m2/s', 'm^2/s'], ucum: 'mm2/s', math: 'mm^2/s' },
  'mPa·s': { si: ['Pa.s', 'Pa s'], ucum: 'mPa.s', math: 'mPa s' },
  cP: { si: ['Pa.s', 'Pa s'], ucum: 'cP' },
  'mN/m': { si: ['N/m', 'N/m'], ucum: 'mN/m', math: 'mN/m' },
  'L/min': { si: ['m3/s', 'm^3/s'], ucum: 'L/min', math: 'L/minute' },
  'L/s': { si: ['m3/s', 'm^3/s'], ucum: 'L/s', math: 'L/s' },
  'cm³/s': { si: ['m3/s', 'm^3/s'], ucum: 'cm3/s', math: 'cc/s' },
  'm³/h': { si: ['m3/s', 'm^3/s'], ucum: 'm3/h', math: 'm^3/hour' },
  cfm: { si: ['m3/s', 'm^3/s'], ucum: '[cft_i]/min', math: 'cuft/minute' },
  'g/s': { si: ['kg/s', 'kg/s'], ucum: 'g/s', math: 'g/s' },
  'K/min': { si: ['K/s', 'K/s'], ucum: 'K/min', math: 'K/minute' },
  'g/mol': { si: ['kg/mol', 'kg/mol'], ucum: 'g/mol', math: 'g/mol' },
  'kJ/mol': { si: ['J/mol', 'J/mol'], ucum: 'kJ/mol', math: 'kJ/mol' },
};

const inUcum = (from: string, to: string): number => {
  const answer = ucum.convertUnitTo(from, 1, to);
  if (answer.status !== 'succeeded' || answer.toVal === null)
    throw new Error(`${from}: ${answer.msg?.join(' ')}`);
  return answer.toVal;
};
const inMath = (from: string, to: string): number => math.unit(1, from).toNumber(to);

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
    expect(toSI(180, 'Δ°F')).toBeCloseTo(100, 12);
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
