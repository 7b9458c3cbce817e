import { defineFormula } from '../../core/formula.ts';
import { metalSpeed } from '../symbols.ts';

export const sectionSpeed = defineFormula({
  id: 'filling/section-speed',
  title: 'Speed in a section, from the flow it shares',
  answers: 'How fast does the metal run here, when several sections share one flow?',
  equation: 'v = Q / (n * A)',
  symbols: {
    v: metalSpeed,
    Q: {
      name: 'flow of metal',
      unit: 'm³/s',
      show: 'cm³/s',
      range: [1e-8, 0.01],
      why: 'from a dribble to a large ladle',
      usual: 0.000008,
    },
    A: {
      name: 'cross-section of one channel',
      unit: 'm²',
      show: 'mm²',
      range: [1e-7, 0.01],
      why: 'from a pin hole to a large gate',
      usual: 0.00000308,
    },
    n: { name: 'channels filling at once', unit: '1', range: [1, 200], why: 'at least one', usual: 2 },
  },
  assumes: ['channels alike and filling together', 'no metal stored on the way: what goes in goes through'],
  source: { key: 'incropera', at: 'conservation of mass', how: 'memory' },
  examples: [
    {
      title: 'Eight cubic centimetres a second into two webs of 3.08 mm²',
      given: { Q: '8 cm³/s', A: '3.08 mm²', n: '2 1' },
      expect: { v: '1.30 m/s' },
      from: { byHand: '8 / (2 × 0.0308) = 129.9 cm/s = 1.30 m/s.' },
    },
  ],
  words: ['continuity', 'branches', 'runner'],
});
