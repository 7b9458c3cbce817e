import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, numberAt, rowsAt, textAt } from './given.ts';

/**
 * Sieves of the AFS test: the number's multiplier (AFS Mold and Core Test Handbook) and the opening in mm
 * (ASTM E11). What lies on a sieve passed the one above, so the multiplier is that sieve's number.
 */
const sieves: Readonly<Record<string, { readonly factor: number; readonly opening: number }>> = {
  '6': { factor: 3, opening: 3.35 },
  '12': { factor: 5, opening: 1.7 },
  '20': { factor: 10, opening: 0.85 },
  '30': { factor: 20, opening: 0.6 },
  '40': { factor: 30, opening: 0.425 },
  '50': { factor: 40, opening: 0.3 },
  '70': { factor: 50, opening: 0.212 },
  '100': { factor: 70, opening: 0.15 },
  '140': { factor: 100, opening: 0.106 },
  '200': { factor: 140, opening: 0.075 },
  '270': { factor: 200, opening: 0.053 },
  pan: { factor: 300, opening: 0.02 },
};
const order = ['6', '12', '20', '30', '40', '50', '70', '100', '140', '200', '270', 'pan'];

const row = (sieve: string, kept: number) => ({ sieve, kept: kept / 1000 });

const inputs = {
  sample: {
    kind: 'quantity',
    name: 'sand put on the stack',
    unit: 'kg',
    show: 'g',
    range: [0.01, 1],
    why: 'less weighs badly, more blinds the sieves',
    usual: 0.05,
    note: 'After washing out the clay. Used to see how much went astray.',
  },
  kept: {
    kind: 'list',
    name: 'left on each sieve',
    most: 12,
    item: {
      sieve: {
        kind: 'choice',
        name: 'sieve',
        options: Object.fromEntries(order.map((name) => [name, name === 'pan' ? 'pan' : `no. ${name}`])),
        usual: '70',
      },
      kept: {
        kind: 'quantity',
        name: 'left on it',
        unit: 'kg',
        show: 'g',
        range: [0, 1],
        why: 'a sample of sand',
        usual: 0,
      },
    },
    usual: [row('40', 2.5), row('50', 10), row('70', 20), row('100', 12.5), row('140', 4), row('pan', 1)],
  },
} as const;

function run(given: Values): Result {
  let total = 0;
  let product = 0;
  let perSize = 0;
  const steps: Step[] = [];
  const seen = new Set<string>();
  for (const each of rowsAt(given, 'kept')) {
    const name = textAt(each, 'sieve');
    const sieve = sieves[name];
    const kept = numberAt(each, 'kept');
    if (!sieve) return noResult(`There is no sieve "${name}" in the stack.`);
    if (!(kept >= 0)) return noResult(`Sieve ${name}: what is left on it is missing or below nought.`);
    if (seen.has(name)) return noResult(`Sieve ${name} is named twice.`);
    seen.add(name);
    total += kept;
    product += kept * sieve.factor;
    const above = order[order.indexOf(name) - 1];
    const wider = above === undefined ? 2 * sieve.opening : sieves[above]!.opening;
    perSize += kept / Math.sqrt(wider * sieve.opening);
    steps.push({
      id: `sieve-${name}`,
      title: `${name === 'pan' ? 'Pan' : `Sieve ${name}`}: grams times ${sieve.factor}`,
      value: kept * 1000 * sieve.factor,
      unit: '1',
    });
  }
  if (!(total > 0)) return noResult('Nothing lies on the sieves.');
  const number = product / total;
  const size = total / perSize / 1000;
  steps.push(
    { id: 'number', title: 'Sum of these over the grams', value: number, unit: '1' },
    {
      id: 'size',
      title: 'Grain that has the same surface',
      value: size,
      unit: 'mm',
      note: 'Each share counted at the middle between its two sieves.',
    },
  );
  const sample = numberAt(given, 'sample');
  const lost = sample > 0 ? (sample - total) / sample : Number.NaN;
  const notes =
    Math.abs(lost) > 0.02
      ? [
          `${Math.round(Math.abs(lost) * 100)} % of the sample ${lost > 0 ? 'went astray' : 'was gained'}: sieve again.`,
        ]
      : [];
  return { values: known({ number, size, lost }), steps, checks: [], notes };
}

/** AFS grain fineness number of a sieved sand, and the grain size (m) with the same surface for its mass. */
export const grainFineness = defineModel({
  id: 'sand/grain-fineness',
  title: 'Grain fineness number from a sieve test',
  answers: 'How fine is this sand?',
  inputs,
  outputs: {
    number: { name: 'grain fineness number', sign: 'GFN', unit: '1' },
    size: { name: 'grain of the same surface', sign: 'd', unit: 'm', show: 'mm' },
    lost: { name: 'gone astray', unit: '1', show: '%' },
  },
  run,
  assumes: [
    'clay washed out, sand dried, sieves shaken fifteen minutes',
    'two sands of one number can pack, breathe and finish quite differently',
  ],
  source: { key: 'afs-handbook', at: 'grain fineness number, multipliers', how: 'memory' },
  alsoSee: [{ key: 'astm-e11', at: 'nominal openings', how: 'memory' }],
  examples: [
    {
      title: 'Fifty grams of a three-sieve sand',
      given: {},
      expect: { number: '61.0 1' },
      from: {
        byHand:
          '2.5 × 30 = 75; 10 × 40 = 400; 20 × 50 = 1000; 12.5 × 70 = 875; 4 × 100 = 400; 1 × 300 = 300. Sum 3050; ÷ 50 = 61.0',
      },
    },
  ],
  caution: ['Dry sieving raises silica dust: mask and extraction.'],
  words: ['AFS', 'GFN', 'sieve', 'mesh', 'fineness'],
});
