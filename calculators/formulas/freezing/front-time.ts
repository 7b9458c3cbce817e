import { defineFormula } from '../../core/formula.ts';

export const frontTime = defineFormula({
  id: 'freezing/front-time',
  title: 'Time for the frozen skin to reach a thickness',
  answers: 'When has the skin grown this thick, or the section frozen through from both faces?',
  equation: 't = s^2 / (4 * z^2 * alpha)',
  symbols: {
    t: {
      name: 'time',
      unit: 's',
      range: [0.0001, 100000],
      why: 'shorter than can be seen, or longer than matters',
    },
    s: {
      name: 'thickness of the frozen skin',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.2],
      why: 'small castings and ingots',
      usual: 0.003,
      note: 'Half the section, when it freezes from both faces.',
    },
    z: {
      name: 'front number',
      sign: 'ζ',
      unit: '1',
      range: [0.001, 2.5],
      why: 'beyond it the latent heat is not worth counting',
      usual: 0.5,
    },
    alpha: {
      name: 'thermal diffusivity of the solid metal',
      sign: 'α',
      unit: 'm²/s',
      show: 'mm²/s',
      range: [0.000001, 0.0002],
      why: 'the materials of the workshop lie here',
      usual: 0.000016,
    },
  },
  assumes: ['a metal mould or a chill; in sand the mould decides, not the skin'],
  source: { key: 'carslaw-jaeger', at: '§11.2', how: 'memory' },
  alsoSee: [{ key: 'ghosh-mallik', at: 'ch. 2, Example 2.6', how: 'read' }],
  examples: [
    {
      title: 'Iron slab of 100 mm against a face held cold',
      given: { s: '50 mm', z: '0.98 1', alpha: '15.78097 mm²/s' },
      expect: { t: '0.011455 h' },
      from: { key: 'ghosh-mallik', at: 'Example 2.6(a), read in an open companion', how: 'read' },
    },
  ],
  words: ['skin', 'square root of time', 'chill'],
});
