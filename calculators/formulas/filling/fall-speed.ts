import { defineFormula } from '../../core/formula.ts';
import { gravity } from '../symbols.ts';

export const fallSpeed = defineFormula({
  id: 'filling/fall-speed',
  title: 'Speed of a falling stream',
  answers: 'How fast is the stream after this fall?',
  equation: 'v = sqrt(v_0^2 + 2 * g * h)',
  symbols: {
    v: {
      name: 'speed at the bottom',
      unit: 'm/s',
      range: [0, 10],
      why: 'faster than this the metal is a spray; slower, it stands',
    },
    v_0: {
      name: 'speed at the lip',
      unit: 'm/s',
      range: [0, 5],
      why: 'faster than this the metal is a spray; slower, it stands',
      usual: 0.1,
    },
    h: {
      name: 'height of fall',
      unit: 'm',
      show: 'mm',
      range: [0, 2],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.03,
    },
    g: gravity,
  },
  assumes: ['free fall, no friction'],
  source: { key: 'groover', at: 'ch. 10, Bernoulli', how: 'memory' },
  examples: [
    {
      title: 'Lip 13 mm above the cup, from rest: already near the critical half metre a second',
      given: { v_0: '0 m/s', h: '13 mm' },
      expect: { v: '0.505 m/s' },
      from: { byHand: '2 × 9.80665 × 0.013 = 0.254973; root 0.50495.' },
    },
  ],
  caution: ['A long fall splashes. Bring the lip down to the cup before tilting.'],
  words: ['pouring height', 'stream', 'drop', 'splash'],
});
