import { defineFormula } from '../../core/formula.ts';

export const time = defineFormula({
  id: 'melting/time',
  title: 'Time to melt',
  answers: 'How long until the charge is ready to pour?',
  equation: 't = E / (eta * P)',
  symbols: {
    t: {
      name: 'time',
      unit: 's',
      show: 'min',
      range: [10, 18000],
      why: 'a melt that takes half a day gathers gas and loses metal',
    },
    E: {
      name: 'heat metal and crucible must take up',
      unit: 'J',
      show: 'kJ',
      range: [100, 2e7],
      why: 'this course is about small charges',
      usual: 196.8e3,
    },
    eta: {
      name: 'share of the power that reaches them',
      sign: 'η',
      unit: '1',
      show: '%',
      range: [0.01, 0.9],
      why: 'a torch in the open gives a few per cent, a closed induction furnace more than half',
      usual: 0.2,
      note: 'Torch 3 to 10 %, hot resistance furnace 10 to 40 %, induction 40 to 70 %: starting values. One timed melt gives your own.',
    },
    P: {
      name: 'power drawn or burnt',
      unit: 'W',
      show: 'kW',
      range: [100, 50000],
      why: 'bench furnaces and torches',
      usual: 1500,
    },
  },
  assumes: ['the power and its share stay the same: real melts start slower while the furnace itself warms'],
  source: { key: 'trade-practice', at: 'energy over useful power', how: 'common practice' },
  examples: [
    {
      title: 'the lamp shield’s charge in a 1.5 kW furnace',
      given: { E: '196.8 kJ', eta: '20 %', P: '1.5 kW' },
      expect: { t: '656 s' },
      from: { byHand: 'a fifth of 1500 W is 300 W; 196 800 ÷ 300 = 656 s, about 11 minutes' },
    },
  ],
  caution: ['Stay with the melt from first heat to last drop; never leave a torch or an open furnace.'],
  words: ['furnace', 'torch', 'induction', 'how long'],
});
