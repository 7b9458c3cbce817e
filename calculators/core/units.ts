/**
 * Units a caster meets, each as an exact factor to the coherent SI unit of its dimension.
 *
 * Factors: NIST Special Publication 811 (2008), Appendix B, and the definitions they rest on.
 * Conventional mercury is 13 595.1 kg/m³ and conventional water 1000 kg/m³ under standard gravity,
 * so 1 mmHg = 133.322387415 Pa and 1 inHg = 3386.388640341 Pa; the calorie is the thermochemical one,
 * the BTU the International Table one.
 */

/** Exponents of metre, kilogram, second, kelvin and mole. */
export type Dimension = readonly [m: number, kg: number, s: number, K: number, mol: number];

/**
 * `temperature` is a point on a scale, `difference` a distance on it. 100 °C is 373.15 K as a point
 * and 100 K as a difference, so the two are never exchanged silently.
 */
export type UnitKind = 'plain' | 'temperature' | 'difference';

export interface Unit {
  readonly symbol: UnitSymbol;
  readonly name: string;
  readonly dimension: Dimension;
  readonly kind: UnitKind;
  /** SI value = written value × factor + offset. */
  readonly factor: number;
  readonly offset: number;
}

const one: Dimension = [0, 0, 0, 0, 0];
const length: Dimension = [1, 0, 0, 0, 0];
const area: Dimension = [2, 0, 0, 0, 0];
const volume: Dimension = [3, 0, 0, 0, 0];
const mass: Dimension = [0, 1, 0, 0, 0];
const time: Dimension = [0, 0, 1, 0, 0];
const temperature: Dimension = [0, 0, 0, 1, 0];
const pressure: Dimension = [-1, 1, -2, 0, 0];
const density: Dimension = [-3, 1, 0, 0, 0];
const energy: Dimension = [2, 1, -2, 0, 0];
const power: Dimension = [2, 1, -3, 0, 0];
const specificEnergy: Dimension = [2, 0, -2, 0, 0];
const specificHeat: Dimension = [2, 0, -2, -1, 0];
const flow: Dimension = [3, 0, -1, 0, 0];

const inch = 0.0254;
const foot = 12 * inch;
const pound = 0.45359237;
const standardGravity = 9.80665;
const poundForce = pound * standardGravity;
const psi = poundForce / (inch * inch);
const mmHg = 13595.1 * standardGravity * 1e-3;
const btu = 1055.05585262;
const grain = pound / 7000;
/** Air at 20 °C as the AFS test has it, Pa·s; the permeability number is a flow of air, not an area. */
const airViscosity = 1.8e-5;

interface UnitRow {
  readonly name: string;
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
  readonly kind?: UnitKind;
}

