import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt } from './given.ts';

const inputs = {
  length: {
    kind: 'quantity',
    name: 'inside length of the flask',
    unit: 'm',
    show: 'mm',
    range: [0.03, 0.6],
    why: 'small moulds',
    usual: 0.14,
    first: true,
  },
  width: {
    kind: 'quantity',
    name: 'inside width of the flask',
    unit: 'm',
    show: 'mm',
    range: [0.03, 0.6],
    why: 'small moulds',
    usual: 0.11,
    first: true,
  },
  height: {
    kind: 'quantity',
    name: 'height of sand, cope and drag together',
    unit: 'm',
    show: 'mm',
    range: [0.02, 0.4],
    why: 'small moulds',
    usual: 0.08,
    first: true,
  },
  cavity: {
    kind: 'quantity',
    name: 'volume of casting, sprue and feeder',
    unit: 'm³',
    show: 'cm³',
    range: [0, 0.005],
    why: 'small charges',
    usual: 8e-6,
  },
  metal: {
    kind: 'quantity',
    name: 'metal poured',
    unit: 'kg',
    show: 'g',
    range: [0.001, 20],
    why: 'small charges',
    usual: 0.067,
  },
  rho_bulk: {
    kind: 'quantity',
    name: 'density of the sand as rammed',
    sign: 'ρ_b',
    unit: 'kg/m³',
    range: [1000, 2200],
    why: 'from poured loose to rammed hard',
    usual: 1500,
  },
  rho_grain: {
    kind: 'quantity',
    name: 'density of the grains themselves',
    sign: 'ρ_g',
    unit: 'kg/m³',
    range: [2200, 4800],
    why: 'from feldspar to zircon',
    usual: 2650,
    note: 'Quartz 2650, olivine 3300, chromite 4500, zircon 4600.',
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'length', 'width', 'height', 'metal', 'rho_bulk', 'rho_grain');
  if (bad !== undefined) return noResult(bad);
  const box = numberAt(given, 'length') * numberAt(given, 'width') * numberAt(given, 'height');
  const volume = box - Math.max(0, numberAt(given, 'cavity') || 0);
  if (!(volume > 0)) return noResult('The cavity is larger than the flask.');
  const bulk = numberAt(given, 'rho_bulk');
  const porosity = 1 - bulk / numberAt(given, 'rho_grain');
  if (!(porosity > 0))
    return noResult('Rammed sand cannot be as dense as its grains: check the two densities.');
  const sand = volume * bulk;
  const ratio = sand / numberAt(given, 'metal');
  const steps: Step[] = [
    { id: 'volume', title: 'Flask less the cavity', value: volume, unit: 'cm³' },
    { id: 'sand', title: 'Sand', value: sand, unit: 'kg' },
    { id: 'porosity', title: 'Space between the grains', value: porosity, unit: '%' },
    {
      id: 'air',
      title: 'Air in the mould, which suction must draw out',
      value: volume * porosity,
      unit: 'cm³',
    },
    { id: 'ratio', title: 'Sand to metal, by mass', value: ratio, unit: '1' },
  ];
  const notes =
    ratio < 4
      ? [
          'Less than 4 of sand to 1 of metal: the sand heats right through. Larger flask, or a longer wait before shake-out.',
        ]
      : [];
  return { values: known({ sand, porosity, ratio, air: volume * porosity }), steps, checks: [], notes };
}

/** Mass of sand (kg), its porosity, the air in it (m³) and its mass over the metal's. */
export const sandBulk = defineModel({
  id: 'sand/bulk',
  title: 'Sand in the flask',
  answers: 'How much sand does this flask take, how open is it, and is it enough for the metal?',
  inputs,
  outputs: {
    sand: { name: 'sand', unit: 'kg' },
    porosity: { name: 'porosity', sign: 'φ', unit: '1', show: '%' },
    ratio: { name: 'sand to metal, by mass', unit: '1' },
    air: { name: 'air between the grains', unit: 'm³', show: 'cm³' },
  },
  run,
  assumes: ['a square box rammed evenly', 'clay, oil and water counted with the grains'],
  source: {
    key: 'heine-loper-rosenthal',
    at: 'moulding sands, bulk density and sand-to-metal ratio',
    how: 'memory',
  },
  examples: [
    {
      title: 'Flask of the lamp shield, 140 × 110 × 80 mm',
      given: {
        length: '140 mm',
        width: '110 mm',
        height: '80 mm',
        cavity: '8 cm³',
        rho_bulk: '1500 kg/m³',
      },
      expect: { sand: '1.836 kg' },
      from: { byHand: '14 × 11 × 8 = 1232 cm³, less 8 is 1224; × 1.5 = 1836 g' },
    },
    {
      title: 'How open it is',
      given: { rho_bulk: '1500 kg/m³', rho_grain: '2650 kg/m³' },
      expect: { porosity: '43.4 %' },
      from: { byHand: '1500 ÷ 2650 = 0.566; the rest is 0.434' },
    },
    {
      title: 'Sand to metal for 67 g',
      given: { length: '140 mm', width: '110 mm', height: '80 mm', cavity: '8 cm³', metal: '67 g' },
      expect: { ratio: '27.4 1' },
      from: { byHand: '1836 ÷ 67 = 27.40' },
    },
  ],
  caution: [
    'Dry silica sand is dusty and the dust stays in the lungs: mask, damp cleaning, no compressed air.',
  ],
  monotone: [
    { input: 'height', output: 'sand', sense: '+' },
    { input: 'rho_bulk', output: 'porosity', sense: '-' },
    { input: 'metal', output: 'ratio', sense: '-' },
  ],
  words: ['porosity', 'sand-to-metal ratio', 'flask', 'rammed density'],
});
