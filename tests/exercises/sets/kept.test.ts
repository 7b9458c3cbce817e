import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { receive } from '../../../calculators/exercises/sets/hand-in.ts';
import { libraryOf, markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { readSet } from '../../../calculators/exercises/sets/set-file.ts';
import { inflate } from '../../../src/platform/deflate.ts';
import { pupils } from './class-of-thirty.ts';
import { modelOf } from './course-bank.ts';

/** A set and its hand-ins as version 0.1.0 wrote them, never written again: later versions must mark them alike. */
const file = (name: string): string => readFileSync(new URL(`./kept-0.1.0/${name}`, import.meta.url), 'utf8');

describe('hand-ins of an earlier version', () => {
  it('are marked as they were worked out by hand, whatever has happened to the course since', async () => {
    const read = readSet(file('set.json'));
    if (!read.ok) throw new Error(read.reason);
    const set = read.value;
    const mark = markerFor(set, libraryOf(set, modelOf));
    const handIns = JSON.parse(file('hand-ins.json')) as unknown[];
    expect(handIns).toHaveLength(30);
    for (const [at, data] of handIns.entries()) {
      const received = await receive(JSON.stringify(data), [set], { inflate });
      if (!received.ok) throw new Error(received.reason);
      const { marks, questions } = mark(received.handIn);
      expect(
        questions.map((question) => question.marks),
        pupils[at]!.name,
      ).toEqual(pupils[at]!.marks);
      expect(marks).toBe(pupils[at]!.total);
    }
  });
});
