import { defineFormula } from '../../core/formula.ts';

export const gas = defineFormula({
  id: 'melting/gas',
  title: 'Hydrogen a melt can hold',
  answers: 'How much hydrogen does this melt take up, at this temperature and dampness of the flame?',
  equation: 'V = m / 100 * 10^(A - B / T) * sqrt(p)',
  empirical: true,
  symbols: {
    V: {
      name: 'hydrogen dissolved, as gas at 0 °C and 1 atm',
      unit: 'cm³',
      range: [0, 10000],
      why: 'small melts',
      note: 'Compare it with the volume of the metal: what cannot stay in the solid makes pores.',
    },
    m: {
      name: 'mass of the melt',
      unit: 'g',
      range: [1, 20000],
      why: 'small melts',
      usual: 60,
    },
    A: {
      name: 'first constant of the metal',
      unit: '1',
      range: [1, 4],
      why: 'the metals listed lie here',
      usual: 2.72,
      note: 'Liquid aluminium 2.72, liquid copper 2.378, liquid silver 2.154.',
    },
    B: {
      name: 'second constant of the metal, in kelvin',
      unit: '1',
      range: [500, 6000],
      why: 'the metals listed lie here',
      usual: 2700,
      note: 'Liquid aluminium 2700, liquid copper 2167, liquid silver 3512.',
    },
    T: {
      name: 'temperature of the melt',
      unit: 'K',
      show: '°C',
      range: [900, 1800],
      why: 'liquid metal only: the solid holds far less',
      usual: 1023.15,
    },
    p: {
      name: 'pressure of hydrogen over the melt',
      unit: 'atm',
      show: 'kPa',
      range: [0, 1],
      why: 'no more than an atmosphere',
      usual: 0.01,
      note: 'Seldom more than a hundredth of an atmosphere; but aluminium makes hydrogen of any water it meets.',
    },
  },
  assumes: [
    'the melt has had time to take up all it can: the high end',
    'pure metals; silicon and copper lower it in aluminium, tin lowers it in copper',
    'constants for silver and aluminium from the measurements named (the silver paper’s own heat of solution would make 3512 about 3400), for copper a line through rows recalled from a handbook',
  ],
  source: { key: 'talbot-anyalebechi', at: 'abstract, recommended equation', how: 'read' },
  alsoSee: [
    { key: 'smithells', at: 'solubility of gases in metals, copper, 1100 and 1300 °C', how: 'memory' },
    { key: 'silver-hydrogen', at: 'abstract, liquid silver 963 to 1200 °C', how: 'read' },
  ],
  examples: [
    {
      title: '60 g of aluminium at 750 °C under a hundredth of an atmosphere',
      given: { m: '60 g', A: '2.72 1', B: '2700 1', T: '1023.15 K', p: '0.01 atm' },
      expect: { V: '0.0723 cm³' },
      from: {
        byHand:
          '2700 ÷ 1023.15 = 2.63891; 2.72 less that is 0.08109, ten to it 1.2053; × 0.6 × 0.1 = 0.07232.',
      },
    },
    {
      title: '100 g of copper at 1150 °C, the same flame',
      given: { m: '100 g', A: '2.378 1', B: '2167 1', T: '1423.15 K', p: '0.01 atm' },
      expect: { V: '0.717 cm³' },
      from: {
        byHand: '2167 ÷ 1423.15 = 1.52268; 2.378 less that is 0.85532, ten to it 7.1667; × 0.1 = 0.71667.',
      },
    },
  ],
  caution: [
    'Hydrogen from wet tools, flux or charge goes with steam: dry everything that meets the melt. Local codes and trained people decide.',
  ],
  words: ['Sieverts', 'hydrogen', 'gas porosity', 'pinholes', 'damp', 'degassing'],
});
