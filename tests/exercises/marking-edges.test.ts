import { describe, expect, it } from 'vitest';
import type { Question } from '../../calculators/exercises/answer.ts';
import type { Exercise } from '../../calculators/exercises/definition.ts';
import {
  allowance,
  markChoice,
  markNumber,
  markOrder,
  markQuestion,
  printAnswer,
} from '../../calculators/exercises/marking.ts';
import { readExercise } from '../../calculators/exercises/reading.ts';
import { drawVariant } from '../../calculators/exercises/variants.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import { fallFile, library } from './bench-formulas.ts';

/** Edges of marking that a fault put in on purpose once passed through unseen. */
const bench = readExercise('x', { ...fallFile, vary: {} });
if (bench.kind !== 'number') throw new Error(bench.kind);
const variant = drawVariant(bench, '1');
const mark = (text: string) => markNumber(bench, variant, text, library);

/** A question whose answer is known: so many of the unit, to so many figures. */
function asking(unit: UnitSymbol, figures: number, tolerance = '2 %'): Question {
  const formula = library.formula(bench.kind === 'number' ? (bench.formula ?? '') : '')!;
  return {
    calculation: { formula },
    find: 'v',
    sought: { name: 'speed', unit },
    answerUnit: unit,
    given: {},
    values: {},
    written: {},
    figures,
    tolerance,
  };
}

describe('a number with a power of ten', () => {
  // v = 1.98057 m/s, worked by hand beside the other tests of marking.
  it.each([
    '198e-2 m/s',
    '198E-2 m/s',
    '+1.98 m/s',
    '198 × 10^-2 m/s',
    '198×10^-2 m/s',
    '198x10^-2 m/s',
    '198 * 10 ^ -2 m/s',
    '0.198e1 m/s',
    '0.198e+1 m/s',
    '0.0198e2 m/s',
    '0.198 × 10^1 m/s',
    '  1.98 m/s  ',
  ])('%s is read whole and right', (text) => {
    expect(mark(text)).toMatchObject({ verdict: 'right', unit: 'right', marks: 3 });
  });

  it.each(['198e-2', '198 × 10^-2', '0.198 × 10^1', '1.98   '])(
    '%s alone is right and lacks its unit',
    (text) => {
      expect(mark(text)).toMatchObject({ verdict: 'right', unit: 'missing', marks: 2 });
    },
  );

  it('that is wrong by its sign says so, and only then', () => {
    expect(mark('-1.98 m/s').says[0]).toBe('Right size, wrong sign.');
    expect(mark('-7 m/s').says[0]).toMatch(/^Too small/);
    expect(mark('70 m/s').says[0]).toMatch(/^Too large/);
  });

  it('that is close says so; one rounded too far says that', () => {
    expect(mark('2.1 m/s').says[0]).toMatch(/^Close/);
    expect(mark('2 m/s').verdict).toBe('right');
    expect(mark('1.8 m/s').says[0]).toMatch(/^Close/);
  });
});

describe('what is said of a unit', () => {
  it('names the quantity and its unit, and tells a missing one from another', () => {
    const missing = mark('1.98').says.find((line) =>
      line.startsWith('A number without its unit says nothing'),
    );
    expect(missing).toMatch(/, here in m\/s\.$/);
    const other = mark('1.98 kg').says.find((line) => line.startsWith('The unit does not fit'));
    expect(other).toMatch(/, here in m\/s\.$/);
    expect(mark('1.98 m/s').says).toEqual([]);
  });
});

describe('a mistake that others stand close to', () => {
  // √(2 × 9.80665 × 0.2) = 1.98057; × 1.5 = 2.97086, × 1.515 = 3.00057, × 1.485 = 2.94115: all within 2 %.
  const near = readExercise('x', {
    ...fallFile,
    vary: {},
    mistakes: [1.5, 1.515, 1.485].map((factor) => ({
      equation: `v = ${factor} * sqrt(2 * g * h)`,
      says: `It is ${factor} times too much.`,
    })),
  });
  if (near.kind !== 'number') throw new Error(near.kind);
  it.each([
    ['2.971 m/s', '1.5'],
    ['3.001 m/s', '1.515'],
    ['2.941 m/s', '1.485'],
    // To two figures the first two are equally near, and the one named first speaks.
    ['3.0 m/s', '1.5'],
  ])('is told from them by %s', (text, factor) => {
    expect(markNumber(near, drawVariant(near, '1'), text, library).says[0]).toBe(
      `It is ${factor} times too much.`,
    );
  });
});

