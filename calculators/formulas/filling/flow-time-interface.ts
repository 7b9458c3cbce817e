import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldTemperature,
  solidShareAtStop,
  superheatOnArrival,
} from '../symbols.ts';

export const flowTimeInterface = defineFormula({
  id: 'filling/flow-time-interface',
  title: 'Time the tip of the stream keeps flowing',
  answers: 'How long does the front of the metal run before it is too stiff?',
  equation: 't = rho * M * (f * L + c * dT) / (h * (T_f - T_m))',
  symbols: {
    t: {
      name: 'time it keeps flowing',
      unit: 's',
      range: [0.00001, 100000],
      why: 'shorter than the pour or longer than a day',
    },
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
    'the tip meets fresh mould all the time, at the mould temperature',
    'hotter metal from behind does not overtake it',
    'flow stops when a fixed share of the metal is solid',
  ],
  source: { key: 'flemings', at: 'ch. 7, fluidity with interface resistance', how: 'memory' },
  examples: [
    {
      title: 'Web of the lamp shield in sand at 150 °C, 40 degrees of superheat left',
      given: {
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
      expect: { t: '0.340 s' },
      from: {
        byHand:
          '7520 × 0.000428 × (60 000 + 20 800) = 260 060 J/m², over 1000 × 765 = 765 000 W/m² is 0.340 s.',
      },
    },
  ],
  words: ['fluidity', 'misrun', 'race', 'tip', 'critical solid fraction'],
});
