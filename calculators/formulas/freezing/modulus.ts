import { defineFormula } from '../../core/formula.ts';

export const modulus = defineFormula({
  id: 'freezing/modulus',
  title: 'Modulus: how much metal behind each bit of cooling face',
  answers: 'How thick is this section, as the mould feels it?',
  equation: 'M = V / A',
  symbols: {
    M: {
      name: 'modulus',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.05],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
      note: 'Half the thickness for a wide plate, a quarter of the diameter for a long bar.',
    },
    V: {
      name: 'volume of the section',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.001],
      why: 'small castings: up to about a litre',
      usual: 5.6e-6,
    },
    A: {
      name: 'surface that cools',
      unit: 'm²',
      show: 'cm²',
      range: [1e-6, 1],
      why: 'small castings',
      usual: 0.005,
      note: 'Leave out faces where the section joins another: no heat leaves there.',
    },
  },
  assumes: [
    'only faces against the mould are counted, joints are left out',
    'inside corners and narrow cores cool less than their area says, so count them down',
  ],
  source: { key: 'chvorinov', at: 'the ratio of volume to surface', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 5, solidification time', how: 'memory' }],
  examples: [
    {
      title: 'A web of the lamp shield, 1.4 by 2.2 mm, taken over 100 mm of length',
      given: { V: '308 mm³', A: '720 mm²' },
      expect: { M: '0.428 mm' },
      from: {
        byHand:
          'Volume 1.4 × 2.2 × 100 = 308 mm³. Faces 2 × (1.4 + 2.2) × 100 = 720 mm². 308 / 720 = 0.4278 mm.',
      },
    },
  ],
  words: ['volume to area', 'section thickness', 'cooling surface'],
});
