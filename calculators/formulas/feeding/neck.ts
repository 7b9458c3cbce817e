import { defineFormula } from '../../core/formula.ts';
import { modulusOfSection } from '../symbols.ts';

export const neck = defineFormula({
  id: 'feeding/neck',
  title: 'Thickness of the neck between feeder and casting',
  answers: 'How thick must a neck of this width be, to stay open until the casting is solid?',
  equation: 'k * M = a * b / (2 * (a + b))',
  symbols: {
    a: {
      name: 'thickness of the neck',
      unit: 'm',
      show: 'mm',
      range: [0.0002, 0.3],
      why: 'small castings',
    },
    b: {
      name: 'width of the neck',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.3],
      why: 'small castings',
      usual: 0.012,
      note: 'A round neck counts as a square one of the same width.',
    },
    M: { ...modulusOfSection, name: 'modulus of the section that is fed', usual: 0.001424 },
    k: {
      name: 'step',
      unit: '1',
      range: [0.5, 1.5],
      why: 'below 0.5 the neck freezes early; more than 1.5 is hard to cut off',
      usual: 1.1,
      note: '1.1 for a long neck. A neck shorter than it is thick is kept hot from both sides, and less may do.',
    },
  },
  where: [
    { test: 'b > 2 * k * M', why: 'A neck so narrow cannot have this modulus, however thick: widen it.' },
  ],
  assumes: [
    'a long neck that cools on its four sides',
    'one mould all round; a rule from steel, used here for order and not for soundness',
  ],
  source: { key: 'wlodawer', at: 'rule of casting, neck and feeder 1 : 1.1 : 1.2', how: 'memory' },
  examples: [
    {
      title: 'Lug of the lamp shield, neck 12 mm wide',
      given: { b: '12 mm', M: '1.424 mm', k: '1.1 1' },
      expect: { a: '4.240 mm' },
      from: {
        byHand:
          '1.1 × 1.424 = 1.5664. From 1.5664 × 2 (a + 12) = 12 a: a = 37.5936 ÷ (12 − 3.1328) = 4.2396.',
      },
    },
  ],
  words: ['riser neck', 'ingate that feeds', 'knock-off', 'feed path'],
});
