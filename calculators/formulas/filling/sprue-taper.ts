import { defineFormula } from '../../core/formula.ts';

export const sprueTaper = defineFormula({
  id: 'filling/sprue-taper',
  title: 'Taper of a sprue that stays full',
  answers: 'How much narrower must the sprue be at its foot, so that it draws no air?',
  equation: 'A_2 = A_1 * sqrt(h_1 / h_2)',
  symbols: {
    A_2: {
      name: 'area at the foot of the sprue',
      unit: 'm²',
      show: 'mm²',
      range: [1e-6, 0.01],
      why: 'from a pin hole to a large sprue',
    },
    A_1: {
      name: 'area at the top of the sprue',
      unit: 'm²',
      show: 'mm²',
      range: [1e-6, 0.02],
      why: 'from a pin hole to a large sprue',
      usual: 0.00008,
    },
    h_1: {
      name: 'metal above the top of the sprue',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.5],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.015,
      note: 'The depth kept in the cup.',
    },
    h_2: {
      name: 'metal above the foot of the sprue',
      unit: 'm',
      show: 'mm',
      range: [0.002, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.05,
      note: 'Cup and sprue together.',
    },
  },
  where: [{ test: 'h_2 > h_1', why: 'The foot of the sprue must be below its top.' }],
  assumes: [
    'both heads measured from the surface in the cup, which is kept full',
    'no friction, no suction: suction would keep even a straight sprue full, and pulls air through the sand instead',
  ],
  source: { key: 'groover', at: 'ch. 10, tapered sprue from continuity and Bernoulli', how: 'memory' },
  examples: [
    {
      title: 'Sprue of 200 mm, 650 mm² at the top, 50 mm in the cup',
      given: { A_1: '650 mm²', h_1: '50 mm', h_2: '250 mm' },
      expect: { A_2: '290.7 mm²' },
      from: { key: 'gate-me', at: '2007, downsprue without aspiration', how: 'read' },
    },
  ],
  words: ['aspiration', 'downsprue', 'air in the stream'],
});
