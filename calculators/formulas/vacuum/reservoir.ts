import { defineFormula } from '../../core/formula.ts';

export const reservoir = defineFormula({
  id: 'vacuum/reservoir',
  title: 'Pressure after a tank is opened on the flask',
  answers: 'What pressure do tank and flask share when the valve between them opens?',
  equation: 'p = (p_t * V_t / T_t + p_f * V_f / T_f) / (V_t / T_t + V_f / T_f)',
  symbols: {
    p: {
      name: 'pressure both end at, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 110000],
      why: 'no more than the air outside',
    },
    p_t: {
      name: 'pressure in the tank before, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 110000],
      why: 'no more than the air outside',
      usual: 10000,
    },
    V_t: {
      name: 'volume of the tank',
      unit: 'm³',
      show: 'L',
      range: [0.0001, 1],
      why: 'from a bottle to a boiler',
      usual: 0.02,
    },
    T_t: {
      name: 'temperature in the tank',
      unit: 'K',
      show: '°C',
      range: [253.15, 353.15],
      why: 'a workshop',
      usual: 293.15,
    },
    p_f: {
      name: 'pressure in flask and hose before, absolute',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 110000],
      why: 'no more than the air outside',
      usual: 101325,
    },
    V_f: {
      name: 'gas in flask, pores and hose',
      unit: 'm³',
      show: 'L',
      range: [0.00001, 0.1],
      why: 'bench flasks',
      usual: 0.002,
      note: 'A third to half of dry sand is gas.',
    },
    T_f: {
      name: 'temperature in the flask',
      unit: 'K',
      show: '°C',
      range: [253.15, 1100],
      why: 'from cold sand to hot investment',
      usual: 573.15,
    },
  },
  assumes: [
    'tank and flask keep their temperatures, as they do a second after',
    'nothing leaks: through open sand the pressure then climbs, see where the gauge will stand',
  ],
  source: { key: 'cengel-boles', at: 'ch. 3, two rigid tanks joined', how: 'memory' },
  examples: [
    {
      title: 'A 20 L tank at 10 kPa opened on 2 L of hot flask',
      given: { p_t: '10 kPa', V_t: '20 L', T_t: '20 °C', p_f: '101.3 kPa', V_f: '2 L', T_f: '300 °C' },
      expect: { p: '14.44 kPa' },
      from: {
        byHand:
          '20 ÷ 293.15 = 0.0682245, 2 ÷ 573.15 = 0.0034895. (0.682245 + 0.353486) ÷ 0.071714 = 14.4425 kPa.',
      },
    },
  ],
  caution: [
    'The tank opens in an instant: sand that stands a slow pull may not stand a blow, and metal follows any crack. Nobody over the flask. Use a tank made for vacuum.',
  ],
  words: ['vacuum tank', 'buffer', 'Boyle', 'accumulator'],
});
