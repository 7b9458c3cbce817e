import { defineFormula } from '../../core/formula.ts';
import { gravity } from '../symbols.ts';

export const weight = defineFormula({
  id: 'sand/weight',
  title: 'Weight to lay on the cope',
  answers: 'How many kilograms must I put on the mould?',
  equation: 'm_w = k * (F + F_c) / g - m_c',
  symbols: {
    m_w: {
      name: 'mass to lay on',
      unit: 'kg',
      range: [-1000, 20000],
      why: 'the moulds of a small foundry',
      note: 'Below zero the cope holds itself down.',
    },
    F: {
      name: 'lift on the cope',
      unit: 'N',
      range: [0, 100000],
      why: 'the moulds of a small foundry',
      usual: 18,
    },
    F_c: {
      name: 'lift on the core',
      unit: 'N',
      range: [0, 100000],
      why: 'the moulds of a small foundry',
      usual: 2,
    },
    k: {
      name: 'margin for surge',
      unit: '1',
      range: [1, 2],
      why: '1.2 to 1.5 is common practice',
      usual: 1.5,
      note: '1.2 to 1.5 is common.',
    },
    m_c: {
      name: 'mass of the cope',
      unit: 'kg',
      range: [0, 2000],
      why: 'the moulds of a small foundry',
      usual: 1,
    },
    g: gravity,
  },
  assumes: [
    'the cope is free to lift: no clamps',
    'the weight presses through the flask, not on the sand over the cavity',
  ],
  source: { key: 'rao-manufacturing', at: 'moulding, metallostatic forces', how: 'memory' },
  examples: [
    {
      title: 'Lift of 17.7 N, no core, cope of 1.2 kg, margin 1.5',
      given: { F: '17.7 N', F_c: '0 N', k: '1.5 1', m_c: '1.2 kg' },
      expect: { m_w: '1.51 kg' },
      from: { byHand: '1.5 × 17.7 / 9.80665 = 2.707; less 1.2 is 1.507.' },
    },
  ],
  caution: ['Do not take the weights off until the cup has frozen right through.'],
  words: ['cope', 'weights', 'clamp', 'run-out'],
});
