import { defineFormula } from '../../core/formula.ts';
import { stefanBoltzmann } from '../symbols.ts';

export const radiant = defineFormula({
  id: 'safety/radiant',
  title: 'Heat that strikes you from a melt',
  answers: 'How much heat does skin facing the crucible catch, at this distance?',
  equation: 'q = eps * sigma * (T^4 - T_a^4) * r^2 / (r^2 + d^2)',
  symbols: {
    q: {
      name: 'radiant heat',
      unit: 'W/m²',
      show: 'kW/m²',
      range: [0, 400000],
      why: 'a hand in the furnace mouth',
      note: 'Full sun is about 1 kW/m².',
    },
    eps: {
      name: 'emissivity',
      sign: 'ε',
      unit: '1',
      range: [0.02, 1],
      why: 'from bright silver to a furnace mouth',
      usual: 0.8,
      note: 'A furnace mouth or a deep crucible counts as 1, whatever the metal.',
    },
    sigma: stefanBoltzmann,
    T: {
      name: 'temperature of the hot face',
      unit: 'K',
      show: '°C',
      range: [293.15, 1773.15],
      why: 'from the bench to the hottest of small melts',
      usual: 1373.15,
    },
    T_a: {
      name: 'temperature of skin and room',
      unit: 'K',
      show: '°C',
      range: [263.15, 323.15],
      why: 'a workshop',
      usual: 293.15,
    },
    r: {
      name: 'radius of the hot face',
      unit: 'm',
      show: 'mm',
      range: [0.002, 1],
      why: 'from a spoon to a large furnace',
      usual: 0.03,
      note: 'For another shape take the circle of the same area.',
    },
    d: {
      name: 'distance from it',
      unit: 'm',
      show: 'mm',
      range: [0, 10],
      why: 'across a workshop',
      usual: 0.4,
    },
  },
  noSolve: { T_a: 'a hot face hardly feels the temperature of the room' },
  assumes: [
    'a round hot face straight before you and skin turned to it: the worst case',
    'no flame, no hot lining seen beside it',
  ],
  source: { key: 'incropera', at: '§13.1, view factor of a small area before a disc', how: 'memory' },
  examples: [
    {
      title: 'A 60 mm crucible of bronze at 1100 °C, 400 mm off',
      given: { eps: '0.8 1', T: '1373.15 K', T_a: '293.15 K', r: '30 mm', d: '400 mm' },
      expect: { q: '900 W/m²' },
      from: {
        byHand:
          '1373.15² = 1 885 541, squared 3.555265e12, less 7.385e9 is 3.547880e12; × 5.670374e-8 = 201 178; × 0.8 = 160 943; 900 ÷ 160 900 = 0.00559354; product 900.2.',
      },
    },
  ],
  caution: [
    'Shown to teach: local codes and trained people decide what you wear. Face shield over glasses, natural fibres, distance; infrared filter for long looks.',
    'Heat on skin you can bear still dries and clouds the eye over years.',
  ],
  words: ['radiation', 'view factor', 'heat on the face', 'distance', 'shield'],
});
