import { defineFormula } from '../../core/formula.ts';

export const gradient = defineFormula({
  id: 'feeding/gradient',
  title: 'Gradient against cooling rate (steel criterion)',
  answers: 'Is the way to the feeder steep enough in temperature for metal to flow down it to the last?',
  equation: 'N = dT / (x * sqrt(r))',
  empirical: true,
  symbols: {
    N: {
      name: 'criterion, in (°C·min)^½ for each centimetre',
      unit: '1',
      range: [0, 100],
      why: 'steeper than any casting',
      note: 'In steel, centre-line shrinkage was found below about 1. The number has units: do not mix it with one in millimetres and seconds.',
    },
    dT: {
      name: 'difference in temperature',
      sign: 'ΔT',
      unit: 'ΔK',
      show: 'Δ°C',
      range: [0, 300],
      why: 'within the freezing range',
      usual: 20,
    },
    x: {
      name: 'distance it falls over',
      unit: 'cm',
      show: 'mm',
      range: [0.05, 20],
      why: 'small castings',
      usual: 1.2,
    },
    r: {
      name: 'cooling rate there',
      sign: 'Ṫ',
      unit: 'K/min',
      range: [0.1, 10000],
      why: 'from a large block to a thin web',
      usual: 60,
      note: 'Both just before the place is solid.',
    },
  },
  assumes: [
    'a criterion found on steel plates and bars; the limit changes with the alloy',
    'weak for long-freezing bronze, whose pores spread whatever the gradient, and blind to gas',
    'never the only answer: use it to compare two layouts of one casting',
  ],
  source: { key: 'niyama', at: 'critical value of G/√Ṫ', how: 'memory' },
  alsoSee: [
    { key: 'carlson-beckermann', at: 'abstract and introduction: limits depend on the alloy', how: 'read' },
  ],
  examples: [
    {
      title: '20 °C over 12 mm at one degree a second',
      given: { dT: '20 Δ°C', x: '12 mm', r: '60 K/min' },
      expect: { N: '2.152 1' },
      from: { byHand: '20 ÷ 1.2 = 16.6667 °C/cm; the root of 60 is 7.74597; quotient 2.15166.' },
    },
  ],
  words: ['Niyama', 'centre-line shrinkage', 'thermal gradient', 'criterion function'],
});
