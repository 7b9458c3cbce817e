import { defineFormula } from '../../core/formula.ts';

export const atCavity = defineFormula({
  id: 'vacuum/at-cavity',
  title: 'Suction that reaches the cavity',
  answers: 'The gauge shows suction at the plate: how much of it is at the cavity?',
  equation: 'dp = dp_g * L_c * K_d / (L_c * K_d + L_d * K_c)',
  symbols: {
    dp: {
      name: 'pressure in the cavity below the ambient',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'there is no more than one atmosphere',
    },
    dp_g: {
      name: 'suction at the plate',
      sign: 'Δp_plate',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'there is no more than one atmosphere',
      usual: 35000,
      note: 'Read with the flask on it. A blanked plate tells about the pump, not the mould.',
    },
    L_c: {
      name: 'sand between the cavity and the open air',
      sign: 'L_c',
      unit: 'm',
      show: 'mm',
      range: [0.002, 0.3],
      why: 'bench flasks',
      usual: 0.04,
    },
    K_d: {
      name: 'permeability of the sand below the cavity',
      sign: 'K_d',
      unit: 'AFS',
      range: [0.3, 500],
      why: 'from investment to coarse sand',
      usual: 15,
    },
    L_d: {
      name: 'sand between the cavity and the plate',
      sign: 'L_d',
      unit: 'm',
      show: 'mm',
      range: [0.002, 0.3],
      why: 'bench flasks',
      usual: 0.025,
    },
    K_c: {
      name: 'permeability of the sand above the cavity',
      sign: 'K_c',
      unit: 'AFS',
      range: [0, 500],
      why: 'from a sealed top to coarse sand',
      usual: 15,
      note: 'Nought for a top sealed with film or a steel lid: then all the suction reaches the cavity.',
    },
  },
  assumes: [
    'the cup is full and sealed by metal: before that, air runs down the sprue and the cavity has next to no suction',
    'the same area of sand above and below; the flask’s sides are tight',
    'a perforated flask in a chamber is another case: there suction comes from all round, as with a sealed top',
    'steady flow with one density of air: good to a tenth or so up to 35 kPa',
  ],
  source: {
    key: 'poirier-geiger',
    at: 'flow through porous media, Darcy’s law, two beds in series',
    how: 'memory',
  },
  examples: [
    {
      title: 'the lamp shield under open sand',
      given: { dp_g: '35 kPa', L_c: '40 mm', K_d: '15 AFS', L_d: '25 mm', K_c: '15 AFS' },
      expect: { dp: '21.5 kPa' },
      from: {
        byHand:
          'the same sand all through, so shares of thickness: 40 of 65 mm lie above; 35 × 40 ÷ 65 = 21.54 kPa',
      },
    },
    {
      title: 'finer sand on top',
      given: { dp_g: '30 kPa', L_c: '30 mm', K_d: '40 AFS', L_d: '20 mm', K_c: '20 AFS' },
      expect: { dp: '22.5 kPa' },
      from: {
        byHand:
          'resistance above 30 ÷ 20 = 1.5, below 20 ÷ 40 = 0.5; the top keeps 1.5 of 2.0; 30 × 0.75 = 22.5 kPa',
      },
    },
    {
      title: 'a top sealed with film',
      given: { dp_g: '30 kPa', L_c: '30 mm', K_d: '40 AFS', L_d: '20 mm', K_c: '0 AFS' },
      expect: { dp: '30 kPa' },
      from: {
        byHand: 'no air can enter from above, none flows, and the cavity has the pressure of the plate',
      },
    },
  ],
  caution: [
    'More suction is not always better: it loads the sand, drives metal into the face and speeds the metal past what its skin can bear.',
  ],
  words: ['suction', 'Darcy', 'cope', 'drag', 'permeability'],
});
