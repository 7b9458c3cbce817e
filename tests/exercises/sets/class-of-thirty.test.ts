import { describe, expect, it } from 'vitest';
import {
  classRows,
  createPile,
  totalOf,
  totals,
  waitingOf,
  type Remark,
} from '../../../calculators/exercises/sets/class-table.ts';
import { cell, classCsv } from '../../../calculators/exercises/sets/csv.ts';
import { receive, withSum, writeHandIn, type HandIn } from '../../../calculators/exercises/sets/hand-in.ts';
import {
  correlation,
  itemAnalysis,
  outcomesReached,
} from '../../../calculators/exercises/sets/item-analysis.ts';
import { libraryOf, markerFor } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { resultsJson, xapiStatements } from '../../../calculators/exercises/sets/records.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { inflate } from '../../../src/platform/deflate.ts';
import { makeKey, openerWith, seal } from '../../../src/platform/seal.ts';
import { classDraft, handInOf, ownId, pupils, ways } from './class-of-thirty.ts';
import { modelOf, setOf } from './course-bank.ts';

const set = setOf(classDraft());
const marker = markerFor(set, libraryOf(set, modelOf));
const mark = (handIn: Pick<HandIn, 'learner' | 'answers'>) => marker(handIn);

async function pileOf(texts: readonly (readonly [string, string])[], sets: readonly GradedSet[] = [set]) {
  const pile = createPile();
  for (const [source, text] of texts)
    pile.add(source, await receive(text, sets, { inflate }), (of) => markerFor(of, libraryOf(of, modelOf)));
  return pile;
}
const files = pupils.map((pupil, at) => [`${at + 1}.json`, writeHandIn(handInOf(set, pupil, at))] as const);

describe('the class of thirty', () => {
  it('is thirty, takes every way there is, and its sums on paper add up', () => {
    expect(pupils).toHaveLength(30);
    for (const [at, kinds] of ways.entries())
      expect(new Set(pupils.map((pupil) => pupil.ways[at]!)), `question ${at + 1}`).toEqual(
        new Set(Object.keys(kinds)),
      );
    for (const { name, marks, total, ways: taken } of pupils) {
      expect(
        marks.reduce((sum, x) => sum + x, 0),
        name,
      ).toBe(total);
      expect(
        taken.map((way, at) => ways[at]![way]![1]),
        name,
      ).toEqual(marks);
    }
  });

  it.each(pupils.map((pupil) => [pupil.name, pupil] as const))(
    'marks %s as worked out by hand',
    (_, pupil) => {
      const { questions, marks, of } = mark(handInOf(set, pupil));
      expect(questions.map((question) => question.marks)).toEqual(pupil.marks);
      expect({ marks, of }).toEqual({ marks: pupil.total, of: 32 });
      const blanks = pupil.ways.map((way) => way === 'blank');
      expect(questions.map(({ state }) => state === 'blank')).toEqual(blanks);
    },
  );

  it('marks it the same sealed, and names each file that is not right while the rest go on', async () => {
    const key = await makeKey('2026-03-01');
    const sealed = await Promise.all(
      pupils.map(async (pupil, at) =>
        seal(writeHandIn(handInOf(set, pupil, at)), handInOf(set, pupil).set, key.public),
      ),
    );
    const bo = handInOf(set, pupils[1]!, 1);
    const strange = [
      [
        'edited.json',
        JSON.stringify({
          ...bo,
          answers: { ...bo.answers, 'mass-of-the-clapper': { texts: { answer: '1 g' } } },
        }),
        'edited',
      ],
      ['foreign.json', JSON.stringify(withSum({ ...bo, set: { ...bo.set, id: 'autumn-test' } })), 'foreign'],
      [
        'stale.json',
        JSON.stringify(withSum({ ...bo, set: { ...bo.set, edition: 2, hash: 'b'.repeat(64) } })),
        'stale',
      ],
      ['torn.json', JSON.stringify(bo).slice(0, 300), 'damaged'],
      ['again.json', JSON.stringify(sealed[1]), 'duplicate'],
    ] as const;
    const texts = [...sealed.map((one, at) => [`${at}.json`, JSON.stringify(one)] as const), ...strange];
    const pile = createPile();
    const opener = { inflate, open: openerWith([key]) };
    for (const [source, text] of texts) pile.add(source, await receive(text, [set], opener), () => mark);
    expect(pile.refused.map(({ source, why }) => [source, why])).toEqual(
      strange.map(([source, , why]) => [source, why]),
    );
    expect(pile.refused.at(-1)!.reason).toContain('1.json');
    const rows = classRows(pile.attempts, 'last');
    expect(rows).toHaveLength(30);
    for (const { name, total } of pupils)
      expect(totalOf(rows.find(({ learner }) => learner === name)!.counted!, []), name).toBe(total);
  });

  it('says who of the roster has not handed in, and who is not in it', async () => {
    const { attempts } = await pileOf(files);
    const roster = [...pupils.slice(1).map(({ name }) => name.toUpperCase()), 'Pat Late', 'Sal Away'];
    const rows = classRows(attempts, 'last', [], roster);
    expect(rows.filter(({ counted }) => !counted).map(({ learner }) => learner)).toEqual([
      'Pat Late',
      'Sal Away',
    ]);
    expect(rows.filter(({ stranger }) => stranger).map(({ learner }) => learner)).toEqual(['Ada Brook']);
  });

  it('counts the first, the last or the best of several', async () => {
    // Ada hands in three times: 29 of 32, then a blank sheet, then what Bo's ways give.
    const ada = pupils[0]!;
    const again = [ada, { ...ada, ways: pupils[10]!.ways }, { ...ada, ways: pupils[1]!.ways }];
    const { attempts } = await pileOf(
      again.map((pupil, at) => [`${at}`, writeHandIn(handInOf(set, pupil, at))]).reverse() as [
        string,
        string,
      ][],
    );
    const total = (keep: 'first' | 'last' | 'best') => totalOf(classRows(attempts, keep)[0]!.counted!, []);
    expect([total('first'), total('last'), total('best')]).toEqual([29, 27, 29]);
    expect(classRows(attempts, 'last')[0]!.attempts).toHaveLength(3);
  });

  it('lets a person mark words and change a mark with a reason, never beyond what the question has', async () => {
    const { attempts } = await pileOf(files);
    const ada = attempts.find(({ handIn }) => handIn.learner === 'Ada Brook')!;
    expect(waitingOf(ada, [])).toBe(1);
    const remark = (question: string, marks: number): Remark => ({
      set: set.hash,
      learner: 'ada BROOK',
      question,
      marks,
    });
    const remarks = [remark(ownId, 2), remark('mass-of-the-clapper', 50)];
    expect(waitingOf(ada, remarks)).toBe(0);
    expect(totalOf(ada, remarks)).toBe(29 + 2);
    expect(totalOf(ada, [remark('mass-of-the-clapper', -4)])).toBe(26);
  });

  it('adds several sets up, and counts what was not handed in as nought', async () => {
    const second = setOf({ ...classDraft({ id: 'second-test' }), picks: [{ id: 'mass-of-the-clapper' }] });
    const first = await pileOf(files);
    const other = handInOf(second, { ...pupils[0]!, ways: ['bare'] });
    const { attempts } = await pileOf([['second.json', writeHandIn(other)]], [second]);
    const all = totals([
      { set, rows: classRows(first.attempts, 'last') },
      { set: second, rows: classRows(attempts, 'last') },
    ]);
    expect(all.find(({ learner }) => learner === 'Ada Brook')).toMatchObject({ marks: 31, of: 35 });
    expect(all.find(({ learner }) => learner === 'Bo Reed')).toMatchObject({ marks: 27, of: 35 });
  });
});

