import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createHash } from 'node:crypto';
import { deflateRawSync } from 'node:zlib';
import { base64, fromBase64, textOf, utf8 } from '../../../calculators/exercises/sets/bytes.ts';
import { draftFrom, setFrom, setFromShort, shortSet } from '../../../calculators/exercises/sets/building.ts';
import {
  pack,
  receive,
  shortHandIn,
  unpack,
  withSum,
  writeHandIn,
  type HandIn,
} from '../../../calculators/exercises/sets/hand-in.ts';
import { learnerKey, plainName, variantFor } from '../../../calculators/exercises/sets/learner.ts';
import {
  readMarkBook,
  rosterFrom,
  withRemark,
  writeMarkBook,
} from '../../../calculators/exercises/sets/mark-book.ts';
import { readSet, withHash, writeSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { canonical, sha256 } from '../../../calculators/exercises/sets/sha256.ts';
import { parseUntrusted } from '../../../calculators/exercises/sets/untrusted.ts';
import { deflate, inflate } from '../../../src/platform/deflate.ts';
import { makeKey, openerWith, readKey, seal, writeKey } from '../../../src/platform/seal.ts';
import { bank, draftOf, fileOf, setOf } from './course-bank.ts';

const ids = ['mass-of-the-clapper', 'what-is-left', 'dressing-in-order', 'gauge-that-stalls'];
const draft = draftOf(ids);
const set = setOf(draft);
const handIn = (more: Partial<HandIn> = {}): HandIn =>
  withSum({
    format: 'warm-mould-hand-in',
    version: 1,
    set: { id: set.id, edition: set.edition, hash: set.hash },
    learner: 'Ada Brook',
    library: '0.1.0',
    handedIn: '2026-03-02T10:00:00Z',
    answers: {
      'mass-of-the-clapper': { texts: { answer: '178 g' }, seconds: 40 },
      'what-is-left': { texts: { air: '85.6 kPa', left: '25.6 kPa' }, working: '101.325 × …\nthen less' },
      'dressing-in-order': { chosen: [0, 1, 2, 3, 4] },
    },
    ...more,
  });

describe('bytes and hashes', () => {
  it.each([
    // FIPS 180-4 examples, as published with the standard.
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('SHA-256 of “%s” is the published one', (text, hash) => {
    expect(sha256(text)).toBe(hash);
  });

  it('agree with the machine’s own for any length and any sign', () => {
    for (let n = 0; n < 300; n += 7) {
      const text = 'Δ°€𝛼é'.repeat(n).slice(0, n);
      const bytes = Buffer.from(text, 'utf8');
      expect(sha256(text)).toBe(createHash('sha256').update(bytes).digest('hex'));
      expect(Buffer.from(utf8(text))).toEqual(bytes);
      expect(base64(bytes)).toBe(bytes.toString('base64url'));
      expect(fromBase64(bytes.toString('base64url'))).toEqual(new Uint8Array(bytes));
    }
  });

  it('refuse text that is no UTF-8 and base 64 that is none', () => {
    for (const bytes of [[0xc0, 0x80], [0xff], [0xe2, 0x82], [0xed, 0xa0, 0x80], [0xf4, 0x90, 0x80, 0x80]])
      expect(textOf(Uint8Array.from(bytes))).toBeUndefined();
    for (const text of ['a', 'ab=', 'a b', 'aéaa', 'ab\n', 'QR']) expect(fromBase64(text)).toBeUndefined();
    expect(textOf(utf8('Wärme 𝛼'))).toBe('Wärme 𝛼');
  });

  it('write the same data the same way, whatever the order of its keys', () => {
    expect(canonical({ b: 1, a: [null, { d: 'x', c: undefined }] })).toBe('{"a":[null,{"d":"x"}],"b":1}');
  });
});

describe('reading from outside', () => {
  const limits = { characters: 1000, depth: 4 };
  it.each([
    ['{"a": {"__proto__": {"x": 1}}}', /name that no such file has/],
    ['{"constructor": 1}', /name that no such file has/],
    ['[[[[[1]]]]]', /nested deeper/],
    [`"${'x'.repeat(2000)}"`, /larger/],
    ['{"a": ', /cut short or damaged/],
    ['', /cut short or damaged/],
  ])('refuses %s', (text, reason) => {
    const read = parseUntrusted(text, limits);
    expect(read.ok ? '' : read.reason).toMatch(reason);
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
  });

  it('counts brackets outside strings only', () => {
    expect(parseUntrusted('{"a": "[[[[[[\\"[["}', limits)).toMatchObject({ ok: true });
  });
});

describe('a set', () => {
  it('comes back from its file as it was', () => {
    const file = fileOf(draft);
    const read = readSet(writeSet(file));
    expect(read.ok && read.value).toEqual(set);
    expect(set.marks).toBe(3 + 4 + 2 + 2);
  });

  it('keeps the equation text and what its models compute from', () => {
    expect(set.formulas['vacuum/gauge']!.equation).toContain('p_amb');
    expect(set.materials).toEqual({});
    const design = fileOf(draftOf(['shield-that-fills']));
    expect(Object.keys(design.models)).toEqual(['pour-plan']);
    expect(Object.keys(design.materials).length).toBeGreaterThan(10);
  });

  it('shares changed marks among the parts, whole and at least one each', () => {
    const file = fileOf(
      draftOf([], { picks: [{ id: 'seal-from-wax-to-charge', marks: 10, tolerance: '5 %' }] }),
    );
    const exercise = file.questions[0]!.exercise as { parts: { marks: number }[]; tolerance: string };
    // 3, 2 and 2 of 7 made 10: 4.29, 2.86, 2.86; whole parts 4, 2, 2 and the two largest remainders.
    expect(exercise.parts.map(({ marks }) => marks)).toEqual([4, 3, 3]);
    expect(exercise.tolerance).toBe('5 %');
  });

  it.each([
    ['changed after it was saved', (file: SetFile) => ({ ...file, title: 'Other' }), /changed or damaged/],
    ['of another kind', (file: SetFile) => ({ ...file, format: 'warm-mould-plan' }), /not a set/],
    ['of a later version', (file: SetFile) => ({ ...file, version: 2 }), /later version/],
    ['with a stray key', (file: SetFile) => withHash({ ...file, html: '<b>' } as SetFile), /does not belong/],
    [
      'asking twice',
      (file: SetFile) => withHash({ ...file, questions: [...file.questions, file.questions[0]!] }),
      /twice/,
    ],
    ['with a formula missing', (file: SetFile) => withHash({ ...file, formulas: {} }), /missing from it/],
    [
      'with an endless grid',
      (file: SetFile) =>
        withHash({
          ...file,
          questions: [
            {
              id: 'x',
              exercise: {
                ...file.questions[0]!.exercise,
                vary: { V: { from: '0.000001 cm³', to: '99999 cm³', step: '0.000001 cm³' } },
              },
            },
          ],
        }),
      /more than 10000/,
    ],
    [
      'with an unknown unit',
      (file: SetFile) =>
        withHash({
          ...file,
          formulas: Object.fromEntries(
            Object.entries(file.formulas).map(([id, kept]) => [
              id,
              { ...kept, symbols: { ...kept.symbols, q: { name: 'q', unit: 'furlong' as 'm' } } },
            ]),
          ),
        }),
      /unknown unit/,
    ],
  ])('%s is refused with the reason', (_, change, reason) => {
    const read = readSet(JSON.stringify(change(fileOf(draft))));
    expect(read.ok ? 'read' : read.reason).toMatch(reason);
  });

  it('is not made of nothing, of no title, or of an exercise that is not there', () => {
    for (const bad of [draftOf([]), draftOf(ids, { title: ' ' }), draftOf(['no-such-thing'])])
      expect(setFrom(bad, bank)).toMatchObject({ ok: false });
  });

  it('travels as a short list when all its exercises are of the course', () => {
    const one = draftOf(ids, {
      picks: [...draft.picks.slice(1), { id: ids[0]!, marks: 5, tolerance: '1 %' }],
    });
    const file = fileOf(one);
    const list = shortSet(one, file)!;
    expect(list.length).toBeLessThan(330);
    expect(setFromShort(JSON.parse(list), bank)).toEqual({ ok: true, value: file });
    expect(setFrom(draftFrom(file, bank), bank)).toEqual({ ok: true, value: file });
    const moved = { ...bank, library: '0.2.0' };
    expect(setFromShort(JSON.parse(list), moved)).toMatchObject({ ok: false });
    for (const bad of [
      null,
      [],
      [2],
      [1, 'a', 1, 't', '', '', [], '', []],
      JSON.parse(list.replace('5', '6')),
    ])
      expect(setFromShort(bad, bank)).toMatchObject({ ok: false });
  });
});

describe('a learner', () => {
  it('is the same whatever capitals, spaces and accents are typed with', () => {
    expect(learnerKey('  Zoë   BROOK ')).toBe(learnerKey('zoe\u0308 brook'));
    expect(plainName(' A\u0000da\n <img onerror=x> ')).toBe('A da <img onerror=x>');
    expect([...plainName('𝛼'.repeat(500))]).toHaveLength(120);
  });

  it('gets numbers by the set, the name and the exercise alone', () => {
    const exercise = set.questions[0]!;
    const numbers = (name: string, of = set) => variantFor(of, name, exercise).given;
    expect(numbers('Ada Brook')).toEqual(numbers(' ada  brook'));
    const all = new Set(
      ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((name) => JSON.stringify(numbers(name))),
    );
    expect(all.size).toBeGreaterThan(2);
    const same = { ...set, rules: { ...set.rules, numbers: 'same' as const } };
    expect(numbers('Ada Brook', same)).toEqual(numbers('Bo Reed', same));
    const edited = { ...set, edition: 2, title: 'New title' };
    expect(numbers('Ada Brook', edited)).toEqual(numbers('Ada Brook'));
  });

  it('keeps the numbers it had when the generator was frozen', () => {
    // Written down once; a change here would give every learner of a running set other numbers.
    const drawn = ['Ada Brook', 'Bo Reed', 'Cy Marsh'].map(
      (name) => variantFor(set, name, set.questions[0]!).given,
    );
    expect(drawn).toEqual(JSON.parse(readFileSync(new URL('./frozen-draws.json', import.meta.url), 'utf8')));
  });
});

describe('a hand-in', () => {
  const opener = { inflate };
  const got = (text: string, sets = [set]) => receive(text, sets, opener);

  it('is read from its file and from its code alike, but for the photograph', async () => {
    const sent = handIn();
    expect(await got(writeHandIn(sent))).toMatchObject({ ok: true, handIn: sent, sealed: false });
    const code = await pack(shortHandIn(sent, set), deflate);
    expect(code.length).toBeLessThan(420);
    const read = await got(`\n ${code.slice(0, 60)}\n${code.slice(60)} `);
    expect(read.ok && read.handIn.answers).toEqual({ ...sent.answers, 'gauge-that-stalls': {} });
    expect(read.ok && read.handIn.learner).toBe('Ada Brook');
  });

  it.each([
    ['edited', (sent: HandIn) => JSON.stringify({ ...sent, learner: 'Bo' }), 'edited', /changed after/],
    [
      'given marks',
      (sent: HandIn) => JSON.stringify(withSum({ ...sent, marks: 99 } as HandIn)),
      'edited',
      /does not belong/,
    ],
    ['cut short', (sent: HandIn) => JSON.stringify(sent).slice(0, -40), 'damaged', /cut short/],
    [
      'of another set',
      (sent: HandIn) => JSON.stringify(withSum({ ...sent, set: { ...sent.set, id: 'other' } })),
      'foreign',
      /another set/,
    ],
    [
      'of another edition',
      (sent: HandIn) =>
        JSON.stringify(withSum({ ...sent, set: { ...sent.set, edition: 3, hash: 'a'.repeat(64) } })),
      'stale',
      /edition 3/,
    ],
    [
      'of the same number, not the same set',
      (sent: HandIn) => JSON.stringify(withSum({ ...sent, set: { ...sent.set, hash: 'a'.repeat(64) } })),
      'stale',
      /not the same/,
    ],
    [
      'answering what is not asked',
      (sent: HandIn) => JSON.stringify(withSum({ ...sent, answers: { extra: {} } })),
      'edited',
      /does not ask/,
    ],
    [
      'without a name',
      (sent: HandIn) => JSON.stringify(withSum({ ...sent, learner: '  ' })),
      'edited',
      /no name/,
    ],
    ['empty', () => '', 'damaged', /empty/],
    ['a plan', () => '{"format":"warm-mould-plan","version":1}', 'foreign', /not a hand-in/],
    ['a picture', () => '\u0089PNG\r\n', 'damaged', /cut short or damaged/],
    ['a code with a sign lost', () => 'wm1-abcdef-12345678', 'damaged', /not whole/],
  ])('%s is named and refused', async (_, change, why, reason) => {
    const read = await got(change(handIn()));
    expect(read).toMatchObject({ ok: false, why });
    expect(read.ok ? '' : read.reason).toMatch(reason);
  });

  it('that unpacks to far more than it is is not unpacked', async () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(60_000_000)));
    const code = `wm1-${base64(bomb)}-${sha256(bomb).slice(0, 8)}`;
    expect(code.length).toBeLessThan(100_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(await got(code)).toMatchObject({
      ok: false,
      why: 'damaged',
      reason: expect.stringContaining('far more') as string,
    });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
    expect(await unpack(code, opener)).toMatchObject({ ok: false });
  });

  it('sealed opens with its key alone, and not when a byte of it was changed', async () => {
    const [key, other] = await Promise.all([makeKey('2026-03-01'), makeKey('2026-03-01')]);
    const read = readKey(writeKey(key));
    expect(read).toEqual({ ok: true, value: key });
    const sent = handIn();
    const sealed = await seal(writeHandIn(sent), sent.set, key.public);
    const text = JSON.stringify(sealed);
    expect(text).not.toContain('Ada');
    expect(await receive(text, [set], { inflate, open: openerWith([other, key]) })).toMatchObject({
      ok: true,
      handIn: sent,
      sealed: true,
    });
    const refused = async (what: object, keys = [key]) =>
      receive(JSON.stringify({ ...sealed, ...what }), [set], { inflate, open: openerWith(keys) });
    expect(await refused({}, [other])).toMatchObject({ ok: false, why: 'sealed' });
    expect(await receive(text, [set], { inflate })).toMatchObject({ ok: false, why: 'sealed' });
    const flipped = sealed.data.startsWith('A') ? `B${sealed.data.slice(1)}` : `A${sealed.data.slice(1)}`;
    expect(await refused({ data: flipped })).toMatchObject({ ok: false, why: 'damaged' });
    expect(await refused({ from: key.public })).toMatchObject({ ok: false, why: 'damaged' });
    expect(await refused({ set: { ...sealed.set, hash: set.hash, edition: 1, id: 'mill-2' } })).toMatchObject(
      { ok: false, why: 'foreign' },
    );
    const code = await pack(
      JSON.stringify(await seal(shortHandIn(sent, set), sent.set, key.public)),
      deflate,
    );
    expect(await receive(code, [set], { inflate, open: openerWith([key]) })).toMatchObject({
      ok: true,
      sealed: true,
    });
  });
});

describe('a mark book', () => {
  it('comes back as it was and refuses what is none', () => {
    const book = {
      remarks: [{ set: set.hash, learner: 'Ada', question: ids[0]!, marks: 2, reason: 'shown at the bench' }],
      roster: ['Ada'],
    };
    expect(readMarkBook(writeMarkBook(book))).toEqual({ ok: true, value: book });
    expect(
      readMarkBook('{"format":"warm-mould-mark-book","version":1,"remarks":[{}],"roster":[]}'),
    ).toMatchObject({ ok: false });
    const [first] = book.remarks;
    expect(withRemark(book.remarks, { ...first!, marks: 1 })).toHaveLength(1);
    expect(withRemark(book.remarks, { set: set.hash, learner: 'Ada', question: ids[0]! })).toEqual([]);
  });

  it('takes a roster as it is pasted', () => {
    expect(rosterFrom('Ada Brook\r\n\n"Reed; ""Bo"""\tx\nAda Brook\nCy Marsh;3')).toEqual([
      'Ada Brook',
      'Reed; "Bo"',
      'Cy Marsh',
    ]);
  });
});
