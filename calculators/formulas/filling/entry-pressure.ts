import { defineFormula } from '../../core/formula.ts';
import { surfaceTension } from '../symbols.ts';

export const entryPressure = defineFormula({
  id: 'filling/entry-pressure',
  title: 'Pressure needed to enter a slot or a web',
  answers: 'How hard must the metal be pushed before it will go into this opening?',
  equation: 'p_cap = -2 * gamma * cos(theta) * (1 / a + 1 / c)',
  symbols: {
    p_cap: {
      name: 'pressure needed to enter',
      unit: 'Pa',
      show: 'kPa',
      range: [-20000, 20000],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice',
      note: 'Below zero the opening draws the liquid in, as water in glass.',
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
    a: {
      name: 'thickness of the opening',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.05],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice; wider, weight flattens the surface',
      usual: 0.0014,
    },
    c: {
      name: 'width of the opening',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 1],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice; wider, weight flattens the surface',
      usual: 0.0022,
      note: 'For a long slot put a large number: only the thickness counts then.',
    },
  },
  assumes: [
    'a clean surface: an oxide skin raises the tension, by two or three times on some accounts',
    'pressure times area against tension round the rim',
  ],
  source: { key: 'campbell', at: 'ch. 3, surface tension controlled filling', how: 'memory' },
  examples: [
    {
      title: 'Web of the lamp shield, 1.4 by 2.2 mm, a metal that does not wet the sand at all',
      given: { gamma: '1.2 N/m', theta: '180 deg', a: '1.4 mm', c: '2.2 mm' },
      expect: { p_cap: '2.81 kPa' },
      from: {
        byHand:
          'cos 180° = −1. 1 / 0.0014 + 1 / 0.0022 = 714.29 + 454.55 = 1168.83. 2 × 1.2 × 1168.83 = 2805 Pa.',
      },
    },
  ],
  words: ['capillary', 'surface tension', 'thin section', 'misrun', 'web'],
});
