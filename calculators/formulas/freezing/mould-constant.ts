import { defineFormula } from '../../core/formula.ts';
import {
  freezingTemperature,
  latentHeat,
  liquidDensity,
  liquidHeat,
  mouldDiffusivity,
  mouldTemperature,
  superheatOnArrival,
} from '../symbols.ts';

export const mouldConstant = defineFormula({
  id: 'freezing/mould-constant',
  title: 'Mould constant from the properties of metal and mould',
  answers: 'What constant should the rule have, before any test casting is made?',
  equation: 'B = pi / 4 * (rho * (L + c * dT) / (b * (T_f - T_m)))^2',
  symbols: {
    B: {
      name: 'mould constant',
      unit: 's/m²',
      show: 's/mm²',
      range: [10000, 100000000],
      why: 'a test casting outside this is more likely a slip of units',
    },
    rho: liquidDensity,
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
  assumes: ['a dry mould of sand, plaster or investment, thick enough that its outside stays cool'],
  source: { key: 'poirier-geiger', at: 'ch. 10, freezing in sand moulds', how: 'memory' },
  alsoSee: [{ key: 'ghosh-mallik', at: 'Example 2.5', how: 'read' }],
  examples: [
    {
      title: 'Iron in sand; a second, independent exam uses 0.97 million for iron in sand',
      given: {
        rho: '7850 kg/m³',
        L: '272 kJ/kg',
        c: '750 J/(kg·K)',
        dT: '0 Δ°C',
        b: '1272.877 J·s^-½/(m²·K)',
        T_f: '1540 °C',
        T_m: '28 °C',
      },
      expect: { B: '0.967 s/mm²' },
      from: {
        byHand:
          '7850 × 272 000 = 2.1352e9. Over 1272.877 × 1512 = 1.92459e6 gives 1109.43. Squared 1.230843e6, times 0.785398 gives 966 700 s/m² = 0.967 s/mm².',
      },
    },
    {
      title: 'Silicon bronze 130 degrees above its liquidus in cold dry sand',
      given: {
        rho: '7700 kg/m³',
        L: '200 kJ/kg',
        c: '480 J/(kg·K)',
        dT: '130 Δ°C',
        b: '1000 J·s^-½/(m²·K)',
        T_f: '915 °C',
        T_m: '20 °C',
      },
      expect: { B: '4.00 s/mm²' },
      from: {
        byHand:
          '7700 × 262 400 = 2.02048e9, over 1000 × 895 is 2257.52. Squared 5.09639e6, times 0.785398 gives 4.003e6 s/m².',
      },
    },
  ],
  words: ['Chvorinov', 'theory', 'preheat', 'superheat'],
});
