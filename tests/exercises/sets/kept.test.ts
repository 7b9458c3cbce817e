import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { receive, withSum, writeHandIn } from '../../../calculators/exercises/sets/hand-in.ts';
import { variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { libraryOf, markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { readSet, withHash, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
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

  it('are marked by the formula as it stood then, not by that of today', async () => {
    // A library before this one that had the mass twice too large: marking follows what the set kept of it.
    const then = JSON.parse(file('set.json')) as SetFile;
    const formula = 'charge/mass-from-volume';
    const old = withHash({
      ...then,
      library: '0.0.1',
      formulas: { ...then.formulas, [formula]: { ...then.formulas[formula]!, equation: 'm = 2 * rho * V' } },
    });
    const read = readSet(JSON.stringify(old));
    if (!read.ok) throw new Error(read.reason);
    const set = read.value;
    const question = set.questions.find(({ id }) => id === 'mass-of-the-clapper')!;
    const { V = '', rho = '' } = variantFor(set, 'Ada Brook', question).given;
    const grams = (Number.parseFloat(V) * Number.parseFloat(rho)) / 1000;
    const marksFor = async (answer: string): Promise<number> => {
      const sent = withSum({
        format: 'warm-mould-hand-in',
        version: 1,
        set: { id: set.id, edition: set.edition, hash: set.hash },
        learner: 'Ada Brook',
        library: '0.0.1',
        handedIn: '2026-03-02T09:00:00Z',
        answers: { [question.id]: { texts: { answer } } },
      });
      const received = await receive(writeHandIn(sent), [set], { inflate });
      if (!received.ok) throw new Error(received.reason);
      return markerFor(set, libraryOf(set, modelOf))(received.handIn).marks;
    };
    // By hand: three marks, one of them the unit's. The set's own formula gives twice the mass.
    expect(await marksFor(`${2 * grams} g`)).toBe(3);
    expect(await marksFor(`${grams} g`)).toBe(1);
  });
});
