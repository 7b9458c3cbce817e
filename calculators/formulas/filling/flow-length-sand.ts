import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  latentHeat,
  liquidDensity,
  liquidHeat,
  metalSpeed,
  modulusOfSection,
  mouldDiffusivity,
  mouldTemperature,
  solidShareAtStop,
  superheatOnArrival,
} from '../symbols.ts';

export const flowLengthSand = defineFormula({
  id: 'filling/flow-length-sand',
  title: 'How far the metal runs in sand with perfect contact, at most',
  answers: 'With nothing between metal and sand, what is the furthest the metal could run?',
  equation: 'l = v * pi / 4 * (rho * M * (f * L + c * dT) / (b * (T_f - T_m)))^2',
  symbols: {
    l: { name: 'length the metal runs', unit: 'm', show: 'mm', range: [0.0001, 100], why: 'small castings' },
    v: metalSpeed,
    rho: liquidDensity,
    M: modulusOfSection,
    f: solidShareAtStop,
    L: latentHeat,
    c: liquidHeat,
    dT: superheatOnArrival,
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
    'a dry mould of sand, plaster or investment, thick enough that its outside stays cool',
    'perfect contact, and a face that stays the same face: the tip meets fresh sand, so with perfect contact this is an upper bound',
    'a gap at the face, always there in thin sections, lets the metal run further: then the interface form leads',
  ],
  source: { key: 'flemings', at: 'ch. 7, fluidity in insulating moulds', how: 'memory' },
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
        b: '1000 J·s^-½/(m²·K)',
        T_f: '915 °C',
        T_m: '150 °C',
      },
      expect: { l: '45.4 mm' },
      from: {
        byHand:
          '260 060 / (1000 × 765) = 0.33995; squared 0.11557, times 0.7854 is 0.09077 s; times 0.5 is 0.0454 m.',
      },
    },
  ],
  words: ['fluidity', 'misrun', 'upper bound', 'sand'],
});
