import { describe, expect, it } from 'vitest';
import { fresh, type Kept } from '../../src/islands/exercise-store.ts';
import { whereNext, type Stop } from '../../src/islands/progress.ts';

const stops: readonly Stop[] = ['first', 'second', 'third'].map((title) => ({
  title,
  href: `/${title}/`,
  exercises: [`${title}-1`, `${title}-2`],
}));

const next = (kept: Readonly<Record<string, 'right' | 'wrong'>>): string | undefined =>
  whereNext(stops, (id): Kept | undefined => {
    const verdict = kept[id];
    if (verdict === undefined) return undefined;
    return {
      ...fresh,
      tried: true,
      marked: { answer: { verdict, marks: 0, of: 1, says: [], unit: 'right' } },
    };
  })?.title;

describe('where a reader goes on', () => {
  it('is nowhere before anything was tried', () => {
    expect(next({})).toBeUndefined();
  });

  it('is the last lesson tried while something in it is not right', () => {
    expect(next({ 'first-1': 'wrong' })).toBe('first');
    expect(next({ 'first-1': 'right', 'second-1': 'right', 'second-2': 'wrong' })).toBe('second');
  });

  it('is the next lesson once all of that one is right, and nowhere after the last', () => {
    expect(next({ 'second-1': 'right', 'second-2': 'right' })).toBe('third');
    expect(next({ 'third-1': 'right', 'third-2': 'right' })).toBeUndefined();
  });
});
