import { defineFormula } from '../../core/formula.ts';

export const allowanceChain = defineFormula({
  id: 'pattern/allowance-chain',
  title: 'Master size when each copy shrinks',
  answers: 'How large must the master be when mould, wax and metal each shrink in turn?',
  equation: 'L_0 = L * (1 + s_1) * (1 + s_2) * (1 + s_3)',
  symbols: {
    L_0: {
      name: 'length on the master',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 1],
      why: 'this course is about small castings',
    },
    L: {
      name: 'length wanted on the casting',
      unit: 'm',
      show: 'mm',
      range: [0.0005, 1],
      why: 'this course is about small castings',
      usual: 0.022,
    },
    s_1: {
      name: 'allowance for the mould taken from the master',
      unit: '1',
      show: '%',
      range: [0, 0.06],
      why: 'rubbers shrink from almost nothing to some 4 %',
      usual: 0.01,
      note: 'Cold-cured rubber well under 1 %, heat-cured rubber 2 to 4 %: an estimate, so measure your own. 0 when there is no mould.',
    },
    s_2: {
      name: 'allowance for the wax or resin',
      unit: '1',
      show: '%',
      range: [0, 0.05],
      why: 'a larger allowance than wax or resin needs',
      usual: 0.01,
      note: '0 when the master itself is burnt out.',
    },
    s_3: {
      name: 'allowance for the metal',
      unit: '1',
      show: '%',
      range: [0, 0.03],
      why: 'a larger allowance than any casting metal needs',
      usual: 0.018,
      note: 'A hot investment mould has itself grown, which takes back part of it.',
    },
  },
  assumes: [
    'each copy shrinks freely and alike in every direction',
    'each allowance is a share of the smaller size, as a patternmaker writes it',
  ],
  source: { key: 'rao-manufacturing', at: 'pattern allowances, double contraction', how: 'memory' },
  examples: [
    {
      title: 'Seal in sterling, 22 mm across, through a rubber mould and wax',
      given: { L: '22 mm', s_1: '3 %', s_2: '1 %', s_3: '1.8 %' },
      expect: { L_0: '23.299 mm' },
      from: {
        byHand: '1.03 × 1.01 = 1.0403; × 1.018 = 1.0590254; × 22 = 23.29856',
      },
    },
    {
      title: 'What the chain took, found on a trial piece: the metal’s share',
      given: { L_0: '100 mm', L: '96 mm', s_1: '1 %', s_2: '1 %' },
      expect: { s_3: '2.114 %' },
      from: { byHand: '100 ÷ 96 = 1.0416667; ÷ 1.0201 = 1.021142, so 2.114 %' },
    },
  ],
  words: ['double contraction', 'shrinkage', 'rubber mould', 'wax', 'master'],
});
