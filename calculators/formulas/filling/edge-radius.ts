import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity, pressureDifference, surfaceTension } from '../symbols.ts';

export const edgeRadius = defineFormula({
  id: 'filling/edge-radius',
  title: 'Sharpest edge the metal will fill',
  answers: 'How sharp will an edge come out?',
  equation: 'r = gamma / (rho * g * h + dp - p_gas)',
  symbols: {
    r: {
      name: 'radius left on the edge',
      unit: 'm',
      show: 'mm',
      range: [0.000001, 0.01],
      why: 'finer than a grain of sand, or no edge at all',
    },
    gamma: surfaceTension,
    rho: liquidDensity,
    h: {
      name: 'head of metal above the edge',
      unit: 'm',
      show: 'mm',
      range: [0, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    dp: pressureDifference,
    p_gas: {
      name: 'gas pressed into the corner',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 50000],
      why: 'half an atmosphere of gas blows the metal back',
      usual: 100,
      note: 'Above the pressure of the rest of the cavity: steam, binder smoke, trapped air.',
    },
    g: gravity,
  },
  where: [
    {
      test: 'rho * g * h + dp > p_gas',
      why: 'The gas in the corner pushes harder than the metal, so no edge fills at all.',
    },
  ],
  assumes: [
    'a straight edge bends the surface one way only; a three-faced corner needs twice the pressure',
    'the contact angle decides entry, not the edge',
    'the pressure acts while the edge is still liquid; an oxide skin raises the tension',
  ],
  source: { key: 'campbell', at: 'ch. 3, surface tension controlled filling', how: 'memory' },
  examples: [
    {
      title: 'Edge of the lamp shield under 40 mm of bronze, no suction',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '0 kPa', p_gas: '0 kPa' },
      expect: { r: '0.407 mm' },
      from: { byHand: '7520 × 9.80665 × 0.04 = 2949.8 Pa. 1.2 / 2949.8 = 0.0004068 m.' },
    },
    {
      title: 'The same edge with 15 kPa at the cavity',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '15 kPa', p_gas: '0 kPa' },
      expect: { r: '0.0669 mm' },
      from: { byHand: '1.2 / (2949.8 + 15 000) = 1.2 / 17 949.8 = 0.00006685 m.' },
    },
    {
      title: 'The same edge with 0.5 kPa of gas caught in it',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '15 kPa', p_gas: '0.5 kPa' },
      expect: { r: '0.0688 mm' },
      from: { byHand: '1.2 / (2949.8 + 15 000 − 500) = 1.2 / 17 449.8 = 0.00006877 m.' },
    },
  ],
  words: ['detail', 'sharp', 'surface tension', 'crisp', 'lettering'],
});
