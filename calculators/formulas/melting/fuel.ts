import { defineFormula } from '../../core/formula.ts';

export const fuel = defineFormula({
  id: 'melting/fuel',
  title: 'Fuel burnt by a melt',
  answers: 'How much gas does this melt burn?',
  equation: 'm_f = E / (eta * H)',
  symbols: {
    m_f: {
      name: 'fuel burnt',
      unit: 'kg',
      show: 'g',
      range: [0.0001, 100],
      why: 'bench furnaces and torches',
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
      name: 'share of the heat that reaches them',
      sign: 'η',
      unit: '1',
      show: '%',
      range: [0.01, 0.6],
      why: 'a torch in the open gives a few per cent, a good gas furnace a third',
      usual: 0.08,
    },
    H: {
      name: 'heat of combustion',
      unit: 'J/kg',
      show: 'kJ/kg',
      range: [1.5e7, 1.3e8],
      why: 'from wood to hydrogen',
      usual: 46.4e6,
      note: 'Propane 46 MJ/kg, natural gas about 48, both with the steam leaving as steam.',
    },
  },
  assumes: ['the fuel burns completely'],
  source: { key: 'school-physics', at: 'furnace efficiency and heat of combustion', how: 'read' },
  examples: [
    {
      title: 'the lamp shield’s charge under a propane torch',
      given: { E: '196.8 kJ', eta: '8 %', H: '46400 kJ/kg' },
      expect: { m_f: '53.0 g' },
      from: { byHand: '196.8 ÷ 0.08 = 2460 kJ burnt; 2460 ÷ 46.4 = 53.017 g' },
    },
  ],
  caution: [
    'Propane is heavier than air: no cellar, pit or drain near it. Leak-test with soap, not a flame.',
    'Burning gas in a room makes carbon monoxide and water: extraction and an alarm.',
  ],
  words: ['propane', 'gas', 'efficiency'],
});
