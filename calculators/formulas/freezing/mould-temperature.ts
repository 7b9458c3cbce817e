import { defineFormula } from '../../core/formula.ts';

export const mouldTemperature = defineFormula({
  id: 'freezing/mould-temperature',
  title: 'Temperature inside the mould, at a depth and a time',
  answers: 'How far has the heat got into the sand by now?',
  equation: 'T = T_s + (T_i - T_s) * erf(x / (2 * sqrt(alpha * t)))',
  symbols: {
    T: {
      name: 'temperature at the depth',
      unit: 'K',
      show: '°C',
      range: [240, 2000],
      why: 'between a hard frost and iron',
    },
    x: {
      name: 'depth below the face',
      unit: 'm',
      show: 'mm',
      range: [0.0001, 2],
      why: 'shallower than a grain, or deeper than any mould',
      usual: 0.005,
    },
    t: {
      name: 'time',
      unit: 's',
      range: [0.01, 10000000],
      why: 'shorter than can be seen, or longer than matters',
      usual: 10,
    },
    alpha: {
      name: 'thermal diffusivity of the mould',
      sign: 'α',
      unit: 'm²/s',
      show: 'mm²/s',
      range: [1e-8, 0.00001],
      why: 'the materials of the workshop lie here',
      usual: 3.6e-7,
    },
    T_s: {
      name: 'temperature of the face',
      unit: 'K',
      show: '°C',
      range: [240, 2000],
      why: 'between a cold workshop and iron',
      usual: 1188.15,
    },
    T_i: {
      name: 'temperature of the mould before',
      unit: 'K',
      show: '°C',
      range: [240, 1200],
      why: 'between a hard frost and iron',
      usual: 293.15,
    },
  },
  assumes: [
    'a thick, dry mould and a face held at one temperature',
    'no water to boil: damp sand stays at 100 °C until dry',
  ],
  source: { key: 'carslaw-jaeger', at: '§2.4', how: 'memory' },
  alsoSee: [{ key: 'incropera', at: '§5.7, constant surface temperature', how: 'memory' }],
  examples: [
    {
      title: 'Soil at 20 °C under a surface at −15 °C for 60 days: how deep the frost goes',
      given: { T: '0 °C', t: '1440 h', alpha: '0.138 mm²/s', T_s: '-15 °C', T_i: '20 °C' },
      expect: { x: '0.68 m' },
      from: { key: 'incropera', at: 'ch. 5, water main example', how: 'read' },
    },
  ],
  caution: ['Sand a few millimetres from the casting is hot enough to burn long after the metal looks dark.'],
  words: ['heat penetration', 'semi-infinite', 'depth', 'binder burn-out'],
});
