import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  freezingTime,
  interfaceCoefficient,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldDiffusivity,
  mouldTemperature,
  superheatOnArrival,
} from '../symbols.ts';

export const timeBoth = defineFormula({
  id: 'freezing/time-both',
  title: 'Freezing time with the face and the mould both in the way',
  answers: 'How long does a thin section take to freeze in sand, when the gap at the face counts too?',
  equation:
    'b * (T_f - T_m) * (2 * sqrt(t / pi) - b / h * (1 - erfcx(h * sqrt(t) / b))) = rho * M * (L + c * dT)',
  symbols: {
    t: freezingTime,
    rho: liquidDensity,
    M: modulusOfSection,
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
    'the metal stays near its freezing temperature while it freezes',
    'one coefficient all the time',
    'flat faces: a round bar freezes sooner, see the form with curvature',
  ],
  source: {
    key: 'carslaw-jaeger',
    at: '§2.7, semi-infinite solid heated through a surface coefficient, integrated over time',
    how: 'memory',
  },
  alsoSee: [{ key: 'incropera', at: '§5.7, surface convection case', how: 'memory' }],
  examples: [
    {
      title: 'Web of the lamp shield, cold sand, h = 1000: three times as long as perfect contact gives',
      given: {
        rho: '7700 kg/m³',
        M: '0.428 mm',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        h: '1000 W/(m²·K)',
        T_f: '915 °C',
        T_m: '20 °C',
      },
      expect: { t: '2.10 s' },
      from: {
        byHand:
          'Needed 864 765 / (1000 × 895) = 0.96622. Try t = 2.10: √t = 1.44914, 2√(t/π) = 1.63517; erfcx(1.44914) = 0.33011, so the bracket is 1.63518 − 0.66989 = 0.96529. At 2.11 it is 0.96858. Between them 0.96622 lies at 2.103 s.',
      },
    },
  ],
  caution: ['This is the time to freeze, not the time to touch.'],
  words: ['interface', 'contact resistance', 'thin section', 'series resistance', 'erfc'],
});
