import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, numberAt, rowsAt, textAt } from './given.ts';
import { printNumber } from '../core/print.ts';

const number = (name: string, usual: number) =>
  ({
    kind: 'quantity',
    name,
    unit: '1',
    range: [-1e6, 1e6],
    why: 'any quantity of the log, in one unit on the whole line',
    usual,
  }) as const;

const inputs = {
  lines: {
    kind: 'list',
    name: 'from the plan and the pour log',
    note: 'One unit on each line: seconds, grams, millimetres, whatever it is.',
    most: 30,
    item: {
      name: { kind: 'text', name: 'what', usual: 'quantity' },
      predicted: number('as planned', 1),
      doubt: { ...number('±, of the plan', 0.1), range: [0, 1e6] },
      found: number('as found', 1),
      doubt_found: { ...number('±, of the finding', 0.05), range: [0, 1e6] },
    },
    usual: [
      { name: 'part, g', predicted: 46.9, doubt: 0.9, found: 46.1, doubt_found: 0.1 },
      { name: 'length, mm', predicted: 60, doubt: 0.4, found: 60.3, doubt_found: 0.05 },
      { name: 'pour, s', predicted: 0.8, doubt: 0.3, found: 1.3, doubt_found: 0.1 },
    ],
  },
} as const;

function run(given: Values): Result {
  const rows = rowsAt(given, 'lines');
  if (rows.length === 0) return noResult('Give at least one line of the log.');
  const steps: Step[] = [];
  const checks: Check[] = [];
  let worst = 0;
  let apart = 0;
  for (const [index, row] of rows.entries()) {
    const name = textAt(row, 'name') || `line ${index + 1}`;
    const predicted = numberAt(row, 'predicted');
    const found = numberAt(row, 'found');
    const doubt = Math.hypot(numberAt(row, 'doubt') || 0, numberAt(row, 'doubt_found') || 0);
    if (Number.isNaN(predicted) || Number.isNaN(found))
      return noResult(`${name}: give it as planned and as found.`);
    if (!(doubt > 0)) return noResult(`${name}: without a ± on either side nothing can be compared.`);
    const score = (found - predicted) / doubt;
    worst = Math.max(worst, Math.abs(score));
    if (Math.abs(score) > 1) apart += 1;
    steps.push({
      id: `line-${index + 1}`,
      title: `${name}: found less planned, over the doubt of both`,
      value: score,
      unit: '1',
    });
    const text = `${printNumber(found)} found, ${printNumber(predicted)} planned, ± ${printNumber(doubt, { figures: 2 })} together`;
    checks.push({
      id: `line-${index + 1}`,
      title: name,
      verdict: Math.abs(score) > 1 ? 'fails' : Math.abs(score) > 0.8 ? 'close' : 'holds',
      margin: 1 - Math.abs(score),
      why:
        Math.abs(score) > 1
          ? `They disagree: ${text}. Look for the reason, and change one thing.`
          : `They agree: ${text}.`,
      levers: [],
      steps: [`line-${index + 1}`],
    });
  }
  const by = rows.length;
  const notes =
    by >= 8 && apart > Math.max(1, by / 5)
      ? [
          'More lines disagree than one in twenty should: the plan’s ± is too small, or its constants are not yours. Calibrate.',
        ]
      : [];
  return { values: known({ worst, apart, lines: by }), steps, checks, notes };
}

/** For each line of the log, found less planned over the root sum of both 95 % half-widths; above 1 they disagree. */
export const compare = defineModel({
  id: 'inspection/compare',
  title: 'Plan against pour log',
  answers: 'Did the pour go as planned, or is the difference more than chance?',
  inputs,
  outputs: {
    worst: { name: 'largest difference over its doubt', sign: 'E', unit: '1' },
    apart: { name: 'lines that disagree', unit: '1' },
    lines: { name: 'lines', unit: '1' },
  },
  run,
  assumes: [
    'both ± are half-widths of 95 % intervals',
    'the doubts of plan and finding have nothing to do with each other',
  ],
  source: { key: 'iso-13528', at: 'E_n scores', how: 'memory' },
  examples: [
    {
      title: 'Three lines of the lamp shield’s log: the pour was slower than planned',
      given: {},
      expect: { worst: '1.58 1' },
      from: {
        byHand:
          'pour: (1.3 − 0.8)/√(0.3² + 0.1²) = 0.5/0.3162 = 1.581; part: −0.8/0.9055 = −0.88; length: 0.3/0.4031 = 0.74',
      },
    },
    {
      title: 'How many disagree',
      given: {},
      expect: { apart: '1 1' },
      from: { byHand: 'only the pour is above 1' },
    },
  ],
  words: ['pour log', 'predicted', 'actual', 'difference', 'record'],
});
