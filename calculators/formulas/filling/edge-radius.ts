import { defineFormula } from '../../core/formula.ts';

export const edgeRadius = defineFormula({
  id: 'filling/edge-radius',
  title: 'Sharpest edge the metal will fill',
  answers: 'How sharp will an edge come out?',
  equation: 'r = gamma / (rho * g * h + dp - p_gas)',
  symbols: {
    r: {
      name: 'radius left on the edge',
      unit: 'm',
      show: 'mm',
      range: [0.000001, 0.01],
      why: 'finer than a grain of sand, or no edge at all',
    },
    gamma: {
      name: 'surface tension',
      sign: 'γ',
      unit: 'N/m',
      range: [0.05, 2.5],
      why: 'from water to iron',
      usual: 1.2,
      note: 'Copper alloys about 1.2, silver 0.9, clean aluminium 0.85 to 1.05; an oxide skin acts like more.',
    },
    rho: {
      name: 'density of the liquid metal',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [1500, 20000],
      usual: 7520,
      why: 'casting metals lie between magnesium and gold',
    },
    h: {
      name: 'head of metal above the edge',
      unit: 'm',
      show: 'mm',
      range: [0, 1],
      why: 'as tall as a small mould and its cup may be',
      usual: 0.04,
    },
    dp: {
      name: 'pressure above the metal less pressure in the cavity',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'no suction takes away more than one atmosphere',
      usual: 15000,
    },
    p_gas: {
      name: 'gas pressed into the corner',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 50000],
      why: 'half an atmosphere of gas blows the metal back',
      usual: 100,
      note: 'Above the pressure of the rest of the cavity: steam, binder smoke, trapped air.',
    },
    g: { name: 'gravity', unit: 'm/s²', constant: 9.80665 },
  },
  where: [
    {
      test: 'rho * g * h + dp > p_gas',
      why: 'The gas in the corner pushes harder than the metal, so no edge fills at all.',
    },
  ],
  assumes: [
    'a straight edge bends the surface one way only; a three-faced corner needs twice the pressure',
    'the contact angle decides entry, not the edge',
    'the pressure acts while the edge is still liquid; an oxide skin raises the tension',
  ],
  source: { key: 'campbell', at: 'ch. 3, surface tension controlled filling', how: 'memory' },
  examples: [
    {
      title: 'Edge of the lamp shield under 40 mm of bronze, no suction',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '0 kPa', p_gas: '0 kPa' },
      expect: { r: '0.407 mm' },
      from: { byHand: '7520 × 9.80665 × 0.04 = 2949.8 Pa. 1.2 / 2949.8 = 0.0004068 m.' },
    },
    {
      title: 'The same edge with 15 kPa at the cavity',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '15 kPa', p_gas: '0 kPa' },
      expect: { r: '0.0669 mm' },
      from: { byHand: '1.2 / (2949.8 + 15 000) = 1.2 / 17 949.8 = 0.00006685 m.' },
    },
    {
      title: 'The same edge with 0.5 kPa of gas caught in it',
      given: { gamma: '1.2 N/m', rho: '7520 kg/m³', h: '40 mm', dp: '15 kPa', p_gas: '0.5 kPa' },
      expect: { r: '0.0688 mm' },
      from: { byHand: '1.2 / (2949.8 + 15 000 − 500) = 1.2 / 17 449.8 = 0.00006877 m.' },
    },
  ],
  words: ['detail', 'sharp', 'surface tension', 'crisp', 'lettering'],
});
