import { defineFormula } from '../../core/formula.ts';

export const cakeShear = defineFormula({
  id: 'sand/cake-shear',
  title: 'Shear stress round the rim of a cake of sand',
  answers: 'Will the suction punch the cake out in one piece?',
  equation: 'tau = dp * A / (P * d)',
  symbols: {
    tau: {
      name: 'shear stress at the rim',
      sign: 'τ',
      unit: 'Pa',
      show: 'kPa',
      stress: true,
      range: [0, 5000000],
      why: 'beyond any sand',
      note: 'To find the suction you may pull: the shear strength of your own sand divided by 3 or more (common practice, no source).',
    },
    dp: {
      name: 'pressure across the cake',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 15000,
    },
    A: {
      name: 'area under the pressure',
      unit: 'm²',
      show: 'cm²',
      range: [1e-6, 0.2],
      why: 'the moulds of a small foundry',
      usual: 0.00283,
    },
    P: {
      name: 'length of the rim',
      unit: 'm',
      show: 'mm',
      range: [0.003, 3],
      why: 'the flasks of a small workshop',
      usual: 0.1885,
    },
    d: {
      name: 'thickness of the cake',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.3],
      why: 'the flasks of a small workshop',
      usual: 0.02,
    },
  },
  assumes: [
    'the stress is even round the rim and through the thickness',
    'no help from a grid or from friction on the flask wall',
  ],
  source: { key: 'young-budynas', at: 'force balance on the rim', how: 'memory' },
  examples: [
    {
      title: 'Round cake of 60 mm, 20 mm thick, 15 kPa',
      given: { dp: '15 kPa', A: '28.27 cm²', P: '188.5 mm', d: '20 mm' },
      expect: { tau: '11.2 kPa' },
      from: {
        byHand: '15 000 × 0.002827 = 42.405 N; rim 0.1885 × 0.02 = 0.00377 m²; 42.405 / 0.00377 = 11 248 Pa.',
      },
    },
  ],
  caution: ['When a cake breaks, metal follows the suction. Nobody stands over the flask.'],
  words: ['vacuum', 'punch out', 'mould strength'],
});
