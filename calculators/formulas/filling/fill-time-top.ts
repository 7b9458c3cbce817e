import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity } from '../symbols.ts';

export const fillTimeTop = defineFormula({
  id: 'filling/fill-time-top',
  title: 'Time to fill a mould through a top or level gate',
  answers: 'How long does the cavity take to fill when the head stays the same?',
  equation: 't = V / (C * A * sqrt(2 * g * h))',
  symbols: {
    t: {
      name: 'time to fill',
      unit: 's',
      range: [0.01, 1000],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
    },
    V: {
      name: 'volume of the cavity',
      unit: 'm³',
      show: 'cm³',
      range: [1e-7, 0.1],
      why: 'small castings',
      usual: 5.6e-6,
    },
    C: dischargeCoefficient,
    A: {
      name: 'area of the gate or choke',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a pin hole to a large gate',
      usual: 0.00002,
    },
    h: {
      name: 'head of metal above the gate',
      unit: 'm',
      show: 'mm',
      range: [0.001, 3],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    g: gravity,
  },
  assumes: ['a constant head, running full', 'for a gate at the parting use the effective head'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, top gating', how: 'read' },
  examples: [
    {
      title: 'Cavity of 50 × 25 × 15 cm, gate of 5 cm², head of 15 cm',
      given: { V: '18750 cm³', C: '1 1', A: '5 cm²', h: '15 cm' },
      expect: { t: '21.86 s' },
      from: { key: 'ghosh-mallik', at: 'Example 2.1, read in an open companion', how: 'read' },
    },
  ],
  words: ['filling time', 'top gate', 'pouring time'],
});
