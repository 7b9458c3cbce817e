import { defineFormula } from '../../core/formula.ts';

export const volumeByImmersion = defineFormula({
  id: 'charge/volume-by-immersion',
  title: 'Volume of a part by weighing it in water',
  answers: 'How large is a part or pattern no ruler can measure?',
  equation: 'V = (m_a - m_w) / rho_w',
  symbols: {
    V: {
      name: 'volume',
      unit: 'm³',
      show: 'cm³',
      range: [1e-8, 1e-3],
      why: 'below this the water clinging to the thread counts; above, a bench balance ends',
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
    m_w: {
      name: 'apparent mass hung in water',
      sign: 'm_wet',
      unit: 'kg',
      show: 'g',
      range: [-1, 5],
      why: 'the reach of a bench balance',
      usual: 0.04055,
      note: 'Hang the part from a thin thread, off the bottom. With a sinker on, take the sinker’s own wet reading off first; a floating pattern then reads below nought.',
    },
    rho_w: {
      name: 'density of the water',
      sign: 'ρ_w',
      unit: 'kg/m³',
      range: [990, 1000],
      why: 'clean water between 5 and 45 °C',
      usual: 998.2,
    },
  },
  where: [
    {
      test: 'm_w < m_a',
      why: 'hung in water the part must read less than in air: look for the thread touching',
    },
  ],
  assumes: [
    'no bubbles cling to the part',
    'the water does not soak in',
    'the lift of the air is neglected: about 1 part in 1000',
  ],
  source: { key: 'giancoli', at: 'ch. 10, Archimedes’ principle', how: 'memory' },
  examples: [
    {
      title: 'the lamp shield',
      given: { m_a: '46.12 g', m_w: '40.55 g', rho_w: '0.9982 g/cm³' },
      expect: { V: '5.580 cm³' },
      from: {
        byHand: '46.12 − 40.55 = 5.57 g of water displaced; 5.57 ÷ 0.9982 = 5.57 × 1.001803 = 5.5800 cm³',
      },
    },
  ],
  caution: ['Dry the part or pattern right through before it goes anywhere near the melt.'],
  words: ['Archimedes', 'displacement', 'buoyancy'],
});
