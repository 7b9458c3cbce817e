import { defineFormula } from '../../core/formula.ts';

export const junctionTee = defineFormula({
  id: 'feeding/junction-tee',
  title: 'Hot spot where a wall stands on another (T)',
  answers: 'How large a circle fits where a rib meets a wall?',
  equation: 'D = ((s / 2 + r)^2 + (t + r)^2 - r^2) / (t + 2 * r)',
  symbols: {
    D: {
      name: 'circle that fits the junction',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 1],
      why: 'small castings',
    },
    t: {
      name: 'thickness of the wall that runs through',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.2],
      why: 'small castings',
      usual: 0.0045,
    },
    s: {
      name: 'thickness of the rib',
      unit: 'm',
      show: 'mm',
      range: [0, 0.2],
      why: 'small castings',
      usual: 0.003,
      note: 'Half the wall or less makes little of a hot spot.',
    },
    r: {
      name: 'radius of the fillets',
      unit: 'm',
      show: 'mm',
      range: [0, 0.05],
      why: 'small castings',
      usual: 0.001,
    },
  },
  assumes: [
    'the circle touches the far face and both fillets; a rib more than twice the wall breaks that',
    'a first guess at the modulus, as if a bar of that width stood there',
  ],
  source: { key: 'campbell', at: 'ch. 10, junctions and the inscribed circle', how: 'memory' },
  examples: [
    {
      title: '3 mm rib on a 4.5 mm wall, fillets of 1 mm',
      given: { t: '4.5 mm', s: '3 mm', r: '1 mm' },
      expect: { D: '5.462 mm' },
      from: { byHand: '2.5² = 6.25, 5.5² = 30.25, less 1 is 35.5; ÷ 6.5 = 5.4615, or 1.21 walls.' },
    },
  ],
  words: ['inscribed circle', 'rib', 'T junction', 'hot spot'],
});
