import { defineFormula } from '../../core/formula.ts';

export const feederSize = defineFormula({
  id: 'feeding/feeder-size',
  title: 'Diameter of a round feeder, from the modulus',
  answers: 'How wide must a feeder as tall as it is wide be, to stay liquid longest?',
  equation: 'D = s * k * M',
  symbols: {
    D: { name: 'diameter of the feeder', unit: 'm', show: 'mm', range: [0.0005, 0.5], why: 'small castings' },
    s: {
      name: 'shape number',
      unit: '1',
      range: [4, 6],
      usual: 6,
      why: '6 when all of a cylinder as tall as wide cools, 5 when its foot does not',
      note: '6: cools all over, or half as tall as wide with its foot on the casting. 5: as tall as wide, its foot does not cool.',
    },
    k: {
      name: 'step',
      unit: '1',
      range: [1, 1.5],
      why: '1 is no step; more than 1.5 wastes metal',
      usual: 1.2,
    },
    M: {
      name: 'modulus of the casting',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 0.1],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
      usual: 0.001424,
    },
  },
  assumes: [
    'same mould round feeder and casting, no sleeve',
    'check the volume rule too: the larger feeder wins',
  ],
  source: { key: 'wlodawer', at: 'modulus method', how: 'memory' },
  alsoSee: [{ key: 'ghosh-mallik', at: 'ch. 2, Example 2.9', how: 'read' }],
  examples: [
    {
      title: 'Cylinder of 200 × 100 mm, modulus 25 mm, foot of the feeder not cooling',
      given: { s: '5 1', k: '1.2 1', M: '25 mm' },
      expect: { D: '150 mm' },
      from: { key: 'gate-me', at: 'riser by the modulus method', how: 'read' },
    },
  ],
  words: ['riser', 'feeder', 'modulus method'],
});
