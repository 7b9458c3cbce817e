import { defineFormula } from '../../core/formula.ts';

export const none = defineFormula({
  id: 'feeding/none',
  title: 'The hole you accept with no feeder',
  answers: 'If nothing feeds this lump and all of the loss gathers in one place, how large is the hole?',
  equation: 'D = (6 * f * V / pi)^(1 / 3)',
  symbols: {
    D: {
      name: 'diameter of one round hole',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.1],
      why: 'small castings',
    },
    f: {
      name: 'share of the volume lost',
      unit: '%',
      range: [0.1, 8],
      why: 'small castings',
      usual: 4.5,
      note: 'Freezing shrinkage, plus what the liquid loses before.',
    },
    V: {
      name: 'volume of the part that is cut off',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.001],
      why: 'small castings: up to about a litre',
      usual: 6.72e-7,
    },
  },
  where: [{ test: 'f > 0', why: 'This metal does not shrink on freezing, so no hole is left.' }],
  assumes: [
    'the lump is cut off from the gate before it freezes',
    'one round hole: the same volume may be spread as pinholes, or show as a sunken face',
    'long-freezing alloys spread it, skin-forming ones gather it',
  ],
  source: { key: 'campbell', at: 'ch. 7, shrinkage porosity', how: 'memory' },
  examples: [
    {
      title: 'Lug of the lamp shield, 12 × 8 × 7 mm',
      given: { f: '4.5 %', V: '672 mm³' },
      expect: { D: '3.87 mm' },
      from: { byHand: '0.045 × 672 = 30.24 mm³; times 6 / π is 57.754; cube root 3.8654.' },
    },
  ],
  caution: [
    'A lug that carries a load or holds pressure may hide this hole. Cut one open before you trust the rest.',
  ],
  words: ['porosity', 'shrinkage cavity', 'sink', 'no riser', 'boss'],
});
