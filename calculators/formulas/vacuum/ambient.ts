import { defineFormula } from '../../core/formula.ts';

export const ambient = defineFormula({
  id: 'vacuum/ambient',
  title: 'Air pressure at a height above the sea',
  answers: 'How much air is there to push with at my altitude?',
  equation: 'p = p_0 * (1 - z / H)^n',
  symbols: {
    p: {
      name: 'air pressure at the workshop',
      unit: 'Pa',
      show: 'kPa',
      range: [50000, 108000],
      why: 'workshops from high mountains to below the sea',
    },
    p_0: {
      name: 'pressure brought down to sea level',
      unit: 'Pa',
      show: 'kPa',
      range: [95000, 105000],
      why: 'from a deep low to a strong high',
      usual: 101325,
      note: 'The figure of the weather report; 101.325 kPa is the standard day.',
    },
    z: {
      name: 'height above the sea',
      unit: 'm',
      range: [-430, 5500],
      why: 'from the lowest shore to the highest towns',
      usual: 300,
    },
    H: {
      name: 'height at which the standard air would have cooled to absolute zero, 288.15 K over 6.5 K a kilometre',
      unit: 'm',
      constant: 44330.76923,
    },
    n: { name: 'exponent g·M/(R·lapse rate)', unit: '1', constant: 5.255876 },
  },
  assumes: ['the standard atmosphere: 15 °C at the sea and 6.5 °C colder for each kilometre'],
  source: { key: 'iso-2533', at: 'troposphere, 0 to 11 km', how: 'memory' },
  examples: [
    {
      title: 'a workshop at 300 m on a standard day',
      given: { p_0: '101.325 kPa', z: '300 m' },
      expect: { p: '97.77 kPa' },
      from: {
        byHand:
          '300 ÷ 44 330.769 = 0.0067673; its logarithm term −(0.0067673 + 0.0067673² ÷ 2 + …) = −0.0067903; × 5.255876 = −0.035689; e to that = 0.964940; × 101.325 = 97.773 kPa',
      },
    },
  ],
  words: ['altitude', 'barometer', 'atmosphere', 'ISA'],
});
