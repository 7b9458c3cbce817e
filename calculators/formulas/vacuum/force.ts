import { defineFormula } from '../../core/formula.ts';

export const force = defineFormula({
  id: 'vacuum/force',
  title: 'Force of the air on a round area',
  answers: 'How hard does the air press on this lid, flask or cake of sand?',
  equation: 'F = dp * pi * d^2 / 4',
  symbols: {
    F: { name: 'force', unit: 'N', range: [0, 20000], why: 'chambers up to half a metre across' },
    dp: {
      name: 'pressure below the ambient',
      sign: 'Δp',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 101325],
      why: 'there is no more than one atmosphere to press',
      usual: 35000,
    },
    d: {
      name: 'diameter of the area it acts on',
      unit: 'm',
      show: 'mm',
      range: [0.005, 0.5],
      why: 'bench chambers and flasks',
      usual: 0.06,
      note: 'For another shape take the circle of the same area: 1.128 times the square root of the area.',
    },
  },
  assumes: [
    'the full difference acts over the whole area',
    'a domed lid counts by the flat circle it covers, not by its skin',
  ],
  source: { key: 'esposito', at: 'ch. 14, suction cups', how: 'memory' },
  examples: [
    {
      title: '35 kPa under a 60 mm cake of sand',
      given: { dp: '35 kPa', d: '60 mm' },
      expect: { F: '99.0 N' },
      from: {
        byHand:
          '60 mm across is 3.14159 × 900 mm² = 2827.4 mm²; 0.035 N on each mm² gives 98.96 N, the weight of 10 kg',
      },
    },
    {
      title: 'the lid of a 150 mm chamber at 95 kPa',
      given: { dp: '95 kPa', d: '150 mm' },
      expect: { F: '1679 N' },
      from: { byHand: '3.14159 × 75² = 17 671.5 mm²; × 0.095 N = 1678.8 N, the weight of two people' },
    },
  ],
  caution: [
    'Evacuated glass and plastic can implode: look for scratches and stars, shield it, never carry it evacuated, vent before touching.',
    'Nobody leans over a flask when the suction goes on. Dry catch pot between flask and pump, quick vent in reach.',
    'Acrylic lids craze with solvents and heat: keep hot flasks away from them.',
  ],
  words: ['lid', 'chamber', 'implosion', 'bell jar'],
});
