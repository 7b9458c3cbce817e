import { defineFormula } from '../../core/formula.ts';

export const fourier = defineFormula({
  id: 'freezing/fourier',
  title: 'Fourier number: how far warmth has soaked in',
  answers: 'Has there been time for warmth to reach the middle?',
  equation: 'Fo = alpha * t / a^2',
  symbols: {
    Fo: {
      name: 'Fourier number',
      unit: '1',
      range: [0, 1000],
      why: 'beyond it nothing changes any more',
      note: 'Below 0.05 the middle has hardly noticed; above 0.2 one term of the series will do; above 1 most is over.',
    },
    alpha: {
      name: 'thermal diffusivity',
      sign: 'α',
      unit: 'm²/s',
      show: 'mm²/s',
      range: [1e-8, 0.0002],
      why: 'the materials of the workshop lie here',
      usual: 3.58e-7,
    },
    t: {
      name: 'time',
      unit: 's',
      show: 'min',
      range: [0.001, 1000000],
      why: 'from a flash to a week',
      usual: 3600,
    },
    a: {
      name: 'half thickness or radius',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.5],
      why: 'from a web to a large flask',
      usual: 0.035,
      note: 'Half the thickness when both faces are warmed, the whole of it when one is.',
    },
  },
  assumes: ['dry: drying holds the warmth back', 'one material with one diffusivity'],
  source: { key: 'carslaw-jaeger', at: '§1.6 and ch. 3', how: 'memory' },
  examples: [
    {
      title: 'Sand mould of 70 mm, an hour in the oven, both faces warm',
      given: { alpha: '0.358 mm²/s', t: '3600 s', a: '35 mm' },
      expect: { Fo: '1.052 1' },
      from: { byHand: '0.358 × 3600 = 1288.8 mm²; 35² = 1225; 1288.8 ÷ 1225 = 1.05208' },
    },
  ],
  words: ['dimensionless time', 'soak', 'warm through'],
});
