import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity } from '../symbols.ts';

export const fillTimeBottom = defineFormula({
  id: 'filling/fill-time-bottom',
  title: 'Time to fill a mould from below',
  answers: 'How long does the cavity take to fill when metal rises against its own weight?',
  equation: 't = 2 * A_m / (C * A) * (sqrt(h_t) - sqrt(h_t - h_m)) / sqrt(2 * g)',
  symbols: {
    t: {
      name: 'time to fill',
      unit: 's',
      range: [0.01, 1000],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
    },
    A_m: {
      name: 'plan area of the cavity',
      unit: 'm²',
      show: 'cm²',
      range: [0.000001, 1],
      why: 'from a pin hole to a large gate',
      usual: 0.0002,
    },
    C: dischargeCoefficient,
    A: {
      name: 'area of the gate',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a pin hole to a large gate',
      usual: 0.00002,
    },
    h_t: {
      name: 'head of metal above the gate',
      unit: 'm',
      show: 'mm',
      range: [0.002, 3],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.08,
    },
    h_m: {
      name: 'height of the cavity above the gate',
      unit: 'm',
      show: 'mm',
      range: [0.001, 3],
      why: 'as tall as a small mould may be',
      usual: 0.06,
    },
    g: gravity,
  },
  where: [
    {
      test: 'h_t >= h_m',
      why: 'The cavity stands higher than the metal in the cup, so its top cannot fill.',
    },
  ],
  assumes: ['the cup is kept full', 'the same plan area all the way up'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, bottom gating', how: 'read' },
  examples: [
    {
      title: 'Cavity of 50 × 25 × 15 cm from below, gate of 5 cm²: twice the time of a top gate',
      given: { A_m: '1250 cm²', C: '1 1', A: '5 cm²', h_t: '15 cm', h_m: '15 cm' },
      expect: { t: '43.7 s' },
      from: { key: 'ghosh-mallik', at: 'Example 2.1, read in an open companion', how: 'read' },
    },
  ],
  words: ['bottom gate', 'filling time', 'rising'],
});
