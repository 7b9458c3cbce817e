import { describe, expect, it } from 'vitest';
import { pack, shortHandIn, writeHandIn } from '../../calculators/exercises/sets/hand-in.ts';
import { writeMarkBook } from '../../calculators/exercises/sets/mark-book.ts';
import { writeSet } from '../../calculators/exercises/sets/set-file.ts';
import { command } from '../../src/cli/command.ts';
import { deflate } from '../../src/platform/deflate.ts';
import { makeKey, seal, writeKey } from '../../src/platform/seal.ts';
import { classDraft, handInOf, ownId, pupils } from '../exercises/sets/class-of-thirty.ts';
import { fileOf, setOf } from '../exercises/sets/course-bank.ts';

const set = setOf(classDraft());
const later = setOf(classDraft({ edition: 2, title: 'Spring test, corrected' }));
const contents: Record<string, string> = {
  'set.json': writeSet(fileOf(classDraft())),
  'later.json': writeSet(fileOf(classDraft({ edition: 2, title: 'Spring test, corrected' }))),
  ...Object.fromEntries(
    pupils.map((pupil, at) => [`in/${at + 1}.json`, writeHandIn(handInOf(set, pupil, at))]),
  ),
};
const all = Object.keys(contents).filter((name) => name.startsWith('in/'));
const written: Record<string, string> = {};
const run = (args: readonly string[], more: Record<string, string> = {}) =>
  command(args, {
    read: (path) => {
      const text = { ...contents, ...more }[path];
      return text === undefined ? Promise.reject(new Error('no such file')) : Promise.resolve(text);
    },
    write: (path, text) => {
      written[path] = text;
      return Promise.resolve();
    },
  });

describe('calc mark', () => {
  it('gives the class as worked out by hand', async () => {
    const { code, out = '', error } = await run(['mark', 'set.json', ...all, '--csv', '--separator', 'tab']);
    expect({ code, error }).toEqual({ code: 0, error: undefined });
    const rows = out
      .split('\r\n')
      .slice(1)
      .map((row) => row.split('\t'));
    for (const { name, marks, total } of pupils) {
      const safe = name.startsWith('=') ? `'${name}` : name;
      const row = rows.find(([learner]) => learner === `"${safe.replaceAll('"', '""')}"`);
      expect(row?.slice(1, 12), name).toEqual([total, 32, ...marks].map(String));
    }
  });

  it('names each file it cannot mark and goes on with the rest', async () => {
    const torn = contents['in/2.json']!.slice(0, 200);
    const answer = await run(['mark', 'set.json', 'in/1.json', 'torn.json', 'in/1.json', 'plan.json'], {
      'torn.json': torn,
      'plan.json': '{"format":"warm-mould-plan","version":1}',
    });
    expect(answer.code).toBe(0);
    expect(answer.out).toContain('29 of 32, 1 to be marked by hand');
    expect(answer.error).toMatch(/torn\.json: damaged.*in\/1\.json: duplicate.*plan\.json: foreign/s);
  });

  it('marks a hand-in of an earlier edition by that edition, when its file is there', async () => {
    const old = await run(['mark', 'later.json', 'in/2.json']);
    expect(old).toMatchObject({ code: 1, error: expect.stringContaining('edition 1') as string });
    const both = await run(['mark', 'later.json', 'set.json', 'in/2.json', 'new.json', '--csv'], {
      'new.json': writeHandIn(handInOf(later, pupils[0]!)),
    });
    expect(both.out).toContain('"Bo Reed",27,32');
    expect(both.out).toContain('"edition 1"');
    expect(both.out).toContain('"Ada Brook",29,32');
  });

  it('opens what is sealed, reads codes, and heeds the mark book and the roster', async () => {
    const key = await makeKey('2026-03-01');
    const ada = handInOf(set, pupils[0]!);
    const sealed = JSON.stringify(await seal(writeHandIn(ada), ada.set, key.public));
    const codes = await Promise.all(
      pupils.slice(1, 4).map((pupil) => pack(shortHandIn(handInOf(set, pupil), set), deflate)),
    );
    const more = {
      'sealed.json': sealed,
      'codes.txt': codes.join('\n'),
      'key.json': writeKey(key),
      'book.json': writeMarkBook({
        remarks: [{ set: set.hash, learner: 'Ada Brook', question: ownId, marks: 2 }],
        roster: [],
      }),
      'roster.txt': 'Ada Brook\nPat Late\n',
    };
    const call = ['mark', 'set.json', 'sealed.json', 'codes.txt'];
    const shut = await run(call, more);
    expect(shut.error).toContain('sealed.json: sealed');
    const open = await run(
      [...call, '--key', 'key.json', '--book', 'book.json', '--roster', 'roster.txt', '--csv'],
      more,
    );
    expect(open.error).toBeUndefined();
    expect(open.out).toContain('"Ada Brook",31,32');
    expect(open.out).toContain('"Cy Marsh",20,32');
    expect(open.out).toMatch(/"Pat Late",,32.*not handed in/);
  });

  it('writes results and statements as files', async () => {
    const json = await run(['mark', 'set.json', ...all, '--json', '--out', 'results.json']);
    expect(json.out).toBe('written to results.json');
    expect(JSON.parse(written['results.json']!)).toMatchObject({
      format: 'warm-mould-results',
      set: { marks: 32 },
    });
    const xapi = await run(['mark', 'set.json', 'in/1.json', '--xapi', 'https://example.invalid']);
    expect((JSON.parse(xapi.out ?? '') as unknown[]).length).toBe(10);
  });

  it.each([
    [['mark'], 'which set'],
    [['mark', 'gone.json', 'in/1.json'], 'cannot read gone.json'],
    [['mark', 'in/1.json', 'in/2.json'], 'not a set'],
    [['mark', 'set.json', 'in/1.json', '--keep', 'worst'], '--keep is one of'],
    [['mark', 'set.json', 'in/1.json', '--separator', 'dot'], '--separator is one of'],
    [['mark', 'set.json', 'in/1.json', '--key', 'set.json'], 'set.json: It'],
  ])('answers %j with exit code 2 and the remedy', async (args, message) => {
    const answer = await run(args);
    expect(answer.code).toBe(2);
    expect(answer.error).toContain(message);
  });
});
