import { defineFormula } from '../../core/formula.ts';

export const gauge = defineFormula({
  id: 'vacuum/gauge',
  title: 'Absolute pressure from a vacuum gauge',
  answers: 'What pressure is left when the gauge shows this much vacuum?',
  equation: 'p = p_amb - p_g',
  symbols: {
    p: {
      name: 'absolute pressure left',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 106000],
      why: 'between nothing and the air outside',
    },
    p_amb: {
      name: 'pressure of the air around, absolute',
      sign: 'p_amb',
      unit: 'Pa',
      show: 'kPa',
      range: [50000, 106000],
      why: 'workshops from high mountains to the sea',
      usual: 101325,
      note: 'The station pressure where you stand, not the weather report’s, which is brought down to sea level.',
    },
    p_g: {
      name: 'vacuum the gauge shows, below ambient',
      sign: 'p_gauge',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 106000],
      why: 'a gauge cannot show more than the air outside',
      usual: 35000,
      note: 'Written without its minus sign: −10 inHg on the dial is 10 inHg here.',
    },
  },
  where: [
    {
      test: 'p_g <= p_amb',
      why: 'a gauge cannot show more vacuum than there is air outside: check the barometer or the gauge',
    },
  ],
  assumes: ['the gauge stands at nought with the pump off and the line open'],
  source: { key: 'esposito', at: 'ch. 14, vacuum', how: 'memory' },
  examples: [
    {
      title: '35 kPa of suction at the sea',
      given: { p_amb: '101.3 kPa', p_g: '35 kPa' },
      expect: { p: '66.3 kPa' },
      from: { byHand: '101.3 − 35 = 66.3 kPa' },
    },
  ],
  words: ['inHg', 'mmHg', 'torr', 'mbar', 'barometer'],
});
