import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  freezingTime,
  latentHeat,
  liquidDensity,
  liquidHeat,
  modulusOfSection,
  mouldDiffusivity,
  mouldTemperature,
  superheatOnArrival,
} from '../symbols.ts';

export const timeCurved = defineFormula({
  id: 'freezing/time-curved',
  title: 'Freezing time of a round bar or ball in sand',
  answers: 'How long does a bar or a ball take to freeze, when the mould alone decides?',
  equation: 'rho * M * (L + c * dT) = (T_f - T_m) * (2 * b * sqrt(t / pi) + n * k * t / (2 * R))',
  symbols: {
    t: freezingTime,
    rho: liquidDensity,
    M: modulusOfSection,
    L: latentHeat,
    c: liquidHeat,
    dT: superheatOnArrival,
    b: mouldDiffusivity,
    k: {
      name: 'conductivity of the mould',
      unit: 'W/(m·K)',
      range: [0.1, 2],
      why: 'sand, plaster and investment lie here',
      usual: 0.6,
    },
    n: {
      name: 'shape number',
      unit: '1',
      range: [0, 2],
      usual: 1,
      why: '0 is flat, 1 a cylinder, 2 a ball',
      note: '0 flat, 1 long cylinder, 2 ball.',
    },
    R: {
      name: 'radius of the face',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 0.2],
      why: 'sharper than this is an edge, larger is flat',
      usual: 0.00225,
      note: 'A bar has R = 2M, a ball R = 3M.',
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
    'perfect contact at the face',
    'two terms of a series: good while the heated layer of sand is not many times the radius',
  ],
  source: { key: 'adams-taylor', at: 'curvature term for cylinder and sphere', how: 'memory' },
  alsoSee: [{ key: 'ghosh-mallik', at: 'ch. 2, β form of the same equation', how: 'read' }],
  examples: [
    {
      title: 'Frame of the lamp shield in sand at 150 °C, as a bar',
      given: {
        rho: '7700 kg/m³',
        M: '1.125 mm',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        k: '0.607 W/(m·K)',
        n: '1 1',
        R: '2.25 mm',
        T_f: '915 °C',
        T_m: '150 °C',
      },
      expect: { t: '4.43 s' },
      from: {
        byHand:
          'Heat 7700 × 0.001125 × 262 400 = 2 273 040 J/m², over 765 gives 2971.3. With x = √t: 134.889 x² + 1128.379 x − 2971.3 = 0, x = (−1128.379 + √(1 273 239 + 1 603 183)) / 269.778 = (−1128.379 + 1696.000) / 269.778 = 2.1040, t = 4.427 s.',
      },
    },
  ],
  words: ['cylinder', 'sphere', 'bar', 'curvature', 'Adams'],
});
