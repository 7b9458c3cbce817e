import { defineModel, type Input, type Output, type Result, type Values } from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt } from './given.ts';
import { borrow } from './pour-plan/borrow.ts';
import { workCooling, workFreezing } from './pour-plan/freezing.ts';
import { metalInputs, mouldInputs } from './pour-plan/inputs-material.ts';
import { mostSections, partInputs } from './pour-plan/inputs-part.ts';
import { pourInputs } from './pour-plan/inputs-pour.ts';
import { shopInputs } from './pour-plan/inputs-shop.ts';
import { judgeEntry, judgeRaces, workRace } from './pour-plan/race.ts';
import { workPressure } from './pour-plan/pressure.ts';
import { readSections } from './pour-plan/sections.ts';
import { startWorking } from './pour-plan/working.ts';

const inputs = {
  ...borrow(partInputs, 'sections'),
  'gate.temperature': {
    kind: 'quantity',
    name: 'metal at the gate',
    note: 'After the walk, the cup and the sprue.',
    group: 'Pour',
    first: true,
    unit: 'K',
    show: '°C',
    range: [450, 2000],
    why: 'from tin to above steel',
    usual: 1353.15,
  },
  ...borrow(shopInputs, 'melt.temperature'),
  'head.left': {
    kind: 'quantity',
    name: 'head of metal above the farthest place',
    group: 'Pour',
    first: true,
    unit: 'm',
    show: 'mm',
    range: [0, 0.5],
    why: 'no bench sprue is taller',
    usual: 0.04,
  },
  suction: {
    kind: 'quantity',
    name: 'suction at the cavity',
    note: 'Not at the gauge: what is left of it where the metal goes.',
    group: 'Pour',
    first: true,
    unit: 'Pa',
    show: 'kPa',
    range: [0, 100_000],
    why: 'no suction takes away more than one atmosphere',
    usual: 15_000,
  },
  gas: {
    kind: 'quantity',
    name: 'gas pressing back',
    group: 'Pour',
    unit: 'Pa',
    show: 'kPa',
    range: [0, 100_000],
    why: 'an atmosphere of gas blows back',
    usual: 0,
  },
  flow: {
    kind: 'quantity',
    name: 'flow into the casting',
    note: 'The smaller of what the gate passes and what you pour.',
    group: 'Pour',
    first: true,
    unit: 'm³/s',
    show: 'cm³/s',
    range: [1e-7, 1e-3],
    why: 'from drops to a litre a second',
    usual: 9e-6,
  },
  ...borrow(pourInputs, 'gate.discharge', 'entry.angle'),
  ...borrow(
    metalInputs,
    'metal',
    'metal.solidus',
    'metal.liquidus',
    'metal.latent',
    'metal.density.liquid',
    'metal.heat.liquid',
    'metal.surface-tension',
    'metal.critical-solid',
  ),
  ...borrow(
    mouldInputs,
    'mould',
    'mould.temperature',
    'mould.conductivity',
    'mould.density.bulk',
    'mould.heat',
    'mould.interface',
  ),
} as const satisfies Readonly<Record<string, Input>>;

/** Of each row, as entered, from one. */
const ofSection: Readonly<Record<string, Output>> = {
  arrives: { name: 'metal arrives at', unit: 'K', show: '°C' },
  fills: { name: 'time to fill', unit: 's' },
  flows: { name: 'time it keeps flowing', unit: 's' },
  freeze: { name: 'time to freeze', unit: 's' },
};

const rowOutputs = Object.fromEntries(
  Array.from({ length: mostSections }, (_, row) =>
    Object.entries(ofSection).map(([field, { name, ...rest }]): [string, Output] => [
      `sections.${row + 1}.${field}`,
      { name: `section ${row + 1}: ${name}`, ...rest },
    ]),
  ).flat(),
);

const levers = ['suction', 'head.left', 'gate.temperature', 'mould.temperature', 'flow'];

