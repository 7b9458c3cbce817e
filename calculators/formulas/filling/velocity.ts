import { defineFormula } from '../../core/formula.ts';
import { dischargeCoefficient, gravity, liquidDensity } from '../symbols.ts';

export const velocity = defineFormula({
  id: 'filling/velocity',
  title: 'Speed of the metal as it enters',
  answers: 'How fast does the metal go in, if it goes in at all?',
  equation: 'v = C * sqrt(2 * (g * h + (dp - p_cap) / rho))',
  symbols: {
    v: {
      name: 'speed of the metal',
      unit: 'm/s',
      range: [0, 10],
      why: 'faster than this the metal is a spray; slower, it stands',
    },
    C: dischargeCoefficient,
    h: {
      name: 'head of metal above the entry',
      unit: 'm',
      show: 'mm',
      range: [0, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
      note: 'It falls as the part fills, so try the far end too. Standing or lying changes it.',
    },
    dp: {
      name: 'pressure above the metal less pressure in the cavity',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 15000,
      note: 'What really acts in the cavity, never the gauge at the pump. About 0 before the cup is sealed by metal.',
    },
    p_cap: {
      name: 'pressure needed to enter the opening',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 20000],
      why: 'finer than a tenth of a millimetre, metal does not enter in practice',
      usual: 2805,
      note: 'Surface tension resists narrow openings; 0 for a wide gate.',
    },
    rho: liquidDensity,
    g: gravity,
  },
  where: [
    {
      test: 'g * h + (dp - p_cap) / rho > 0',
      why: 'The metal does not enter: surface tension at the opening is more than head and suction together. Give it more head, more suction at the cavity, or a thicker section.',
    },
  ],
  assumes: [
    'the sprue is full: until then there is only the fall of the stream',
    'no freezing on the way, no gas pushing back',
    'one coefficient for all losses',
  ],
  source: { key: 'ghosh-mallik', at: 'ch. 2, flow through the gate, with the pressures added', how: 'read' },
  alsoSee: [{ key: 'campbell', at: 'ch. 2 and 3, surface tension against filling', how: 'memory' }],
  examples: [
    {
      title: 'Web of the lamp shield under 40 mm of bronze with 15 kPa really at the cavity',
      given: { C: '0.7 1', h: '40 mm', dp: '15 kPa', p_cap: '2.805 kPa', rho: '7520 kg/m³' },
      expect: { v: '1.405 m/s' },
      from: {
        byHand:
          'gh = 0.39227. (15 000 − 2805) / 7520 = 1.62168. Sum 2.01394, twice it 4.02789, root 2.00696, times 0.7 is 1.405.',
      },
    },
    {
      title: 'The same web with no suction: it only just creeps in',
      given: { C: '0.7 1', h: '40 mm', dp: '0 kPa', p_cap: '2.805 kPa', rho: '7520 kg/m³' },
      expect: { v: '0.137 m/s' },
      from: {
        byHand:
          'gh = 0.39227, less 2805 / 7520 = 0.37301 leaves 0.01926; twice it 0.03852, root 0.19626, times 0.7 is 0.137.',
      },
    },
  ],
  caution: [
    'Suction pulls metal through any crack. Use a dry catch pot, keep nobody over the flask, and be able to let the air back in at once.',
  ],
  words: ['gate speed', 'vacuum', 'suction', 'head', 'Bernoulli', 'does it enter'],
});
