import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  freezingTime,
  latentHeat,
  liquidDensity,
  liquidHeat,
  mouldDiffusivity,
  mouldTemperature,
} from '../symbols.ts';

export const button = defineFormula({
  id: 'feeding/button',
  title: 'How long the sprue button stays liquid',
  answers: 'Does the button feed? Only if it outlasts the casting and the stem: how long is that?',
  equation: 'rho * H * (L + c * dT) = 2 * b * (T_f - T_m) * (1 + 4 * H / D) * sqrt(t / pi) + q * t',
  symbols: {
    t: { ...freezingTime, name: 'time until the button is solid' },
    H: {
      name: 'depth of metal in the cup',
      unit: 'm',
      show: 'mm',
      range: [0.002, 0.1],
      why: 'small castings',
      usual: 0.012,
    },
    D: {
      name: 'width of the cup',
      unit: 'm',
      show: 'mm',
      range: [0.004, 0.2],
      why: 'small castings',
      usual: 0.02,
    },
    q: {
      name: 'heat the open top loses',
      unit: 'W/m²',
      show: 'kW/m²',
      range: [0, 250_000],
      why: 'from well covered to bare white heat',
      usual: 60_000,
      note: 'Bare bronze 60 to 120 kW/m², under hot dry charcoal or powder 10 to 20 kW/m².',
    },
    rho: liquidDensity,
    L: latentHeat,
    c: liquidHeat,
    dT: {
      name: 'superheat in the cup',
      sign: 'ΔT',
      unit: 'ΔK',
      show: 'Δ°C',
      range: [0, 400],
      why: 'more than this burns the metal and the mould',
      usual: 40,
    },
    b: mouldDiffusivity,
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
    'a straight cup, its side and foot against the mould, the stem’s mouth counted as mould',
    'the top loses the same heat all the while',
    'perfect contact: with an air gap it lasts longer, and so does the casting, so compare like with like',
  ],
  source: {
    key: 'carslaw-jaeger',
    at: '§2.5, heat into a half-space at a steady face, with the loss at the top added',
    how: 'memory',
  },
  alsoSee: [{ key: 'campbell', at: 'ch. 10, feeding by the pouring cup', how: 'memory' }],
  examples: [
    {
      title: 'A cup of 20 mm, 12 mm deep, of silicon bronze in sand at 150 °C',
      given: {
        rho: '7520 kg/m³',
        H: '12 mm',
        D: '20 mm',
        L: '200 kJ/kg',
        c: '520 J/(kg·K)',
        dT: '40 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        T_f: '915 °C',
        T_m: '150 °C',
        q: '60 kW/m²',
      },
      expect: { t: '36.5 s' },
      from: {
        byHand:
          'Heat under each square metre: 7520 × 0.012 × 220 800 = 19.925 MJ. Mould: 2 × 1000 × 765 × 3.4 ÷ 1.772454 = 2.93491 MJ a root second. Quadratic in √t: 0.06 t + 2.93491 √t = 19.925, √t = (−2.93491 + √(8.61372 + 4.78200)) ÷ 0.12 = (−2.93491 + 3.66002) ÷ 0.12 = 6.0426; squared 36.51 s.',
      },
    },
  ],
  caution: ['A button that looks solid may be liquid under its skin. Keep your face away and do not tap it.'],
  words: ['sprue button', 'pouring cup', 'feeder', 'topping', 'when to let go of the suction'],
});
