import { defineFormula } from '../../core/formula.ts';

export const volumeRule = defineFormula({
  id: 'feeding/volume-rule',
  title: 'Feeder volume, from what it can give',
  answers: 'How large must the feeder be, when it can give only part of itself?',
  equation: 'V_f = beta * V / (e - beta)',
  symbols: {
    V_f: { name: 'volume of the feeder', unit: 'm³', show: 'cm³', range: [1e-9, 0.1], why: 'small castings' },
    V: {
      name: 'volume of the casting',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.1],
      why: 'small castings',
      usual: 5.6e-6,
    },
    beta: {
      name: 'shrinkage on freezing',
      sign: 'β',
      unit: '%',
      range: [0.5, 8],
      why: 'metals lie between bismuth, which swells, and aluminium',
      usual: 4.5,
    },
    e: {
      name: 'share of itself the feeder gives',
      unit: '%',
      range: [10, 80],
      why: 'from a plain cylinder to an exothermic sleeve',
      usual: 14,
      note: 'A plain cylinder gives about 14 %; one with an insulating sleeve two to five times that.',
    },
  },
  where: [{ test: 'e > beta', why: 'The feeder gives less than its own shrinkage, so no size is enough.' }],
  assumes: [
    'the feeder makes up its own loss as well as the casting’s',
    'check the modulus too: the larger feeder wins',
  ],
  source: { key: 'campbell', at: 'ch. 10, volume requirement of feeders', how: 'memory' },
  alsoSee: [{ key: 'wlodawer', at: 'feeder efficiency', how: 'memory' }],
  examples: [
    {
      title: 'Lamp shield of 5.6 cm³, plain feeder',
      given: { V: '5.6 cm³', beta: '4.5 %', e: '14 %' },
      expect: { V_f: '2.65 cm³' },
      from: { byHand: '0.045 × 5.6 / (0.14 − 0.045) = 0.252 / 0.095 = 2.653.' },
    },
  ],
  words: ['riser', 'feeder efficiency', 'yield'],
});
