import { defineFormula } from '../../core/formula.ts';

export const waterDensity = defineFormula({
  id: 'inspection/water-density',
  title: 'Density of water by temperature',
  answers: 'How dense is the water I weigh in?',
  equation:
    'rho = (999.83952 + 16.945176*T - 7.9870401e-3*T^2 - 46.170461e-6*T^3 + 105.56302e-9*T^4 - 280.54253e-12*T^5) / (1 + 16.87985e-3*T)',
  empirical: true,
  symbols: {
    rho: {
      name: 'density of the water',
      sign: 'ρ_w',
      unit: 'kg/m³',
      range: [992, 1000],
      why: 'clean water between 5 and 40 °C',
    },
    T: {
      name: 'temperature of the water',
      unit: '°C',
      range: [5, 40],
      why: 'below 5 °C two temperatures share a density; above 40 °C the water gasses',
      usual: 20,
    },
  },
  assumes: ['clean water at one atmosphere, free of bubbles'],
  source: {
    key: 'kell-water',
    at: 'equation for one atmosphere; coefficients read in an open reference page',
    how: 'read',
  },
  examples: [
    {
      title: 'ice-cold limit of the polynomial worked by hand at 10 °C',
      given: { T: '10 °C' },
      expect: { rho: '999.70 kg/m³' },
      from: {
        byHand:
          '999.83952 + 169.45176 − 0.79870 − 0.04617 + 0.00106 − 0.00003 = 1168.44744; ÷ 1.1687985 = 999.700',
      },
    },
  ],
  words: ['specific gravity of water'],
});
