import { defineFormula } from '../../core/formula.ts';

export const junction = defineFormula({
  id: 'feeding/junction',
  title: 'Hot spot where equal arms meet (X and Y)',
  answers: 'How large a circle fits where three or four equal walls cross?',
  equation: 'D = (t + 2 * r) / sin(pi / n) - 2 * r',
  symbols: {
    D: {
      name: 'circle that fits the junction',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 1],
      why: 'small castings',
      note: 'Divide by the wall: above about 1.2 the spot wants feeding, a chill, or a change of shape.',
    },
    t: {
      name: 'thickness of each arm',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.2],
      why: 'small castings',
      usual: 0.0045,
    },
    r: {
      name: 'radius of the fillets',
      unit: 'm',
      show: 'mm',
      range: [0, 0.05],
      why: 'small castings',
      usual: 0.0015,
      note: 'A third to half of the wall. A larger fillet makes a larger hot spot.',
    },
    n: {
      name: 'number of arms',
      unit: '1',
      range: [3, 8],
      why: '3 is a Y, 4 a cross',
      usual: 4,
    },
  },
  noSolve: { n: 'the number of arms is chosen, not found' },
  assumes: [
    'equal arms at equal angles, the same fillet in every corner',
    'the circle is a first guess at the modulus, as if a bar of that width stood there; the mould in a sharp corner also chokes with heat',
  ],
  source: { key: 'campbell', at: 'ch. 10, junctions and the inscribed circle', how: 'memory' },
  examples: [
    {
      title: 'Cross of 4.5 mm bars with 1.5 mm fillets',
      given: { t: '4.5 mm', r: '1.5 mm', n: '4 1' },
      expect: { D: '7.607 mm' },
      from: { byHand: 'sin 45° = 0.707107; 7.5 ÷ 0.707107 = 10.6066; less 3 is 7.6066, or 1.69 walls.' },
    },
    {
      title: 'The same bars as a Y',
      given: { t: '4.5 mm', r: '1.5 mm', n: '3 1' },
      expect: { D: '5.660 mm' },
      from: { byHand: 'sin 60° = 0.866025; 7.5 ÷ 0.866025 = 8.6603; less 3 is 5.6603.' },
    },
  ],
  words: ['inscribed circle', 'Heuvers', 'cross', 'Y junction', 'X junction', 'hot spot'],
});
