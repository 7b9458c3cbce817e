import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { printNumber } from '../core/print.ts';
import { known, noResult, numberAt, rowsAt, textAt } from './given.ts';
import { studentT } from './student.ts';

const number = (name: string) =>
  ({
    kind: 'quantity',
    name,
    unit: '1',
    range: [0.000001, 1e6],
    why: 'above nought, in one unit all the way down',
    usual: 1,
  }) as const;

const inputs = {
  what: {
    kind: 'choice',
    name: 'constant sought',
    options: {
      mould: 'mould constant: time over modulus squared',
      factor: 'fill factor: found over worked out',
    },
    usual: 'mould',
    first: true,
  },
  scatter: {
    kind: 'choice',
    name: 'how the findings scatter',
    options: {
      share: 'by a share: twice as large, twice as far off',
      even: 'evenly: as far off when large as when small',
    },
    usual: 'share',
    note: 'Times and lengths of pours scatter by a share.',
  },
  pours: {
    kind: 'list',
    name: 'own pours',
    note: 'Modulus and time to freeze, or the length worked out and the length found.',
    most: 60,
    item: { x: number('modulus, or worked out'), y: number('time, or found') },
    usual: [
      { x: 0.43, y: 0.5 },
      { x: 1.13, y: 3.1 },
      { x: 1.42, y: 5.4 },
      { x: 2, y: 9.7 },
    ],
  },
} as const;

interface Fit {
  readonly constant: number;
  readonly low: number;
  readonly high: number;
  /** One standard deviation: a share of the value, or in the unit of the findings. */
  readonly scatter: number;
}

/** Least squares of the logarithms: the constant is the geometric mean of the ratios. */
function byShare(points: readonly (readonly [number, number])[]): Fit {
  const logs = points.map(([x, y]) => Math.log(y / x));
  const n = logs.length;
  const centre = logs.reduce((sum, one) => sum + one, 0) / n;
  const scatter = Math.sqrt(logs.reduce((sum, one) => sum + (one - centre) ** 2, 0) / (n - 1));
  const half = (studentT(n - 1) * scatter) / Math.sqrt(n);
  return { constant: Math.exp(centre), low: Math.exp(centre - half), high: Math.exp(centre + half), scatter };
}

/** Least squares through the origin. */
function evenly(points: readonly (readonly [number, number])[]): Fit {
  const n = points.length;
  const squares = points.reduce((sum, [x]) => sum + x * x, 0);
  const constant = points.reduce((sum, [x, y]) => sum + x * y, 0) / squares;
  const scatter = Math.sqrt(points.reduce((sum, [x, y]) => sum + (y - constant * x) ** 2, 0) / (n - 1));
  const half = (studentT(n - 1) * scatter) / Math.sqrt(squares);
  return { constant, low: constant - half, high: constant + half, scatter };
}

function run(given: Values): Result {
  const power = textAt(given, 'what') === 'factor' ? 1 : 2;
  const rows = rowsAt(given, 'pours');
  const points: (readonly [number, number])[] = [];
  for (const [index, row] of rows.entries()) {
    const x = numberAt(row, 'x');
    const y = numberAt(row, 'y');
    if (!(x > 0 && y > 0)) return noResult(`Pour ${index + 1}: both numbers must be above nought.`);
    points.push([x ** power, y]);
  }
  const n = points.length;
  if (n === 0) return noResult('Give at least one pour.');
  const steps: Step[] = points.map(([x, y], i) => ({
    id: `ratio-${i + 1}`,
    title: `Pour ${i + 1}: ${power === 2 ? 'time over modulus squared' : 'found over worked out'}`,
    value: y / x,
    unit: '1',
  }));
  if (n < 3) {
    const middle = Math.sqrt((points[0]![1] / points[0]![0]) * (points[n - 1]![1] / points[n - 1]![0]));
    const rough = Number(middle.toPrecision(1));
    const check: Check = {
      id: 'precise',
      title: 'Is it known well enough to use?',
      verdict: 'fails',
      margin: n - 3,
      why: `Cannot tell: ${n === 1 ? 'one pour says' : 'two pours say'} nothing of how far the next will be off. It is about ${printNumber(rough, { figures: 1 })}; pour ${3 - n} more at least, and of other sizes.`,
      levers: [],
    };
    return { values: known({ constant: rough, pours: n }), steps, checks: [check], notes: [check.why] };
  }
  const share = textAt(given, 'scatter') !== 'even';
  const { constant, low, high, scatter } = share ? byShare(points) : evenly(points);
  const half = (high - low) / 2 / constant;
  steps.push(
    {
      id: 'constant',
      title: share ? 'Their geometric mean' : 'Least squares through nought',
      value: constant,
      unit: '1',
    },
    { id: 'low', title: `95 % interval from, ${n - 1} degrees of freedom`, value: low, unit: '1' },
    { id: 'high', title: '95 % interval to', value: high, unit: '1' },
  );
  const check: Check = {
    id: 'precise',
    title: 'Is it known well enough to use?',
    verdict: half > 0.5 ? 'fails' : half > 0.2 ? 'close' : 'holds',
    margin: Math.log(0.5 / Math.max(half, 1e-9)),
    why:
      half > 0.5
        ? `No: it may lie anywhere from ${printNumber(low, { figures: 2 })} to ${printNumber(high, { figures: 2 })}. More pours, more alike in everything but size.`
        : `From ${printNumber(low, { figures: 3 })} to ${printNumber(high, { figures: 3 })}, which is ± ${printNumber(half * 100, { figures: 2 })} %.`,
    levers: [],
  };
  const spanX = Math.max(...points.map(([x]) => x)) / Math.min(...points.map(([x]) => x));
  const notes = spanX < 1.5 ? ['All pours are of nearly one size: it holds for that size only.'] : [];
  return {
    values: known({ constant, low, high, deviation: scatter, pours: n }),
    steps,
    checks: [check],
    notes,
  };
}

/**
 * Own mould constant (time over modulus squared, in the units given) or fill factor, by least squares, with its
 * 95 % interval by Student's t. With fewer than three pours: one figure, and no interval.
 */
export const calibrate = defineModel({
  id: 'inspection/calibrate',
  title: 'Own constant from own pours',
  answers: 'What is the mould constant, or the fill factor, of my bench, and how sure is it?',
  inputs,
  outputs: {
    constant: { name: 'constant', unit: '1' },
    low: { name: '95 % interval from', unit: '1' },
    high: { name: 'to', unit: '1' },
    deviation: { name: 'scatter of one pour, one standard deviation', unit: '1' },
    pours: { name: 'pours', unit: '1' },
  },
  run,
  assumes: [
    'the pours differ in size and in nothing else: same metal, mould and temperatures',
    'the rule is right and only its constant is sought',
    'each pour scatters by itself',
  ],
  source: { key: 'nist-strd', at: 'linear regression through the origin', how: 'memory' },
  examples: [
    {
      title: 'Four pours, moduli in mm and times in s',
      given: {},
      expect: { constant: '2.56 1' },
      from: {
        byHand:
          'Squares 0.1849, 1.2769, 2.0164, 4; ratios 2.7042, 2.4278, 2.6780, 2.4250. Logarithms 0.99480, 0.88698, 0.98508, 0.88583; mean 0.93817; e to it 2.5553. 95 %: deviations 0.05663, −0.05119, 0.04691, −0.05234, s = 0.05991, half 3.182 × 0.05991/2 = 0.0953: 2.32 to 2.81.',
      },
    },
  ],
  words: ['mould constant', 'regression', 'least squares', 'confidence', 'fill factor', 'calibration'],
});
