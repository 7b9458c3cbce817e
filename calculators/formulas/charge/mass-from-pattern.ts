import { defineFormula } from '../../core/formula.ts';

export const massFromPattern = defineFormula({
  id: 'charge/mass-from-pattern',
  title: 'Mass of a part from the mass of its pattern',
  answers: 'The pattern is on the scales: what will the part weigh?',
  equation: 'm = m_p * rho_m / (rho_p * (1 + s)^3)',
  symbols: {
    m: {
      name: 'mass of the part',
      unit: 'kg',
      show: 'g',
      range: [0.0005, 5],
      why: 'this course is about small charges',
    },
    m_p: {
      name: 'mass of the pattern',
      unit: 'kg',
      show: 'g',
      range: [0.00005, 1],
      why: 'this course is about small charges',
      usual: 0.0055,
    },
    rho_m: {
      name: 'density of the solid metal',
      sign: 'ρ_m',
      unit: 'kg/m³',
      range: [1700, 22000],
      why: 'from magnesium to platinum',
      usual: 8360,
    },
    rho_p: {
      name: 'density of the pattern',
      sign: 'ρ_p',
      unit: 'kg/m³',
      range: [300, 9000],
      why: 'from light wood to a metal master',
      usual: 960,
      note: 'Weigh a block of your own wax or wood: filled waxes and damp wood differ by a tenth.',
    },
    s: {
      name: 'contraction allowance built into the pattern',
      unit: '1',
      show: '%',
      range: [0, 0.05],
      why: 'a larger allowance than any casting metal needs',
      usual: 0.02,
      note: 'Nought when the pattern is the size of the finished part.',
    },
  },
  assumes: [
    'the pattern is solid: a hollow print or porous foam does not qualify',
    'the part comes out smaller than the pattern by the allowance in every direction',
    'it gives the part alone: sprue, cup, losses and the heel come on top',
  ],
  source: { key: 'trade-practice', at: 'pattern mass times the ratio of densities', how: 'common practice' },
  examples: [
    {
      title: 'a wax for silicon bronze with 2 % allowance',
      given: { m_p: '5.5 g', rho_m: '8360 kg/m³', rho_p: '960 kg/m³', s: '2 %' },
      expect: { m: '45.13 g' },
      from: {
        byHand:
          '1.02 cubed is 1.0404 × 1.02 = 1.061208. 5.5 ÷ 0.96 = 5.72917 cm³ of wax; ÷ 1.061208 = 5.39872 cm³ of metal; × 8.36 = 45.133 g',
      },
    },
  ],
  words: ['wax weight', 'wax to metal', 'resin', 'print'],
});
