import { defineFormula } from '../../core/formula.ts';

export const effectiveHead = defineFormula({
  id: 'filling/effective-head',
  title: 'Effective head of a gate at the parting',
  answers: 'What single head stands for a cavity that is partly above the gate?',
  equation: 'h_e = h - p^2 / (2 * c)',
  symbols: {
    h_e: {
      name: 'effective head',
      unit: 'm',
      show: 'mm',
      range: [0.001, 3],
      why: 'as tall as a small mould and its cup may be',
    },
    h: {
      name: 'head of metal above the gate',
      unit: 'm',
      show: 'mm',
      range: [0.002, 3],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.08,
    },
    p: {
      name: 'height of the casting above the gate',
      unit: 'm',
      show: 'mm',
      range: [0, 2],
      why: 'as tall as a small mould may be',
      usual: 0.03,
      note: '0 for a top gate, the whole height for a bottom gate.',
    },
    c: {
      name: 'whole height of the casting',
      unit: 'm',
      show: 'mm',
      range: [0.001, 2],
      why: 'as tall as a small mould may be',
      usual: 0.06,
    },
  },
  where: [
    { test: 'p <= c', why: 'No more of the casting can be above the gate than there is of it.' },
    {
      test: 'h > p^2 / (2 * c)',
      why: 'The head is too small: the casting would stand above the metal in the cup.',
    },
  ],
  assumes: ['a rule of the trade for a cavity of much the same area from bottom to top'],
  source: { key: 'rao-manufacturing', at: 'gating systems, effective sprue height', how: 'memory' },
  examples: [
    {
      title: 'Head of 300 mm, casting 100 mm high, half of it above the gate',
      given: { h: '300 mm', p: '50 mm', c: '100 mm' },
      expect: { h_e: '287.5 mm' },
      from: { byHand: '300 − 50² / (2 × 100) = 300 − 12.5 = 287.5.' },
    },
  ],
  words: ['parting line gate', 'sprue height', 'head'],
});
