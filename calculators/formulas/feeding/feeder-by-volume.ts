import { defineFormula } from '../../core/formula.ts';

export const feederByVolume = defineFormula({
  id: 'feeding/feeder-by-volume',
  title: 'Diameter of a round feeder, from the metal it must hold',
  answers: 'How wide must a feeder as tall as it is wide be, to hold several times the loss?',
  equation: 'D = (4 * n * beta * V / pi)^(1 / 3)',
  symbols: {
    D: { name: 'diameter of the feeder', unit: 'm', show: 'mm', range: [0.0005, 0.5], why: 'small castings' },
    n: {
      name: 'times the loss',
      unit: '1',
      range: [1, 10],
      why: 'less than once cannot feed; ten times is all feeder',
      usual: 3,
    },
    beta: {
      name: 'shrinkage on freezing',
      sign: 'β',
      unit: '%',
      range: [0.5, 8],
      why: 'metals lie between bismuth, which swells, and aluminium',
      usual: 4.5,
    },
    V: {
      name: 'volume of the casting',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.1],
      why: 'small castings',
      usual: 5.6e-6,
    },
  },
  assumes: ['height equal to diameter', 'says nothing of which freezes first: check the modulus too'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, Example 2.9', how: 'read' },
  examples: [
    {
      title: 'Aluminium cube of 15 cm, feeder of three times the loss',
      given: { n: '3 1', beta: '6.5 %', V: '3375 cm³' },
      expect: { D: '94 mm' },
      from: { byHand: '3 × 0.065 × 3375 = 658.1 cm³; times 4 / π is 837.9; cube root 9.428 cm.' },
    },
  ],
  words: ['riser', 'feeder', 'volume'],
});
