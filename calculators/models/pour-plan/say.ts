import { printQuantity, unitLabel } from '../../core/print.ts';
import { habitUnit, type Habit } from '../../core/shop-units.ts';
import { fromSI, type UnitSymbol } from '../../core/units.ts';

let habit: Habit = 'metric';

/** Runs a calculation whose sentences say their numbers in the units a shop is used to; the numbers are the same. */
export function saidIn<T>(wanted: Habit, run: () => T): T {
  const before = habit;
  habit = wanted;
  try {
    return run();
  } finally {
    habit = before;
  }
}

export const stress = { stress: true } as const;

/** The unit in which a sentence says what is said in this one at home. */
export const unitSaid = (home: UnitSymbol): UnitSymbol => habitUnit(home, habit);

/** A number in a sentence: two figures unless told, three for temperatures and masses. */
export const say = (si: number, home: UnitSymbol, figures = 2, role?: { readonly stress?: true }): string =>
  printQuantity(si, habitUnit(home, habit, role), { figures });

/** A temperature to the degree, on the scale of the shop. */
export const celsius = (kelvin: number): string => {
  const scale = unitSaid('°C');
  return `${Math.round(fromSI(kelvin, scale))} ${unitLabel(scale)}`.replace('-', '−');
};
