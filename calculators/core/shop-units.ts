import type { UnitSymbol } from './units.ts';

/** How a shop is used to measure. It sets the unit a field starts with; every field can still be changed. */
export const habits = {
  metric: 'Metric workshop',
  us: 'US shop',
  jeweller: 'Jeweller',
} as const;

export type Habit = keyof typeof habits;

type Swap = Readonly<Partial<Record<UnitSymbol, UnitSymbol>>>;

/** A bench that reads heat in Fahrenheit and its gauge in inches of mercury. */
const american: Swap = {
  '°C': '°F',
  K: '°F',
  'Δ°C': 'Δ°F',
  ΔK: 'Δ°F',
  Pa: 'inHg',
  kPa: 'inHg',
  mbar: 'inHg',
};

/** From the unit a field shows at home to the one of the habit. What is not named stays. */
const us: Swap = {
  ...american,
  mm: 'in',
  cm: 'in',
  m: 'ft',
  µm: 'thou',
  'mm²': 'in²',
  'cm²': 'in²',
  'm²': 'ft²',
  'mm³': 'in³',
  'cm³': 'in³',
  mL: 'in³',
  L: 'ft³',
  'm³': 'ft³',
  g: 'oz',
  kg: 'lb',
  bar: 'psi',
  MPa: 'psi',
  'kg/m³': 'lb/in³',
  'g/cm³': 'lb/in³',
  'm/s': 'ft/s',
  N: 'lbf',
  kJ: 'BTU',
  MJ: 'BTU',
  'L/s': 'cfm',
  'L/min': 'cfm',
  'm³/h': 'cfm',
};

const swaps: Readonly<Record<Habit, Swap>> = {
  metric: {},
  us,
  // Grams become pennyweights at the bench of a goldsmith.
  jeweller: { ...american, g: 'dwt' },
};

/**
 * The unit of a field in a habit, from the one it shows at home. A stress shares its dimension with suction and is
 * read from no gauge: a US shop says it in psi, a jeweller as it is at home.
 */
export function habitUnit(home: UnitSymbol, habit: Habit, role?: { readonly stress?: true }): UnitSymbol {
  const unit = swaps[habit][home] ?? home;
  return role?.stress && unit === 'inHg' ? (habit === 'us' ? 'psi' : home) : unit;
}
