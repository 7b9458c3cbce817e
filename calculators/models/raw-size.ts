import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { gradeNote, gradeOptions, toleranceFor } from './casting-tolerances.ts';
import { noResult, notAboveNought, numberAt, textAt } from './given.ts';

const inputs = {
  finished: {
    kind: 'quantity',
    name: 'size when finished',
    sign: 'F',
    unit: 'm',
    show: 'mm',
    range: [0.0005, 0.25],
    why: 'the rows of the table',
    usual: 0.04,
    first: true,
  },
  feature: {
    kind: 'choice',
    name: 'what it is',
    options: { outside: 'outside: length, width, diameter', inside: 'inside: hole, slot' },
    usual: 'outside',
    first: true,
  },
  sides: {
    kind: 'choice',
    name: 'sides to be cut or filed',
    options: { '0': 'none', '1': 'one', '2': 'two' },
    usual: '2',
    first: true,
  },
  allowance: {
    kind: 'quantity',
    name: 'stock to be taken off each of them',
    sign: 'RMA',
    unit: 'm',
    show: 'mm',
    range: [0, 0.01],
    why: 'more is a block, not a casting',
    usual: 0.0005,
    note: 'By hand 0.3 to 0.5 mm, on a machine 1 to 2 mm: common practice. The standard grades it too, by the largest size of the whole casting.',
    first: true,
  },
  grade: { kind: 'choice', name: 'tolerance grade', options: gradeOptions, usual: '11', note: gradeNote },
} as const;

/**
 * The raw size has its own tolerance, which may fall in another row than the finished one: go on until the
 * row no longer changes.
 */
function rawSize(
  finished: number,
  away: number,
  sign: 1 | -1,
  grade: number,
): readonly [number, number] | string {
  let raw = finished + sign * away;
  for (let i = 0; i < 9; i += 1) {
    const width = toleranceFor(raw, grade);
    if (typeof width === 'string') return width;
    const next = finished + sign * (away + width / 2);
    if (!(next > 0))
      return 'Nothing is left: stock and tolerance together are more than the size. Cast it solid and cut the opening.';
    if (Math.abs(next - raw) < 1e-9) return [next, width];
    raw = next;
  }
  // Between two rows a hole can hop for ever: the wider tolerance is the safe one.
  const widths = [raw, finished + sign * away].map((size) => toleranceFor(size, grade));
  const width = Math.max(...widths.filter((one) => typeof one === 'number'));
  const last = finished + sign * (away + width / 2);
  return last > 0 ? [last, width] : 'Nothing is left: stock and tolerance together are more than the size.';
}

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'finished');
  if (bad !== undefined) return noResult(bad);
  const finished = numberAt(given, 'finished');
  const sides = Number(textAt(given, 'sides') || '2');
  const stock = Math.max(0, numberAt(given, 'allowance') || 0) * sides;
  const sign = textAt(given, 'feature') === 'inside' ? -1 : 1;
  const found = rawSize(finished, stock, sign, Number(textAt(given, 'grade')));
  if (typeof found === 'string') return noResult(found);
  const [raw, width] = found;
  const steps: Step[] = [
    { id: 'stock', title: `Stock, ${sides} side${sides === 1 ? '' : 's'}`, value: stock, unit: 'mm' },
    { id: 'half', title: 'Half the tolerance of the raw size', value: width / 2, unit: 'mm' },
    {
      id: 'raw',
      title: sign === 1 ? 'Finished size and both' : 'Finished size less both',
      value: raw,
      unit: 'mm',
      note: 'So that even the worst casting the grade allows still has its stock.',
    },
  ];
  const notes =
    width > finished
      ? [
          'The size is smaller than its grade’s tolerance: the table cannot decide it. Write its own limits on the drawing.',
        ]
      : [];
  return { values: { raw, width, stock }, steps, checks: [], notes };
}

/**
 * Size of the raw casting (m) that leaves its stock at the worst end of the tolerance: R = F ± (n·RMA + DCT/2),
 * minus for inside features. The contraction allowance comes on top.
 */
export const rawSizeOfCasting = defineModel({
  id: 'pattern/raw-size',
  title: 'Raw size that leaves stock for finishing',
  answers: 'How large must the casting be, so that it can be finished to size?',
  inputs,
  outputs: {
    raw: { name: 'size of the raw casting', sign: 'R', unit: 'm', show: 'mm' },
    width: { name: 'its whole tolerance', sign: 'DCT', unit: 'm', show: 'mm' },
    stock: { name: 'stock in all', unit: 'm', show: 'mm' },
  },
  run,
  assumes: [
    'the raw size is toleranced half up, half down',
    'contraction is added afterwards, on the raw size',
    'no draft: where a side is drafted the stock is counted at its thin end',
  ],
  source: { key: 'iso-8062-3', at: 'Table 2 and the sums for one and two sides', how: 'read' },
  examples: [
    {
      title: 'Latch keeper, 40 mm filed at both ends, DCTG 11',
      given: { finished: '40 mm', allowance: '0.5 mm' },
      expect: { raw: '43.0 mm' },
      from: {
        byHand: '40 + 2 × 0.5 = 41 mm, which is in the row over 40 to 63: 4.0 mm. 41 + 4.0/2 = 43.0 mm.',
      },
    },
  ],
  monotone: [{ input: 'allowance', output: 'stock', sense: '+' }],
  words: ['machining allowance', 'RMA', 'finishing stock', 'ISO 8062'],
});
