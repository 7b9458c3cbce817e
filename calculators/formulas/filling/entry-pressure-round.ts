import { defineFormula } from '../../core/formula.ts';
import { surfaceTension } from '../symbols.ts';

export const entryPressureRound = defineFormula({
  id: 'filling/entry-pressure-round',
  title: 'Pressure needed to enter a round hole',
  answers: 'How hard must the metal be pushed before it will go into a round opening?',
  equation: 'p_cap = -2 * gamma * cos(theta) / r',
  symbols: {
    p_cap: {
      name: 'pressure needed to enter',
      unit: 'Pa',
      show: 'kPa',
      range: [-20000, 20000],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice',
    },
    gamma: surfaceTension,
    theta: {
      name: 'contact angle',
      sign: 'θ',
      unit: 'deg',
      range: [0, 180],
      why: '0 wets fully, 180 not at all',
      usual: 180,
      note: '180 is the safe side: a metal that does not wet the mould at all. Measured angles on silica are 120 to 150.',
    },
    r: {
      name: 'radius of the hole',
      unit: 'm',
      show: 'mm',
      range: [0.00005, 0.05],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice; wider, weight flattens the surface',
      usual: 0.0005,
    },
  },
  assumes: [
    'a hole much smaller than about 4 mm, so that weight does not flatten the meniscus',
    'a clean surface',
  ],
  source: { key: 'polimi-exercises', at: 'Exercise 2.1', how: 'read' },
  examples: [
    {
      title: 'Mercury in a glass tube of 0.5 mm radius',
      given: { gamma: '0.559 N/m', theta: '140 deg', r: '0.5 mm' },
      expect: { p_cap: '1712.9 Pa' },
      from: { key: 'polimi-exercises', at: 'Exercise 2.1, second liquid', how: 'read' },
    },
  ],
  words: ['capillary', 'pin', 'vent hole', 'meniscus'],
});
