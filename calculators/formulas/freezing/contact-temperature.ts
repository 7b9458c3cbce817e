import { defineFormula } from '../../core/formula.ts';

export const contactTemperature = defineFormula({
  id: 'freezing/contact-temperature',
  title: 'Temperature where two bodies touch',
  answers: 'What does the face of the mould jump to, the moment metal touches it?',
  equation: 'T_c = (b_1 * T_1 + b_2 * T_2) / (b_1 + b_2)',
  symbols: {
    T_c: {
      name: 'temperature of the touching faces',
      unit: 'K',
      show: '°C',
      range: [250, 2000],
      why: 'from a cold workshop to iron',
    },
    b_1: {
      name: 'heat diffusivity of the first body',
      unit: 'J·s^-½/(m²·K)',
      range: [100, 50000],
      why: 'from insulating board to silver',
      usual: 14000,
      note: 'Liquid copper alloys about 14 000.',
    },
    T_1: {
      name: 'temperature of the first body',
      unit: 'K',
      show: '°C',
      range: [250, 2000],
      why: 'from a cold workshop to iron',
      usual: 1373.15,
    },
    b_2: {
      name: 'heat diffusivity of the second body',
      unit: 'J·s^-½/(m²·K)',
      range: [100, 50000],
      why: 'from insulating board to silver',
      usual: 1000,
      note: 'Dry sand about 1000, gypsum investment 700, steel 13 000.',
    },
    T_2: {
      name: 'temperature of the second body',
      unit: 'K',
      show: '°C',
      range: [250, 2000],
      why: 'from a cold workshop to iron',
      usual: 423.15,
    },
  },
  assumes: [
    'both bodies thick, touching perfectly, each even in temperature before',
    'no latent heat: freezing holds the face hotter than this for a while',
  ],
  source: { key: 'carslaw-jaeger', at: '§2.15, composite solid', how: 'memory' },
  alsoSee: [{ key: 'incropera', at: '§5.7, contact of two semi-infinite solids', how: 'memory' }],
  examples: [
    {
      title: 'Bronze at 1100 °C on dry sand at 20 °C: the sand face is all but as hot as the metal',
      given: { b_1: '14000 J·s^-½/(m²·K)', T_1: '1100 °C', b_2: '1000 J·s^-½/(m²·K)', T_2: '20 °C' },
      expect: { T_c: '1028 °C' },
      from: { byHand: '(14 000 × 1100 + 1000 × 20) / 15 000 = 15 420 000 / 15 000 = 1028.' },
    },
  ],
  words: ['interface temperature', 'effusivity', 'chill', 'mould face'],
});
