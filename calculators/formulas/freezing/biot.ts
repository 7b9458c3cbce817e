import { defineFormula } from '../../core/formula.ts';

export const biot = defineFormula({
  id: 'freezing/biot',
  title: 'Biot number: is one temperature enough for the whole piece?',
  answers: 'May this piece be treated as even in temperature?',
  equation: 'Bi = h * M / k',
  symbols: {
    Bi: {
      name: 'Biot number',
      unit: '1',
      range: [0, 100],
      why: 'beyond it only the inside resists',
      note: 'Below 0.1 one temperature will do. Tables for plates and bars use half the thickness or the radius instead of M.',
    },
    h: {
      name: 'surface coefficient',
      unit: 'W/(m²·K)',
      range: [5, 20000],
      why: 'from still air to a stream of water',
      usual: 1000,
    },
    M: {
      name: 'modulus',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.1],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
      usual: 0.001125,
    },
    k: {
      name: 'conductivity of the piece',
      unit: 'W/(m·K)',
      range: [0.1, 450],
      why: 'the materials of the workshop lie here',
      usual: 55,
    },
  },
  assumes: ['the length is volume over surface, not the thickness'],
  source: { key: 'incropera', at: '§5.2, validity of the lumped method', how: 'memory' },
  examples: [
    {
      title: 'Frame of the lamp shield, silicon bronze, h = 1000',
      given: { h: '1000 W/(m²·K)', M: '1.125 mm', k: '55 W/(m·K)' },
      expect: { Bi: '0.0205 1' },
      from: { byHand: '1000 × 0.001125 / 55 = 0.02045.' },
    },
  ],
  words: ['lumped', 'even temperature'],
});
