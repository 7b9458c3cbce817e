import { describe, expect, it } from 'vitest';
import { checkVariant } from '../../calculators/exercises/check.ts';
import { markDesign } from '../../calculators/exercises/design.ts';
import { markNumber } from '../../calculators/exercises/marking.ts';
import { readExercise } from '../../calculators/exercises/reading.ts';
import { drawVariant } from '../../calculators/exercises/variants.ts';
import { workedNumber, workedSteps } from '../../calculators/exercises/worked.ts';
import { designFile, fallFile, headCheck, library, stepsFile } from './bench-formulas.ts';

describe('a worked answer', () => {
  it('goes from the givens through the equation to the number', () => {
    const exercise = readExercise('x', { ...fallFile, vary: {} });
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    expect(workedNumber(exercise, drawVariant(exercise, '1'), library)).toEqual([
      { kind: 'given', text: 'h = 200 mm = 0.2 m' },
      { kind: 'equation', text: 'v = √(2 × g × h)' },
      { kind: 'numbers', text: 'v = √(2 × 9.80665 × 0.2)' },
      { kind: 'answer', text: 'v = 1.98 m/s' },
    ]);
  });

  it('is rearranged for what is sought', () => {
    const turned = { ...fallFile, find: 'h', given: { v: '2.0 m/s' }, vary: {}, mistakes: fallFile.mistakes };
    const exercise = readExercise('x', turned);
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    const lines = workedNumber(exercise, drawVariant(exercise, '1'), library).map(({ text }) => text);
    // 2.0² / (2 × 9.80665) = 0.20394 m
    expect(lines.at(-1)).toBe('h = 200 mm');
    expect(lines[0]).toMatch(/^h = v\^2 \/ /);
  });

  it('of milligrams in the air goes in milligrams throughout', () => {
    const air = {
      ...fallFile,
      formula: 'test/dust',
      find: 'C',
      given: { G: '0.0020 g/s', Q: '720 m³/h' },
      vary: {},
    };
    const exercise = readExercise('x', air);
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    // 0.0020 g/s = 2 mg/s; 720 m³ ÷ 3600 s = 0.2 m³/s; 2 ÷ 0.2 = 10 mg/m³
    expect(workedNumber(exercise, drawVariant(exercise, '1'), library).map(({ text }) => text)).toEqual([
      'G = 0.0020 g/s = 2 mg/s',
      'Q = 720 m³/h = 0.2 m³/s',
      'C = G / Q',
      'C = 2 / 0.2',
      'C = 10 mg/m³',
    ]);
  });

  it('of nothing but sizes goes in millimetres', () => {
    const round = { ...fallFile, formula: 'test/disc', find: 'A', given: { r: '2.5 mm' }, vary: {} };
    const exercise = readExercise('x', round);
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    // π × 2.5² = 19.63 mm², to the two figures of 2.5 mm
    expect(workedNumber(exercise, drawVariant(exercise, '1'), library).map(({ text }) => text)).toEqual([
      'A = π × r^2',
      'A = π × 2.5^2',
      'A = 20 mm²',
    ]);
  });

  it('keeps an angle in degrees', () => {
    const tilted = {
      ...fallFile,
      formula: 'test/slope',
      find: 'x',
      given: { L: '200 mm', theta: '30 deg' },
      vary: {},
    };
    const exercise = readExercise('x', tilted);
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    // cos 30° = 0.866025; 200 × 0.866025 = 173.205 mm
    expect(workedNumber(exercise, drawVariant(exercise, '1'), library).map(({ text }) => text)).toEqual([
      'x = L × cos(θ)',
      'x = 200 × cos(30°)',
      'x = 170 mm',
    ]);
  });

  it('asks a model for its answer and shows its steps', () => {
    const doubled = {
      ...fallFile,
      formula: undefined,
      model: 'test-plan',
      find: 'twice',
      given: { h: '35 mm' },
      vary: {},
      mistakes: [
        { change: { h: '2*h' }, says: 'Doubled twice.' },
        { equation: 'twice = h', says: 'Not doubled.' },
      ],
    };
    const exercise = readExercise('x', doubled);
    if (exercise.kind !== 'number') throw new Error(exercise.kind);
    const variant = drawVariant(exercise, '1');
    expect(checkVariant(exercise, variant, library)).toEqual([]);
    expect(workedNumber(exercise, variant, library).map(({ text }) => text)).toEqual([
      'Twice the head: 70.0 mm',
      'twice = 70 mm',
    ]);
    expect(markNumber(exercise, variant, '140 mm', library).says[0]).toBe('Doubled twice.');
    expect(markNumber(exercise, variant, '70 mm', library)).toMatchObject({ verdict: 'right', marks: 3 });
  });

  it('of steps puts the true answer of one part into the next', () => {
    const exercise = readExercise('x', stepsFile);
    if (exercise.kind !== 'steps') throw new Error(exercise.kind);
    const parts = workedSteps(exercise, drawVariant(exercise, '1'), library);
    expect(parts.map(({ id }) => id)).toEqual(['speed', 'time']);
    expect(parts[1]?.lines.at(-1)?.text).toBe('t = 0.038 s');
  });
});

