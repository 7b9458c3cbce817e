import { defineFormula } from '../../core/formula.ts';
import { metalSpeed } from '../symbols.ts';

export const fillTime = defineFormula({
  id: 'filling/fill-time',
  title: 'Time to fill a section',
  answers: 'How long does the metal take to run to the end of this section?',
  equation: 't = l / v',
  symbols: {
    t: {
      name: 'time to fill',
      unit: 's',
      range: [0.001, 60],
      why: 'slower than a minute the metal is cold; faster than this it is thrown',
    },
    l: {
      name: 'length of run from the gate',
      unit: 'm',
      show: 'mm',
      range: [0.001, 2],
      why: 'small castings',
      usual: 0.075,
    },
    v: metalSpeed,
  },
  assumes: [
    'one speed all the way: use the lowest you expect, late in the fill',
    'sections in a row share the flow, so use the speed in this section',
  ],
  source: { key: 'trade-practice', at: 'speed times time', how: 'common practice' },
  examples: [
    {
      title: 'Longest web of the lamp shield at half a metre a second',
      given: { l: '75 mm', v: '0.5 m/s' },
      expect: { t: '0.15 s' },
      from: { byHand: '0.075 / 0.5 = 0.15.' },
    },
  ],
  words: ['race', 'run', 'section'],
});
