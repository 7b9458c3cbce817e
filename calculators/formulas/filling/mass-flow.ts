import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity, liquidDensity } from '../symbols.ts';

export const massFlow = defineFormula({
  id: 'filling/mass-flow',
  title: 'Mass of metal a nozzle or choke passes',
  answers: 'How many grams a second go through this opening under this head?',
  equation: 'q = rho * C * A * sqrt(2 * g * h)',
  symbols: {
    q: {
      name: 'mass flow',
      unit: 'kg/s',
      show: 'g/s',
      range: [0.00001, 200],
      why: 'from a dribble to a large ladle',
    },
    rho: liquidDensity,
    C: dischargeCoefficient,
    A: {
      name: 'area of the opening',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a pin hole to a large gate',
      usual: 0.00002,
    },
    h: {
      name: 'head of metal',
      unit: 'm',
      show: 'mm',
      range: [0.001, 3],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    g: gravity,
  },
  assumes: ['running full, no suction, no freezing'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, Example 2.3', how: 'read' },
  examples: [
    {
      title: 'Bottom-pour ladle, nozzle of 75 mm, aluminium 1.2 m deep',
      given: { rho: '2700 kg/m³', C: '0.96 1', A: '44.1786 cm²', h: '1.2 m' },
      expect: { q: '55.6 kg/s' },
      from: { key: 'ghosh-mallik', at: 'Example 2.3, read in an open companion', how: 'read' },
    },
  ],
  words: ['discharge', 'ladle', 'nozzle'],
});
