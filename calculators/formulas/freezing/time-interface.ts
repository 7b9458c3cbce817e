import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  freezingTime,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldTemperature,
  superheatOnArrival,
} from '../symbols.ts';

export const timeInterface = defineFormula({
  id: 'freezing/time-interface',
  title: 'Freezing time when the face of the mould decides',
  answers: 'How long does a thin wall or a die casting take to freeze?',
  equation: 't = rho * M * (L + c * dT) / (h * (T_f - T_m))',
  symbols: {
    t: freezingTime,
    rho: liquidDensity,
    M: modulusOfSection,
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
    'the face of the mould stays at the mould temperature: short times, or a metal mould that carries heat away',
    'one coefficient all the time, though it falls as a gap opens',
    'the metal itself is even in temperature through its thickness',
  ],
  source: { key: 'flemings', at: 'ch. 1, interface-controlled freezing', how: 'memory' },
  alsoSee: [{ key: 'poirier-geiger', at: 'ch. 10, freezing with interface resistance', how: 'memory' }],
  examples: [
    {
      title: 'Web of the lamp shield, h = 1000',
      given: {
        rho: '7700 kg/m³',
        M: '0.428 mm',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        h: '1000 W/(m²·K)',
        T_f: '915 °C',
        T_m: '20 °C',
      },
      expect: { t: '0.966 s' },
      from: {
        byHand:
          'Heat to lose 7700 × 0.000428 × 262 400 = 864 765 J/m². Rate 1000 × 895 = 895 000 W/m². 864 765 / 895 000 = 0.966 s.',
      },
    },
  ],
  words: ['die', 'permanent mould', 'thin wall', 'heat transfer coefficient'],
});
