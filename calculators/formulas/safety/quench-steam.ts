import { defineFormula } from '../../core/formula.ts';

export const quenchSteam = defineFormula({
  id: 'safety/quench-steam',
  title: 'Steam a hot body can make',
  answers: 'If the water that touches it all boils, how much steam does this hot mould or casting make?',
  equation: 'm_s = m * c * (T - T_2) / (c_w * (T_b - T_w) + L_v)',
  symbols: {
    m_s: {
      name: 'water turned to steam',
      sign: 'm_s',
      unit: 'kg',
      show: 'g',
      range: [0, 20],
      why: 'small castings and flasks',
      note: 'Each gram is about 1.7 L of steam.',
    },
    m: {
      name: 'mass of the hot body',
      unit: 'kg',
      show: 'g',
      range: [0.001, 50],
      why: 'small castings and flasks',
      usual: 0.4,
    },
    c: {
      name: 'specific heat of the hot body',
      unit: 'J/(kg·K)',
      range: [100, 1500],
      why: 'the materials of the workshop lie here',
      usual: 1000,
    },
    T: {
      name: 'temperature when it goes in',
      unit: 'K',
      show: '°C',
      range: [373.15, 1400],
      why: 'cooler makes no steam',
      usual: 673.15,
    },
    T_2: {
      name: 'temperature when boiling stops',
      unit: 'K',
      show: '°C',
      range: [373.15, 600],
      why: 'a body cooler than boiling water makes no steam',
      usual: 373.15,
    },
    T_w: {
      name: 'temperature of the water',
      unit: 'K',
      show: '°C',
      range: [273.15, 373.15],
      why: 'liquid water',
      usual: 293.15,
    },
    c_w: { name: 'specific heat of water', sign: 'c_w', unit: 'J/(kg·K)', constant: 4190 },
    T_b: { name: 'boiling point of water', sign: 'T_b', unit: 'K', show: '°C', constant: 373.15 },
    L_v: { name: 'heat to boil water', sign: 'L_v', unit: 'J/kg', show: 'kJ/kg', constant: 2256000 },
  },
  where: [{ test: 'T > T_2', why: 'It is too cool to make steam.' }],
  assumes: [
    'the worst case: only the water that boils takes heat, as inside soaked investment',
    'in open water most of the heat warms the bucket instead',
  ],
  source: { key: 'young-freedman', at: 'ch. 17, calorimetry with a change of phase', how: 'memory' },
  examples: [
    {
      title: '60 g of bronze from 600 to 100 °C in water at 20 °C',
      given: { m: '60 g', c: '400 J/(kg·K)', T: '600 °C', T_2: '100 °C', T_w: '20 °C' },
      expect: { m_s: '4.63 g' },
      from: {
        byHand: '0.06 × 400 × 500 = 12 000 J; 4190 × 80 + 2 256 000 = 2 591 200 J/kg; quotient 4.631 g.',
      },
    },
  ],
  caution: [
    'Shown to teach, not to permit. A hot flask that drinks water bursts: wait, then dip slowly with long tongs and a face shield.',
    'Metal still liquid under water is an explosion. Local codes and trained people decide.',
  ],
  words: ['geyser', 'steam burst', 'quench', 'flash', 'investment'],
});
