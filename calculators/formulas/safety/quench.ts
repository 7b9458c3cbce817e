import { defineFormula } from '../../core/formula.ts';

const heat = { unit: 'J/(kg·K)', range: [100, 4500], why: 'the materials of the workshop lie here' } as const;
const hot = { unit: 'K', show: '°C', range: [273.15, 1300], why: 'from cold to red heat' } as const;

export const quench = defineFormula({
  id: 'safety/quench',
  title: 'How hot the quench water gets',
  answers: 'The hot flask goes into the bucket: how warm is the water when all is still?',
  equation: 'T_e = (m_w * c_w * T_w + m * c * T + m_i * c_i * T_i) / (m_w * c_w + m * c + m_i * c_i)',
  symbols: {
    T_e: {
      name: 'temperature at the end',
      unit: 'K',
      show: '°C',
      range: [273.15, 373.15],
      why: 'above it the bucket boils',
    },
    m_w: {
      name: 'water in the bucket',
      unit: 'kg',
      range: [0.05, 200],
      why: 'from a cup to a barrel',
      usual: 8,
    },
    T_w: {
      name: 'temperature of the water',
      unit: 'K',
      show: '°C',
      range: [273.15, 373.15],
      why: 'liquid water',
      usual: 293.15,
    },
    m: {
      name: 'mass of the metal',
      unit: 'kg',
      show: 'g',
      range: [0, 20],
      why: 'small castings',
      usual: 0.06,
    },
    c: { ...heat, name: 'specific heat of the metal', usual: 400 },
    T: { ...hot, name: 'temperature of the metal', usual: 773.15 },
    m_i: {
      name: 'mass of investment and flask',
      sign: 'm_i',
      unit: 'kg',
      range: [0, 50],
      why: 'small flasks; nought for a bare casting',
      usual: 0.4,
      note: 'Mostly the heat is here, not in the metal.',
    },
    c_i: { ...heat, name: 'specific heat of investment and flask', sign: 'c_i', usual: 1000 },
    T_i: { ...hot, name: 'temperature of investment and flask', sign: 'T_i', usual: 673.15 },
    c_w: { name: 'specific heat of water', sign: 'c_w', unit: 'J/(kg·K)', constant: 4186 },
  },
  where: [
    {
      test: 'T_e <= 373.15',
      why: 'The whole bucket would boil. More water, or wait longer.',
    },
  ],
  noSolve: {
    c: 'the water hardly feels the specific heat of so little metal',
  },
  assumes: [
    'the metal is solid all through; nothing boils off, so the high end',
    'long before the bucket is even, water inside hot investment flashes to steam: see the steam it can make',
  ],
  source: { key: 'openstax-physics', at: 'ch. 14, calorimetry', how: 'memory' },
  examples: [
    {
      title: 'A small flask at 400 °C with 60 g at 500 °C, in 8 kg of water',
      given: {
        m_w: '8 kg',
        T_w: '20 °C',
        m: '60 g',
        c: '400 J/(kg·K)',
        T: '500 °C',
        m_i: '0.4 kg',
        c_i: '1000 J/(kg·K)',
        T_i: '400 °C',
      },
      expect: { T_e: '24.82 °C' },
      from: {
        byHand:
          'Above 20 °C: 24 J/K × 480 = 11 520 and 400 J/K × 380 = 152 000 J, together 163 520; ÷ (33 488 + 424) = 4.8219.',
      },
    },
  ],
  caution: [
    'Shown to teach: the wait rule of your alloy, local codes and trained people decide.',
    'Never quench with metal still liquid in button or core. Long tongs, deep bucket, slowly, at a slant, face shield, nobody leaning over.',
    'Steam from investment carries silica: extraction over the bucket. Dry the tongs before the next pour.',
  ],
  words: ['bucket', 'water temperature', 'divesting', 'calorimetry', 'break-out'],
});
