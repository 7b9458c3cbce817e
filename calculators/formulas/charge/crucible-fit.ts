import { defineFormula } from '../../core/formula.ts';

export const crucibleFit = defineFormula({
  id: 'charge/crucible-fit',
  title: 'What a crucible holds',
  answers: 'How much metal may this crucible carry?',
  equation: 'm = rho_l * V * f',
  symbols: {
    m: {
      name: 'liquid metal in the crucible',
      unit: 'kg',
      show: 'g',
      range: [0.001, 20],
      why: 'above this the crucible is no longer carried by hand',
    },
    rho_l: {
      name: 'density of the liquid metal',
      sign: 'ρ_l',
      unit: 'kg/m³',
      range: [1500, 20000],
      why: 'from magnesium to platinum',
      usual: 7520,
      note: 'The liquid takes more room than the solid.',
    },
    V: {
      name: 'volume of the crucible, brim full',
      unit: 'm³',
      show: 'cm³',
      range: [1e-6, 2e-3],
      why: 'above this the crucible is no longer carried by hand',
      usual: 30e-6,
      note: 'Fill it with dry sand and pour the sand into a measure; never with water.',
    },
    f: {
      name: 'share of it that is filled',
      unit: '1',
      show: '%',
      range: [0.1, 0.75],
      why: 'a quarter left free keeps the metal in when it is lifted, stirred and tilted',
      limit: {
        above: 0.8,
        why: 'the crucible would be more than four fifths full: take a larger one or melt less',
      },
      usual: 0.75,
      note: 'Bulky scrap stands higher than the metal it melts to: feed it in warm and dry.',
    },
  },
  assumes: [
    'the lining has no thick glaze or skull',
    'the crucible is no wider at the top than at the middle by much',
  ],
  source: {
    key: 'trade-practice',
    at: 'fill to three quarters, four fifths at most',
    how: 'common practice',
  },
  examples: [
    {
      title: 'a small clay-graphite crucible of 30 cm³',
      given: { rho_l: '7520 kg/m³', V: '30 cm³', f: '75 %' },
      expect: { m: '169.2 g' },
      from: { byHand: 'three quarters of 30 cm³ is 22.5 cm³; 22.5 × 7.52 = 169.2 g' },
    },
    {
      title: 'the lamp shield’s charge in it',
      given: { rho_l: '7520 kg/m³', V: '30 cm³', m: '88.7 g' },
      expect: { f: '39.3 %' },
      from: { byHand: '88.7 ÷ 7.52 = 11.795 cm³ of liquid; 11.795 ÷ 30 = 0.39317' },
    },
  ],
  caution: [
    'Look the crucible over cold: cracks, a damp ring or a wall worn by a third mean it is finished.',
    'Heat a new or stored crucible empty, slowly, 1 to 2 hours at 150 to 200 °C and then through red heat.',
    'Never wedge cold metal across it, and never let metal freeze in it.',
  ],
  words: ['freeboard', 'capacity', 'level'],
});
