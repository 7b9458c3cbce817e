import { describe, expect, it } from 'vitest';
import { oneOrTwo, type Way } from '../../src/workers/one-or-two.ts';

/** What is taken for the first bodies where the ways take so long; the first body takes half as long again. */
function taken(cores: number, paces: Readonly<Record<Way, number>>): Way[] {
  const choice = oneOrTwo(cores);
  return [1.5, 1, 1, 1, 1].map((cold) => {
    const way = choice.next();
    choice.took(way, cold * paces[way]);
    return way;
  });
}

describe('one worker or two', () => {
  it('tries both and stays with the faster', () => {
    expect(taken(2, { one: 1, two: 1.4 })).toEqual(['one', 'two', 'one', 'one', 'one']);
    expect(taken(2, { one: 1, two: 0.7 })).toEqual(['one', 'two', 'one', 'two', 'two']);
    expect(taken(8, { one: 1, two: 0.7 })).toEqual(['two', 'one', 'two', 'two', 'two']);
    expect(taken(8, { one: 1, two: 1.4 })).toEqual(['two', 'one', 'two', 'one', 'one']);
  });

  it('never takes two where there is one core', () => {
    expect(taken(1, { one: 1, two: 0.1 })).toEqual(['one', 'one', 'one', 'one', 'one']);
  });
});
