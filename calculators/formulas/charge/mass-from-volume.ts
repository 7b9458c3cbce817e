import { defineFormula } from '../../core/formula.ts';

export const massFromVolume = defineFormula({
  id: 'charge/mass-from-volume',
  title: 'Mass of a part from its volume',
  answers: 'What does the finished part weigh?',
  equation: 'm = rho * V',
  symbols: {
    m: {
      name: 'mass of the part',
      unit: 'kg',
      show: 'g',
      range: [0.0005, 5],
      why: 'this course is about small charges',
    },
    rho: {
      name: 'density of the solid metal at 20 °C',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1700, 22000],
      why: 'from magnesium to platinum',
      usual: 8360,
      note: 'The cold solid, not the liquid: liquid metal is lighter.',
    },
    V: {
      name: 'volume of the part',
      unit: 'm³',
      show: 'cm³',
      range: [1e-7, 5e-4],
      why: 'this course is about small charges',
      usual: 5.6e-6,
    },
  },
  assumes: [
    'the part is sound: pores make it lighter',
    'the volume is that of the cold part, not of the pattern',
  ],
  source: { key: 'groover', at: 'ch. 10, pouring and solidification', how: 'memory' },
  examples: [
    {
      title: 'the lamp shield in silicon bronze',
      given: { rho: '8.36 g/cm³', V: '5.6 cm³' },
      expect: { m: '46.8 g' },
      from: { byHand: '8.36 × 5.6 = 8.36 × 5 + 8.36 × 0.6 = 41.80 + 5.016 = 46.816 g' },
    },
    {
      title: 'the latch keeper in gunmetal',
      given: { rho: '8.70 g/cm³', m: '27.84 g' },
      expect: { V: '3.2 cm³' },
      from: { byHand: '8.7 goes into 27.84 three times, 1.74 left, which is 0.2 × 8.7: 3.2 cm³' },
    },
  ],
  words: ['weight', 'metal needed'],
});