const table = {
  '1': { name: 'number', dimension: one, factor: 1 },
  '%': { name: 'per cent', dimension: one, factor: 0.01 },
  '‰': { name: 'per mille', dimension: one, factor: 0.001 },
  ppm: { name: 'parts per million', dimension: one, factor: 1e-6 },
  rad: { name: 'radian', dimension: one, factor: 1 },
  deg: { name: 'degree of angle', dimension: one, factor: Math.PI / 180 },

  mm: { name: 'millimetre', dimension: length, factor: 1e-3 },
  cm: { name: 'centimetre', dimension: length, factor: 1e-2 },
  m: { name: 'metre', dimension: length, factor: 1 },
  µm: { name: 'micrometre', dimension: length, factor: 1e-6 },
  in: { name: 'inch', dimension: length, factor: inch },
  thou: { name: 'thousandth of an inch', dimension: length, factor: inch / 1000 },
  ft: { name: 'foot', dimension: length, factor: foot },

  'm²': { name: 'square metre', dimension: area, factor: 1 },
  'cm²': { name: 'square centimetre', dimension: area, factor: 1e-4 },
  'mm²': { name: 'square millimetre', dimension: area, factor: 1e-6 },
  'in²': { name: 'square inch', dimension: area, factor: inch ** 2 },
  'ft²': { name: 'square foot', dimension: area, factor: foot ** 2 },
  darcy: { name: 'darcy', dimension: area, factor: 1e-7 / 101325 },
  AFS: {
    name: 'AFS permeability number',
    dimension: area,
    factor: (1e-8 / (98.0665 * 1e-4 * 60)) * airViscosity,
  },

  'm³': { name: 'cubic metre', dimension: volume, factor: 1 },
  'cm³': { name: 'cubic centimetre', dimension: volume, factor: 1e-6 },
  'mm³': { name: 'cubic millimetre', dimension: volume, factor: 1e-9 },
  mL: { name: 'millilitre', dimension: volume, factor: 1e-6 },
  L: { name: 'litre', dimension: volume, factor: 1e-3 },
  'in³': { name: 'cubic inch', dimension: volume, factor: inch ** 3 },
  'ft³': { name: 'cubic foot', dimension: volume, factor: foot ** 3 },

  g: { name: 'gram', dimension: mass, factor: 1e-3 },
  kg: { name: 'kilogram', dimension: mass, factor: 1 },
  mg: { name: 'milligram', dimension: mass, factor: 1e-6 },
  lb: { name: 'pound', dimension: mass, factor: pound },
  oz: { name: 'ounce (avoirdupois)', dimension: mass, factor: pound / 16 },
  ozt: { name: 'troy ounce', dimension: mass, factor: 480 * grain },
  dwt: { name: 'pennyweight', dimension: mass, factor: 24 * grain },
  ct: { name: 'metric carat', dimension: mass, factor: 2e-4 },
  gr: { name: 'grain', dimension: mass, factor: grain },

  s: { name: 'second', dimension: time, factor: 1 },
  ms: { name: 'millisecond', dimension: time, factor: 1e-3 },
  min: { name: 'minute', dimension: time, factor: 60 },
  h: { name: 'hour', dimension: time, factor: 3600 },

  K: { name: 'kelvin', dimension: temperature, factor: 1, kind: 'temperature' },
  '°C': {
    name: 'degree Celsius',
    dimension: temperature,
    factor: 1,
    offset: 273.15,
    kind: 'temperature',
  },
  '°F': {
    name: 'degree Fahrenheit',
    dimension: temperature,
    factor: 5 / 9,
    offset: 459.67 * (5 / 9),
    kind: 'temperature',
  },
  ΔK: { name: 'kelvin of difference', dimension: temperature, factor: 1, kind: 'difference' },
  'Δ°C': { name: 'Celsius degrees of difference', dimension: temperature, factor: 1, kind: 'difference' },
  'Δ°F': {
    name: 'Fahrenheit degrees of difference',
    dimension: temperature,
    factor: 5 / 9,
    kind: 'difference',
  },

  Pa: { name: 'pascal', dimension: pressure, factor: 1 },
  kPa: { name: 'kilopascal', dimension: pressure, factor: 1e3 },
  MPa: { name: 'megapascal', dimension: pressure, factor: 1e6 },
  GPa: { name: 'gigapascal', dimension: pressure, factor: 1e9 },
  bar: { name: 'bar', dimension: pressure, factor: 1e5 },
  mbar: { name: 'millibar', dimension: pressure, factor: 100 },
  atm: { name: 'standard atmosphere', dimension: pressure, factor: 101325 },
  psi: { name: 'pound-force per square inch', dimension: pressure, factor: psi },
  mmHg: { name: 'millimetre of mercury', dimension: pressure, factor: mmHg },
  torr: { name: 'torr', dimension: pressure, factor: 101325 / 760 },
  inHg: { name: 'inch of mercury', dimension: pressure, factor: 25.4 * mmHg },
  mmH2O: { name: 'millimetre of water', dimension: pressure, factor: standardGravity },
  cmH2O: { name: 'centimetre of water', dimension: pressure, factor: 10 * standardGravity },
  inH2O: { name: 'inch of water', dimension: pressure, factor: 25.4 * standardGravity },

  'kg/m³': { name: 'kilogram per cubic metre', dimension: density, factor: 1 },
  'g/cm³': { name: 'gram per cubic centimetre', dimension: density, factor: 1000 },
  'lb/in³': { name: 'pound per cubic inch', dimension: density, factor: pound / inch ** 3 },
  'mg/m³': { name: 'milligram per cubic metre', dimension: density, factor: 1e-6 },
  'µg/m³': { name: 'microgram per cubic metre', dimension: density, factor: 1e-9 },

  'm/s': { name: 'metre per second', dimension: [1, 0, -1, 0, 0], factor: 1 },
  'mm/s': { name: 'millimetre per second', dimension: [1, 0, -1, 0, 0], factor: 1e-3 },
  'ft/s': { name: 'foot per second', dimension: [1, 0, -1, 0, 0], factor: foot },
  'm/s²': { name: 'metre per second squared', dimension: [1, 0, -2, 0, 0], factor: 1 },

  N: { name: 'newton', dimension: [1, 1, -2, 0, 0], factor: 1 },
  kN: { name: 'kilonewton', dimension: [1, 1, -2, 0, 0], factor: 1e3 },
  kgf: { name: 'kilogram-force', dimension: [1, 1, -2, 0, 0], factor: standardGravity },
  lbf: { name: 'pound-force', dimension: [1, 1, -2, 0, 0], factor: poundForce },

  J: { name: 'joule', dimension: energy, factor: 1 },
  kJ: { name: 'kilojoule', dimension: energy, factor: 1e3 },
  MJ: { name: 'megajoule', dimension: energy, factor: 1e6 },
  cal: { name: 'calorie (thermochemical)', dimension: energy, factor: 4.184 },
  kcal: { name: 'kilocalorie (thermochemical)', dimension: energy, factor: 4184 },
  Wh: { name: 'watt hour', dimension: energy, factor: 3600 },
  kWh: { name: 'kilowatt hour', dimension: energy, factor: 3.6e6 },
  BTU: { name: 'British thermal unit (International Table)', dimension: energy, factor: btu },

  W: { name: 'watt', dimension: power, factor: 1 },
  kW: { name: 'kilowatt', dimension: power, factor: 1e3 },
  hp: { name: 'mechanical horsepower', dimension: power, factor: 550 * foot * poundForce },
  'BTU/h': { name: 'BTU per hour', dimension: power, factor: btu / 3600 },

  'W/(m·K)': { name: 'watt per metre kelvin', dimension: [1, 1, -3, -1, 0], factor: 1 },
  'J/(kg·K)': { name: 'joule per kilogram kelvin', dimension: specificHeat, factor: 1 },
  'kJ/(kg·K)': { name: 'kilojoule per kilogram kelvin', dimension: specificHeat, factor: 1e3 },
  'J/kg': { name: 'joule per kilogram', dimension: specificEnergy, factor: 1 },
  'kJ/kg': { name: 'kilojoule per kilogram', dimension: specificEnergy, factor: 1e3 },
  'J/(m³·K)': { name: 'joule per cubic metre kelvin', dimension: [-1, 1, -2, -1, 0], factor: 1 },
  'MJ/(m³·K)': { name: 'megajoule per cubic metre kelvin', dimension: [-1, 1, -2, -1, 0], factor: 1e6 },
  'W/m²': { name: 'watt per square metre', dimension: [0, 1, -3, 0, 0], factor: 1 },
  'kW/m²': { name: 'kilowatt per square metre', dimension: [0, 1, -3, 0, 0], factor: 1e3 },
  'W/(m²·K)': { name: 'watt per square metre kelvin', dimension: [0, 1, -3, -1, 0], factor: 1 },
  'W/(m²·K⁴)': {
    name: 'watt per square metre kelvin to the fourth',
    dimension: [0, 1, -3, -4, 0],
    factor: 1,
  },
  'J·s^-½/(m²·K)': {
    name: 'joule per square metre kelvin root second (heat diffusivity)',
    dimension: [0, 1, -2.5, -1, 0],
    factor: 1,
  },
  's/m²': { name: 'second per square metre (mould constant)', dimension: [-2, 0, 1, 0, 0], factor: 1 },
  's/mm²': { name: 'second per square millimetre', dimension: [-2, 0, 1, 0, 0], factor: 1e6 },
  's/cm²': { name: 'second per square centimetre', dimension: [-2, 0, 1, 0, 0], factor: 1e4 },
  'min/cm²': { name: 'minute per square centimetre', dimension: [-2, 0, 1, 0, 0], factor: 6e5 },
  'm²/s': { name: 'square metre per second', dimension: [2, 0, -1, 0, 0], factor: 1 },
  'mm²/s': { name: 'square millimetre per second', dimension: [2, 0, -1, 0, 0], factor: 1e-6 },

  'Pa·s': { name: 'pascal second', dimension: [-1, 1, -1, 0, 0], factor: 1 },
  'mPa·s': { name: 'millipascal second', dimension: [-1, 1, -1, 0, 0], factor: 1e-3 },
  cP: { name: 'centipoise', dimension: [-1, 1, -1, 0, 0], factor: 1e-3 },
  'N/m': { name: 'newton per metre', dimension: [0, 1, -2, 0, 0], factor: 1 },
  'mN/m': { name: 'millinewton per metre', dimension: [0, 1, -2, 0, 0], factor: 1e-3 },

  'm³/s': { name: 'cubic metre per second', dimension: flow, factor: 1 },
  'L/min': { name: 'litre per minute', dimension: flow, factor: 1e-3 / 60 },
  'L/s': { name: 'litre per second', dimension: flow, factor: 1e-3 },
  'cm³/s': { name: 'cubic centimetre per second', dimension: flow, factor: 1e-6 },
  'm³/h': { name: 'cubic metre per hour', dimension: flow, factor: 1 / 3600 },
  cfm: { name: 'cubic foot per minute', dimension: flow, factor: foot ** 3 / 60 },
  'kg/s': { name: 'kilogram per second', dimension: [0, 1, -1, 0, 0], factor: 1 },
  'g/s': { name: 'gram per second', dimension: [0, 1, -1, 0, 0], factor: 1e-3 },
  'mg/s': { name: 'milligram per second', dimension: [0, 1, -1, 0, 0], factor: 1e-6 },
  'K/s': { name: 'kelvin per second', dimension: [0, 0, -1, 1, 0], factor: 1 },
  'K/min': { name: 'kelvin per minute', dimension: [0, 0, -1, 1, 0], factor: 1 / 60 },
  '1/K': { name: 'per kelvin', dimension: [0, 0, 0, -1, 0], factor: 1 },
  mol: { name: 'mole', dimension: [0, 0, 0, 0, 1], factor: 1 },
  'kg/mol': { name: 'kilogram per mole', dimension: [0, 1, 0, 0, -1], factor: 1 },
  'g/mol': { name: 'gram per mole', dimension: [0, 1, 0, 0, -1], factor: 1e-3 },
  'J/mol': { name: 'joule per mole', dimension: [2, 1, -2, 0, -1], factor: 1 },
  'kJ/mol': { name: 'kilojoule per mole', dimension: [2, 1, -2, 0, -1], factor: 1e3 },
  'J/(mol·K)': { name: 'joule per mole kelvin', dimension: [2, 1, -2, -1, -1], factor: 1 },
} as const satisfies Record<string, UnitRow>;

