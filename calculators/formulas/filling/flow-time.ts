import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldDiffusivity,
  mouldTemperature,
  solidShareAtStop,
  superheatOnArrival,
} from '../symbols.ts';

export const flowTime = defineFormula({
  id: 'filling/flow-time',
  title: 'Time a section keeps flowing, face and mould both counted',
  answers: 'How long have I got before this section is too stiff to flow?',
  equation:
    'b * (T_f - T_m) * (2 * sqrt(t / pi) - b / h * (1 - erfcx(h * sqrt(t) / b))) = rho * M * (f * L + c * dT)',
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
    b: mouldDiffusivity,
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
    'a dry mould of sand, plaster or investment, thick enough that its outside stays cool',
    'flow stops when a fixed share of the metal is solid',
    'the face stays the same face: the tip of a stream meets fresh sand all the time and has less, see the interface form',
  ],
  source: { key: 'flemings', at: 'ch. 7, fluidity', how: 'memory' },
  alsoSee: [{ key: 'carslaw-jaeger', at: '§2.7', how: 'memory' }],
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
        b: '1000 J·s^-½/(m²·K)',
        h: '1000 W/(m²·K)',
        T_f: '915 °C',
        T_m: '150 °C',
      },
      expect: { t: '0.54 s' },
      from: {
        byHand:
          'fL + cΔT = 60 000 + 20 800 = 80 800; times 7520 × 0.000428 = 3.21856 gives 260 060 J/m²; over 765 000 is 0.33995. At t = 0.54: 2√(t/π) = 0.82919, erfcx(0.73485) = 0.51251, bracket 0.34170. At 0.53: 0.82148 − 0.48503 = 0.33645. Between them 0.537 s.',
      },
    },
  ],
  words: ['fluidity', 'misrun', 'race', 'how long have I got', 'critical solid fraction'],
});
