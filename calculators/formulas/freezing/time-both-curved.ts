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

export const timeBothCurved = defineFormula({
  id: 'freezing/time-both-curved',
  title: 'Freezing time with face, mould and curvature together',
  answers: 'How long does a thin bar or boss take to freeze, with everything counted that one equation can?',
  equation:
    'rho * M * (L + c * dT) = h * (T_f - T_m) * (h_R * t / (h + h_R) + h * b^2 / (h + h_R)^3 * (2 * (h + h_R) / b * sqrt(t / pi) - 1 + erfcx((h + h_R) * sqrt(t) / b)))',
  symbols: {
    t: freezingTime,
    rho: liquidDensity,
    M: modulusOfSection,
    L: latentHeat,
    c: liquidHeat,
    dT: superheatOnArrival,
    b: mouldDiffusivity,
    h: interfaceCoefficient,
    h_R: {
      name: 'extra conductance of a curved mould',
      unit: 'W/(m²·K)',
      range: [0, 1500],
      why: 'a face sharper than half a millimetre is an edge, not a bar',
      usual: 135,
      note: 'n·k/(2R); 0 for a flat face, and then this is the form with both resistances.',
    },
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
    'exact for a ball and for a flat face; for a bar the curvature is right at first and a little strong later',
    'one interface coefficient all the time',
  ],
  source: {
    key: 'carslaw-jaeger',
    at: '§9.10, region outside a sphere heated through a surface coefficient, integrated over time',
    how: 'memory',
  },
  examples: [
    {
      title: 'Frame of the lamp shield in sand at 150 °C, h = 1000',
      given: {
        rho: '7700 kg/m³',
        M: '1.125 mm',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        h: '1000 W/(m²·K)',
        h_R: '134.9 W/(m²·K)',
        T_f: '915 °C',
        T_m: '150 °C',
      },
      expect: { t: '8.42 s' },
      from: {
        byHand:
          'Needed 2 273 040 / (1000 × 765) = 2.9713 s. H = 1134.9. At t = 8.4: first part 134.9 / 1134.9 × 8.4 = 0.9985; second 1e9 / 1.46175e9 = 0.68411 times (3.71152 − 1 + 0.16450 = 2.87602) = 1.9675; sum 2.9660. At 8.5 it is 2.9923. Between them 2.9713 lies at 8.42 s.',
      },
    },
  ],
  words: ['interface', 'curvature', 'bar', 'boss', 'lug'],
});