describe('the check of a variant', () => {
  const problemsOf = (data: object): string => {
    const exercise = readExercise('x', { ...fallFile, vary: {}, ...data });
    return checkVariant(exercise, drawVariant(exercise, '1'), library).join('; ');
  };

  it('passes a sound exercise', () => {
    expect(problemsOf({})).toBe('');
  });

  it.each([
    [{ given: {} }, /no answer: height \(h\) is not given/],
    [{ given: { h: '3000 mm' } }, /h is above the range/],
    [{ given: { h: '200 kg' } }, /h "200 kg"/],
    [{ given: { h: '200 mm', k: '1 mm' } }, /"k" is given/],
    [{ formula: 'test/fal' }, /no formula "test\/fal"/],
    [{ find: 'x' }, /no "x" to find/],
    [{ 'answer-unit': 'mph' }, /no unit "mph"/],
    [
      { mistakes: [{ equation: 'v = sqrt(2*g*h)*1.01', says: 'a' }, fallFile.mistakes[0]] },
      /“a” leads to the answer/,
    ],
    [{ mistakes: [{ equation: 'v = sqrt(-h)', says: 'a' }, fallFile.mistakes[0]] }, /“a” leads to no number/],
  ])('%# finds the fault', (data, message) => {
    expect(problemsOf(data)).toMatch(message);
  });

  it('finds an answer that stands among the givens', () => {
    // The volume does not change when nothing does: 100 mL is given and is the answer.
    const same = {
      formula: 'test/gas',
      find: 'V2',
      given: { V1: '100 mL', T1: '20 °C', T2: '20 °C', p1: '100 kPa', p2: '100 kPa' },
      mistakes: [
        { equation: 'V2 = 2*V1', says: 'a' },
        { equation: 'V2 = 3*V1', says: 'b' },
      ],
    };
    expect(problemsOf(same)).toBe('the answer stands among the givens as V1');
  });
});

describe('a design', () => {
  const exercise = readExercise('x', designFile);
  if (exercise.kind !== 'design') throw new Error(exercise.kind);

  it('is right when its checks hold', () => {
    expect(markDesign(exercise, { h: '120 mm' }, headCheck)).toMatchObject({ verdict: 'right', marks: 2 });
  });

  it('starts failing and says what is missing', () => {
    expect(markDesign(exercise, {}, headCheck)).toMatchObject({
      verdict: 'wrong',
      says: ['Head: It needs 100 mm.'],
    });
  });

  it('with a number that cannot be read is not marked', () => {
    const marked = markDesign(exercise, { h: '120 kg' }, headCheck);
    expect(marked).toMatchObject({ verdict: 'unread', marks: 0 });
    expect(marked.says[0]).toMatch(/^head: .*length/);
  });

  it('may not change anything else', () => {
    expect(markDesign(exercise, { w: '5 mm' }, headCheck).says[0]).toBe('width is not yours to change here.');
  });
});
