import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { formatSchemas, handInSchema } from '../../../calculators/exercises/sets/formats.ts';
import {
  pack,
  receive,
  shortHandIn,
  unpack,
  withSum,
  writeHandIn,
  type HandIn,
} from '../../../calculators/exercises/sets/hand-in.ts';
import { readMarkBook } from '../../../calculators/exercises/sets/mark-book.ts';
import { libraryOf, markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { faultOf } from '../../../calculators/exercises/sets/schema.ts';
import { readSet, withHash, writeSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { deflate, inflate } from '../../../src/platform/deflate.ts';
import { makeKey, openerWith, readKey, seal } from '../../../src/platform/seal.ts';
import { classDraft, handInOf, pupils } from './class-of-thirty.ts';
import { fileOf, modelOf, setOf } from './course-bank.ts';

const set = setOf(classDraft());
const file = fileOf(classDraft());
const setText = writeSet(file);
const mark = markerFor(set, libraryOf(set, modelOf));
const real = pupils.map((pupil) => handInOf(set, pupil));
const opener = { inflate };

/** Values nobody would write by hand into these places. */
const oddities = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    -1,
    1e308,
    Number.MAX_SAFE_INTEGER,
    0.1,
    '',
    '__proto__',
    '\u0000',
    '=1+1',
    '<script>',
    '１２',
    '1e999 g',
    '−',
    [],
    {},
    [[]],
    { toString: 1 },
  ),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.jsonValue({ maxDepth: 3 }) as fc.Arbitrary<unknown>,
);

/** Every place in a value, as a path. */
function places(data: unknown, path: (string | number)[] = []): (string | number)[][] {
  const inner =
    typeof data === 'object' && data !== null
      ? Object.entries(data).flatMap(([key, value]) =>
          places(value, [...path, Array.isArray(data) ? Number(key) : key]),
        )
      : [];
  return [path, ...inner];
}

function changedAt(data: unknown, [key, ...rest]: readonly (string | number)[], value: unknown): unknown {
  if (key === undefined) return value;
  const copy = Array.isArray(data) ? [...(data as unknown[])] : { ...(data as object) };
  (copy as Record<string | number, unknown>)[key] = changedAt(
    (data as Record<string | number, unknown>)[key],
    rest,
    value,
  );
  return copy;
}

const handIns = fc.constantFrom(...real);
const change = fc.tuple(handIns, fc.nat(), oddities).map(([sent, at, value]) => {
  const all = places(sent);
  return changedAt(sent, all[at % all.length]!, value);
});

/** Text with some signs put in, taken out or turned. */
const torn = (text: string) =>
  fc
    .array(
      fc.tuple(
        fc.nat(text.length - 1),
        fc.constantFrom('drop', 'put', 'turn', 'cut'),
        fc.string({ unit: 'binary', maxLength: 3 }),
      ),
      { minLength: 1, maxLength: 6 },
    )
    .map((edits) =>
      edits.reduce((now, [at, how, put]) => {
        const i = at % Math.max(1, now.length);
        if (how === 'cut') return now.slice(0, i);
        if (how === 'drop') return now.slice(0, i) + now.slice(i + 1 + put.length);
        return now.slice(0, i) + put + now.slice(how === 'turn' ? i + 1 : i);
      }, text),
    );

describe('a hand-in from anybody', () => {
  property.prop([change], { numRuns: 400 })(
    'changed anywhere is refused with a sentence, never thrown at',
    async (data) => {
      const read = await receive(JSON.stringify(data), [set], opener);
      const same = real.some((sent) => JSON.stringify(sent) === JSON.stringify(data));
      expect(read.ok).toBe(same);
      if (!read.ok) expect(read.reason).toMatch(/^[A-Z].*\.$/su);
    },
  );

  property.prop([change], { numRuns: 400 })(
    'changed and summed again never gains what its answers do not earn',
    async (data) => {
      const forged =
        typeof data === 'object' && data !== null && !Array.isArray(data) ? withSum(data as HandIn) : data;
      const read = await receive(JSON.stringify(forged), [set], opener);
      if (!read.ok) return;
      const { marks, questions } = mark(read.handIn);
      const before = real.find((sent) => sent.learner === read.handIn.learner);
      expect(marks).toBeGreaterThanOrEqual(0);
      expect(marks).toBeLessThanOrEqual(set.marks);
      for (const [at, question] of questions.entries()) {
        expect(Number.isInteger(question.marks)).toBe(true);
        const id = set.questions[at]!.id;
        if (before && JSON.stringify(before.answers[id]) === JSON.stringify(read.handIn.answers[id]))
          expect(question.marks).toBe(pupils.find(({ name }) => name === before.learner)!.marks[at]);
      }
    },
  );

  property.prop([torn(writeHandIn(real[0]!))], { numRuns: 400 })(
    'torn anywhere says what is wrong',
    async (text) => {
      const read = await receive(text, [set], opener);
      if (read.ok) expect(read.handIn).toEqual(real[0]);
      else expect(read.reason).toMatch(/\.$/);
    },
  );

  property.prop(
    [
      fc.record({
        chosen: fc.array(fc.integer({ min: 0, max: 39 }), { maxLength: 40 }),
        texts: fc.dictionary(fc.string(), fc.string({ unit: 'binary' })),
      }),
    ],
    { numRuns: 300 },
  )('with any answer at all is marked between nought and full', (given) => {
    const answers = Object.fromEntries(set.questions.map(({ id }) => [id, given]));
    const marked = mark({ learner: 'Ada Brook', answers });
    for (const { marks, of, parts } of marked.questions) {
      expect(marks).toBeGreaterThanOrEqual(0);
      expect(marks).toBeLessThanOrEqual(of);
      for (const part of parts) expect(part.marked.marks).toBeLessThanOrEqual(part.marked.of);
    }
  });

  it('with a long run of digits or signs is marked without delay', () => {
    const start = performance.now();
    for (const text of [
      '1'.repeat(5000),
      '1 '.repeat(2500),
      '-'.repeat(5000),
      `${'9'.repeat(2000)}e${'9'.repeat(2000)} g`,
    ])
      mark({ learner: 'x', answers: { 'mass-of-the-clapper': { texts: { answer: text } } } });
    expect(performance.now() - start).toBeLessThan(500);
  });
});

