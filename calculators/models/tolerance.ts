import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { gradeNote, gradeOptions, toleranceFor } from './casting-tolerances.ts';
import { noResult, notAboveNought, numberAt, textAt } from './given.ts';
import { say } from './pour-plan/say.ts';

const inputs = {
  size: {
    kind: 'quantity',
    name: 'size of the raw casting',
    unit: 'm',
    show: 'mm',
    range: [0.0005, 0.25],
    why: 'the rows of the table',
    usual: 0.06,
    first: true,
  },
  grade: {
    kind: 'choice',
    name: 'tolerance grade',
    options: gradeOptions,
    usual: '11',
    note: gradeNote,
    first: true,
  },
  wall: {
    kind: 'flag',
    name: 'it is a wall thickness',
    usual: false,
    note: 'Walls are allowed one grade more, unless the drawing says otherwise.',
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'size');
  if (bad !== undefined) return noResult(bad);
  const size = numberAt(given, 'size');
  const stated = Number(textAt(given, 'grade'));
  const wall = given.wall === true && stated < 16;
  const grade = wall ? stated + 1 : stated;
  const width = toleranceFor(size, grade);
  if (typeof width === 'string') return noResult(width);
  const steps: Step[] = [
    {
      id: 'width',
      title: `Whole tolerance, DCTG ${grade}${wall ? ', one more for a wall' : ''}`,
      value: width,
      unit: 'mm',
    },
    { id: 'least', title: 'Smallest allowed', value: size - width / 2, unit: 'mm' },
    { id: 'most', title: 'Largest allowed', value: size + width / 2, unit: 'mm' },
  ];
  // A tolerance as wide as the wall allows no metal at all; at half of it the figure says little.
  const margin = Math.log(size / width);
  const decides: Check = {
    id: 'decides',
    title: 'Can the table decide it?',
    verdict: margin < 0 ? 'fails' : margin < Math.log(2) ? 'close' : 'holds',
    margin,
    levers: ['size'],
    steps: ['width'],
    why:
      margin < 0
        ? `No: ${say(size, 'mm')} is smaller than its grade’s tolerance of ${say(width, 'mm')}. The table cannot decide it; write its own limits on the drawing.`
        : margin < Math.log(2)
          ? `Barely: the tolerance of ${say(width, 'mm')} is more than half the size. Write its own limits on the drawing.`
          : `Yes: ${say(width, 'mm')} on ${say(size, 'mm')}.`,
  };
  return {
    values: { width, least: size - width / 2, most: size + width / 2 },
    steps,
    checks: [decides],
    notes: [],
  };
}

/** Whole tolerance and limits (m) of a raw casting size by ISO 8062-3 grade; no number beyond the table. */
export const tolerance = defineModel({
  id: 'pattern/tolerance',
  title: 'Tolerance of a cast size',
  answers: 'How far may this size of the casting be off?',
  inputs,
  outputs: {
    width: { name: 'whole tolerance', sign: 'DCT', unit: 'm', show: 'mm' },
    least: { name: 'smallest allowed', unit: 'm', show: 'mm' },
    most: { name: 'largest allowed', unit: 'm', show: 'mm' },
  },
  run,
  assumes: [
    'the tolerance lies half above and half below the size, unless the drawing says otherwise',
    'sizes that do not cross the parting are held better, those that cross it worse',
  ],
  source: { key: 'iso-8062-3', at: 'Table 2, read in a copy of the table', how: 'read' },
  examples: [
    {
      title: 'Frame of the lamp shield, 60 mm, DCTG 11',
      given: { size: '60 mm' },
      expect: { width: '4.0 mm' },
      from: { key: 'iso-8062-3', at: 'Table 2, over 40 to 63 mm', how: 'read' },
    },
    {
      title: 'The same, its smallest',
      given: { size: '60 mm' },
      expect: { least: '58.0 mm' },
      from: { byHand: '60 − 4/2 = 58' },
    },
  ],
  monotone: [{ input: 'size', output: 'width', sense: '+' }],
  words: ['ISO 8062', 'CT', 'DCTG', 'casting tolerance', 'limits'],
});