describe('how far an answer may be off', () => {
  it('keeps every whole place of a temperature, whatever the figures of the givens', () => {
    // 1083 °C to two figures would print as 1100 °C.
    expect(printAnswer(asking('°C', 2), 1356.15)).toBe('1083 °C');
    expect(printAnswer(asking('°C', 2), 293.15)).toBe('20 °C');
    expect(printAnswer(asking('°C', 2), 278.15)).toMatch(/^5(?:\.0)? °C$/);
    expect(printAnswer(asking('kg', 2), 1356.15)).toMatch(/^1400 kg$/);
  });

  it('is the larger of the tolerance and half of the last figure', () => {
    // 2 % of 150 is 3; half of the third figure of 150 is 0.5, of the second 5.
    expect(allowance(asking('kg', 3), 150)).toBeCloseTo(3, 6);
    expect(allowance(asking('kg', 2), 150)).toBeCloseTo(5, 6);
    expect(allowance(asking('kg', 3), 150)).toBeGreaterThan(3);
    // A nought has no first figure; a width does for it.
    expect(allowance(asking('kg', 3, '0.5 kg'), 0)).toBeCloseTo(0.5, 9);
  });

  it('takes an answer at its very edge', () => {
    const question = { ...asking('m/s', 3), calculation: { formula: library.formula('bench/fall')! } };
    expect(question.tolerance).toBe('2 %');
    // 1.98057 × 1.02 = 2.020181: just inside, and just outside.
    expect(mark('2.0201 m/s').verdict).toBe('right');
    expect(mark('2.0203 m/s').verdict).toBe('wrong');
  });

  it('without an answer to compare with gives the reason and no marks', () => {
    const hopeless = { ...asking('m/s', 3), find: 'v', values: {} };
    const marked = markQuestion(hopeless, [], 2, '3 m/s');
    expect(marked.verdict).toBe('wrong');
    expect(marked.says[0]).toMatch(/is not given/);
  });
});

const choice = (rights: readonly boolean[]) =>
  readExercise('c', {
    title: 'Which',
    kind: 'choice',
    outcome: 'x',
    marks: 2,
    difficulty: 1,
    question: 'Which of these?',
    options: rights.map((right, at) => ({ text: `option ${at}`, right, because: `Because of ${at}.` })),
  }) as Extract<Exercise, { kind: 'choice' }>;

describe('a choice', () => {
  it('says that there is more to find only when all that was chosen is right and some is missing', () => {
    const two = choice([true, true, false]);
    expect(markChoice(two, [0]).says).toEqual(['Because of 0.', 'There is more to find.']);
    expect(markChoice(two, [0, 2]).says).toEqual(['Because of 0.', 'Because of 2.']);
    expect(markChoice(two, [0, 1, 2]).says).not.toContain('There is more to find.');
    expect(markChoice(two, [0, 1])).toMatchObject({
      verdict: 'right',
      says: ['Because of 0.', 'Because of 1.'],
    });
    expect(markChoice(two, [2]).says).toEqual(['Because of 2.']);
    expect(markChoice(two, []).says).toEqual(['There is more to find.']);
  });

  it('leaves out a position that is none', () => {
    expect(markChoice(choice([true, false]), [7]).says).toEqual([]);
    expect(markChoice(choice([true, false]), [7]).verdict).toBe('wrong');
  });
});

describe('an order', () => {
  const order = readExercise('o', {
    title: 'In order',
    kind: 'order',
    outcome: 'x',
    marks: 3,
    difficulty: 1,
    question: 'In which order?',
    items: ['first', 'second', 'third', 'fourth'],
    because: 'One needs the other.',
  }) as Extract<Exercise, { kind: 'order' }>;

  it('says why when it is right, and what stands wrong when it is not', () => {
    expect(markOrder(order, [0, 1, 2, 3])).toMatchObject({ marks: 3, says: ['One needs the other.'] });
    expect(markOrder(order, [0, 2, 1, 3]).says[0]).toContain('Place 2');
    expect(markOrder(order, [0, 2, 1, 3]).says[0]).toContain('“third”');
  });

  it('keeps a share for each pair that stands, counting from the second place', () => {
    // Of three pairs, 1→2 and 2→3 stand: two of three marks.
    expect(markOrder(order, [3, 0, 1, 2]).marks).toBe(2);
    expect(markOrder(order, [3, 2, 1, 0]).marks).toBe(0);
    // Short of an item it is not right, though all that is placed stands in order.
    expect(markOrder(order, [0, 1, 2])).toMatchObject({
      verdict: 'wrong',
      says: ['Some are not placed yet.'],
    });
  });
});
