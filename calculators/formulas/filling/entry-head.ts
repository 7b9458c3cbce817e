import { defineFormula } from '../../core/formula.ts';
import { gravity, liquidDensity } from '../symbols.ts';

export const entryHead = defineFormula({
  id: 'filling/entry-head',
  title: 'Head at which the metal begins to enter',
  answers: 'How much metal must stand above this opening before any goes in?',
  equation: 'h = (p_cap - dp) / (rho * g)',
  symbols: {
    h: {
      name: 'head of metal above the opening',
      unit: 'm',
      show: 'mm',
      range: [-5, 1],
      why: 'a taller column than any small mould has',
      note: 'Below zero the suction alone is enough.',
    },
    p_cap: {
      name: 'pressure needed to enter the opening',
      unit: 'Pa',
      show: 'kPa',
      range: [-20000, 20000],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice',
      usual: 2805,
    },
    dp: {
      name: 'pressure above the metal less pressure in the cavity',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 1000,
    },
    rho: liquidDensity,
    g: gravity,
  },
  assumes: ['the metal stands still at the opening: speed needs more head than this'],
  source: { key: 'campbell', at: 'ch. 3, surface tension controlled filling', how: 'memory' },
  examples: [
    {
      title: 'Web of the lamp shield, no suction',
      given: { p_cap: '2.805 kPa', dp: '0 kPa', rho: '7520 kg/m³' },
      expect: { h: '38.0 mm' },
      from: { byHand: '2805 / (7520 × 9.80665) = 2805 / 73 746 = 0.03804 m.' },
    },
    {
      title: 'The same web with 1 kPa at the cavity',
      given: { p_cap: '2.805 kPa', dp: '1 kPa', rho: '7520 kg/m³' },
      expect: { h: '24.5 mm' },
      from: { byHand: '(2805 − 1000) / 73 746 = 0.02448 m.' },
    },
  ],
  words: ['capillary', 'head', 'does it enter'],
});
