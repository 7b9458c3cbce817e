import { defineFormula } from '../../core/formula.ts';

export const fume = defineFormula({
  id: 'safety/fume',
  title: 'Vapour of zinc or lead over a melt',
  answers: 'How hard does the zinc or lead in this alloy push to leave it as fume?',
  equation: 'p = gamma * x * p_b * exp(H / R * (1 / T_b - 1 / T))',
  symbols: {
    p: {
      name: 'pressure of the metal’s vapour',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 400000],
      why: 'above an atmosphere the melt boils',
      note: 'At 101 kPa the alloy boils. Long before that it smokes.',
    },
    x: {
      name: 'share of the metal in the alloy, by atoms',
      unit: '%',
      range: [0.001, 100],
      why: 'from a trace to the pure metal',
      usual: 5,
      note: 'For zinc in copper nearly the share by mass. For lead divide the share by mass by about three.',
    },
    gamma: {
      name: 'activity coefficient',
      sign: 'γ',
      unit: '1',
      range: [0.05, 20],
      why: 'from zinc held by copper to lead pushed out by it',
      usual: 0.3,
      note: 'Zinc in copper 0.2 to 0.5: copper holds it. Lead in copper about 5: copper drives it out. Estimates; 1 for the pure metal.',
    },
    T: {
      name: 'temperature of the melt',
      unit: 'K',
      show: '°C',
      range: [700, 1700],
      why: 'small melts',
      usual: 1373.15,
    },
    T_b: {
      name: 'boiling point of the metal that leaves',
      unit: 'K',
      show: '°C',
      range: [900, 2500],
      why: 'from cadmium to lead',
      usual: 1180.15,
      note: 'Zinc 907 °C, lead 1749 °C, cadmium 767 °C.',
    },
    H: {
      name: 'heat to evaporate it, mean over the range',
      unit: 'J/mol',
      show: 'kJ/mol',
      range: [80000, 220000],
      why: 'from cadmium to lead and past it',
      usual: 118000,
      note: 'Zinc 118, lead 179.5. Zinc right at its boiling point 115.',
    },
    p_b: { name: 'one atmosphere', sign: 'p_b', unit: 'Pa', constant: 101325 },
    R: { name: 'gas constant', unit: 'J/(mol·K)', constant: 8.314462618 },
  },
  assumes: [
    'held to the boiling point, so good to a few per cent from there down to a thousandth of an atmosphere; fits made at low temperature read 13 % high for zinc at its boiling point',
    'what leaves depends also on stirring, cover, draught and time; the air is never as full as this just above the melt',
  ],
  source: { key: 'crc-handbook', at: 'vapour pressure of the metallic elements', how: 'memory' },
  alsoSee: [
    { key: 'alcock-vapour', at: 'zinc and lead, the two-term fit this one is not', how: 'memory' },
    { key: 'osha-zinc-oxide', at: 'metal fume fever', how: 'read' },
  ],
  examples: [
    {
      title: 'Gunmetal with 5 % of zinc at 1100 °C',
      given: { x: '5 %', gamma: '0.3 1', T: '1373.15 K', T_b: '1180 K', H: '118 kJ/mol' },
      expect: { p: '8.25 kPa' },
      from: {
        byHand:
          '1/1180 − 1/1373.15 = 8.474576e-4 − 7.282526e-4 = 1.192050e-4; × 118 000 ÷ 8.314463 = 1.691780; e to it 5.42913; × 0.3 × 0.05 × 101 325 = 8251.6 Pa.',
      },
    },
    {
      title: 'Leaded gunmetal, 5 % of lead by mass, at 1100 °C',
      given: { x: '1.6 %', gamma: '5 1', T: '1373.15 K', T_b: '2022 K', H: '179.5 kJ/mol' },
      expect: { p: '52 Pa' },
      from: {
        byHand:
          '1/2022 − 1/1373.15 = 4.945598e-4 − 7.282526e-4 = −2.336928e-4; × 179 500 ÷ 8.314463 = −5.045184; e to it 0.0064403; × 5 × 0.016 × 101 325 = 52.2 Pa, and air with a hundred-thousandth of that is at the limit for lead.',
      },
    },
  ],
  caution: [
    'Shown to teach, not to permit: local codes, measured air and licensed practice decide.',
    'White smoke from brass or gunmetal is zinc oxide and brings fume fever hours later. Choose an alloy without zinc, keep it cool and short, draw the air off at the lip.',
    'Do not melt leaded alloys in a teaching shop. Never melt plated scrap or old silver solder: cadmium fume can kill, and starts like fume fever.',
    'Breathless after fume: an emergency. Tell them the alloy.',
  ],
  words: ['zinc', 'lead', 'cadmium', 'metal fume fever', 'vapour pressure', 'Clausius–Clapeyron', 'brass'],
});
