import { defineFormula } from '../../core/formula.ts';

export const total = defineFormula({
  id: 'charge/total',
  title: 'Metal to put in the crucible',
  answers: 'How much metal do I weigh out?',
  equation: 'm = (m_part + m_sprue + m_feeder + m_heel) / (1 - w)',
  symbols: {
    m: {
      name: 'charge to weigh out',
      unit: 'kg',
      show: 'g',
      range: [0.001, 10],
      why: 'this course is about small charges',
    },
    m_part: {
      name: 'mass of the parts',
      unit: 'kg',
      show: 'g',
      range: [0.0005, 5],
      why: 'this course is about small charges',
      usual: 0.0469,
      note: 'All the parts on the sprue together.',
    },
    m_sprue: {
      name: 'mass of cup, sprue, runners and gates',
      unit: 'kg',
      show: 'g',
      range: [0, 2],
      why: 'this course is about small charges',
      usual: 0.036,
      note: 'Often as much as the part. Work it out from its volume and density.',
    },
    m_feeder: {
      name: 'mass of the feeders',
      unit: 'kg',
      show: 'g',
      range: [0, 2],
      why: 'this course is about small charges',
      usual: 0,
    },
    m_heel: {
      name: 'metal that stays in the crucible',
      unit: 'kg',
      show: 'g',
      range: [0, 0.1],
      why: 'more than this is a spoilt pour, not a heel',
      usual: 0.004,
      note: 'Skull, skim and the last drops: 2 to 5 g whatever the charge, so it weighs most on a small one.',
    },
    w: {
      name: 'share lost in melting',
      unit: '1',
      show: '%',
      range: [0, 0.25],
      why: 'a melt that loses more than a quarter is burning, not melting',
      usual: 0.02,
      note: 'Oxide, dross and vapour: 1 to 3 % for clean bronze and silver, more for fine scrap and for zinc. Weigh in and out for your own figure.',
    },
  },
  assumes: [
    'the cavity is taken full of solid metal: with no feeder the void inside makes the part a little lighter, never heavier',
    'the loss is a share of what is charged',
  ],
  source: {
    key: 'trade-practice',
    at: 'casting, runners and button plus melting loss',
    how: 'common practice',
  },
  examples: [
    {
      title: 'the lamp shield',
      given: { m_part: '46.9 g', m_sprue: '36.0 g', m_feeder: '0 g', m_heel: '4.0 g', w: '2 %' },
      expect: { m: '88.67 g' },
      from: { byHand: '46.9 + 36.0 + 0 + 4.0 = 86.9 g must remain; 86.9 ÷ 0.98 = 88.673 g' },
    },
    {
      title: 'a keeper with a feeder',
      given: { m_part: '27.8 g', m_sprue: '21.0 g', m_feeder: '12.2 g', m_heel: '3.0 g', m: '67.37 g' },
      expect: { w: '5.0 %' },
      from: {
        byHand: '27.8 + 21.0 + 12.2 + 3.0 = 64.0 g; 64.0 ÷ 67.37 = 0.94998, so 0.05002 of the charge is lost',
      },
    },
  ],
  caution: [
    'Have a hot, dry ingot mould beside the flask for what is left, decided before you melt.',
    'Only clean metal of known alloy: no plated, soldered, closed or damp pieces.',
  ],
  words: ['how much metal', 'enough metal', 'button', 'melt loss', 'dross'],
});
