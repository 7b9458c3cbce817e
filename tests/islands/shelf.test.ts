import { describe, expect, it } from 'vitest';
import { withTheirs, type Work } from '../../src/islands/sets/shelf.ts';

const work = (answers: Work['answers']): Work => ({ learner: 'Ada Brook', answers });
const text = (answer: string) => ({ texts: { answer } });

describe('work in two tabs', () => {
  it('keeps what each tab typed: mine where I type, the stored elsewhere', () => {
    const mine = work({ a: text('1 g'), b: text('old') });
    const stored = work({ a: text('stale'), b: text('2 g'), c: text('3 g') });
    expect(withTheirs(mine, stored, 'a').answers).toEqual({ a: text('1 g'), b: text('2 g'), c: text('3 g') });
  });

  it('keeps my photographs, which the store has elsewhere, and does nothing without a stored copy', () => {
    const photo = { type: 'image/png', bytes: 'AAAA' } as const;
    const mine = work({ a: text('1 g'), b: { ...text('old'), photo } });
    expect(withTheirs(mine, work({ b: text('2 g') }), 'a').answers['b']).toEqual({ ...text('2 g'), photo });
    expect(withTheirs(mine, undefined, 'a')).toBe(mine);
  });
});
