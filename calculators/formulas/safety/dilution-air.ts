import { defineFormula } from '../../core/formula.ts';

export const dilutionAir = defineFormula({
  id: 'safety/dilution-air',
  title: 'Fresh air a steady source needs',
  answers: 'How much air must the fan bring to hold the fume at this level, however long it runs?',
  equation: 'Q = k * G / (C - C_in)',
  symbols: {
    Q: {
      name: 'fresh air',
      unit: 'm³/s',
      show: 'm³/h',
      range: [0, 100],
      why: 'past that the answer is not more air but less fume',
    },
    G: {
      name: 'what the source gives off',
      unit: 'kg/s',
      show: 'g/s',
      range: [0, 0.01],
      why: 'from nothing to a fire',
      usual: 0.000005,
    },
    C: {
      name: 'level to hold',
      unit: 'mg/m³',
      range: [0.0001, 100000],
      why: 'from lead to far past any limit',
      usual: 2,
      note: 'Well below the limit where you work, not at it.',
    },
    C_in: {
      name: 'already in the fresh air',
      sign: 'C_in',
      unit: 'mg/m³',
      range: [0, 1000],
      why: 'a street with traffic',
      usual: 0.1,
    },
    k: {
      name: 'factor for poor mixing',
      unit: '1',
      range: [1, 10],
      why: '1 is perfect; a dead corner 10',
      usual: 3,
    },
  },
  where: [{ test: 'C > C_in', why: 'The air that comes in is already as bad as the level: no fan will do.' }],
  assumes: ['a steady source and a room gone steady', 'a well-mixed room with a factor for what is not'],
  source: { key: 'room-pollution', at: 'concentration of pollution in rooms, long times', how: 'read' },
  alsoSee: [{ key: 'acgih-ventilation', at: 'dilution ventilation, mixing factor', how: 'memory' }],
  examples: [
    {
      title: '5 mg/s of zinc oxide held at 2 mg/m³',
      given: { G: '0.005 g/s', C: '2 mg/m³', C_in: '0.1 mg/m³', k: '3 1' },
      expect: { Q: '7.895 m³/s' },
      from: { byHand: '3 × 5 ÷ 1.9 = 7.8947: a barn’s worth of air each minute. So draw it off at the lip.' },
    },
  ],
  caution: [
    'Shown to teach: measured air, local codes and licensed practice decide. Never dilute what can be drawn off at the source, and never dilute lead, cadmium or silica.',
  ],
  words: ['ventilation', 'fan', 'extraction', 'air changes'],
});
