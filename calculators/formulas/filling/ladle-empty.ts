import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity } from '../symbols.ts';

export const ladleEmpty = defineFormula({
  id: 'filling/ladle-empty',
  title: 'Time to empty a round ladle through its nozzle',
  answers: 'How long does the ladle or the cup take to drain?',
  equation: 't = (D / d)^2 / C * sqrt(2 * h / g)',
  symbols: {
    t: {
      name: 'time to empty',
      unit: 's',
      range: [0.05, 5000],
      why: 'a drain that takes an hour has frozen',
    },
    D: {
      name: 'diameter of the ladle',
      unit: 'm',
      show: 'mm',
      range: [0.005, 3],
      why: 'from a thimble to a foundry ladle',
      usual: 0.03,
    },
    d: {
      name: 'diameter of the nozzle',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.3],
      why: 'from a thimble to a foundry ladle',
      usual: 0.006,
    },
    h: {
      name: 'depth of metal at the start',
      unit: 'm',
      show: 'mm',
      range: [0.001, 3],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.02,
    },
    C: dischargeCoefficient,
    g: gravity,
  },
  where: [{ test: 'D > d', why: 'The nozzle must be smaller than the ladle.' }],
  assumes: ['straight walls, no freezing in the nozzle', 'open above and below'],
  source: { key: 'ghosh-mallik', at: 'ch. 2, Example 2.3', how: 'read' },
  examples: [
    {
      title: 'Ladle of 1 m with a 75 mm nozzle, 1.2 m deep',
      given: { D: '1 m', d: '75 mm', h: '1.2 m', C: '0.96 1' },
      expect: { t: '91.6 s' },
      from: { key: 'ghosh-mallik', at: 'Example 2.3, read in an open companion', how: 'read' },
    },
  ],
  words: ['bottom pour', 'cup', 'drain', 'discharge'],
});
