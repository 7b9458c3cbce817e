import { defineFormula } from '../../core/formula.ts';

export const leakUp = defineFormula({
  id: 'vacuum/leak-up',
  title: 'Leak, from how fast the pressure rises',
  answers: 'With the pump shut off the gauge creeps back: how much air is leaking in?',
  equation: 'Q = V * (p_2 - p_1) / (p_amb * t)',
  symbols: {
    Q: {
      name: 'air leaking in, as air of the room',
      unit: 'm³/s',
      show: 'L/min',
      range: [0, 0.1],
      why: 'from tight to a lid left open',
      note: 'One mbar·L/s is 0.059 L/min of air at sea level.',
    },
    V: {
      name: 'volume shut in',
      unit: 'm³',
      show: 'L',
      range: [0.00001, 10],
      why: 'from a hose to a large tank',
      usual: 0.01,
    },
    p_1: {
      name: 'pressure at the start, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 110000],
      why: 'no more than the air outside',
      usual: 5000,
    },
    p_2: {
      name: 'pressure at the end, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 110000],
      why: 'no more than the air outside',
      usual: 7000,
    },
    t: { name: 'time between', unit: 's', range: [1, 36000], why: 'shorter cannot be read', usual: 60 },
    p_amb: {
      name: 'pressure of the air around, absolute',
      sign: 'p_amb',
      unit: 'Pa',
      show: 'kPa',
      range: [50000, 110000],
      why: 'workshops from high mountains to the sea',
      usual: 101325,
    },
  },
  where: [
    { test: 'p_2 >= p_1', why: 'The pressure fell: the pump is still pulling, or the chamber is cooling.' },
  ],
  assumes: [
    'dry and empty: water and oil give off vapour and look like a leak, but slow down as the pressure rises',
    'one temperature; below about half an atmosphere a true leak brings the same air each minute',
  ],
  source: { key: 'cfr-1065', at: '§1065.644, vacuum-decay leak rate', how: 'read' },
  alsoSee: [{ key: 'umrath-vacuum', at: 'pressure-rise test', how: 'memory' }],
  examples: [
    {
      title: 'A 5 L chamber that rises from 5 to 7 kPa in a minute',
      given: { V: '5 L', p_1: '5 kPa', p_2: '7 kPa', t: '60 s', p_amb: '101.325 kPa' },
      expect: { Q: '0.0987 L/min' },
      from: { byHand: '5 L × 2 kPa ÷ 101.325 kPa = 0.09869 L of outside air, in one minute.' },
    },
  ],
  caution: ['A chamber that leaks may be about to crack. Let the air in before you look for the place.'],
  words: ['rate of rise', 'leak test', 'gauge creeps', 'tightness'],
});
