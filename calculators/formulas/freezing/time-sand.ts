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

export const timeSand = defineFormula({
  id: 'freezing/time-sand',
  title: 'Freezing time in a dry sand or plaster mould',
  answers: 'How long does this section take to freeze, when the mould alone decides?',
  equation: 't = pi / 4 * (rho * M * (L + c * dT) / (b * (T_f - T_m)))^2',
  symbols: {
    t: freezingTime,
    rho: liquidDensity,
    M: modulusOfSection,
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
    'the gap at the face costs nothing: h is much more than b/√t, which a thin section never meets (below about 10 s at h = 1000 use both resistances)',
    'flat faces; a round bar or ball freezes sooner',
  ],
  source: {
    key: 'chvorinov',
    at: 'the rule of the square, with the constant from conduction',
    how: 'memory',
  },
  alsoSee: [
    { key: 'ghosh-mallik', at: 'ch. 2, eq. for a plane casting in a sand mould', how: 'read' },
    { key: 'flemings', at: 'ch. 1, insulating moulds', how: 'memory' },
  ],
  examples: [
    {
      title: 'Iron slab 100 mm thick in sand',
      given: {
        rho: '7850 kg/m³',
        M: '50 mm',
        L: '272 kJ/kg',
        c: '750 J/(kg·K)',
        dT: '0 Δ°C',
        b: '1272.877 J·s^-½/(m²·K)',
        T_f: '1540 °C',
        T_m: '28 °C',
      },
      expect: { t: '0.6713 h' },
      from: { key: 'ghosh-mallik', at: 'Example 2.5(a), read in an open companion', how: 'read' },
    },
    {
      title: 'Web of the lamp shield, silicon bronze, cold sand, perfect contact',
      given: {
        rho: '7700 kg/m³',
        M: '0.428 mm',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        T_f: '915 °C',
        T_m: '20 °C',
      },
      expect: { t: '0.73 s' },
      from: {
        byHand:
          'L + cΔT = 200 000 + 480 × 130 = 262 400. ρM = 7700 × 0.000428 = 3.2956, product 864 765 J/m². Over 1000 × 895 gives 0.96622; squared 0.93359, times 0.7854 gives 0.733 s.',
      },
    },
  ],
  caution: [
    'This is the time to freeze, not the time to touch: a casting that has just frozen is still hotter than red heat.',
  ],
  words: ['Chvorinov', 'solidification time', 'sand mould', 'plaster', 'investment', 'preheat'],
});
