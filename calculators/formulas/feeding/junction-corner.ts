import { defineFormula } from '../../core/formula.ts';

export const junctionCorner = defineFormula({
  id: 'feeding/junction-corner',
  title: 'Hot spot in a corner (L)',
  answers: 'How large a circle fits in a square corner with a sharp outside?',
  equation: 'D = 2 * (sqrt(2) * (t + r) - r) / (1 + sqrt(2))',
  symbols: {
    D: {
      name: 'circle that fits the corner',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 1],
      why: 'small castings',
    },
    t: {
      name: 'thickness of the walls',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.2],
      why: 'small castings',
      usual: 0.0045,
    },
    r: {
      name: 'radius inside the corner',
      unit: 'm',
      show: 'mm',
      range: [0, 0.05],
      why: 'small castings',
      usual: 0.0015,
      note: 'Round the outside by the same radius plus the wall and the hot spot is gone.',
    },
  },
  assumes: [
    'a right angle, equal walls, outside left sharp',
    'a first guess at the modulus, as if a bar of that width stood there',
  ],
  source: { key: 'campbell', at: 'ch. 10, junctions and the inscribed circle', how: 'memory' },
  examples: [
    {
      title: 'Corner of the lamp shield’s frame: 4.5 mm bars, 1.5 mm inside',
      given: { t: '4.5 mm', r: '1.5 mm' },
      expect: { D: '5.787 mm' },
      from: { byHand: '1.414214 × 6 = 8.48528, less 1.5 is 6.98528; ÷ 2.414214 = 2.89340; twice it 5.7868.' },
    },
  ],
  words: ['inscribed circle', 'corner', 'L junction', 'hot spot', 'fillet'],
});
