import { defineFormula } from '../../core/formula.ts';

export const vessel = defineFormula({
  id: 'safety/vessel',
  title: 'Energy waiting round an evacuated chamber',
  answers: 'If this chamber gives way, how much work does the air do as it rushes in?',
  equation: 'E = p * V',
  symbols: {
    E: {
      name: 'energy let go',
      unit: 'J',
      range: [0, 100000],
      why: 'up to a chamber of a cubic metre',
      note: '100 J is a 10 kg weight dropped on your foot from a metre.',
    },
    p: {
      name: 'pressure outside less pressure inside',
      unit: 'Pa',
      show: 'kPa',
      range: [0, 105000],
      why: 'there is no more than one atmosphere',
      usual: 101325,
    },
    V: {
      name: 'volume of the chamber',
      unit: 'm³',
      show: 'L',
      range: [0.0001, 1],
      why: 'from a jar to a cabinet',
      usual: 0.01,
    },
  },
  assumes: [
    'all the work goes into air and splinters',
    'the force on the lid is another sum: pressure times area, see the force of the air',
  ],
  source: { key: 'cengel-boles', at: 'ch. 4, boundary work at constant pressure', how: 'memory' },
  examples: [
    {
      title: 'A 10 L chamber at full vacuum',
      given: { p: '101.325 kPa', V: '10 L' },
      expect: { E: '1013 J' },
      from: { byHand: '101 325 N/m² × 0.01 m³ = 1013.25 J: a 10 kg weight from ten metres.' },
    },
  ],
  caution: [
    'Shown to teach: the maker’s rating, local codes and trained people decide. Never use glass or plastic not made for vacuum.',
    'Look for scratches, stars and crazing; shield it; never carry it evacuated; vent before you touch it.',
  ],
  words: ['implosion', 'desiccator', 'bell jar', 'stored energy', 'lid'],
});
