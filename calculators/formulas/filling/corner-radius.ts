import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity, pressureDifference, surfaceTension } from '../symbols.ts';

export const cornerRadius = defineFormula({
  id: 'filling/corner-radius',
  title: 'Sharpest three-faced corner the metal will fill',
  answers: 'How sharp will a corner come out, where three faces meet?',
  equation: 'r = 2 * gamma / (rho * g * h + dp - p_gas)',
  symbols: {
    r: {
      name: 'radius left in the corner',
      unit: 'm',
      show: 'mm',
      range: [0.000001, 0.02],
      why: 'finer than a grain of sand, or no edge at all',
    },
    gamma: surfaceTension,
    rho: liquidDensity,
    h: {
      name: 'head of metal above the corner',
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
    },
    g: gravity,
  },
  where: [
    {
      test: 'rho * g * h + dp > p_gas',
      why: 'The gas in the corner pushes harder than the metal, so the corner does not fill at all.',
    },
  ],
  assumes: [
    'the surface bends the same two ways, like part of a ball',
    'the pressure acts while the corner is still liquid',
  ],
  source: {
    key: 'ncert-physics',
    at: 'ch. on mechanical properties of fluids, excess pressure in a drop',
    how: 'read',
  },
  alsoSee: [{ key: 'campbell', at: 'ch. 3', how: 'memory' }],
  examples: [
    {
      title: 'Drop of mercury with 310 Pa inside it',
      given: { gamma: '0.465 N/m', rho: '13600 kg/m³', h: '0 mm', dp: '310 Pa', p_gas: '0 Pa' },
      expect: { r: '3.00 mm' },
      from: { key: 'ncert-physics', at: 'class XI, mercury drop exercise', how: 'read' },
    },
    {
      title: 'Corner of the lamp shield, 40 mm of bronze, 15 kPa at the cavity, 0.5 kPa of gas caught in it',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '15 kPa', p_gas: '0.5 kPa' },
      expect: { r: '0.1375 mm' },
      from: { byHand: '2949.8 + 15 000 − 500 = 17 449.8 Pa. 2 × 1.2 / 17 449.8 = 0.00013754 m.' },
    },
  ],
  words: ['detail', 'sharp', 'corner', 'serif', 'surface tension'],
});