describe('a code and a seal from anybody', async () => {
  const code = await pack(shortHandIn(real[0]!, set), deflate);
  const key = await makeKey('2026-03-01');
  const sealed = JSON.stringify(await seal(writeHandIn(real[0]!), real[0]!.set, key.public));

  property.prop([torn(code)], { numRuns: 300 })(
    'a code torn anywhere is not taken for another',
    async (text) => {
      const read = await receive(text, [set], opener);
      if (read.ok) expect(read.handIn.answers).toMatchObject(real[0]!.answers);
      else expect(read.reason).toMatch(/\.$/);
    },
  );

  property.prop([oddities], { numRuns: 200 })(
    'a code of anything is refused with a sentence',
    async (data) => {
      const read = await receive(await pack(JSON.stringify(data) ?? '', deflate), [set], opener);
      expect(read.ok).toBe(false);
    },
  );

  property.prop([fc.uint8Array({ maxLength: 200 })], { numRuns: 200 })(
    'bytes that are no code never throw',
    async (bytes) => {
      const text = await pack('', () => Promise.resolve(bytes));
      expect(typeof (await unpack(text, opener)).ok).toBe('boolean');
    },
  );

  property.prop([torn(sealed)], { numRuns: 200 })('a seal torn anywhere stays shut', async (text) => {
    const read = await receive(text, [set], { inflate, open: openerWith([key]) });
    if (read.ok) expect(read.handIn).toEqual(real[0]);
    else expect(read.reason).toMatch(/\.$/);
  });
});

describe('a set from anybody', () => {
  property.prop([torn(setText)], { numRuns: 200 })('torn anywhere is refused', (text) => {
    const read = readSet(text);
    if (read.ok) expect(read.value.hash).toBe(set.hash);
    else expect(read.reason).toMatch(/\.$/s);
  });

  property.prop([fc.nat(), oddities], { numRuns: 400 })(
    'changed anywhere and hashed again is refused, or can be marked by',
    (at, value) => {
      const all = places(file);
      const data = changedAt(file, all[at % all.length]!, value);
      const forged =
        typeof data === 'object' && data !== null && !Array.isArray(data) ? withHash(data as SetFile) : data;
      const read = readSet(JSON.stringify(forged));
      if (!read.ok) {
        expect(read.reason).toMatch(/\.$/s);
        return;
      }
      const { marks, of } = markerFor(read.value, libraryOf(read.value, modelOf))(real[0]!);
      expect(marks).toBeGreaterThanOrEqual(0);
      expect(marks).toBeLessThanOrEqual(of);
    },
    60_000,
  );

  it('with a grid of two units is refused', () => {
    const at = places(file).filter((place) => place.at(-1) === 'from');
    expect(at.length).toBeGreaterThan(0);
    for (const place of at) {
      const read = readSet(JSON.stringify(withHash(changedAt(file, place, -1) as SetFile)));
      expect(read).toMatchObject({ ok: false, reason: expect.stringMatching(/one unit.*\.$/s) as string });
    }
  });

  property.prop([oddities], { numRuns: 200 })(
    'keys and mark books of anything are refused with a sentence',
    (data) => {
      for (const read of [readKey, readMarkBook])
        expect(read(JSON.stringify(data) ?? '')).toMatchObject({ ok: false });
    },
  );
});

describe('the published schemas', () => {
  it('take what the pages write', async () => {
    const key = await makeKey('2026-03-01');
    expect(faultOf(file, formatSchemas.set)).toBeUndefined();
    for (const sent of real) expect(faultOf(sent, handInSchema)).toBeUndefined();
    expect(faultOf(key, formatSchemas.key)).toBeUndefined();
    expect(faultOf(await seal('x', real[0]!.set, key.public), formatSchemas.sealed)).toBeUndefined();
  });
});
