import { defineFormula } from '../../core/formula.ts';

export const distanceBar = defineFormula({
  id: 'feeding/distance-bar',
  title: 'How far a feeder reaches along a square bar (steel)',
  answers: 'In a square steel bar, how far from the feeder to the end stays sound?',
  equation: 'L = k * sqrt(T)',
  empirical: true,
  symbols: {
    L: {
      name: 'length kept sound',
      unit: 'in',
      show: 'mm',
      range: [0.5, 60],
      why: 'castings on a bench',
    },
    k: {
      name: 'constant of the rule, inches and root inches',
      unit: '1',
      range: [3, 8],
      why: 'the rule in print',
      usual: 6,
      note: 'For steel. It goes with inches only.',
    },
    T: {
      name: 'side of the bar',
      unit: 'in',
      show: 'mm',
      range: [0.1, 8],
      why: 'the tests were on 2 to 8 in',
      usual: 2,
    },
  },
  assumes: [
    'carbon steel in sand, with the bar’s own end; found on bars of 50 to 200 mm, so small castings lie far outside',
    'never the only answer for bronze, silver or aluminium',
  ],
  source: { key: 'heine-loper-rosenthal', at: 'feeding distance of bars', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 10, feeding distance', how: 'memory' }],
  examples: [
    {
      title: 'Bar of 4 in',
      given: { k: '6 1', T: '4 in' },
      expect: { L: '12.0 in' },
      from: { byHand: 'The root of 4 is 2; times 6 is 12.' },
    },
  ],
  words: ['riser spacing', 'bar', 'steel rule'],
});