function run(given: Values): Result {
  const bad = notAboveNought(
    given,
    inputs,
    'gate.temperature',
    'flow',
    'gate.discharge',
    'metal.latent',
    'metal.density.liquid',
    'metal.heat.liquid',
    'mould.temperature',
    'mould.conductivity',
    'mould.density.bulk',
    'mould.heat',
    'mould.interface',
  );
  if (bad !== undefined) return noResult(bad);
  const working = startWorking(given);
  const sections = readSections(working);
  if (sections.length === 0) return noResult('give at least one section', ...working.notes);
  const headLeft = numberAt(given, 'head.left');
  const suction = numberAt(given, 'suction');
  const push = {
    headLeft,
    suction,
    gas: numberAt(given, 'gas'),
    flow: numberAt(given, 'flow'),
    pressure: workPressure(working, headLeft, suction),
  };
  const cooling = workCooling(working);
  const gate = numberAt(given, 'gate.temperature');
  const races = sections.map((section) =>
    workRace(working, section, sections, gate, push, cooling, workFreezing(working, section, cooling)),
  );
  const checks = [...judgeRaces(working, races, push), ...judgeEntry(working, races, push)].map((check) => ({
    ...check,
    levers,
  }));
  const ratios = races.map(({ fills, flows }) => (fills > 0 ? Math.max(0, flows) / fills : Number.NaN));
  const values: Record<string, number | undefined> = { least: Math.min(...ratios) };
  for (const name of Object.keys(rowOutputs)) values[name] = working.kept.get(name);
  return { values: known(values), steps: working.steps, checks, notes: working.notes };
}

/**
 * Every section of a part in its race: the time it keeps flowing against the time it needs to fill, and the
 * time until it is solid, thinnest first. Sections reached through another share its flow and its losses.
 */
export const sectionRace = defineModel({
  id: 'freezing/section-race',
  title: 'The race, section by section',
  answers: 'Does each section fill before its metal stops?',
  inputs,
  outputs: {
    least: { name: 'flow time over fill time, the least of them', unit: '1' },
    ...rowOutputs,
  },
  run,
  assumes: [
    'the front meets fresh sand, so the interface coefficient leads',
    'channels fed through one another share the flow, and none goes faster than the pour',
    'a section whose opening resists more than the metal presses does not fill at all',
    'wanted: flow time 1.5 times the time to fill, a starting value',
  ],
  source: {
    key: 'trade-practice',
    at: 'the comparison section by section; each line has its own source',
    how: 'common practice',
  },
  examples: [
    {
      title: 'One bar 3 mm square and 60 mm long, under 80 mm of head',
      given: {
        sections: [
          { name: 'Bar', shape: 'bar', thickness: '3 mm', width: '3 mm', length: '60 mm', run: '60 mm' },
        ],
        'gate.temperature': '1050 °C',
        'melt.temperature': '1100 °C',
        'head.left': '80 mm',
        suction: '0 Pa',
        gas: '0 Pa',
        flow: '2 cm³/s',
        'gate.discharge': '0.6',
        'entry.angle': '180 deg',
        'metal.solidus': '860 °C',
        'metal.liquidus': '970 °C',
        'metal.latent': '200 kJ/kg',
        'metal.density.liquid': '7700 kg/m³',
        'metal.heat.liquid': '480 J/(kg·K)',
        'metal.surface-tension': '1.2 N/m',
        'metal.critical-solid': '30 %',
        'mould.temperature': '150 °C',
        'mould.interface': '1000 W/(m²·K)',
      },
      expect: { 'sections.1.fills': '0.270 s', 'sections.1.flows': '0.743 s', least: '2.75 1' },
      from: {
        byHand:
          'Shared flow 2e-6 / 9e-6 = 0.2222 m/s; the pressure would give 0.6 √(2 × (0.7845 − 1600/7700)) = 0.64 m/s, so the flow decides: 0.060 / 0.2222 = 0.270 s. Keeps flowing: 7700 × 0.00075 × (0.3 × 200 000 + 480 × 80) / (1000 × (915 − 150)) = 568 260 / 765 000 = 0.7428 s. Ratio 2.751.',
      },
    },
  ],
  caution: ['A race that is won on paper is still poured with the kit on, over dry sand.'],
  monotone: [
    { input: 'mould.temperature', output: 'sections.1.freeze', sense: '+' },
    { input: 'suction', output: 'sections.1.fills', sense: '-' },
    { input: 'head.left', output: 'sections.1.fills', sense: '-' },
    { input: 'gas', output: 'sections.1.fills', sense: '+' },
  ],
  words: ['race', 'misrun', 'cold shut', 'thin section', 'fills before it freezes'],
});
