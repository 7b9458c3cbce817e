import { defineFormula } from '../../core/formula.ts';

export const castingYield = defineFormula({
  id: 'charge/yield',
  title: 'Yield of a charge',
  answers: 'What share of the metal I melt becomes the part?',
  equation: 'eta = m_part / m',
  symbols: {
    eta: {
      name: 'yield',
      sign: 'η',
      unit: '1',
      show: '%',
      range: [0.05, 1],
      why: 'no part weighs more than its charge',
    },
    m_part: {
      name: 'mass of the parts',
      unit: 'kg',
      show: 'g',
      range: [0.0005, 5],
      why: 'this course is about small charges',
      usual: 0.0469,
    },
    m: {
      name: 'charge weighed out',
      unit: 'kg',
      show: 'g',
      range: [0.001, 10],
      why: 'this course is about small charges',
      usual: 0.0887,
    },
  },
  where: [{ test: 'm_part <= m', why: 'the part cannot weigh more than the charge' }],
  assumes: ['both are weighed cold'],
  source: { key: 'rao-manufacturing', at: 'casting yield', how: 'memory' },
  examples: [
    {
      title: 'the lamp shield',
      given: { m_part: '46.9 g', m: '88.7 g' },
      expect: { eta: '52.9 %' },
      from: { byHand: '88.7 × 0.5 = 44.35, 2.55 left; 2.55 ÷ 88.7 = 0.0287: together 0.5287' },
    },
  ],
  words: ['efficiency', 'returns'],
});
