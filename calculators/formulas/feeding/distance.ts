import { defineFormula } from '../../core/formula.ts';

export const distance = defineFormula({
  id: 'feeding/distance',
  title: 'How far a feeder reaches along a plate (steel)',
  answers: 'In steel plate, how long a stretch does one feeder, or a pair, keep sound?',
  equation: 'L = (a + e) * T',
  symbols: {
    L: { name: 'length kept sound', unit: 'm', show: 'mm', range: [0.001, 2], why: 'castings on a bench' },
    a: {
      name: 'reach of the feeder, in thicknesses',
      unit: '1',
      range: [1, 4],
      why: 'the rule in print',
      usual: 2,
      note: '2 for one feeder; 4 for the stretch between two.',
    },
    e: {
      name: 'help of a free end, in thicknesses',
      unit: '1',
      range: [0, 2.5],
      why: 'the rule in print',
      usual: 2.5,
      note: '2.5 when the plate ends there, 0 between two feeders.',
    },
    T: {
      name: 'thickness of the plate',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.2],
      why: 'the tests were on 12 to 100 mm',
      usual: 0.025,
      note: 'The rule was found on plates of 12 to 100 mm. For thinner ones nothing is in print.',
    },
  },
  assumes: [
    'carbon steel in sand only; no rule of this kind is known for bronze, silver or aluminium of tens of grams',
    'never the only answer: a long-freezing bronze keeps fine pores even close to the feeder',
    'a plate at least three times as wide as thick',
  ],
  source: { key: 'heine-loper-rosenthal', at: 'feeding distance of plates', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 10, feeding distance', how: 'memory' }],
  examples: [
    {
      title: '25 mm plate from the feeder to its end',
      given: { a: '2 1', e: '2.5 1', T: '25 mm' },
      expect: { L: '112.5 mm' },
      from: { byHand: '2 + 2.5 = 4.5 thicknesses; × 25 = 112.5.' },
    },
  ],
  words: ['4.5 T', 'riser spacing', 'end effect', 'steel rule'],
});
