import { defineFormula } from '../../core/formula.ts';

export const penetration = defineFormula({
  id: 'vacuum/penetration',
  title: 'Pressure at which metal enters the sand',
  answers: 'How much pressure can the sand face stand before metal runs between the grains?',
  equation: 'p = 2 * gamma * abs(cos(theta)) / r',
  symbols: {
    p: {
      name: 'pressure that drives the metal in',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 500000],
      why: 'finer than sand is investment or wash',
    },
    gamma: {
      name: 'surface tension of the liquid metal',
      sign: 'γ',
      unit: 'N/m',
      range: [0.3, 2],
      why: 'from lead to iron',
      usual: 1.2,
      note: 'Lead, phosphorus, tin and oxygen lower it.',
    },
    theta: {
      name: 'contact angle of metal on sand',
      sign: 'θ',
      unit: 'rad',
      show: 'deg',
      range: [1.5708, 3.1416],
      why: 'below 90° the metal wets the sand and goes in by itself',
      usual: 2.2689,
      note: 'About 130° for metals that do not wet silica; old, oxidised or glazed faces wet more.',
    },
    r: {
      name: 'radius of the gap between grains',
      unit: 'm',
      show: 'µm',
      range: [2e-6, 2e-4],
      why: 'from plaster to coarse sand',
      usual: 22e-6,
      note: 'About a fifth of the grain size in packed sand; an estimate, so use the answer as a trend.',
    },
  },
  assumes: [
    'compared with the metal’s pressure at the face less the gas pressure in the pores, and only while the face is liquid',
    'one round pore stands for all: the widest gap goes first',
    'no chemical attack and no wash on the face',
  ],
  source: { key: 'campbell', at: 'ch. 4, penetration', how: 'memory' },
  alsoSee: [{ key: 'polimi-exercises', at: 'exercise 2.1', how: 'read' }],
  examples: [
    {
      title: 'bronze on fine sand of 0.11 mm grains',
      given: { gamma: '1.2 N/m', theta: '130 deg', r: '22 µm' },
      expect: { p: '70.1 kPa' },
      from: { byHand: 'cos 130° = −0.64279; 2 × 1.2 × 0.64279 = 1.54269 N/m; ÷ 0.000022 m = 70 122 Pa' },
    },
  ],
  caution: [
    'Suction held on while webs and gate are still liquid draws metal through the sand towards the pump: dry catch pot below, release in time.',
  ],
  words: ['burn-on', 'metal penetration', 'capillary', 'grain fineness'],
});
