import { defineFormula } from '../../core/formula.ts';

export const draft = defineFormula({
  id: 'pattern/draft',
  title: 'How far a drafted side leans',
  answers: 'How much wider does each side get when the pattern is given draft?',
  equation: 'd = h * tan(theta)',
  symbols: {
    d: {
      name: 'lean of one side',
      unit: 'm',
      show: 'mm',
      range: [0, 0.05],
      why: 'a deeper taper than a small pattern has',
    },
    h: {
      name: 'depth drawn from the sand',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.3],
      why: 'this course is about small castings',
      usual: 0.0045,
    },
    theta: {
      name: 'draft angle',
      sign: 'θ',
      unit: 'rad',
      show: 'deg',
      range: [0, 0.175],
      why: 'ten degrees is more than any side needs',
      usual: 0.0349,
      note: '1 to 3° outside, 2° for small patterns drawn by hand; 3 to 5° for pockets, where the sand must stand.',
    },
  },
  assumes: [
    'a straight side, leaning the same all round; both sides together widen the part by twice as much',
  ],
  source: { key: 'trade-practice', at: 'draft of patterns', how: 'common practice' },
  examples: [
    {
      title: 'Sixteenth of an inch on a foot, as an angle',
      given: { d: '1.5875 mm', h: '304.8 mm' },
      expect: { theta: '0.298 deg' },
      from: {
        byHand:
          '1.5875 ÷ 304.8 = 0.00520833, which is its own arc tangent to four figures; × 57.2958 = 0.2984°',
      },
    },
    {
      title: 'Lug of the lamp shield, 7 mm deep at 3°',
      given: { h: '7 mm', theta: '3 deg' },
      expect: { d: '0.367 mm' },
      from: { byHand: 'tan 3° = 0.052408 from a table; × 7 = 0.36686' },
    },
  ],
  words: ['taper', 'pattern', 'draw'],
});
