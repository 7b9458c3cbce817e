import { defineFormula } from '../../core/formula.ts';
import { liquidDensity } from '../symbols.ts';

export const losses = defineFormula({
  id: 'filling/losses',
  title: 'Discharge coefficient from entry, bends and friction',
  answers: 'What share of the ideal speed is left after the losses on the way?',
  equation: '1 / C^2 = 1 + K + 0.3164 * (mu / (rho * C * v * D))^(1 / 4) * (l / D + E)',
  symbols: {
    C: {
      name: 'discharge coefficient',
      unit: '1',
      range: [0.1, 1],
      why: 'below 0.3 look for a blockage; above 1 is impossible',
    },
    K: {
      name: 'entry loss',
      unit: '1',
      range: [0, 3],
      why: '0.05 well rounded, 0.5 sharp, more for a strainer',
      usual: 0.5,
      note: '0.5 for a sharp entry, 0.05 for a rounded one.',
    },
    E: {
      name: 'bends, as diameters of straight pipe',
      unit: '1',
      range: [0, 200],
      why: 'more bends than this and the metal does not arrive',
      usual: 25,
      note: 'About 25 to 30 for each right angle.',
    },
    l: {
      name: 'length of the channel',
      unit: 'm',
      show: 'mm',
      range: [0.001, 2],
      why: 'the channels of small moulds',
      usual: 0.05,
    },
    D: {
      name: 'diameter of the channel',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.1],
      why: 'the channels of small moulds',
      usual: 0.006,
    },
    v: {
      name: 'ideal speed',
      unit: 'm/s',
      range: [0.05, 10],
      why: 'faster than this the metal is a spray; slower, it stands',
      usual: 0.9,
      note: 'From head and pressure alone.',
    },
    rho: liquidDensity,
    mu: {
      name: 'viscosity of the liquid metal',
      sign: 'μ',
      unit: 'Pa·s',
      show: 'mPa·s',
      range: [0.0005, 0.02],
      why: 'liquid metals lie here',
      usual: 0.004,
    },
  },
  assumes: [
    'smooth walls and turbulent flow, Reynolds number 3000 to 100 000',
    'no freezing on the wall; a rough sand wall loses more',
  ],
  source: { key: 'ghosh-mallik', at: 'ch. 2, Example 2.2', how: 'read' },
  alsoSee: [{ key: 'incropera', at: '§8.1, friction factor of smooth pipes', how: 'memory' }],
  examples: [
    {
      title: 'Runner of 120 mm, gate of 5 cm² and one bend, iron under 150 mm',
      given: {
        K: '0.46 1',
        E: '25 1',
        l: '120 mm',
        D: '25.231325 mm',
        v: '1.715517 m/s',
        rho: '7800 kg/m³',
        mu: '0.00496 Pa·s',
      },
      expect: { C: '0.690 1' },
      from: {
        key: 'ghosh-mallik',
        at: 'Example 2.2: 21.859 s without and 31.654 s with losses; read in an open companion',
        how: 'read',
      },
    },
  ],
  words: ['friction', 'bend', 'entry loss', 'Blasius', 'discharge coefficient'],
});
