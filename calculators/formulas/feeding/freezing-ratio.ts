import { defineFormula } from '../../core/formula.ts';

export const freezingRatio = defineFormula({
  id: 'feeding/freezing-ratio',
  title: 'Freezing ratio a feeder must beat',
  answers: 'With this much metal in the feeder, how much longer must it stay liquid than the casting?',
  equation: 'x = a / (y - b) + c',
  symbols: {
    x: {
      name: 'least freezing ratio',
      unit: '1',
      range: [1, 5],
      why: 'at 1 both freeze together; past 5 the feeder is too small to matter',
      note: 'Surface over volume of the casting, divided by surface over volume of the feeder.',
    },
    y: {
      name: 'volume of the feeder over that of the casting',
      unit: '1',
      range: [0.02, 5],
      why: 'from a pip to a feeder five times the part',
      usual: 0.5,
    },
    a: {
      name: 'freezing constant',
      unit: '1',
      range: [0.05, 0.5],
      why: 'the constants in print',
      usual: 0.1,
      note: 'Steel 0.10. In print for aluminium 0.10, bronze 0.24: recalled, not checked.',
    },
    b: {
      name: 'contraction on freezing',
      unit: '1',
      range: [0.01, 0.08],
      why: 'the constants in print',
      usual: 0.03,
      note: 'Steel 0.03, aluminium 0.06, bronze 0.017.',
    },
    c: {
      name: 'relative freezing rate',
      unit: '1',
      range: [0.5, 1.5],
      why: '1 when the same mould surrounds both',
      usual: 1,
    },
  },
  where: [
    { test: 'y > b', why: 'The feeder holds less than the casting will lose: no freezing ratio helps.' },
  ],
  assumes: [
    'the constants are for steel in sand, from castings of kilograms; for others they are only a first try',
    'never the only answer for bronze, silver or aluminium: check the modulus, the volume and where the pores go',
  ],
  source: {
    key: 'rao-manufacturing',
    at: 'design of risers, the hyperbola and its constants',
    how: 'memory',
  },
  alsoSee: [{ key: 'heine-loper-rosenthal', at: 'risering of castings, after Caine 1949', how: 'memory' }],
  examples: [
    {
      title: 'Steel, a feeder of half the casting’s volume',
      given: { y: '0.5 1', a: '0.1 1', b: '0.03 1', c: '1 1' },
      expect: { x: '1.213 1' },
      from: { byHand: '0.1 ÷ 0.47 = 0.21277, plus 1.' },
    },
    {
      title: 'Aluminium constants, a feeder as large as the casting',
      given: { y: '1 1', a: '0.1 1', b: '0.06 1', c: '1.08 1' },
      expect: { x: '1.186 1' },
      from: { byHand: '0.1 ÷ 0.94 = 0.10638, plus 1.08.' },
    },
  ],
  words: ['Caine', 'riser', 'hyperbola', 'steel rule'],
});