export type UnitSymbol = keyof typeof table;

/** A written quantity in code: a number, a space and a unit of the table, e.g. `'200 mm'`. */
export type Quantity = `${number} ${UnitSymbol}`;

const units: ReadonlyMap<string, Unit> = new Map(
  Object.entries(table as Record<string, UnitRow>).map(([symbol, row]) => [
    symbol,
    {
      symbol: symbol as UnitSymbol,
      name: row.name,
      dimension: row.dimension,
      kind: row.kind ?? 'plain',
      factor: row.factor,
      offset: row.offset ?? 0,
    },
  ]),
);

export const unitSymbols: readonly UnitSymbol[] = [...units.keys()] as UnitSymbol[];

/** The unit with this symbol, or undefined. */
export function findUnit(symbol: string): Unit | undefined {
  return units.get(symbol);
}

/** The unit with this symbol; throws an error that names it when there is none. */
export function unit(symbol: string): Unit {
  const found = units.get(symbol);
  if (!found) throw new Error(`no unit "${symbol}" in the table of units (calculators/core/units.ts)`);
  return found;
}

export function toSI(value: number, symbol: string): number {
  const { factor, offset } = unit(symbol);
  return value * factor + offset;
}

export function fromSI(value: number, symbol: string): number {
  const { factor, offset } = unit(symbol);
  return (value - offset) / factor;
}