describe('item analysis', () => {
  it('correlates as worked by hand', () => {
    // Deviations −1.5 −0.5 0.5 1.5 and −0.5 −1.5 1.5 0.5: products sum to 3, squares to 5 and 5, so 3/5.
    expect(correlation([1, 2, 3, 4], [2, 1, 4, 3])).toBeCloseTo(0.6, 12);
    expect(correlation([1, 1, 1], [1, 2, 3])).toBeUndefined();
    expect(correlation([1, 2], [1, 2])).toBeUndefined();
  });

  it('finds the facility of each question and the wrong ways the class took', async () => {
    const { attempts } = await pileOf(files);
    const rows = classRows(attempts, 'last');
    const items = itemAnalysis(set, rows);
    const full = [3, 4, 3, 7, 2, 2, 4, 4, 3];
    for (const [at, item] of items.entries()) {
      // From the table on paper, not from the marking.
      const column = pupils.map(({ marks }) => marks[at]!);
      const rest = pupils.map(({ total }, i) => total - column[i]!);
      expect(item.count).toBe(30);
      if (item.id === ownId) continue;
      expect(item.facility).toBeCloseTo(column.reduce((sum, x) => sum + x, 0) / (30 * full[at]!), 12);
      const expected = correlation(column, rest);
      if (expected === undefined) expect(item.discrimination).toBeUndefined();
      else expect(item.discrimination).toBeCloseTo(expected, 12);
    }
    const taken = (at: number, word: RegExp) => items[at]!.ways.find(({ says }) => word.test(says))?.count;
    // Counted in the table: eight took degrees Celsius, three the diameter, three left out the share.
    expect(taken(2, /absolute zero/)).toBe(8);
    expect(taken(2, /diameter/)).toBe(3);
    expect(taken(2, /leaves the hot face/)).toBe(3);
    expect(items[2]!.ways[0]).toMatchObject({ count: 8, recognised: true });
    // Six took the sea's air and two left out the power; at 300 m both lie within the tolerance of either answer.
    expect(taken(1, /sea’s. Climb/)).toBe(6);
    expect(taken(1, /power is missing/)).toBe(2);
    expect(taken(0, /divided/)).toBe(3);
    // Six moved the last line to the middle, four turned the order round: told by numbers, not by the whole of the text.
    expect(items[4]!.ways).toMatchObject([
      { says: 'Lines put in the order 1, 2, 5, 3, 4, by their right places.', count: 6 },
      { says: 'Lines put in the order 5, 4, 3, 2, 1, by their right places.', count: 4 },
    ]);
    expect(items[8]!.blank).toBe(7);
    // Words where a number was asked are no blank: they stand among the wrong ways.
    const inWords = pupils.filter((pupil) => pupil.ways[0] === 'words').map(({ name }) => name);
    expect(inWords.length).toBeGreaterThan(0);
    expect(items[0]!.ways.find(({ says }) => says.startsWith('Start with a number'))?.learners).toEqual(
      inWords,
    );
  });

  it('says nothing of words until a person has marked them', async () => {
    const { attempts } = await pileOf(files);
    const rows = classRows(attempts, 'last');
    const words = itemAnalysis(set, rows).find(({ id }) => id === ownId)!;
    expect(words).toMatchObject({ waiting: 23, blank: 7, ways: [] });
    expect(words.facility).toBeUndefined();
    expect(outcomesReached(set, rows).some(({ questions }) => questions.includes(ownId))).toBe(false);
    const remarks = rows.map(({ learner }) => ({ set: set.hash, learner, question: ownId, marks: 3 }));
    // 23 of 30 with full marks once each has been given them, and 7 blanks that were given them too.
    expect(itemAnalysis(set, rows, remarks).find(({ id }) => id === ownId)!.facility).toBe(1);
  });

  it('says which outcome the class has not reached', async () => {
    const { attempts } = await pileOf(files);
    const rows = classRows(attempts, 'last');
    const reached = outcomesReached(set, rows);
    const heat = reached.find(({ questions }) => questions.includes('heat-at-arms-length'))!;
    const sum = pupils.reduce((total, { marks }) => total + marks[2]!, 0);
    expect(heat.share).toBeCloseTo(sum / 90, 12);
    expect(heat.reached).toBe(sum / 90 >= 0.6);
    expect(outcomesReached(set, rows, [], 0).every((outcome) => outcome.reached)).toBe(true);
  });
});

