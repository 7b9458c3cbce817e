// @ts-expect-error the package has no type declarations
import ucumPackage from '@lhncbc/ucum-lhc';
import { all, create } from 'mathjs';
import type { UnitSymbol } from '../../calculators/core/units.ts';

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
export const elsewhere: Partial<
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
  kN: { si: ['N', 'N'], ucum: 'kN', math: 'kN' },
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
  'MJ/(m³·K)': { si: ['J/m3/K', 'J/m^3/K'], ucum: 'MJ/m3/K', math: 'MJ/m^3/K' },
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
  'mg/s': { si: ['kg/s', 'kg/s'], ucum: 'mg/s', math: 'mg/s' },
  'K/min': { si: ['K/s', 'K/s'], ucum: 'K/min', math: 'K/minute' },
  'g/mol': { si: ['kg/mol', 'kg/mol'], ucum: 'g/mol', math: 'g/mol' },
  'kJ/mol': { si: ['J/mol', 'J/mol'], ucum: 'kJ/mol', math: 'kJ/mol' },
};

/** A unit in another, by the Unified Code for Units of Measure; throws what that library says when it cannot. */
export const inUcum = (from: string, to: string): number => {
  const answer = ucum.convertUnitTo(from, 1, to);
  if (answer.status !== 'succeeded' || answer.toVal === null)
    throw new Error(`${from}: ${answer.msg?.join(' ')}`);
  return answer.toVal;
};
/** The same by the unit table of mathjs. */
export const inMath = (from: string, to: string): number => math.unit(1, from).toNumber(to);
