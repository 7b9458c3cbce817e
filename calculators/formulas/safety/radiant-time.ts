import { defineFormula } from '../../core/formula.ts';

export const radiantTime = defineFormula({
  id: 'safety/radiant-time',
  title: 'Time until radiant heat hurts',
  answers: 'How long can bare skin face this heat before it hurts?',
  equation: 't = D / q^(4 / 3)',
  empirical: true,
  symbols: {
    t: {
      name: 'time to pain',
      unit: 's',
      range: [0.5, 120],
      why: 'shorter, you cannot draw back; longer, the blood carries the heat away',
    },
    q: {
      name: 'radiant heat on the skin',
      unit: 'kW/m²',
      range: [1, 50],
      why: 'from full sun to a hand in the furnace mouth',
      usual: 4,
    },
    D: {
      name: 'dose that hurts, in (kW/m²)^4/3·s',
      unit: '1',
      range: [80, 300],
      why: 'from first pain to a blister',
      usual: 92,
      note: 'Pain 86 to 103, mean 92. Blisters from 240 to 350, mean 290.',
    },
  },
  assumes: [
    'bare skin, at rest, heat that starts at once and stays the same',
    'people differ by a factor of two; hot metal that touches is another matter',
  ],
  source: {
    key: 'hsl-thermal-radiation',
    at: 'thermal dose units and their effects, read in an encyclopaedia',
    how: 'read',
  },
  alsoSee: [{ key: 'epa-hazard-handbook', at: 'table 4.2, read in an open course book', how: 'read' }],
  examples: [
    {
      title: 'A hand at 4 kW/m²',
      given: { q: '4 kW/m²', D: '92 1' },
      expect: { t: '14.5 s' },
      from: { byHand: 'The cube root of 4 is 1.5874; times 4 is 6.3496; 92 ÷ 6.3496 = 14.489.' },
    },
  ],
  caution: [
    'Shown to teach, never as a working time: stop at the first sting. Local codes and trained people decide.',
    'A burn: cool running water for 20 minutes, away from the metal.',
  ],
  words: ['pain', 'burn', 'skin', 'thermal dose', 'heat on the hand'],
});
