import { sameDimension, unit, type UnitSymbol } from '../../calculators/core/units.ts';

/** How a shop is used to measure. It sets the unit a field starts with; every field can still be changed. */
export const habits = {
  metric: 'Metric workshop',
  us: 'US shop',
  jeweller: 'Jeweller',
} as const;

export type Habit = keyof typeof habits;

type Swap = readonly (readonly [from: UnitSymbol, to: UnitSymbol])[];

/** From the unit a field shows at home to the one of the habit. What is not named stays. */
const us: Swap = [
  ['mm', 'in'],
  ['cm', 'in'],
  ['m', 'ft'],
  ['µm', 'thou'],
  ['mm²', 'in²'],
  ['cm²', 'in²'],
  ['m²', 'ft²'],
  ['mm³', 'in³'],
  ['cm³', 'in³'],
  ['mL', 'in³'],
  ['L', 'ft³'],
  ['m³', 'ft³'],
  ['g', 'oz'],
  ['kg', 'lb'],
  ['°C', '°F'],
  ['K', '°F'],
  ['Δ°C', 'Δ°F'],
  ['ΔK', 'Δ°F'],
  ['Pa', 'psi'],
  ['kPa', 'inHg'],
  ['bar', 'psi'],
  ['mbar', 'inHg'],
  ['MPa', 'psi'],
  ['kg/m³', 'lb/in³'],
  ['g/cm³', 'lb/in³'],
  ['m/s', 'ft/s'],
  ['N', 'lbf'],
  ['kJ', 'BTU'],
  ['MJ', 'BTU'],
  ['L/s', 'cfm'],
  ['L/min', 'cfm'],
  ['m³/h', 'cfm'],
];

/** The bench of a goldsmith: grams become pennyweights, suction is read in inches of mercury. */
const jeweller: Swap = [
  ['g', 'dwt'],
  ['kPa', 'inHg'],
  ['mbar', 'inHg'],
  ['°C', '°F'],
  ['K', '°F'],
  ['Δ°C', 'Δ°F'],
  ['ΔK', 'Δ°F'],
];

const swaps: Readonly<Record<Habit, ReadonlyMap<UnitSymbol, UnitSymbol>>> = {
  metric: new Map(),
  us: new Map(us),
  jeweller: new Map(jeweller),
};

/** The unit of a field in a habit, from the one it shows at home. */
export function habitUnit(home: UnitSymbol, habit: Habit): UnitSymbol {
  return swaps[habit].get(home) ?? home;
}

/** Swaps that would change what is measured: there must be none. */
export function habitFaults(): string[] {
  return [...us, ...jeweller].flatMap(([from, to]) =>
    sameDimension(unit(from).dimension, unit(to).dimension) && unit(from).kind === unit(to).kind
      ? []
      : [`${from} is not ${to}`],
  );
}

const key = 'warm-mould:units';

export function readHabit(): Habit {
  try {
    const kept = localStorage.getItem(key);
    return kept !== null && kept in habits ? (kept as Habit) : 'metric';
  } catch {
    return 'metric';
  }
}

export function keepHabit(habit: Habit): void {
  try {
    if (habit === 'metric') localStorage.removeItem(key);
    else localStorage.setItem(key, habit);
  } catch {
    // Without storage the habit lasts as long as the page.
  }
}
