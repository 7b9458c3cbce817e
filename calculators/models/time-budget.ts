import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { noResult, notAboveNought, numberAt, rowsAt, textAt } from './given.ts';
import { judge, marginOf } from './pour-plan/verdict.ts';
import { say } from './pour-plan/say.ts';

const inputs = {
  working: {
    kind: 'quantity',
    name: 'working time, from powder in water until the gloss goes',
    unit: 's',
    show: 'min',
    range: [120, 3600],
    why: 'from a fast plaster to a slow one',
    usual: 570,
    note: 'On the maker’s sheet, for its water temperature. Warmer or harder water shortens it: time your own.',
    first: true,
  },
  still: {
    kind: 'quantity',
    name: 'hands off before the gloss goes',
    unit: 's',
    range: [0, 300],
    why: 'more leaves no time to work',
    usual: 45,
    note: 'Half a minute to a minute: moved later, the water separates and leaves streaks.',
  },
  steps: {
    kind: 'list',
    name: 'what is done, in order',
    most: 20,
    item: {
      name: { kind: 'text', name: 'step', usual: 'step' },
      time: {
        kind: 'quantity',
        name: 'time it takes',
        unit: 's',
        range: [0, 1800],
        why: 'longer than any plaster waits',
        usual: 60,
      },
    },
    usual: [
      { name: 'powder into water', time: 30 },
      { name: 'mix', time: 180 },
      { name: 'vacuum on the bowl', time: 75 },
      { name: 'pour into the flask', time: 60 },
      { name: 'vacuum on the flask', time: 105 },
      { name: 'top up and label', time: 60 },
    ],
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'working');
  if (bad !== undefined) return noResult(bad);
  const rows = rowsAt(given, 'steps');
  if (rows.length === 0) return noResult('Name at least one step.');
  const usable = numberAt(given, 'working') - Math.max(0, numberAt(given, 'still') || 0);
  let used = 0;
  const steps: Step[] = [];
  let late: string | undefined;
  for (const [index, row] of rows.entries()) {
    const time = numberAt(row, 'time');
    const name = textAt(row, 'name') || `step ${index + 1}`;
    if (!(time >= 0)) return noResult(`${name}: its time is missing or below nought.`);
    used += time;
    if (used > usable) late ??= name;
    steps.push({
      id: `step-${index + 1}`,
      title: `${name}: left afterwards`,
      value: usable - used,
      unit: 'min',
      note: `${say(time, 's')} long, done ${say(used, 'min')} after the powder went in.`,
    });
  }
  const checks = judge({
    id: 'in-time',
    title: 'Done before hands off',
    margin: marginOf(usable, used),
    levers: ['still', 'working'],
    steps: steps.map(({ id }) => id),
    why: {
      holds: `Done with ${say(usable - used, 's')} to spare.`,
      close: `Done, but with only ${say(usable - used, 's')} to spare: one spill and it is too late.`,
      fails: `Too slow by ${say(used - usable, 's')}: "${late ?? 'the last step'}" runs into the time when it must stand still. Mix less at once, or use cooler water within the sheet’s limits.`,
    },
  });
  return { values: { used, left: usable - used }, steps, checks, notes: [] };
}

/** Seconds used and left of an investment's working time, step by step. Below nought: too late. */
export const timeBudget = defineModel({
  id: 'investment/time-budget',
  title: 'Minutes from powder to standing still',
  answers: 'Will I be done before the investment must stand still?',
  inputs,
  outputs: {
    left: { name: 'time left', sign: 't_left', unit: 's', show: 'min' },
    used: { name: 'time used', sign: 't_used', unit: 's', show: 'min' },
  },
  run,
  assumes: [
    'the clock starts when the powder touches the water',
    'water and powder as warm as the sheet says',
  ],
  source: { key: 'trade-practice', at: 'investing to the clock', how: 'common practice' },
  alsoSee: [
    { key: 'makers-data', at: 'working time on the sheet of the investment', how: 'common practice' },
  ],
  examples: [
    {
      title: 'The steps as they stand, in nine and a half minutes',
      given: { working: '9.5 min', still: '45 s' },
      expect: { left: '15 s' },
      from: { byHand: '570 − 45 = 525 s; 30 + 180 + 75 + 60 + 105 + 60 = 510 s; 15 s left' },
    },
  ],
  caution: ['Hurry spills dust: lay everything out and put the mask on before the powder is opened.'],
  monotone: [
    { input: 'working', output: 'left', sense: '+' },
    { input: 'still', output: 'left', sense: '-' },
  ],
  words: ['gloss-off', 'setting', 'investing', 'clock'],
});
