import { plainNumber, printQuantity, type Fineness } from '../../../calculators/core/print.ts';
import { readQuantity } from '../../../calculators/core/quantity.ts';
import { habitUnit } from '../../../calculators/core/shop-units.ts';
import { fromSI, type UnitSymbol } from '../../../calculators/core/units.ts';
import { readHabit } from '../habit.ts';

/** As the page was opened: were it changed in another tab meanwhile, a 5 that was typed in mm would stand for inches. */
export const habit = readHabit();

/** What a unit of home is in this shop. Nothing is said of a part before a file is open, so the page as built needs none. */
export const here = (home: UnitSymbol): UnitSymbol => habitUnit(home, habit);

/** A quantity in SI, in the shop's unit for the one it is said in at home. */
export const said = (value: number, home: UnitSymbol, fineness?: Fineness): string =>
  printQuantity(value, here(home), fineness);

export const mm = (value: number): string => said(value, 'mm');

/** The text a field of a length starts with, of the shop's unit. */
export const startOf = (value: number): string => plainNumber(fromSI(value, here('mm')), { figures: 3 });

/** A length as it was typed, m, in the shop's unit where none is written; NaN for none. */
export function metres(text: string): number {
  const reading = readQuantity(text, { unit: 'm', show: here('mm') });
  return reading.ok ? reading.value : Number.NaN;
}

/** The text of a length a gate or a button may have. */
export const lengthFrom = (text: string): { readonly value: string } | string =>
  metres(text) > 0 && metres(text) <= 0.1
    ? { value: text.trim() }
    : `A length is a number above 0 and up to ${mm(0.1)}.`;

/** Whole degrees of the shop's scale, as they stand in a field. */
export const degrees = (kelvin: number): string =>
  String(Math.round(fromSI(kelvin, here('°C')))).replace('-', '−');

export const hot = (kelvin: number): string => `${degrees(kelvin)} ${here('°C')}`;

/** A temperature as it was typed, K, of the shop's scale where none is written; NaN for none. */
export function kelvin(text: string): number {
  const reading = readQuantity(text, { unit: 'K', show: here('°C') });
  return reading.ok ? reading.value : Number.NaN;
}
