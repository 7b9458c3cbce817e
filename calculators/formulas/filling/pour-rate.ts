import { defineFormula } from '../../core/formula.ts';
import { liquidDensity } from '../symbols.ts';

export const pourRate = defineFormula({
  id: 'filling/pour-rate',
  title: 'Flow that a hand pour gives',
  answers: 'How much metal a second can I deliver, and so how much can the sprue pass?',
  equation: 'Q = m / (rho * t)',
  symbols: {
    Q: {
      name: 'flow of metal',
      unit: 'm³/s',
      show: 'cm³/s',
      range: [1e-8, 0.01],
      why: 'from a dribble to a large ladle',
    },
    m: {
      name: 'mass poured',
      unit: 'kg',
      show: 'g',
      range: [0.001, 20],
      why: 'small charges, from a gram',
      usual: 0.06,
    },
    rho: liquidDensity,
    t: {
      name: 'time of pouring',
      unit: 's',
      range: [0.2, 60],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
      usual: 1,
      note: 'About 50 g by hand takes 0.5 to 1.5 s: an estimate, so film one pour and count.',
    },
  },
  assumes: ['a steady pour; nothing downstream can flow faster than this on average'],
  source: { key: 'trade-practice', at: 'mass over time', how: 'common practice' },
  examples: [
    {
      title: '60 g of silicon bronze in one second',
      given: { m: '60 g', rho: '7520 kg/m³', t: '1 s' },
      expect: { Q: '7.98 cm³/s' },
      from: { byHand: '0.060 / 7520 = 7.979e-6 m³/s.' },
    },
  ],
  words: ['pouring rate', 'hand pour', 'ladle'],
});
