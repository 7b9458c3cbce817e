import { defineFormula } from '../../core/formula.ts';
import { freezingTemperature, latentHeat, liquidHeat, solidHeat } from '../symbols.ts';

export const mouldMassRatio = defineFormula({
  id: 'freezing/mould-mass-ratio',
  title: 'Mould mass that can swallow the heat',
  answers: 'How many grams of mould does each gram of metal need, to end no hotter than this?',
  equation: 'r = (c_l * (T_p - T_f) + L + c_s * (T_f - T_e)) / (c_m * (T_e - T_m))',
  symbols: {
    r: {
      name: 'mould mass for each mass of metal',
      unit: '1',
      range: [0.05, 500],
      why: 'small charges, from a gram',
    },
    T_e: {
      name: 'final common temperature',
      unit: 'K',
      show: '°C',
      range: [255, 1500],
      why: 'between a cold workshop and the freezing metal',
      usual: 373.15,
    },
    T_p: {
      name: 'pouring temperature',
      unit: 'K',
      show: '°C',
      range: [450, 2000],
      why: 'from tin to iron',
      usual: 1373.15,
    },
    T_f: freezingTemperature,
    T_m: {
      name: 'mould temperature',
      unit: 'K',
      show: '°C',
      range: [250, 1200],
      why: 'from a frosty workshop to the hottest investment',
      usual: 293.15,
    },
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
    { test: 'T_e > T_m', why: 'No mould ends colder than it began.' },
    {
      test: 'T_e <= T_f',
      why: 'The final temperature is above the freezing temperature, so the metal would not all freeze.',
    },
    { test: 'T_p >= T_f', why: 'The metal is poured below its freezing temperature.' },
  ],
  assumes: [
    'a long-time limit: it says nothing of how fast the metal freezes',
    'no heat lost to the air, a dry mould',
  ],
  source: { key: 'incropera', at: '§1.3, energy balance on a closed system', how: 'memory' },
  examples: [
    {
      title: 'Silicon bronze into sand at 20 °C, to end at 100 °C',
      given: {
        T_e: '100 °C',
        T_p: '1100 °C',
        T_f: '915 °C',
        T_m: '20 °C',
        L: '200 kJ/kg',
        c_l: '520 J/(kg·K)',
        c_s: '400 J/(kg·K)',
        c_m: '1050 J/(kg·K)',
      },
      expect: { r: '7.41 1' },
      from: {
        byHand:
          '520 × 185 = 96 200; + 200 000; + 400 × 815 = 326 000; sum 622 200 J/kg. Mould takes 1050 × 80 = 84 000 J/kg. 622 200 / 84 000 = 7.407.',
      },
    },
  ],
  words: ['sand to metal ratio', 'flask size', 'heat sink'],
});
