import type { Input, QuantityInput } from '../../core/model.ts';
import { propertyUnits, type Property } from '../../core/material.ts';
import type { UnitSymbol } from '../../core/units.ts';

interface Ask {
  readonly name: string;
  readonly note?: string;
  readonly show?: UnitSymbol;
  readonly range: readonly [number, number];
  readonly unit?: UnitSymbol;
  readonly stress?: true;
}

/** Why the ranges of a material's numbers end where they do. */
const lieHere = {
  metal: 'the casting metals, from tin to gold, lie here',
  mould: 'the moulds of the workshop, from plaster to steel, lie here',
  crucible: 'crucibles of clay, graphite and silica lie here',
} as const;

/** A number of the material chosen, to be overwritten where the reader knows better. `range` is in the property's unit. */
function asks(
  input: 'metal' | 'mould' | 'crucible',
  group: string,
  table: Readonly<Partial<Record<Property, Ask>>>,
): Record<string, QuantityInput> {
  return Object.fromEntries(
    Object.entries(table).map(([property, ask]) => {
      const field: QuantityInput = {
        kind: 'quantity',
        group,
        unit: propertyUnits[property as Property],
        from: { input, property },
        why: lieHere[input],
        ...ask,
      };
      return [`${input}.${property}`, field];
    }),
  );
}

export const metalInputs: Readonly<Record<string, Input>> = {
  metal: {
    kind: 'material',
    name: 'Metal',
    note: 'Every number of the metal below follows it until you write your own.',
    group: 'Metal',
    first: true,
    role: 'metal',
    usual: 'silicon-bronze',
  },
  ...asks('metal', 'Metal', {
    'density.solid': { name: 'Density, solid', note: 'Sets the charge.', range: [1500, 22000] },
    'density.liquid': { name: 'Density, liquid', note: 'Sets pressure from the head.', range: [1500, 20000] },
    'heat.solid': { name: 'Specific heat, solid', note: 'Sets the heat to melt.', range: [100, 1300] },
    'heat.liquid': {
      name: 'Specific heat, liquid',
      note: 'What each degree of superheat is worth.',
      range: [100, 1500],
    },
    latent: {
      name: 'Latent heat',
      note: 'The largest doubt in a freezing time.',
      show: 'kJ/kg',
      range: [20_000, 600_000],
    },
    solidus: { name: 'Solidus', range: [150, 1500] },
    liquidus: { name: 'Liquidus', note: 'Superheat counts from here.', range: [150, 1500] },
    'surface-tension': {
      name: 'Surface tension',
      note: 'Keeps metal out of thin webs and sharp corners.',
      range: [0.05, 2.5],
    },
    'contact-angle': {
      name: 'Contact angle on the sand',
      note: 'Nearer 90° the metal enters the sand sooner.',
      range: [91, 180],
    },
    'shrinkage.freezing': {
      name: 'Shrinkage on freezing',
      note: 'Sets the void with no feeder.',
      range: [-6, 8],
    },
    'contraction.liquid': { name: 'Contraction of the liquid in 100 K', range: [0, 3] },
    'contraction.pattern': {
      name: 'Pattern allowance',
      note: 'Sets the size of the pattern.',
      range: [0, 4],
    },
    'pour.lowest': {
      name: 'Lowest pouring temperature',
      note: 'Sets the seconds in hand.',
      range: [150, 1700],
    },
    'pour.highest': {
      name: 'Highest pouring temperature',
      note: 'Above it: gas, fume, burnt-in sand.',
      range: [150, 1700],
    },
    'critical-solid': {
      name: 'Share solid when flow stops',
      note: 'The stop rule of the race.',
      show: '%',
      range: [0.05, 1],
    },
    'loss.melting': { name: 'Melting loss', note: 'What goes to dross and fume.', range: [0, 15] },
    emissivity: {
      name: 'Emissivity of the melt',
      note: 'How fast the open surface cools.',
      range: [0.03, 1],
    },
  }),
  'metal.zinc': {
    kind: 'quantity',
    name: 'Zinc in it',
    note: 'Above a few per cent it fumes when poured. Left open, the name of the metal decides.',
    group: 'Metal',
    unit: '%',
    range: [0, 100],
    why: 'a share of the whole',
  },
  'metal.lead': {
    kind: 'quantity',
    name: 'Lead in it',
    note: 'Any lead is flagged. Left open, the name of the metal decides.',
    group: 'Metal',
    unit: '%',
    range: [0, 100],
    why: 'a share of the whole',
  },
};

export const mouldInputs: Readonly<Record<string, Input>> = {
  mould: {
    kind: 'material',
    name: 'Mould',
    note: 'Every number of the mould below follows it until you write your own.',
    group: 'Mould',
    first: true,
    role: 'mould',
    usual: 'clay-bonded-sand',
  },
  'mould.temperature': {
    kind: 'quantity',
    name: 'Mould temperature at the pour',
    note: 'Warmth buys dryness first, a little time next, no edges.',
    group: 'Mould',
    first: true,
    unit: 'K',
    show: '°C',
    range: [253, 1100],
    why: 'from a frosty workshop to above any kiln for moulds',
    usual: 423.15,
    spread: '15 Δ°C',
  },
  'mould.dried': {
    kind: 'choice',
    name: 'How it was dried',
    note: 'Warm is not dry: only a mass that has stopped falling is.',
    group: 'Mould',
    first: true,
    options: {
      held: 'held warm until its mass stopped falling',
      warmed: 'warmed, not weighed',
      none: 'not dried: green or waterless sand',
    },
    usual: 'held',
  },
  ...asks('mould', 'Mould', {
    'density.bulk': { name: 'Density as rammed', range: [500, 9000] },
    heat: { name: 'Specific heat', range: [300, 1500] },
    conductivity: {
      name: 'Conductivity',
      note: 'With density and heat: how hard the sand pulls heat.',
      range: [0.1, 150],
    },
    interface: {
      name: 'Interface coefficient',
      note: 'How well the face passes heat in the first second: the largest doubt of the race.',
      range: [50, 20_000],
    },
    permeability: {
      name: 'Permeability',
      note: 'Decides whether gas leaves before the metal arrives.',
      range: [0.1, 500],
    },
    porosity: { name: 'Porosity', range: [0.05, 0.8] },
    'grain-size': { name: 'Grain size', note: 'Finer keeps metal out of the sand.', range: [0.02, 1] },
    moisture: { name: 'Water left in it', note: 'Becomes steam in the first second.', range: [0, 10] },
    'strength.tensile': {
      name: 'Tensile strength',
      note: 'A wide guess: break a bar of your own.',
      range: [1, 50_000],
      stress: true,
    },
    'strength.shear': { name: 'Shear strength', range: [1, 50_000], stress: true },
    'temperature.limit': {
      name: 'Hottest the mould may be',
      note: 'Binders fail above it.',
      range: [20, 1600],
    },
    'temperature.metal': { name: 'Hottest metal it takes', range: [200, 2000] },
  }),
};

export const crucibleInputs: Readonly<Record<string, Input>> = {
  crucible: {
    kind: 'material',
    name: 'Crucible',
    group: 'Melt',
    role: 'crucible',
    usual: 'clay-graphite-crucible',
  },
  ...asks('crucible', 'Melt', {
    heat: {
      name: 'Specific heat of the crucible',
      note: 'Heating it often costs more than the metal.',
      range: [300, 2000],
    },
    'temperature.limit': { name: 'Hottest the crucible may be', range: [500, 2500] },
  }),
};
