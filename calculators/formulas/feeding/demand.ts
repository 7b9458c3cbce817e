import { defineFormula } from '../../core/formula.ts';

export const demand = defineFormula({
  id: 'feeding/demand',
  title: 'Volume the metal loses before it is solid',
  answers: 'How much room will open up while this part cools and freezes?',
  equation: 'V_s = V * (a * dT + beta)',
  symbols: {
    V_s: {
      name: 'volume lost',
      unit: 'm³',
      show: 'mm³',
      range: [-0.0001, 0.001],
      why: 'small castings',
      note: 'Below zero the metal swells.',
    },
    V: {
      name: 'volume of the cavity',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.01],
      why: 'small castings',
      usual: 5.6e-6,
    },
    beta: {
      name: 'shrinkage on freezing',
      sign: 'β',
      unit: '%',
      range: [-6, 8],
      why: 'metals lie between bismuth, which swells, and aluminium',
      usual: 4.5,
      note: 'About 4.5 % for bronze, 5 % for silver, 3.8 to 6.6 % for aluminium alloys. Bismuth swells.',
    },
    a: {
      name: 'contraction of the liquid',
      unit: '1/K',
      range: [0, 0.0003],
      why: 'liquid metals lie here',
      usual: 0.0001,
      note: 'About 1 % for each 100 degrees for copper and silver alloys.',
    },
    dT: {
      name: 'superheat when the cavity has filled',
      sign: 'ΔT',
      unit: 'ΔK',
      show: 'Δ°C',
      range: [0, 300],
      why: 'more than this burns the metal and the mould',
      usual: 40,
    },
  },
  assumes: [
    'the gate has closed: until then the sprue makes it up',
    'contraction of the solid is the pattern’s affair, not the feeder’s',
  ],
  source: { key: 'campbell', at: 'ch. 7, solidification shrinkage', how: 'memory' },
  examples: [
    {
      title: 'Lamp shield of 5.6 cm³, 40 degrees of superheat left',
      given: { V: '5600 mm³', beta: '4.5 %', a: '0.0001 1/K', dT: '40 Δ°C' },
      expect: { V_s: '274 mm³' },
      from: { byHand: '0.0001 × 40 = 0.004; plus 0.045 is 0.049; times 5600 is 274.4.' },
    },
  ],
  words: ['shrinkage', 'contraction', 'feed metal', 'liquid contraction'],
});
