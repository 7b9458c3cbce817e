import { defineFormula } from '../../core/formula.ts';

export const porosity = defineFormula({
  id: 'inspection/porosity',
  title: 'Porosity from density',
  answers: 'What share of this casting is holes?',
  equation: 'phi = 1 - rho / rho_0',
  symbols: {
    phi: {
      name: 'porosity',
      sign: 'φ',
      unit: '1',
      show: '%',
      range: [0, 0.2],
      why: 'below nought the sound density or a weighing is wrong; above a fifth look for a hollow',
    },
    rho: {
      name: 'density of the casting',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1000, 23000],
      why: 'lighter parts float; nothing you cast is heavier',
      usual: 8265,
    },
    rho_0: {
      name: 'density of the sound alloy',
      sign: 'ρ_0',
      unit: 'kg/m³',
      range: [1500, 23000],
      why: 'from magnesium to platinum',
      usual: 8360,
      note: 'Best measured on a hammered piece of the same melt: a book value is often a hundredth off, as much as the porosity sought.',
    },
  },
  assumes: [
    'pores hold nothing',
    'pores open to the surface are not counted when the density was found in water',
  ],
  source: {
    key: 'school-physics',
    at: 'porosity from bulk and true density, ceramics course notes',
    how: 'read',
  },
  examples: [
    {
      title: 'the lamp shield',
      given: { rho: '8265 kg/m³', rho_0: '8360 kg/m³' },
      expect: { phi: '1.14 %' },
      from: { byHand: '8360 − 8265 = 95; 95 ÷ 8360 = 0.011364' },
    },
  ],
  words: ['pores', 'soundness', 'voids'],
});
