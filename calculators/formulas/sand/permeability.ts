import { defineFormula } from '../../core/formula.ts';

export const permeability = defineFormula({
  id: 'sand/permeability',
  title: 'Permeability of a sand specimen',
  answers: 'How easily does gas pass through this sand?',
  equation: 'K = mu * V * l / (p * A * t)',
  symbols: {
    K: {
      name: 'permeability',
      unit: 'AFS',
      range: [0.03, 3000],
      why: 'from investment to bare gravel',
      note: 'The trade number is the flow itself; as an area it holds for air of 0.018 mPa·s.',
    },
    V: {
      name: 'volume of air passed',
      unit: 'm³',
      show: 'cm³',
      range: [0.00001, 0.01],
      why: 'the test as it is done',
      usual: 0.002,
    },
    l: {
      name: 'height of the specimen',
      unit: 'm',
      show: 'mm',
      range: [0.005, 0.2],
      why: 'the test as it is done',
      usual: 0.0508,
    },
    p: {
      name: 'pressure across it',
      unit: 'Pa',
      show: 'cmH2O',
      range: [10, 10000],
      why: 'the test as it is done',
      usual: 980.665,
    },
    A: {
      name: 'area of the specimen',
      unit: 'm²',
      show: 'cm²',
      range: [0.00001, 0.05],
      why: 'from a pin hole to a large gate',
      usual: 0.0020268,
    },
    t: {
      name: 'time',
      unit: 's',
      range: [0.5, 3600],
      why: 'shorter than can be seen, or longer than matters',
      usual: 60,
    },
    mu: { name: 'viscosity of air', sign: 'μ', unit: 'Pa·s', constant: 0.000018 },
  },
  assumes: [
    'slow, even flow through all the specimen and none round it',
    'air at room temperature: hot gas in a hot mould is two to three times as viscous',
  ],
  source: { key: 'afs-handbook', at: 'permeability of standard specimens', how: 'memory' },
  examples: [
    {
      title: 'Standard specimen, 9.6 cm of water, 36 s',
      given: { V: '2000 cm³', l: '50.8 mm', p: '9.6 cmH2O', A: '20.268 cm²', t: '36 s' },
      expect: { K: '87.0 AFS' },
      from: { key: 'sand-lab-sheets', at: 'permeability by the AFS method', how: 'read' },
    },
  ],
  words: ['AFS', 'gas', 'venting', 'Darcy', 'blow'],
});
