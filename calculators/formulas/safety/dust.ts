import { defineFormula } from '../../core/formula.ts';

const concentration = {
  unit: 'mg/m³',
  range: [0, 10000],
  why: 'far past any limit',
} as const;
const time = { unit: 's', show: 'min', range: [0, 86400], why: 'a day' } as const;

export const dust = defineFormula({
  id: 'safety/dust',
  title: 'Exposure averaged over the shift',
  answers: 'Three jobs with different dust: what do they make over eight hours?',
  equation: 'E = (C_1 * t_1 + C_2 * t_2 + C_3 * t_3) / t_8',
  symbols: {
    E: {
      ...concentration,
      name: 'eight-hour average',
      note: 'Compare it with the limit of your country, and each job with the short-term limit.',
    },
    C_1: {
      ...concentration,
      name: 'first job: in the air you breathe',
      usual: 0.08,
      note: 'Measured, respirable. It cannot be seen, so it cannot be guessed.',
    },
    t_1: { ...time, name: 'first job: how long', usual: 1800 },
    C_2: { ...concentration, name: 'second job: in the air you breathe', usual: 0.3 },
    t_2: { ...time, name: 'second job: how long', usual: 1200 },
    C_3: { ...concentration, name: 'third job: in the air you breathe', usual: 0.02 },
    t_3: { ...time, name: 'third job: how long', usual: 7200 },
    t_8: { name: 'eight hours', sign: 't_8', unit: 's', show: 'h', constant: 28800 },
  },
  assumes: [
    'nothing breathed the rest of the day; time past the three jobs counts as clean',
    'always divided by eight hours, for shorter and longer days alike',
  ],
  source: { key: 'osha-1910-1000', at: '§1910.1000(d)(1), computation formulae', how: 'read' },
  alsoSee: [
    { key: 'eh40', at: 'calculation of the 8-hour time-weighted average', how: 'memory' },
    { key: 'jewellers-silicosis', at: 'abstract', how: 'read' },
  ],
  examples: [
    {
      title: 'Mixing investment, breaking out dry, moulding',
      given: {
        C_1: '0.08 mg/m³',
        t_1: '30 min',
        C_2: '0.3 mg/m³',
        t_2: '20 min',
        C_3: '0.02 mg/m³',
        t_3: '120 min',
      },
      expect: { E: '0.0225 mg/m³' },
      from: {
        byHand: '2.4 + 6 + 2.4 = 10.8 mg·min/m³; ÷ 480 min = 0.0225, more than half of it from breaking out.',
      },
    },
  ],
  caution: [
    'Shown to teach: measured air, local codes and licensed practice decide.',
    'Respirable silica scars the lung for good and gives no early warning. Wet work, extraction, a fitted mask; no dry sweeping, no air line, no silica parting powder.',
  ],
  words: ['time-weighted average', 'TWA', 'silica', 'respirable', 'shift', 'exposure'],
});
