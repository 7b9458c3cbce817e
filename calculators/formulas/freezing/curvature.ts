import { defineFormula } from '../../core/formula.ts';

export const curvature = defineFormula({
  id: 'freezing/curvature',
  title: 'Help that a round face gets from the mould around it',
  answers: 'How much better does a mould cool a bar or a ball than a flat plate?',
  equation: 'h_R = n * k / (2 * R)',
  symbols: {
    h_R: {
      name: 'extra conductance of a curved mould',
      unit: 'W/(m²·K)',
      range: [0, 5000],
      why: 'a face sharper than half a millimetre is an edge, not a bar',
    },
    n: {
      name: 'shape number',
      unit: '1',
      range: [0, 2],
      usual: 1,
      why: '0 is flat, 1 a cylinder, 2 a ball',
      note: '0 flat, 1 cylinder, 2 ball. A square bar is close to a cylinder of the same modulus, R = 2M.',
    },
    k: {
      name: 'conductivity of the mould',
      unit: 'W/(m·K)',
      range: [0.1, 2],
      why: 'sand, plaster and investment lie here',
      usual: 0.6,
    },
    R: {
      name: 'radius of the face',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.2],
      why: 'sharper than this is an edge, larger is flat',
      usual: 0.00225,
    },
  },
  assumes: ['the mould is outside the curve; round a core the sign turns and the core soon warms through'],
  source: { key: 'adams-taylor', at: 'curvature term for cylinder and sphere', how: 'memory' },
  alsoSee: [{ key: 'flemings', at: 'ch. 1, effect of mould curvature', how: 'memory' }],
  examples: [
    {
      title: 'Frame of the lamp shield, 4.5 mm square, as a bar of 2.25 mm radius',
      given: { n: '1 1', k: '0.607 W/(m·K)', R: '2.25 mm' },
      expect: { h_R: '134.9 W/(m²·K)' },
      from: { byHand: '0.607 / (2 × 0.00225) = 134.9.' },
    },
  ],
  words: ['cylinder', 'sphere', 'bar', 'curved mould'],
});
