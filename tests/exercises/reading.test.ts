import { describe, expect, it } from 'vitest';
import { ExerciseError, readExercise } from '../../calculators/exercises/reading.ts';
import { choiceFile, designFile, fallFile, orderFile, stepsFile } from './bench-formulas.ts';

function problemsOf(data: unknown): readonly string[] {
  try {
    readExercise('a', data);
    return [];
  } catch (error) {
    return error instanceof ExerciseError ? error.problems : [String(error)];
  }
}

describe('an exercise file', () => {
  it.each([fallFile, stepsFile, choiceFile, orderFile, designFile])('of kind $kind is read', (file) => {
    expect(problemsOf(file)).toEqual([]);
    expect(readExercise('a', file).id).toBe('a');
  });

  it('has 2 % as its tolerance unless it says otherwise', () => {
    expect(readExercise('a', fallFile)).toMatchObject({ tolerance: '2 %' });
    expect(readExercise('a', { ...fallFile, tolerance: '0.1 m/s' })).toMatchObject({ tolerance: '0.1 m/s' });
  });

  it('takes a plain number as a given without a unit', () => {
    expect(readExercise('a', { ...fallFile, given: { C: 0.7, D: '0.7 1' } })).toMatchObject({
      given: { C: '0.7', D: '0.7' },
    });
  });

  it('lets a design start from a list, row by row', () => {
    const sections = [{ name: 'Nose', thickness: '9 mm', pieces: 1 }];
    expect(readExercise('a', { ...designFile, start: { h: '40 mm', sections } })).toMatchObject({
      start: { h: '40 mm', sections: [{ name: 'Nose', thickness: '9 mm', pieces: '1' }] },
    });
    expect(problemsOf({ ...designFile, start: { sections: ['Nose'] } })).toEqual([
      'Row 1 of "start" sections must name quantities: h: \'40 mm\'.',
    ]);
  });

  it.each([
    [undefined, /must hold keys/],
    [[], /must hold keys/],
    [{ ...fallFile, kind: 'riddle' }, /"kind" must be one of number, steps/],
    [{ ...fallFile, kind: 'constructor' }, /"kind" must be one of/],
    [{ ...fallFile, answer: '2 m/s' }, /has "answer", which is not one of/],
    [{ ...fallFile, marks: 0 }, /"marks" must be a whole number/],
    [{ ...fallFile, difficulty: 4 }, /"difficulty" must be 1, 2 or 3/],
    [{ ...fallFile, mistakes: [] }, /at least 2 diagnosed mistakes/],
    [{ ...fallFile, mistakes: [{ slip: 'left-handed', says: 'x' }, {}] }, /a slip: gauge-for-absolute/],
    [{ ...fallFile, model: 'plan' }, /a formula or a model, and not both/],
    [{ ...fallFile, vary: { h: '5 mm' } }, /"vary" of h must be a list/],
    [{ ...fallFile, source: { key: 'groover' } }, /"source" needs/],
    [
      { ...choiceFile, options: choiceFile.options.filter((o) => o.right) },
      /some are right and some are not/,
    ],
    [{ ...stepsFile, parts: [] }, /at least two parts/],
    [{ ...orderFile, items: ['one'] }, /"items" must be a list of at least 3/],
  ])('%# with a fault says which', (data, message) => {
    expect(problemsOf(data).join(' ')).toMatch(message);
  });
});
