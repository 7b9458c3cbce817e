import { defineFormula } from '../../core/formula.ts';

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
    rho: {
      name: 'density of the liquid metal',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1500, 20000],
      usual: 7520,
      why: 'casting metals lie between magnesium and gold',
    },
    L: {
      name: 'latent heat of freezing',
      unit: 'J/kg',
      show: 'kJ/kg',
      range: [20000, 600000],
      usual: 200000,
      why: 'casting metals lie between lead and aluminium-silicon',
      note: 'For silicon bronze 108 to 200 kJ/kg: the largest doubt about the metal.',
    },
    c: {
      name: 'specific heat of the liquid metal',
      unit: 'J/(kg·K)',
      range: [100, 1500],
      why: 'the materials of the workshop lie here',
      usual: 520,
    },
    dT: {
      name: 'superheat on arrival',
      sign: 'ΔT',
      unit: 'ΔK',
      show: 'Δ°C',
      range: [0, 400],
      why: 'more than this burns the metal and the mould',
      usual: 40,
      note: 'Temperature when it gets here, less the liquidus: not the temperature in the crucible.',
    },
    b: {
      name: 'heat diffusivity of the mould',
      unit: 'J·s^-½/(m²·K)',
      range: [300, 2500],
      usual: 1000,
      why: 'sand, plaster and investment; a metal mould follows other rules',
      note: 'About 1000 for dry sand, 700 for gypsum investment.',
    },
    T_f: {
      name: 'freezing temperature',
      unit: 'K',
      show: '°C',
      range: [450, 1900],
      why: 'from tin to iron',
      usual: 1188.15,
      note: 'The middle of the freezing range. Try both ends to see the spread.',
    },
    T_m: {
      name: 'mould temperature',
      unit: 'K',
      show: '°C',
      range: [250, 1200],
      why: 'from a frosty workshop to the hottest investment',
      usual: 423.15,
    },
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
