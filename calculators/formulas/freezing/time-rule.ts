import { defineFormula } from '../../core/formula.ts';

export const timeRule = defineFormula({
  id: 'freezing/time-rule',
  title: 'Freezing time by rule, from a test casting',
  answers: 'A test piece froze in a known time; how long will this section take in the same mould?',
  equation: 't = B * M^n',
  empirical: true,
  symbols: {
    t: {
      name: 'time to freeze',
      unit: 's',
      range: [0.001, 100000],
      why: 'shorter than the pour or longer than a day',
    },
    B: {
      name: 'mould constant',
      unit: 's/mm²',
      range: [0.05, 20],
      why: 'a test casting outside this is more likely a slip of units',
      usual: 1.5,
      note: 'One metal, one mould, one pouring temperature. With n other than 2 it is the time in seconds at a modulus of 1 mm.',
    },
    M: {
      name: 'modulus',
      unit: 'mm',
      range: [0.1, 50],
      why: 'from a thin web to a block of 20 kg; larger needs other methods',
      usual: 3,
    },
    n: {
      name: 'exponent',
      unit: '1',
      range: [1, 2],
      usual: 2,
      why: '2 when the mould carries the heat away, 1 when the face between metal and mould decides',
      note: '2 in sand and investment, nearer 1 in a metal mould or a very thin section.',
    },
  },
  assumes: [
    'same metal, mould, mould temperature and superheat as the test casting',
    'a mould thick enough that its outside stays cool',
  ],
  source: { key: 'chvorinov', at: 'the rule of the square', how: 'memory' },
  alsoSee: [{ key: 'groover', at: 'ch. 10, solidification time', how: 'memory' }],
  examples: [
    {
      title: 'Sphere of 200 mm with a factor of 0.97 million s/m²',
      given: { B: '0.97 s/mm²', M: '33.33333 mm', n: '2 1' },
      expect: { t: '1078 s' },
      from: { key: 'gate-me', at: '2003, solidification time of a sphere', how: 'read' },
    },
    {
      title: 'Constant found from a 50 mm cube that took 155 s',
      given: { t: '155 s', M: '8.333333 mm', n: '2 1' },
      expect: { B: '2.232 s/mm²' },
      from: { key: 'groover', at: 'ch. 10, problem on the mould constant', how: 'memory' },
    },
  ],
  words: ['Chvorinov', 'solidification time', 'mould constant', 'test casting'],
});
