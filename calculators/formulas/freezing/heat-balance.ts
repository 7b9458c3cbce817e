import { defineFormula } from '../../core/formula.ts';
import { freezingTemperature, latentHeat, liquidHeat, mouldTemperature, solidHeat } from '../symbols.ts';

export const heatBalance = defineFormula({
  id: 'freezing/heat-balance',
  title: 'Temperature metal and mould reach together in the end',
  answers: 'If no heat escaped, how warm would the whole mould be when the metal has given up its heat?',
  equation: 'T_e = (m * (c_l * (T_p - T_f) + L + c_s * T_f) + m_m * c_m * T_m) / (m * c_s + m_m * c_m)',
  symbols: {
    T_e: {
      name: 'final common temperature',
      unit: 'K',
      show: '°C',
      range: [250, 1900],
      why: 'between a cold workshop and the freezing metal',
    },
    m: {
      name: 'mass of metal',
      unit: 'kg',
      show: 'g',
      range: [0.001, 5],
      why: 'small charges, from a gram',
      usual: 0.06,
    },
    m_m: { name: 'mass of mould', unit: 'kg', show: 'g', range: [0.01, 50], why: 'small flasks', usual: 1.2 },
    T_p: {
      name: 'pouring temperature',
      unit: 'K',
      show: '°C',
      range: [450, 2000],
      why: 'from tin to iron',
      usual: 1373.15,
    },
    T_f: freezingTemperature,
    T_m: mouldTemperature,
    L: latentHeat,
    c_l: liquidHeat,
    c_s: solidHeat,
    c_m: {
      name: 'specific heat of the mould',
      unit: 'J/(kg·K)',
      range: [300, 1500],
      why: 'the materials of the workshop lie here',
      usual: 1050,
    },
  },
  where: [
    { test: 'T_p >= T_f', why: 'The metal is poured below its freezing temperature.' },
    {
      test: 'T_e <= T_f',
      why: 'The mould cannot take all the latent heat: part of the metal would stay liquid. Use a heavier or a cooler mould.',
    },
    {
      test: 'T_f > T_m',
      why: 'The mould is hotter than the freezing temperature, so the metal cannot freeze.',
    },
  ],
  assumes: [
    'a long-time limit: it says nothing of how fast the metal freezes, which takes seconds',
    'no heat lost to the air and a dry mould: free water takes 2.26 MJ/kg more',
  ],
  source: { key: 'incropera', at: '§1.3, energy balance on a closed system', how: 'memory' },
  examples: [
    {
      title: '60 g of silicon bronze in 1.2 kg of dry sand at 20 °C',
      given: {
        m: '60 g',
        m_m: '1200 g',
        T_p: '1100 °C',
        T_f: '915 °C',
        T_m: '20 °C',
        L: '200 kJ/kg',
        c_l: '520 J/(kg·K)',
        c_s: '400 J/(kg·K)',
        c_m: '1050 J/(kg·K)',
      },
      expect: { T_e: '50.6 °C' },
      from: {
        byHand:
          'Above 20 °C the metal carries 0.06 × (520 × 185 + 200 000 + 400 × 895) = 0.06 × 654 200 = 39 252 J. Capacity 0.06 × 400 + 1.2 × 1050 = 1284 J/K. Rise 39 252 / 1284 = 30.57 K, so 50.6 °C.',
      },
    },
  ],
  caution: [
    'A mould that ends at 50 °C on average still has sand near red heat round the casting. Keep hands out until it has been tested at a distance.',
  ],
  words: ['energy balance', 'final temperature', 'flask', 'how warm does the mould get'],
});
