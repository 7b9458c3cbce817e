import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { noResult, numberAt } from './given.ts';
import { say } from './pour-plan/say.ts';

const inputs = {
  nominal: {
    kind: 'quantity',
    name: 'size on the drawing',
    unit: 'm',
    show: 'mm',
    range: [0.0002, 0.5],
    why: 'small castings',
    usual: 0.06,
    first: true,
  },
  up: {
    kind: 'quantity',
    name: 'allowed above',
    unit: 'm',
    show: 'mm',
    range: [0, 0.02],
    why: 'wider than any grade here',
    usual: 0.0005,
    first: true,
  },
  down: {
    kind: 'quantity',
    name: 'allowed below',
    unit: 'm',
    show: 'mm',
    range: [0, 0.02],
    why: 'wider than any grade here',
    usual: 0.0005,
    first: true,
  },
  measured: {
    kind: 'quantity',
    name: 'size found',
    unit: 'm',
    show: 'mm',
    range: [0.0002, 0.5],
    why: 'small castings',
    usual: 0.0603,
    first: true,
  },
  doubt: {
    kind: 'quantity',
    name: 'doubt of the measuring, half-width of 95 %',
    sign: 'U',
    unit: 'm',
    show: 'mm',
    range: [0, 0.005],
    why: 'from a micrometer to a tape',
    usual: 0.00005,
    note: 'A calliper on a cast face: about 0.05 mm. The rough skin counts, not only the tool.',
  },
} as const;

function run(given: Values): Result {
  const nominal = numberAt(given, 'nominal');
  const measured = numberAt(given, 'measured');
  if (!(nominal > 0 && measured > 0)) return noResult('Give the size on the drawing and the size found.');
  const up = Math.max(0, numberAt(given, 'up') || 0);
  const down = Math.max(0, numberAt(given, 'down') || 0);
  const doubt = Math.max(0, numberAt(given, 'doubt') || 0);
  if (up + down <= 0)
    return noResult('No tolerance at all: no casting can keep it. Give what is allowed above and below.');
  const deviation = measured - nominal;
  // Distance to the nearer limit, above zero inside.
  const room = Math.min(up - deviation, deviation + down);
  const verdict = room >= doubt ? 'holds' : room <= -doubt && room < 0 ? 'fails' : 'close';
  const used =
    deviation >= 0 ? (up > 0 ? deviation / up : Number.NaN) : down > 0 ? -deviation / down : Number.NaN;
  const check: Check = {
    id: 'size',
    title: 'Within its limits?',
    verdict,
    margin: room - (room < 0 ? -doubt : doubt),
    why:
      verdict === 'holds'
        ? `Inside, with ${say(room, 'mm')} to the nearer limit.`
        : verdict === 'fails'
          ? `Outside by ${say(-room, 'mm')}${deviation > 0 ? ': too large, it can perhaps be dressed down' : ': too small'}.`
          : `Cannot tell: it lies ${say(Math.abs(room), 'mm')} ${room >= 0 ? 'inside' : 'outside'} the limit, and the measuring is good to ${say(doubt, 'mm')}. Measure better.`,
    levers: ['doubt'],
  };
  const steps: Step[] = [
    { id: 'deviation', title: 'Found less drawn', value: deviation, unit: 'mm' },
    { id: 'room', title: 'To the nearer limit', value: room, unit: 'mm' },
  ];
  return {
    values: { deviation, room, ...(Number.isFinite(used) && { used }) },
    steps,
    checks: [check],
    notes: [],
  };
}

/** Deviation and room (m) of a measured size, and whether it is inside, outside, or nobody can tell. */
export const size = defineModel({
  id: 'inspection/size',
  title: 'Is the size within its limits?',
  answers: 'Is this casting inside its tolerance, and can my measuring tell?',
  inputs,
  outputs: {
    deviation: { name: 'found less drawn', unit: 'm', show: 'mm' },
    room: { name: 'to the nearer limit', unit: 'm', show: 'mm' },
    used: { name: 'share of the tolerance used', unit: '1', show: '%' },
  },
  run,
  assumes: ['measured cold, at about 20 °C', 'the doubt covers tool, hand and the roughness of the skin'],
  source: { key: 'iso-14253-1', at: 'rules for proving conformity and nonconformity', how: 'memory' },
  examples: [
    {
      title: 'Frame of the lamp shield: 60 ± 0.5 mm, found 60.3 mm',
      given: { nominal: '60 mm', up: '0.5 mm', down: '0.5 mm', measured: '60.3 mm', doubt: '0.05 mm' },
      expect: { room: '0.20 mm' },
      from: { byHand: '60.5 − 60.3 = 0.2 mm, four times the doubt: inside' },
    },
    {
      title: 'The same, share of the tolerance used',
      given: { nominal: '60 mm', up: '0.5 mm', down: '0.5 mm', measured: '60.3 mm' },
      expect: { used: '60 %' },
      from: { byHand: '0.3 ÷ 0.5' },
    },
  ],
  monotone: [
    { input: 'measured', output: 'deviation', sense: '+' },
    { input: 'nominal', output: 'deviation', sense: '-' },
    { input: 'up', output: 'room', sense: '+' },
  ],
  words: ['tolerance', 'calliper', 'measure', 'guard band', 'uncertainty'],
});