/** A width (a spread, a tolerance, a step) in SI: the offset of a temperature scale does not apply. */
export function widthToSI(width: number, symbol: string): number {
  return width * unit(symbol).factor;
}

export function widthFromSI(width: number, symbol: string): number {
  return width / unit(symbol).factor;
}

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((exponent, i) => Math.abs(exponent - (b[i] ?? 0)) < 1e-9);
}

const alike = new Map<string, readonly Unit[]>();

/** Units that can stand in for this one in a field: same dimension and same kind. */
export function unitsLike(symbol: string): readonly Unit[] {
  const known = alike.get(symbol);
  if (known) return known;
  const like = unit(symbol);
  const found = [...units.values()].filter(
    (other) => other.kind === like.kind && sameDimension(other.dimension, like.dimension),
  );
  alike.set(symbol, found);
  return found;
}

/** `m·kg·s⁻²` and so on, for error messages. */
export function dimensionText(dimension: Dimension): string {
  const names = ['m', 'kg', 's', 'K', 'mol'];
  const parts = dimension.flatMap((exponent, i) =>
    Math.abs(exponent) < 1e-9 ? [] : [exponent === 1 ? names[i]! : `${names[i]}^${exponent}`],
  );
  return parts.length === 0 ? '1' : parts.join('·');
}
