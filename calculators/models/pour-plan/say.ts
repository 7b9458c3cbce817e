import { printQuantity } from '../../core/print.ts';
import type { UnitSymbol } from '../../core/units.ts';

/** A number in a sentence: two figures unless told, three for temperatures and masses. */
export const say = (si: number, unit: UnitSymbol, figures = 2): string =>
  printQuantity(si, unit, { figures });

export const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`.replace('-', '−');
