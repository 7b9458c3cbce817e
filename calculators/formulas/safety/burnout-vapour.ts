import { defineFormula } from '../../core/formula.ts';

export const burnoutVapour = defineFormula({
  id: 'safety/burnout-vapour',
  title: 'Wax or oil that can fill the kiln with an explosive mixture',
  answers: 'How little wax, as vapour, brings the air of this kiln to the point where it can explode?',
  equation: 'm = x * M * p * V / (R * T)',
  symbols: {
    m: {
      name: 'mass of vapour that is enough',
      unit: 'kg',
      show: 'g',
      range: [0, 1],
      why: 'small kilns',
      note: 'Stay below a quarter of it at any time.',
    },
    x: {
      name: 'lower explosive limit, by volume',
      unit: '%',
      range: [0.3, 15],
      why: 'from heavy oils to ammonia',
      usual: 0.7,
      note: 'Kerosene, much like cracked wax, 0.6 to 0.7 %. Methane 5, propane 2.1, hexane 1.1 %. Hot air needs less: take 0.7 of it above 120 °C.',
    },
    M: {
      name: 'molar mass of the vapour',
      unit: 'kg/mol',
      show: 'g/mol',
      range: [0.01, 0.5],
      why: 'from methane to whole wax',
      usual: 0.17,
      note: 'Hydrocarbons come out near 40 to 50 g in each cubic metre, cold, whatever this is.',
    },
    p: {
      name: 'pressure around',
      unit: 'Pa',
      show: 'kPa',
      range: [50000, 110000],
      why: 'workshops from high mountains to the sea',
      usual: 101325,
    },
    V: {
      name: 'volume of the kiln',
      unit: 'm³',
      show: 'L',
      range: [0.0005, 2],
      why: 'from a bench kiln to a cabinet',
      usual: 0.027,
    },
    T: {
      name: 'temperature in the kiln',
      unit: 'K',
      show: '°C',
      range: [263.15, 1100],
      why: 'from cold to burnout',
      usual: 473.15,
    },
    R: { name: 'gas constant', unit: 'J/(mol·K)', constant: 8.314462618 },
  },
  assumes: [
    'no air comes or goes: with a draught, count the wax that boils off in the time the air changes once',
    'even mixing; near the wax it is richer',
    'above about 250 to 350 °C wax vapour lights by itself, and burns as it comes if there is air',
  ],
  source: { key: 'zabetakis', at: 'limits of flammability, read in a table of a gas supplier', how: 'read' },
  alsoSee: [
    { key: 'iec-60079-20-1', at: 'limits by volume and by mass', how: 'memory' },
    { key: 'iadc-lel', at: 'definition: 0.7 of the limit above 250 °F', how: 'read' },
  ],
  examples: [
    {
      title: 'A 27 L kiln at 200 °C',
      given: { x: '0.7 %', M: '170 g/mol', p: '101.325 kPa', V: '27 L', T: '200 °C' },
      expect: { m: '0.828 g' },
      from: {
        byHand:
          '101 325 × 0.027 ÷ (8.314463 × 473.15) = 0.695427 mol of gas in all; 0.7 % of it 0.004868 mol; × 170 = 0.8276 g: less than one small wax.',
      },
    },
  ],
  caution: [
    'Shown to teach, not to permit: the kiln’s maker, local codes and licensed practice decide.',
    'Melt most of the wax out first, into a dry or water-filled tray outside the kiln. Vent the kiln outdoors before it is lit. Do not open a smoking kiln: fresh air can light it all at once.',
    'Never bake oil-bonded sand.',
  ],
  words: ['wax', 'LEL', 'explosive limit', 'burnout', 'kiln', 'smoke', 'oil'],
});
