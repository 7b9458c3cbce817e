import { defineFormula } from '../../core/formula.ts';

export const deoxidiser = defineFormula({
  id: 'charge/deoxidiser',
  title: 'Phosphor-copper for a melt',
  answers: 'How much phosphor-copper goes in just before the pour?',
  equation: 'm_d = m * x / (P * r)',
  symbols: {
    m_d: {
      name: 'phosphor-copper to add',
      unit: 'kg',
      show: 'g',
      range: [0, 0.1],
      why: 'this course is about small charges',
    },
    m: {
      name: 'melt',
      unit: 'kg',
      show: 'g',
      range: [0.005, 10],
      why: 'this course is about small charges',
      usual: 0.0887,
    },
    x: {
      name: 'phosphorus wanted in the melt',
      unit: '1',
      show: '%',
      range: [0.00005, 0.0005],
      why: 'below this nothing is gained; above, the metal eats into the sand and turns brittle',
      usual: 0.00015,
      note: '0.01 to 0.03 % is usual for tin bronze and gunmetal.',
    },
    P: {
      name: 'phosphorus in the phosphor-copper',
      unit: '1',
      show: '%',
      range: [0.05, 0.15],
      why: 'the grades on sale hold 10 to 15 %',
      usual: 0.15,
    },
    r: {
      name: 'share of the phosphorus that gets in',
      unit: '1',
      show: '%',
      range: [0.4, 1],
      why: 'a piece that burns on top gives less than this',
      usual: 0.8,
      note: 'A start to be tried, not a measurement.',
    },
  },
  assumes: [
    'a copper alloy without silicon or aluminium: those deoxidise themselves and phosphorus harms them',
    'phosphorus already in returned metal is counted off',
  ],
  source: {
    key: 'trade-practice',
    at: '0.01 to 0.03 % phosphorus, from 15 % phosphor-copper',
    how: 'common practice',
  },
  examples: [
    {
      title: '300 g of gunmetal',
      given: { m: '300 g', x: '0.02 %', P: '15 %', r: '80 %' },
      expect: { m_d: '0.50 g' },
      from: {
        byHand:
          '300 g × 2 ÷ 10 000 = 0.06 g of phosphorus; 0.06 ÷ 0.15 = 0.4 g; one fifth is lost, so 0.4 ÷ 0.8 = 0.50 g',
      },
    },
  ],
  caution: [
    'Weigh it to 0.01 g: a pinch is several times too much for a small melt.',
    'It flares and gives white acid smoke: extraction on, face shield down, piece dry and warm, heat off, plunged, not dropped.',
    'Not for silicon bronze, aluminium bronze, nickel alloys or silver, and it lowers the conductivity of copper.',
  ],
  words: ['phosphorus', 'deoxidation', 'gunmetal'],
});
