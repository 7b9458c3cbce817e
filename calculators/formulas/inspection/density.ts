import { defineFormula } from '../../core/formula.ts';

export const density = defineFormula({
  id: 'inspection/density',
  title: 'Density of a casting by two weighings',
  answers: 'How dense is this casting?',
  equation: 'rho = rho_w / (1 - m_w / m_a)',
  symbols: {
    rho: {
      name: 'density of the casting',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1000, 23000],
      why: 'lighter parts float; nothing you cast is heavier',
    },
    rho_w: {
      name: 'density of the water',
      sign: 'ρ_w',
      unit: 'kg/m³',
      range: [990, 1000],
      why: 'clean water between 5 and 45 °C',
      usual: 998.2,
    },
    m_w: {
      name: 'apparent mass hung in water',
      sign: 'm_wet',
      unit: 'kg',
      show: 'g',
      range: [0.0001, 5],
      why: 'the reach of a bench balance',
      usual: 0.04055,
      note: 'Hang it from a thin thread, off the bottom. A drop of soap and a soft brush take the bubbles off.',
    },
    m_a: {
      name: 'mass in air',
      sign: 'm_dry',
      unit: 'kg',
      show: 'g',
      range: [0.0001, 5],
      why: 'the reach of a bench balance',
      usual: 0.04612,
    },
  },
  where: [
    {
      test: 'm_w < m_a',
      why: 'hung in water the part must read less than in air: look for the thread touching',
    },
  ],
  assumes: [
    'no bubbles cling to it and no water soaks in',
    'pores open to the surface fill with water and are not seen',
    'the lift of the air is neglected: about 1 part in 1000',
  ],
  source: { key: 'openstax-physics', at: 'section 11.7, Archimedes’ principle', how: 'memory' },
  examples: [
    {
      title: 'the lamp shield',
      given: { m_a: '46.12 g', m_w: '40.55 g', rho_w: '998.2 kg/m³' },
      expect: { rho: '8265 kg/m³' },
      from: { byHand: '5.57 g of water displaced; 46.12 ÷ 5.57 = 8.28007; × 998.2 = 8265.2 kg/m³' },
    },
  ],
  caution: ['Dry the casting before it is remelted: water carried under molten metal explodes.'],
  words: ['Archimedes', 'specific gravity', 'porosity'],
});
