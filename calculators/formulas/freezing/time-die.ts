import { defineFormula } from '../../core/formula.ts';
import { freezingTemperature, freezingTime, latentHeat, solidHeat } from '../symbols.ts';

export const timeDie = defineFormula({
  id: 'freezing/time-die',
  title: 'Freezing time in a thick metal mould with an imperfect face',
  answers: 'How long does a plate take to freeze in a steel or copper mould, when the face also resists?',
  equation:
    't = rho * L * (1 / 2 + sqrt(1 / 4 + c_s * (T_f - T_s) / (3 * L))) * (d + (1 + b_s / b_m) * h * d^2 / (2 * k_s)) / ((1 + b_s / b_m) * h * (T_f - T_s))',
  symbols: {
    t: freezingTime,
    d: {
      name: 'half the thickness of the plate',
      unit: 'm',
      show: 'mm',
      range: [0.0002, 0.1],
      why: 'small castings and ingots',
      usual: 0.003,
    },
    rho: {
      name: 'density of the metal',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1500, 20000],
      why: 'the materials of the workshop lie here',
      usual: 7520,
    },
    L: latentHeat,
    c_s: solidHeat,
    k_s: {
      name: 'conductivity of the solid metal',
      unit: 'W/(m·K)',
      range: [10, 450],
      why: 'the materials of the workshop lie here',
      usual: 55,
    },
    b_s: {
      name: 'heat diffusivity of the solid metal',
      unit: 'J·s^-½/(m²·K)',
      range: [3000, 45000],
      why: 'from stainless steel to silver',
      usual: 14000,
    },
    b_m: {
      name: 'heat diffusivity of the mould',
      unit: 'J·s^-½/(m²·K)',
      range: [3000, 45000],
      why: 'from plaster to copper',
      usual: 13000,
    },
    h: {
      name: 'interface coefficient',
      unit: 'W/(m²·K)',
      range: [200, 30000],
      why: 'from a gap of air to a pressed contact',
      usual: 2000,
    },
    T_f: freezingTemperature,
    T_s: {
      name: 'temperature of the face',
      unit: 'K',
      show: '°C',
      range: [280, 1500],
      why: 'between a cold workshop and iron',
      usual: 673.15,
      note: 'What perfect contact between this metal and this mould would give.',
    },
  },
  where: [
    {
      test: 'T_f > T_s',
      why: 'The face is hotter than the freezing temperature, so the metal cannot freeze.',
    },
  ],
  assumes: [
    'a thick mould of metal, flat faces',
    'no superheat',
    'an integral approximation, good to a few per cent',
  ],
  source: { key: 'ghosh-mallik', at: 'ch. 2, interface resistance with a metal mould', how: 'read' },
  examples: [
    {
      title: 'Iron slab of 100 mm in thick copper, h = 1420',
      given: {
        d: '50 mm',
        rho: '7850 kg/m³',
        L: '272 kJ/kg',
        c_s: '670 J/(kg·K)',
        k_s: '83 W/(m·K)',
        b_s: '20893.5 J·s^-½/(m²·K)',
        b_m: '36617.6 J·s^-½/(m²·K)',
        h: '1420 W/(m²·K)',
        T_f: '1540 °C',
        T_s: '982 °C',
      },
      expect: { t: '0.0534 h' },
      from: { key: 'ghosh-mallik', at: 'Example 2.7, read in an open companion', how: 'read' },
    },
  ],
  caution: [
    'A cold or damp metal mould throws metal. Warm it well past 100 °C right through before the pour.',
  ],
  words: ['ingot mould', 'permanent mould', 'die', 'copper mould'],
});