describe('what goes out', () => {
  it('carries nothing a spreadsheet would carry out', async () => {
    for (const start of ['=1+1', '+1', '-1', '@SUM', '\t=1', '\r=1', ' =1', '＝1', '−1', '|x', '%x'])
      expect(cell(start)).toMatch(/^"'/);
    expect(cell('A "quoted", name; x')).toBe('"A ""quoted"", name; x"');
    expect(cell(2.5)).toBe('2.5');
    const { attempts } = await pileOf(files);
    const csv = classCsv(set, classRows(attempts, 'last', [], ['Pat Late']), [], 'semicolon');
    expect(csv.startsWith('\uFEFF"Learner";"Marks"')).toBe(true);
    const lines = csv.trimEnd().split('\r\n');
    expect(lines).toHaveLength(32);
    for (const line of lines) {
      const cells = line.replace('\uFEFF', '').split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/);
      expect(cells).toHaveLength(17);
      for (const one of cells) expect(one).toMatch(/^(|\d+|"(?![=+\-@])([^"]|"")*")$/);
    }
    expect(csv).toContain(`"'=HYPERLINK(""http://example.invalid"",""Ann"")";28;32;3;4;3;7;1;2;4;4;0;`);
  });

  it('is the same event in every record, once', async () => {
    const { attempts, refused } = await pileOf(files);
    const rows = classRows(attempts, 'last');
    interface Statement {
      id: string;
      actor: { account: { name: string } };
      verb: { id: string };
      result: { score: { raw: number; max: number; scaled: number } };
    }
    const statements = JSON.parse(xapiStatements(rows, [], 'https://example.invalid')) as Statement[];
    const ids = statements.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids)
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    const whole = statements.filter(({ verb }) => verb.id.endsWith('completed'));
    expect(whole).toHaveLength(30);
    expect(whole.find(({ actor }) => actor.account.name === 'Ada Brook')!.result.score).toEqual({
      raw: 29,
      min: 0,
      max: 32,
      scaled: 0.9063,
    });
    const results = JSON.parse(resultsJson(set, rows, refused, [])) as {
      learners: { learner: string; marks: number }[];
    };
    expect(results.learners.find(({ learner }) => learner === 'Bo Reed')!.marks).toBe(27);
  });
});
