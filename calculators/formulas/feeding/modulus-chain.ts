import { defineFormula } from '../../core/formula.ts';

export const modulusChain = defineFormula({
  id: 'feeding/modulus-chain',
  title: 'Modulus the next section needs, on the way to the feeder',
  answers: 'How much thicker must each section be than the one it feeds?',
  equation: 'M_2 = k * M_1',
  symbols: {
    M_2: {
      name: 'modulus of the section that feeds',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.1],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
    },
    M_1: {
      name: 'modulus of the section that is fed',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.1],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
      usual: 0.001125,
    },
    k: {
      name: 'step',
      unit: '1',
      range: [1, 1.5],
      why: '1 is no step; more than 1.5 wastes metal',
      usual: 1.2,
      note: 'Casting to neck 1.1, casting to feeder 1.2.',
    },
  },
  assumes: [
    'one mould all round',
    'a rule from steel; long-freezing bronze feeds worse over distance than it says',
  ],
  source: { key: 'wlodawer', at: 'rule of casting, neck and feeder 1 : 1.1 : 1.2', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 10, feeding rules', how: 'memory' }],
  examples: [
    {
      title: 'Casting of 5 mm modulus, its neck',
      given: { M_1: '5 mm', k: '1.1 1' },
      expect: { M_2: '5.5 mm' },
      from: { key: 'wlodawer', at: 'rule of casting, neck and feeder', how: 'memory' },
    },
  ],
  words: ['directional solidification', 'riser', 'neck', 'feed path'],
});
