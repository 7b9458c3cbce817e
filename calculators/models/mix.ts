import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt } from './given.ts';
import { say } from './pour-plan/say.ts';
import { flaskInputs } from './warming/flask.ts';

const inputs = {
  ...flaskInputs,
  wax: {
    kind: 'quantity',
    name: 'mass of the wax or resin inside',
    unit: 'kg',
    show: 'g',
    range: [0, 0.5],
    why: 'small trees',
    usual: 0.008,
  },
  wax_density: {
    kind: 'quantity',
    name: 'density of the wax or resin',
    sign: 'ρ_wax',
    unit: 'kg/m³',
    range: [800, 1400],
    why: 'waxes and printed resins',
    usual: 960,
  },
  ratio: {
    kind: 'quantity',
    name: 'water to powder, by mass',
    unit: '1',
    range: [0.2, 0.6],
    why: 'thicker will not pour, thinner will not stand',
    usual: 0.4,
    note: '0.38 to 0.42 for most plaster investments. The sheet on the tin decides.',
    first: true,
  },
  sheet_least: {
    kind: 'quantity',
    name: 'least water to powder on the maker’s sheet',
    unit: '1',
    range: [0.2, 0.6],
    why: 'thicker will not pour',
  },
  sheet_most: {
    kind: 'quantity',
    name: 'most water to powder on the maker’s sheet',
    unit: '1',
    range: [0.2, 0.6],
    why: 'thinner will not stand',
  },
  powder_density: {
    kind: 'quantity',
    name: 'density of the powder’s grains',
    sign: 'ρ_powder',
    unit: 'kg/m³',
    range: [2200, 3000],
    why: 'plaster with silica',
    usual: 2600,
  },
  over: {
    kind: 'quantity',
    name: 'extra for bowl, spills and topping up',
    unit: '1',
    show: '%',
    range: [0, 0.4],
    why: 'more is waste',
    usual: 0.12,
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'diameter', 'height', 'ratio', 'powder_density', 'wax_density');
  if (bad !== undefined) return noResult(bad);
  const ratio = numberAt(given, 'ratio');
  const least = numberAt(given, 'sheet_least');
  const most = numberAt(given, 'sheet_most');
  if (ratio < least)
    return noResult(
      `Never less water than the maker’s sheet: it says at least ${say(least, '1')}, and this is ${say(ratio, '1')}.`,
    );
  const flask = (Math.PI / 4) * numberAt(given, 'diameter') ** 2 * numberAt(given, 'height');
  const waxVolume = Math.max(0, numberAt(given, 'wax') || 0) / numberAt(given, 'wax_density');
  if (waxVolume >= flask) return noResult('The pattern is larger than the flask.');
  const volume = (flask - waxVolume) * (1 + Math.max(0, numberAt(given, 'over') || 0));
  // Water at 20 °C; a hundredth either way changes nothing that a kitchen scale sees.
  const perPowder = 1 / numberAt(given, 'powder_density') + ratio / 998;
  const powder = volume / perPowder;
  const density = (1 + ratio) / perPowder;
  const steps: Step[] = [
    { id: 'flask', title: 'Inside of the flask', value: flask, unit: 'mL' },
    { id: 'wax', title: 'Less the pattern', value: waxVolume, unit: 'mL' },
    { id: 'volume', title: 'Slurry to make, with the extra', value: volume, unit: 'mL' },
    { id: 'powder', title: 'Powder', value: powder, unit: 'g' },
    { id: 'water', title: 'Water', value: powder * ratio, unit: 'g' },
    { id: 'density', title: 'Density of the slurry, free of air', value: density, unit: 'g/cm³' },
  ];
  const checks: Check[] =
    Number.isFinite(most) && most > 0 && ratio > 0
      ? [
          {
            id: 'sheet',
            title: 'Within the maker’s sheet',
            verdict: ratio <= most ? 'holds' : 'fails',
            margin: Math.log(most / ratio),
            why:
              ratio <= most
                ? 'Within the sheet.'
                : `Too thin: the sheet allows ${say(most, '1')} at most. The mould would be weak and streak.`,
            levers: ['ratio'],
          },
        ]
      : [];
  const notes = ['Weigh both, powder into water. The maker’s sheet comes before any number here.'];
  if (ratio < 0.38 || ratio > 0.42)
    notes.push('Outside the usual 0.38 to 0.42 of plaster investments: only if your sheet says so.');
  return { values: known({ powder, water: powder * ratio, volume, density }), steps, checks, notes };
}

/** Powder and water (kg) for a flask: its inside less the pattern, filled with slurry free of air. */
export const mix = defineModel({
  id: 'investment/mix',
  title: 'Powder and water for a flask',
  answers: 'How much powder and how much water do I weigh out for this flask?',
  inputs,
  outputs: {
    powder: { name: 'powder', sign: 'm_p', unit: 'kg', show: 'g' },
    water: { name: 'water', sign: 'm_w', unit: 'kg', show: 'g' },
    volume: { name: 'slurry', unit: 'm³', show: 'mL' },
    density: { name: 'density of the slurry', unit: 'kg/m³', show: 'g/cm³' },
  },
  run,
  assumes: [
    'volumes of powder grains and water add up; air is drawn out',
    'a round flask filled to the brim; sprue base and button are part of the pattern’s mass',
  ],
  source: {
    key: 'trade-practice',
    at: 'water to powder of plaster investments, 38 to 42 to 100',
    how: 'common practice',
  },
  examples: [
    {
      title: 'Flask of 75 × 100 mm with 8 g of wax, 40 to 100, nothing extra',
      given: {
        diameter: '75 mm',
        height: '100 mm',
        wax: '8 g',
        wax_density: '960 kg/m³',
        ratio: '40 %',
        powder_density: '2600 kg/m³',
        over: '0 %',
      },
      expect: { powder: '552 g' },
      from: {
        byHand:
          'π/4 × 7.5² × 10 = 441.79 mL, less 8/0.96 = 8.33 leaves 433.45. A gram of powder with its water fills 1/2.6 + 0.4/0.998 = 0.38462 + 0.40080 = 0.78542 mL. 433.45 ÷ 0.78542 = 551.9 g.',
      },
    },
    {
      title: 'The same slurry, its density',
      given: { ratio: '40 %', powder_density: '2600 kg/m³' },
      expect: { density: '1.78 g/cm³' },
      from: { byHand: '1.4 g in 0.78542 mL is 1.7825 g/mL.' },
    },
  ],
  caution: [
    'Investment powder is mostly crystalline silica: weigh and mix under extraction with a fitted mask, clean up wet.',
  ],
  monotone: [
    { input: 'ratio', output: 'powder', sense: '-' },
    { input: 'diameter', output: 'powder', sense: '+' },
    { input: 'wax', output: 'powder', sense: '-' },
    { input: 'over', output: 'water', sense: '+' },
  ],
  words: ['slurry', 'plaster', 'water ratio', 'investing'],
});
