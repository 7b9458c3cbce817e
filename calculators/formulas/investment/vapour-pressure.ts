import { defineFormula } from '../../core/formula.ts';

export const vapourPressure = defineFormula({
  id: 'investment/vapour-pressure',
  title: 'Pressure at which water boils',
  answers: 'How low must the pressure be before the water in the slurry boils?',
  equation: 'p = 611.21 * exp((18.678 - T / 234.5) * T / (257.14 + T))',
  empirical: true,
  symbols: {
    p: {
      name: 'vapour pressure of water',
      unit: 'Pa',
      show: 'kPa',
      range: [600, 102000],
      why: 'from ice water to boiling in the open',
    },
    T: {
      name: 'temperature of the water',
      unit: '°C',
      range: [0.1, 100],
      why: 'liquid water in the open',
      usual: 22,
    },
  },
  assumes: ['clean water over itself: plaster dissolved in it changes the pressure by well under 1 %'],
  source: {
    key: 'buck',
    at: 'vapour pressure over water, coefficients as revised in 1996',
    how: 'memory',
  },
  alsoSee: [{ key: 'cengel-boles', at: 'table of saturated water by temperature', how: 'memory' }],
  examples: [
    {
      title: 'Water at 25 °C',
      given: { T: '25 °C' },
      expect: { p: '3.169 kPa' },
      from: {
        byHand:
          '25 ÷ 234.5 = 0.106610; 18.678 − 0.106610 = 18.571390; 25 ÷ 282.14 = 0.0886085; product 1.645583; e to it = 5.18403; × 611.21 = 3168.5 Pa',
      },
    },
  ],
  words: ['boiling', 'steam table', 'saturation', 'slurry'],
});
