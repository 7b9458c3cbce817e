import { defineFormula } from '../../core/formula.ts';
import {
  interfaceCoefficient,
  liquidDensity,
  liquidHeat,
  metalSpeed,
  modulusOfSection,
  mouldTemperature,
} from '../symbols.ts';

export const runLoss = defineFormula({
  id: 'filling/run-loss',
  title: 'Temperature of the metal after a run through the mould',
  answers: 'How hot is the metal still, when it arrives at the next section?',
  equation: 'T_2 = T_m + (T_1 - T_m) * exp(-h * l / (rho * c * M * v))',
  symbols: {
    T_2: {
      name: 'temperature at the end of the run',
      unit: 'K',
      show: '°C',
      range: [300, 2000],
      why: 'from tin to iron',
    },
    T_1: {
      name: 'temperature at the start of the run',
      unit: 'K',
      show: '°C',
      range: [450, 2000],
      why: 'from tin to iron',
      usual: 1323.15,
    },
    T_m: mouldTemperature,
    h: interfaceCoefficient,
    l: {
      name: 'length of the run',
      unit: 'm',
      show: 'mm',
      range: [0.001, 1],
      why: 'small castings',
      usual: 0.05,
    },
    rho: liquidDensity,
    c: liquidHeat,
    M: modulusOfSection,
    v: metalSpeed,
  },
  where: [{ test: 'T_1 > T_m', why: 'The metal is no hotter than the mould.' }],
  assumes: [
    'all liquid to the end: below the liquidus the latent heat holds the temperature up',
    'first metal through; later metal finds the walls warmed',
    'in perfect contact the loss is larger, up to about three times',
  ],
  source: { key: 'incropera', at: '§8.3, flow in a tube with constant wall temperature', how: 'memory' },
  examples: [
    {
      title: 'Frame of the lamp shield, 50 mm at 0.5 m/s',
      given: {
        T_1: '1050 °C',
        T_m: '150 °C',
        h: '1000 W/(m²·K)',
        l: '50 mm',
        rho: '7520 kg/m³',
        c: '520 J/(kg·K)',
        M: '1.125 mm',
        v: '0.5 m/s',
      },
      expect: { T_2: '1030 °C' },
      from: {
        byHand:
          'Exponent 1000 × 0.05 / (7520 × 520 × 0.001125 × 0.5) = 50 / 2199.6 = 0.02273; e to its negative 0.97753; 150 + 900 × 0.97753 = 1029.8.',
      },
    },
  ],
  words: ['temperature chain', 'sprue', 'runner', 'superheat on arrival'],
});
