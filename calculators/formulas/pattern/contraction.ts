import { defineFormula } from '../../core/formula.ts';

export const contraction = defineFormula({
  id: 'pattern/contraction',
  title: 'Pattern size from the size of the part',
  answers: 'How much larger do I make the pattern?',
  equation: 'L_p = L * (1 + s)',
  symbols: {
    L_p: {
      name: 'length on the pattern',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 1],
      why: 'this course is about small castings',
    },
    L: {
      name: 'length on the finished casting',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 1],
      why: 'this course is about small castings',
      usual: 0.06,
    },
    s: {
      name: 'contraction allowance',
      unit: '1',
      show: '%',
      range: [0, 0.03],
      why: 'a larger allowance than any casting metal needs',
      usual: 0.0208,
      note: 'Free lengths contract fully; a frame held by sand or core between its sides contracts less. Print one, cast one, measure.',
    },
  },
  assumes: [
    'the mould does not hold the casting back',
    'stock for cutting and filing is added afterwards',
    'wax and resin shrink of their own: those allowances multiply on top',
  ],
  source: { key: 'rao-manufacturing', at: 'pattern allowances', how: 'memory' },
  alsoSee: [{ key: 'dooley', at: 'table of pattern allowances', how: 'read' }],
  examples: [
    {
      title: 'the lamp shield, 60 mm in silicon bronze',
      given: { L: '60 mm', s: '2.08 %' },
      expect: { L_p: '61.25 mm' },
      from: { byHand: '1 % of 60 mm is 0.6 mm; 2.08 × 0.6 = 1.248 mm; 60 + 1.248 = 61.248 mm' },
    },
    {
      title: 'a contraction measured on a test bar',
      given: { L: '98.72 mm', L_p: '100 mm' },
      expect: { s: '1.297 %' },
      from: { byHand: '100 − 98.72 = 1.28 mm lost; 1.28 ÷ 98.72 = 0.012966' },
    },
  ],
  words: ['shrinkage allowance', 'patternmaker', 'shrink rule'],
});
