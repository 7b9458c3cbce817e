import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity } from '../symbols.ts';

export const volumeFlow = defineFormula({
  id: 'filling/volume-flow',
  title: 'Volume of metal a gate or choke passes',
  answers: 'How much metal a second goes through this opening under this head?',
  equation: 'Q = C * A * sqrt(2 * g * h)',
  symbols: {
    Q: {
      name: 'flow of metal',
      unit: 'm³/s',
      show: 'cm³/s',
      range: [1e-8, 0.01],
      why: 'from a dribble to a large ladle',
    },
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
  source: { key: 'ghosh-mallik', at: 'ch. 2, gating', how: 'read' },
  alsoSee: [{ key: 'groover', at: 'ch. 10, continuity and Bernoulli', how: 'memory' }],
  examples: [
    {
      title: 'Gate of 10 mm diameter under 250 mm',
      given: { C: '1 1', A: '78.5398 mm²', h: '250 mm' },
      expect: { Q: '173.9 cm³/s' },
      from: { key: 'gate-me', at: '2007, linked item on a downsprue', how: 'read' },
    },
  ],
  words: ['flow rate', 'gate', 'sprue base', 'downsprue'],
});
