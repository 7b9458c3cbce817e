import { defineFormula } from '../../core/formula.ts';

export const cakeBending = defineFormula({
  id: 'sand/cake-bending',
  title: 'Bending stress in a cake of sand under suction',
  answers: 'Will the suction break the sand between its supports?',
  equation: 'sigma = K * dp * (s / d)^2',
  symbols: {
    sigma: {
      name: 'bending stress in the sand',
      sign: 'σ',
      unit: 'Pa',
      show: 'kPa',
      stress: true,
      range: [0, 10000000],
      why: 'beyond any sand',
      note: 'To find the suction you may pull: the transverse strength of your own sand, from a test bar, divided by 3 or more (common practice, no source).',
    },
    K: {
      name: 'plate number',
      unit: '1',
      range: [0.1, 0.8],
      why: 'the plates of the tables lie here',
      usual: 0.31,
      note: 'Round, edge resting 0.31, edge held 0.19 at the edge. Square, edge resting 0.29, held 0.31 at the middle of a side. Long strip, resting 0.75, held 0.5.',
    },
    dp: {
      name: 'pressure across the cake',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 15000,
    },
    s: {
      name: 'span between supports',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.5],
      why: 'the flasks of a small workshop',
      usual: 0.06,
      note: 'Diameter or shorter side. On a grid only the hole is the span.',
    },
    d: {
      name: 'thickness of the cake',
      unit: 'm',
      show: 'mm',
      range: [0.001, 0.3],
      why: 'the flasks of a small workshop',
      usual: 0.02,
    },
  },
  assumes: [
    'a thin plate: thickness no more than about a fifth of the span. A thicker cake arches and this overstates the bending; look at the shear',
    'all the pressure drops across the cake and presses on one face; suction that spreads through the sand pulls grain by grain instead',
    'compare with transverse or tensile strength divided by a margin of 3 or more, never with green compression',
  ],
  source: { key: 'timoshenko-plates', at: 'ch. 3 and 5, circular and rectangular plates', how: 'memory' },
  alsoSee: [{ key: 'young-budynas', at: 'ch. 11, tables of flat plates', how: 'memory' }],
  examples: [
    {
      title: 'Clamped round plate of 80 in, 1 in thick, 6 psi',
      given: { K: '0.1875 1', dp: '6 psi', s: '80 in', d: '1 in' },
      expect: { sigma: '7200 psi' },
      from: {
        key: 'timoshenko-strength',
        at: 'Part II, pp. 96–97, circular plate with a clamped edge; read as the reference value of a verification manual',
        how: 'read',
      },
    },
    {
      title: 'Sand cake over a 60 mm opening, 12 mm thick, 15 kPa, edge resting',
      given: { K: '0.309 1', dp: '15 kPa', s: '60 mm', d: '12 mm' },
      expect: { sigma: '116 kPa' },
      from: { byHand: '(60 / 12)² = 25; 0.309 × 15 × 25 = 115.9 kPa.' },
    },
  ],
  caution: [
    'When a cake breaks, metal follows the suction. Nobody stands over the flask, and a dry catch pot waits below.',
  ],
  words: ['vacuum', 'safe suction', 'how much suction', 'sand collapse', 'mould strength', 'plate', 'cope'],
});
