import { defineFormula } from '../../core/formula.ts';
import { gravity } from '../symbols.ts';

export const head = defineFormula({
  id: 'vacuum/head',
  title: 'Pressure as a height of metal',
  answers: 'How tall a sprue would push as hard as this suction?',
  equation: 'h = dp / (rho * g)',
  symbols: {
    h: {
      name: 'height of metal',
      unit: 'm',
      show: 'mm',
      range: [0, 5],
      why: 'one atmosphere lifts aluminium about 4 m and bronze about 1.3 m',
    },
    dp: {
      name: 'pressure difference at the cavity',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'suction can use no more than the air above',
      usual: 15000,
      note: 'At the cavity, not on the gauge: see the suction that reaches it.',
    },
    rho: {
      name: 'density of the liquid metal',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1500, 20000],
      why: 'from magnesium to platinum',
      usual: 7520,
    },
    g: gravity,
  },
  assumes: ['the metal stands still: moving metal spends some of the head on speed and friction'],
  source: { key: 'esposito', at: 'ch. 2, pressure and head', how: 'memory' },
  examples: [
    {
      title: '15 kPa at the cavity of the lamp shield',
      given: { dp: '15 kPa', rho: '7520 kg/m³' },
      expect: { h: '203 mm' },
      from: { byHand: '7520 × 9.80665 = 73 746 Pa for each metre; 15 000 ÷ 73 746 = 0.2034 m' },
    },
  ],
  words: ['head', 'suction', 'sprue height'],
});
