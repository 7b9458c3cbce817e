import { defineFormula } from '../../core/formula.ts';

export const thermalDiffusivity = defineFormula({
  id: 'freezing/thermal-diffusivity',
  title: 'Thermal diffusivity: how fast warmth spreads',
  answers: 'How quickly does heat soak through this material?',
  equation: 'alpha = k / (rho * c)',
  symbols: {
    alpha: {
      name: 'thermal diffusivity',
      sign: 'α',
      unit: 'm²/s',
      show: 'mm²/s',
      range: [1e-8, 0.0002],
      why: 'the materials of the workshop lie here',
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
    },
    c: {
      name: 'specific heat',
      unit: 'J/(kg·K)',
      range: [100, 2000],
      why: 'the materials of the workshop lie here',
      usual: 1130,
    },
  },
  assumes: ['no water to boil off and no binder to burn on the way'],
  source: { key: 'carslaw-jaeger', at: '§1.6', how: 'memory' },
  examples: [
    {
      title: 'Dry silica sand',
      given: { k: '0.607 W/(m·K)', rho: '1500 kg/m³', c: '1130 J/(kg·K)' },
      expect: { alpha: '0.358 mm²/s' },
      from: { byHand: '0.607 / (1500 × 1130) = 0.607 / 1 695 000 = 3.581e-7 m²/s.' },
    },
  ],
  words: ['diffusivity', 'soak', 'heat spread'],
});
