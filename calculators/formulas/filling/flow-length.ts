import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  metalSpeed,
  modulusOfSection,
  mouldTemperature,
  solidShareAtStop,
  superheatOnArrival,
} from '../symbols.ts';

export const flowLength = defineFormula({
  id: 'filling/flow-length',
  title: 'How far the metal runs, when the face of the mould decides',
  answers: 'Will the metal reach the far end of this section?',
  equation: 'l = v * rho * M * (f * L + c * dT) / (h * (T_f - T_m))',
  symbols: {
    l: { name: 'length the metal runs', unit: 'm', show: 'mm', range: [0.0001, 100], why: 'small castings' },
    v: metalSpeed,
    rho: liquidDensity,
    M: modulusOfSection,
    f: solidShareAtStop,
    L: latentHeat,
    c: liquidHeat,
    dT: superheatOnArrival,
    h: interfaceCoefficient,
    T_f: freezingTemperature,
    T_m: mouldTemperature,
  },
  where: [
    {
      test: 'T_f > T_m',
      why: 'The mould is hotter than the freezing temperature, so the metal cannot freeze.',
    },
  ],
  assumes: [
    'the tip always meets fresh mould, so the interface form leads',
    'one speed all the way: it really falls as the head falls and the channel fills',
    'flow stops when a fixed share of the metal is solid; measured lengths rise faster with superheat than this says',
  ],
  source: { key: 'flemings', at: 'ch. 7, fluidity', how: 'memory' },
  alsoSee: [{ key: 'campbell', at: 'ch. 3, fluidity', how: 'memory' }],
  examples: [
    {
      title: 'Web of the lamp shield in sand at 150 °C at half a metre a second',
      given: {
        v: '0.5 m/s',
        rho: '7520 kg/m³',
        M: '0.428 mm',
        f: '30 %',
        L: '200 kJ/kg',
        c: '520 J/(kg·K)',
        dT: '40 Δ°C',
        h: '1000 W/(m²·K)',
        T_f: '915 °C',
        T_m: '150 °C',
      },
      expect: { l: '170 mm' },
      from: { byHand: 'Flow time 260 060 / 765 000 = 0.33995 s, times 0.5 m/s is 0.170 m.' },
    },
  ],
  words: ['fluidity', 'misrun', 'cold shut', 'run length', 'reach'],
});
