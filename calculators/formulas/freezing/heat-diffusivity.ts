import { defineFormula } from '../../core/formula.ts';

export const heatDiffusivity = defineFormula({
  id: 'freezing/heat-diffusivity',
  title: 'Heat diffusivity of a mould: how greedily it drinks heat',
  answers: 'How strongly does this mould pull heat from the metal?',
  equation: 'b = sqrt(k * rho * c)',
  symbols: {
    b: {
      name: 'heat diffusivity',
      unit: 'J·s^-½/(m²·K)',
      range: [100, 50000],
      why: 'from insulating board to silver',
    },
    k: {
      name: 'conductivity',
      unit: 'W/(m·K)',
      range: [0.05, 450],
      why: 'the materials of the workshop lie here',
      usual: 0.607,
    },
    rho: {
      name: 'density as it stands',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [200, 20000],
      why: 'the materials of the workshop lie here',
      usual: 1500,
      note: 'For sand the bulk density, pores included.',
    },
    c: {
      name: 'specific heat',
      unit: 'J/(kg·K)',
      range: [100, 2000],
      why: 'the materials of the workshop lie here',
      usual: 1130,
    },
  },
  assumes: [
    'averages between mould and metal temperature',
    'a dry mould: water adds far more than these three numbers say',
  ],
  source: { key: 'flemings', at: 'ch. 1, table of mould materials', how: 'memory' },
  alsoSee: [{ key: 'carslaw-jaeger', at: '§2.4', how: 'memory' }],
  examples: [
    {
      title: 'Dry silica sand',
      given: { k: '0.607 W/(m·K)', rho: '1500 kg/m³', c: '1130 J/(kg·K)' },
      expect: { b: '1014 J·s^-½/(m²·K)' },
      from: { byHand: '0.607 × 1500 × 1130 = 1 028 865; its square root is 1014.3.' },
    },
  ],
  words: ['effusivity', 'thermal inertia', 'mould material', 'chill'],
});
