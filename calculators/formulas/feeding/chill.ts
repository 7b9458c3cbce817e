import { defineFormula } from '../../core/formula.ts';

export const chill = defineFormula({
  id: 'feeding/chill',
  title: 'Modulus of a section with a chill against it',
  answers: 'A chill lies on part of this lump: as what thickness does it freeze now?',
  equation: 'M = V / (A + (n - 1) * A_c)',
  symbols: {
    M: {
      name: 'modulus with the chill',
      unit: 'm',
      show: 'mm',
      range: [0.00005, 0.1],
      why: 'from a thin web to a block of 20 kg',
    },
    V: {
      name: 'volume of the section',
      unit: 'm³',
      show: 'cm³',
      range: [1e-9, 0.01],
      why: 'small castings',
      usual: 6.72e-7,
    },
    A: {
      name: 'cooled surface, the chilled part included',
      unit: 'm²',
      show: 'cm²',
      range: [0.000001, 0.5],
      why: 'small castings',
      usual: 0.00048,
    },
    A_c: {
      name: 'surface the chill covers',
      sign: 'A_c',
      unit: 'm²',
      show: 'cm²',
      range: [0, 0.3],
      why: 'no more than there is',
      usual: 0.000096,
    },
    n: {
      name: 'times as much heat as sand takes',
      unit: '1',
      range: [1, 6],
      why: '1 is no chill; above 6 the gap at the face decides',
      usual: 3,
      note: 'About 3 for iron against steel. Copper and graphite may do more at first, thin chills less.',
    },
  },
  where: [{ test: 'A_c <= A', why: 'The chill covers more surface than the section has.' }],
  assumes: [
    'a chill thick enough not to fill with heat: see how heavy it must be',
    'the number 3 is a rule from steel in sand; small castings freeze before a gap opens and may gain more',
    'the chill moves the pores, it does not feed them: look where the last metal lies now',
  ],
  source: { key: 'wlodawer', at: 'external chills, apparent increase of surface', how: 'memory' },
  alsoSee: [{ key: 'foundrymans-handbook', at: 'external chills', how: 'memory' }],
  examples: [
    {
      title: 'Lug of the lamp shield with one 12 × 8 mm face chilled',
      given: { V: '672 mm³', A: '480 mm²', A_c: '96 mm²', n: '3 1' },
      expect: { M: '1.000 mm' },
      from: { byHand: '480 + 2 × 96 = 672 mm²; 672 ÷ 672 = 1 mm, where without it stood 1.4 mm.' },
    },
  ],
  caution: [
    'A cold chill gathers water and blows. Clean it, coat it, warm it past 60 °C and use it at once. Local codes and trained people decide.',
  ],
  words: ['denseners', 'iron chill', 'hot spot', 'boss'],
});
