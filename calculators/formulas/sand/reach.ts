import { defineFormula } from '../../core/formula.ts';

export const reach = defineFormula({
  id: 'sand/reach',
  title: 'Thickness of sand that is as good as endless',
  answers: 'How thick must the mould be, so that its far side does not matter yet?',
  equation: 'x = n * sqrt(4 * alpha * t)',
  symbols: {
    x: {
      name: 'thickness of sand',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.5],
      why: 'thinner than a few grains, or thicker than any mould',
    },
    n: {
      name: 'strictness',
      unit: '1',
      range: [0.5, 3],
      why: 'below 0.5 half the heat has gone through, above 3 none can be measured',
      usual: 1.82,
      note: '1.82 leaves 1 % of the rise at that depth, 1.16 leaves 10 %.',
    },
    alpha: {
      name: 'thermal diffusivity of the sand',
      sign: 'α',
      unit: 'm²/s',
      show: 'mm²/s',
      range: [1e-8, 0.00001],
      why: 'the materials of the workshop lie here',
      usual: 3.6e-7,
    },
    t: {
      name: 'time',
      unit: 's',
      range: [0.01, 100000],
      why: 'shorter than can be seen, or longer than matters',
      usual: 10,
    },
  },
  assumes: ['between two openings of a pierced part each side has half the island', 'dry sand'],
  source: { key: 'carslaw-jaeger', at: '§2.4; erfc 1.82 = 0.01', how: 'memory' },
  examples: [
    {
      title: 'Ten seconds in dry sand',
      given: { n: '1.82 1', alpha: '0.36 mm²/s', t: '10 s' },
      expect: { x: '6.9 mm' },
      from: { byHand: '√(4 × 0.36 × 10) = √14.4 = 3.795 mm; times 1.82 is 6.907 mm.' },
    },
  ],
  words: ['infinite mould', 'flask wall', 'heat penetration', 'island'],
});
