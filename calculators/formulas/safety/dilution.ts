import { defineFormula } from '../../core/formula.ts';

export const dilution = defineFormula({
  id: 'safety/dilution',
  title: 'Fume or gas in the room as time goes on',
  answers: 'A source runs and a fan changes the air: how much is in the air after this time?',
  equation: 'C = k * G / Q * (1 - exp(-Q * t / (k * V))) + C_0 * exp(-Q * t / (k * V))',
  symbols: {
    C: {
      name: 'in the air after that time',
      unit: 'mg/m³',
      range: [0, 100000],
      why: 'far past any limit',
      note: 'Carbon monoxide: 1 ppm is 1.16 mg/m³ at 20 °C.',
    },
    G: {
      name: 'what the source gives off',
      unit: 'kg/s',
      show: 'g/s',
      range: [0, 0.01],
      why: 'from nothing to a fire',
      usual: 0.000005,
    },
    Q: {
      name: 'fresh air',
      unit: 'm³/s',
      show: 'm³/h',
      range: [0.0001, 20],
      why: 'from a draughty room to a works fan',
      usual: 0.1,
    },
    V: {
      name: 'volume of the room',
      unit: 'm³',
      range: [1, 10000],
      why: 'from a shed to a hall',
      usual: 60,
    },
    t: {
      name: 'time',
      unit: 's',
      show: 'min',
      range: [1, 86400],
      why: 'a day',
      usual: 600,
    },
    C_0: {
      name: 'in the air at the start',
      unit: 'mg/m³',
      range: [0, 100000],
      why: 'far past any limit',
      usual: 0,
    },
    k: {
      name: 'factor for poor mixing',
      unit: '1',
      range: [1, 10],
      why: '1 is perfect; a dead corner 10',
      usual: 3,
      note: 'Fresh air that passes the melt by does not count. 3 to 10 where nothing is known.',
    },
  },
  assumes: [
    'a well-mixed room with a factor for what is not: your nose is nearer the melt than the mean',
    'the air that comes in is clean and nothing settles or is drawn off at the source',
  ],
  source: { key: 'room-pollution', at: 'concentration of pollution in rooms, equation 1', how: 'read' },
  alsoSee: [{ key: 'acgih-ventilation', at: 'dilution ventilation, mixing factor', how: 'memory' }],
  examples: [
    {
      title: 'A smoking burnout in a shed, ten minutes, poor mixing',
      given: { G: '0.005 g/s', Q: '0.1 m³/s', V: '60 m³', t: '600 s', C_0: '1 mg/m³', k: '3 1' },
      expect: { C: '43.24 mg/m³' },
      from: {
        byHand:
          '0.1 × 600 ÷ 180 = 1/3, e to minus it 0.716531. 3 × 5 mg/s ÷ 0.1 m³/s = 150; × 0.283469 = 42.520; plus 0.7165.',
      },
    },
  ],
  caution: [
    'Shown to teach: measured air, local codes and licensed practice decide. Draw fume off at the source; diluting comes last.',
    'Carbon monoxide has no smell. An alarm that sounds, in the breathing zone, and never a closed cellar or garage.',
  ],
  words: ['ventilation', 'carbon monoxide', 'air changes', 'fan', 'well-mixed room', 'purge'],
});
