import { describe, expect, it } from 'vitest';
import { readExercise } from '../../calculators/exercises/reading.ts';
import { withNumbers } from '../../calculators/exercises/question-text.ts';
import { drawVariant, valuesOf } from '../../calculators/exercises/variants.ts';
import { choiceFile, fallFile, orderFile } from './bench-formulas.ts';

const fall = readExercise('fall', fallFile);

describe('the numbers of a variant', () => {
  it('lie on the grid, both ends included, without rounding noise', () => {
    expect(valuesOf({ from: '0.1 kg', to: '0.4 kg', step: '0.1 kg' })).toEqual([
      '0.1 kg',
      '0.2 kg',
      '0.3 kg',
      '0.4 kg',
    ]);
    expect(valuesOf({ from: '-5 °C', to: '5 °C', step: '5 °C' })).toEqual(['-5 °C', '0 °C', '5 °C']);
    expect(valuesOf(['7 mm', '8 mm'])).toEqual(['7 mm', '8 mm']);
  });

  it('refuse a grid that does not close or mixes units', () => {
    expect(() => valuesOf({ from: '1 mm', to: '2 mm', step: '0.3 mm' })).toThrow(/whole number of steps/);
    expect(() => valuesOf({ from: '1 mm', to: '2 cm', step: '1 mm' })).toThrow(/one unit/);
  });

  it('are the same for the same seed and learner, whoever asks', () => {
    expect(drawVariant(fall, '7', 'ana')).toEqual(drawVariant(fall, '7', 'ana'));
  });

  it('reach every value of the grid and differ between learners', () => {
    const seen = new Set(Array.from({ length: 200 }, (_, i) => drawVariant(fall, String(i)).given['h']));
    expect(seen.size).toBe(9);
    const learners = new Set(
      Array.from({ length: 40 }, (_, i) => drawVariant(fall, '1', `learner ${i}`).given['h']),
    );
    expect(learners.size).toBeGreaterThan(4);
  });

  it('do not depend on the order in which the file lists what varies', () => {
    const both = { h: ['1 mm', '2 mm', '3 mm'], k: ['4 mm', '5 mm', '6 mm'] };
    const turned = { k: both.k, h: both.h };
    const one = readExercise('x', { ...fallFile, vary: both });
    const other = readExercise('x', { ...fallFile, vary: turned });
    for (const seed of ['1', '2', '3', '4']) {
      expect(drawVariant(one, seed).given).toEqual(drawVariant(other, seed).given);
    }
  });
});

describe('the order of a variant', () => {
  it('holds every option once', () => {
    const { order } = drawVariant(readExercise('c', choiceFile), '3');
    expect([...order].sort()).toEqual([0, 1, 2]);
  });

  it('never shows the items of an ordering exercise already in order', () => {
    const exercise = readExercise('o', orderFile);
    for (let seed = 0; seed < 200; seed += 1) {
      expect(drawVariant(exercise, String(seed)).order).not.toEqual([0, 1, 2, 3]);
    }
  });
});

describe('a question text', () => {
  it('shows its givens and leaves what is not one', () => {
    expect(withNumbers('From {h} to {x}', { h: '-40 mm' })).toBe('From −40 mm to {x}');
  });
});
