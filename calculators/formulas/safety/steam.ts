import { defineFormula } from '../../core/formula.ts';

export const steam = defineFormula({
  id: 'safety/steam',
  title: 'Steam from trapped water',
  answers: 'What does a drop of water become under molten metal?',
  equation: 'V = m * R * T / (M * p)',
  symbols: {
    V: {
      name: 'volume of steam',
      unit: 'm³',
      show: 'L',
      range: [0, 10],
      why: 'shown for drops: with more, the room is the vessel',
    },
    m: {
      name: 'trapped water',
      unit: 'kg',
      show: 'g',
      range: [0, 1],
      why: 'shown for drops',
      usual: 0.0001,
      note: 'One drop is about 0.05 g.',
    },
    R: { name: 'gas constant', unit: 'J/(mol·K)', constant: 8.314462618 },
    T: {
      name: 'temperature of the steam',
      unit: 'K',
      show: '°C',
      range: [373.15, 1773.15],
      why: 'below 100 °C it is not all steam; above 1500 °C no small melt goes',
      usual: 1373.15,
      note: 'Near 100 °C the real volume is 1.6 % less: a real gas just above boiling.',
    },
    M: { name: 'molar mass of water', unit: 'kg/mol', show: 'g/mol', constant: 0.01801528 },
    p: {
      name: 'pressure around',
      unit: 'Pa',
      show: 'kPa',
      range: [50000, 110000],
      why: 'workshops from high mountains to the sea',
      usual: 101325,
    },
  },
  assumes: [
    'all the water boils and reaches the temperature',
    'the steam is free to expand: shut in, it becomes pressure and throws the metal instead',
  ],
  source: { key: 'cengel-boles', at: 'ideal-gas equation of state, ch. 3', how: 'memory' },
  examples: [
    {
      title: 'two drops under bronze at 1100 °C',
      given: { m: '0.1 g', T: '1100 °C', p: '101.325 kPa' },
      expect: { V: '0.6255 L' },
      from: {
        byHand:
          '0.1 ÷ 18.01528 = 0.0055508 mol; × 8.314463 = 0.046152; × 1373.15 K = 63.374 J; ÷ 101 325 Pa = 0.00062545 m³, more than six thousand times the water',
      },
    },
  ],
  caution: [
    'Shown to teach, not to permit: no amount of water is safe under molten metal. Local codes and trained people decide.',
    'Dry and heat through everything that meets the metal, every time: ingot mould, skimmer, tongs, charge, flux, flask.',
    'Metal poured on water, damp sand, rust or bare concrete throws itself out. Dry sand under the whole path.',
    'Never water near the melt; cool running water, 20 minutes, for a burnt person, away from the metal.',
  ],
  alsoSee: [
    {
      key: 'hse-molten-metal',
      at: 'safety topics: water in charge materials, read November 2026',
      how: 'read',
    },
  ],
  words: ['explosion', 'water', 'moisture', 'damp'],
});
