import { defineFormula } from '../../core/formula.ts';

export const dilute = defineFormula({
  id: 'charge/dilute',
  title: 'Addition that brings one element to its target',
  answers: 'How much metal do I add to raise or lower the fineness?',
  equation: 'm_a = m * (x_0 - x_1) / (x_1 - x_a)',
  symbols: {
    m_a: {
      name: 'metal to add',
      sign: 'm_add',
      unit: 'kg',
      show: 'g',
      range: [0, 10],
      why: 'this course is about small charges',
    },
    m: {
      name: 'metal in hand',
      unit: 'kg',
      show: 'g',
      range: [0.0001, 10],
      why: 'this course is about small charges',
      usual: 0.06,
    },
    x_0: {
      name: 'share of the element now',
      unit: '1',
      show: '%',
      range: [0, 1],
      why: 'a share of the whole',
      usual: 0.999,
    },
    x_1: {
      name: 'share wanted',
      unit: '1',
      show: '%',
      range: [0, 1],
      why: 'a share of the whole',
      usual: 0.925,
      note: 'Sterling is 92.5 % silver; 18 carat is 75 % gold; 14 carat is 14/24, 58.33 %, or 58.5 % where the law says 585.',
    },
    x_a: {
      name: 'share of the element in what is added',
      sign: 'x_add',
      unit: '1',
      show: '%',
      range: [0, 1],
      why: 'a share of the whole',
      usual: 0,
    },
  },
  where: [
    {
      test: '(x_0 - x_1) * (x_1 - x_a) >= 0',
      why: 'the share wanted must lie between what the melt has and what is added',
    },
  ],
  assumes: [
    'nothing burns away: add for melting loss afterwards',
    'only one element is brought to its target',
  ],
  source: { key: 'jewellers-forum', at: 'threads on raising and lowering the carat', how: 'read' },
  examples: [
    {
      title: '60 g of fine silver to sterling with copper',
      given: { m: '60 g', x_0: '99.9 %', x_1: '92.5 %', x_a: '0 %' },
      expect: { m_a: '4.80 g' },
      from: {
        byHand: '60 × 0.999 = 59.94 g of silver; 59.94 ÷ 0.925 = 64.80 g of sterling, so 4.80 g of copper',
      },
    },
    {
      title: 'raising 40 g of 80 % to 90 % with metal of 98 %',
      given: { m: '40 g', x_0: '80 %', x_1: '90 %', x_a: '98 %' },
      expect: { m_a: '50.0 g' },
      from: { byHand: '32 g + 0.98 × 50 g = 81 g of the element in 90 g: 90 %' },
    },
  ],
  caution: ['Zinc, cadmium and lead leave as poisonous fume: know what is in every piece you add.'],
  words: ['alloying', 'lever rule', 'carat', 'karat', 'sterling'],
});
