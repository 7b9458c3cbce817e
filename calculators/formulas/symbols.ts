import type { SymbolSpec } from '../core/formula.ts';

/**
 * Quantities that several formulas share, each with one name, unit, range and usual value, so that the same
 * thing is asked for in the same words wherever it appears. A formula that means something narrower states
 * its own.
 */
export const dischargeCoefficient = {
  name: 'discharge coefficient',
  unit: '1',
  range: [0.3, 1],
  why: 'below 0.3 look for a blockage; above 1 is impossible',
  usual: 0.7,
  note: 'The share of the ideal speed left after entry, bends and friction.',
} as const satisfies SymbolSpec;

export const freezingTemperature = {
  name: 'freezing temperature',
  unit: 'K',
  show: '°C',
  range: [450, 1900],
  why: 'from tin to iron',
  usual: 1188.15,
  note: 'The middle of the freezing range. Try both ends to see the spread.',
} as const satisfies SymbolSpec;

export const freezingTime = {
  name: 'time to freeze',
  unit: 's',
  range: [0.0001, 100000],
  why: 'shorter than the pour or longer than a day',
} as const satisfies SymbolSpec;

export const gravity = { name: 'gravity', unit: 'm/s²', constant: 9.80665 } as const satisfies SymbolSpec;

export const interfaceCoefficient = {
  name: 'interface coefficient',
  unit: 'W/(m²·K)',
  range: [50, 20000],
  why: 'from a gap of air to a pressed contact',
  usual: 1000,
  note: 'How well the face passes heat. 200 to 1000 for copper alloys on sand: an estimate, and the largest doubt of all.',
} as const satisfies SymbolSpec;

export const latentHeat = {
  name: 'latent heat of freezing',
  unit: 'J/kg',
  show: 'kJ/kg',
  range: [20000, 600000],
  usual: 150000,
  why: 'casting metals lie between lead and aluminium-silicon',
  note: 'For silicon bronze 108 to 200 kJ/kg: the largest doubt about the metal.',
} as const satisfies SymbolSpec;

export const liquidDensity = {
  name: 'density of the liquid metal',
  sign: 'ρ',
  unit: 'kg/m³',
  range: [1500, 20000],
  usual: 7520,
  why: 'casting metals lie between magnesium and gold',
} as const satisfies SymbolSpec;

export const liquidHeat = {
  name: 'specific heat of the liquid metal',
  unit: 'J/(kg·K)',
  range: [100, 1500],
  why: 'the materials of the workshop lie here',
  usual: 520,
} as const satisfies SymbolSpec;

export const metalSpeed = {
  name: 'speed of the metal',
  unit: 'm/s',
  range: [0.01, 10],
  why: 'faster than this the metal is a spray; slower, it stands',
  usual: 0.5,
} as const satisfies SymbolSpec;

export const modulusOfSection = {
  name: 'modulus',
  unit: 'm',
  show: 'mm',
  range: [0.0001, 0.05],
  why: 'from a thin web to a block of 20 kg; larger needs other methods',
  usual: 0.000428,
  note: 'Volume over the surface that really cools.',
} as const satisfies SymbolSpec;

export const mouldDiffusivity = {
  name: 'heat diffusivity of the mould',
  unit: 'J·s^-½/(m²·K)',
  range: [300, 2500],
  usual: 1000,
  why: 'sand, plaster and investment; a metal mould follows other rules',
  note: 'About 1000 for dry sand, 700 for gypsum investment.',
} as const satisfies SymbolSpec;

export const mouldTemperature = {
  name: 'mould temperature',
  unit: 'K',
  show: '°C',
  range: [250, 1200],
  why: 'from a frosty workshop to the hottest investment',
  usual: 423.15,
} as const satisfies SymbolSpec;

export const pressureDifference = {
  name: 'pressure above the metal less pressure in the cavity',
  sign: 'Δp',
  unit: 'Pa',
  show: 'kPa',
  range: [0, 101325],
  why: 'no suction takes away more than one atmosphere',
  usual: 15000,
} as const satisfies SymbolSpec;

export const solidHeat = {
  name: 'specific heat of the solid metal',
  unit: 'J/(kg·K)',
  range: [100, 1300],
  why: 'the materials of the workshop lie here',
  usual: 400,
} as const satisfies SymbolSpec;

export const solidShareAtStop = {
  name: 'solid share at which flow stops',
  unit: '%',
  range: [5, 100],
  why: 'below it nothing has frozen, above it nothing flows',
  usual: 30,
  note: '20 to 50 % for alloys with a freezing range, 100 % for a pure metal.',
} as const satisfies SymbolSpec;

export const stefanBoltzmann = {
  name: 'Stefan–Boltzmann constant',
  sign: 'σ',
  unit: 'W/(m²·K⁴)',
  constant: 5.670374419e-8,
} as const satisfies SymbolSpec;

export const superheatOnArrival = {
  name: 'superheat on arrival',
  sign: 'ΔT',
  unit: 'ΔK',
  show: 'Δ°C',
  range: [0, 400],
  why: 'more than this burns the metal and the mould',
  usual: 40,
  note: 'Temperature when it gets here, less the liquidus: not the temperature in the crucible.',
} as const satisfies SymbolSpec;

export const surfaceTension = {
  name: 'surface tension',
  sign: 'γ',
  unit: 'N/m',
  range: [0.05, 2.5],
  why: 'from water to iron',
  usual: 1.2,
  note: 'Copper alloys about 1.2, silver 0.9, clean aluminium 0.85 to 1.05; an oxide skin acts like more.',
} as const satisfies SymbolSpec;
