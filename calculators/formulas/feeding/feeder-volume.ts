import { defineFormula } from '../../core/formula.ts';

export const feederVolume = defineFormula({
  id: 'feeding/feeder-volume',
  title: 'Metal in a round feeder',
  answers: 'How much metal does this feeder or button take?',
  equation: 'V = pi / 4 * D^2 * H',
  symbols: {
    V: { name: 'volume of the feeder', unit: 'm³', show: 'cm³', range: [1e-9, 0.1], why: 'small castings' },
    D: { name: 'diameter', unit: 'm', show: 'mm', range: [0.0005, 0.5], why: 'small castings', usual: 0.012 },
    H: { name: 'height', unit: 'm', show: 'mm', range: [0.0005, 0.5], why: 'small castings', usual: 0.012 },
  },
  assumes: ['straight walls'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, Example 2.9', how: 'read' },
  examples: [
    {
      title: 'Side riser of 15 cm, as tall as wide',
      given: { D: '15 cm', H: '15 cm' },
      expect: { V: '2651 cm³' },
      from: { byHand: '0.785398 × 225 × 15 = 2650.7.' },
    },
  ],
  words: ['riser', 'button', 'cylinder'],
});
