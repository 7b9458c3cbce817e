import { defineFormula } from '../../core/formula.ts';

const air = { unit: 'mg/m³', range: [0, 10000], why: 'far past any limit' } as const;
const limit = {
  unit: 'mg/m³',
  range: [0.00001, 10000],
  why: 'from beryllium to harmless dust',
} as const;

export const mixedExposure = defineFormula({
  id: 'safety/mixed-exposure',
  title: 'Several harmful things in the same air',
  answers: 'Each alone is below its limit: are they together?',
  equation: 'E = C_1 / L_1 + C_2 / L_2 + C_3 / L_3',
  symbols: {
    E: {
      name: 'exposure together',
      unit: '1',
      range: [0, 100],
      why: 'far past any limit',
      note: 'At 1 the limit is reached. Stay well below.',
    },
    C_1: { ...air, name: 'first: in the air', usual: 1, note: 'Zinc oxide fume, for one.' },
    L_1: { ...limit, name: 'first: its limit', usual: 5 },
    C_2: { ...air, name: 'second: in the air', usual: 0.04, note: 'Copper fume, for one.' },
    L_2: { ...limit, name: 'second: its limit', usual: 0.2 },
    C_3: { ...air, name: 'third: in the air', usual: 0 },
    L_3: { ...limit, name: 'third: its limit', usual: 2 },
  },
  noSolve: {
    L_1: 'a limit is looked up, never worked out',
    L_2: 'a limit is looked up, never worked out',
    L_3: 'a limit is looked up, never worked out',
  },
  assumes: [
    'the same organ is harmed by all: as metal fume fever is by zinc and copper',
    'eight-hour averages',
  ],
  source: { key: 'osha-1910-1000', at: '§1910.1000(d)(2), mixture of air contaminants', how: 'read' },
  examples: [
    {
      title: 'Zinc oxide, copper fume and tin over a brass melt',
      given: {
        C_1: '1 mg/m³',
        L_1: '5 mg/m³',
        C_2: '0.04 mg/m³',
        L_2: '0.2 mg/m³',
        C_3: '0.3 mg/m³',
        L_3: '2 mg/m³',
      },
      expect: { E: '0.55 1' },
      from: { byHand: '0.20 + 0.20 + 0.15 = 0.55.' },
    },
  ],
  caution: ['Shown to teach: the limits of your country, measured air and licensed practice decide.'],
  words: ['mixture', 'additive', 'exposure index', 'fume', 'limit'],
});
