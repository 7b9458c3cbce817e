import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../calculators/pour-log/csv.ts';
import { demoLog } from '../../calculators/pour-log/demo.ts';
import { mergePours, settled, standingOf } from '../../calculators/pour-log/merge.ts';
import { readLog, writeLog, type Pour } from '../../calculators/pour-log/record.ts';

const [one, two, three] = demoLog() as [Pour, Pour, Pour];
const changed = (pour: Pour, mark: string, note: string): Pour => ({
  ...pour,
  found: { ...pour.found, note },
  marks: [...pour.marks, mark],
});

describe('a log in a file', () => {
  it('comes back as it was', () => {
    expect(readLog(writeLog(demoLog()))).toEqual({ pours: demoLog(), problems: [] });
  });

  it('keeps what can be read and says the rest', () => {
    const text = JSON.stringify({
      format: 'warm-mould-pours',
      version: 9,
      pours: [
        one,
        7,
        { ...two, day: 'May' },
        { ...three, found: { photos: ['data:text/html,x', 4], casting: 'much' } },
      ],
    });
    const { pours, problems } = readLog(text);
    expect(pours.map(({ id }) => id)).toEqual([one.id, three.id]);
    expect(pours[1]!.found).toEqual({ sections: [], defects: [], note: '', photos: [] });
    expect(problems).toHaveLength(3);
  });

  it.each(['', '{', '[]', 'null', '{"format":"warm-mould-pours"}', '{"format":"other","pours":[]}'])(
    'refuses %j in words',
    (text) => {
      const { pours, problems } = readLog(text);
      expect(pours).toEqual([]);
      expect(problems[0]).toMatch(/^This is no pour log/);
    },
  );

  test.prop([fc.jsonValue()])('never throws, whatever stands in it', (value) => {
    const text = JSON.stringify({
      format: 'warm-mould-pours',
      version: 1,
      pours: [value, { ...one, found: value, did: value, plan: value }],
    });
    expect(readLog(readLogTwice(text)).problems.length).toBeLessThan(3);
  });
  const readLogTwice = (text: string): string => writeLog(readLog(text).pours);

  it('as a table has a line for each section, and runs nothing in a spreadsheet', () => {
    const csv = writeCsv([changed(one, 'x', '=HYPERLINK("a"), and "more"')]);
    const lines = csv.trim().split('\r\n');
    expect(lines).toHaveLength(1 + one.found.sections.length);
    expect(lines[1]).toContain(`"'=HYPERLINK(""a""), and ""more"""`);
    expect(lines[0]!.split(',')).toHaveLength(19);
  });
});

describe('two copies of a log brought together', () => {
  it('adds what is new, takes the newer, and lets an old backup change nothing', () => {
    const newer = changed(one, 'a', 'weighed again');
    expect(mergePours([one], [newer, two])).toMatchObject({ added: 1, renewed: 1, conflicts: [] });
    const back = mergePours([newer, two, three], [one, two]);
    expect(back).toMatchObject({ added: 0, renewed: 0, conflicts: [] });
    expect(back.pours).toContainEqual(newer);
    expect(back.pours).toHaveLength(3);
  });

  it('shows both when both went on, keeps the one here, and ends with the one chosen', () => {
    const [here, there] = [changed(one, 'a', 'mine'), changed(one, 'b', 'theirs')];
    const { pours, conflicts } = mergePours([here], [there]);
    expect(pours).toEqual([here]);
    expect(conflicts).toEqual([{ id: one.id, here, there }]);
    const end = settled(conflicts[0]!, 'there', 'c');
    expect(end.found.note).toBe('theirs');
    // Neither copy comes up again
    expect(mergePours([end], [here, there])).toMatchObject({ renewed: 0, conflicts: [], pours: [end] });
    expect(mergePours([here], [end])).toMatchObject({ renewed: 1, conflicts: [] });
  });
});

describe('a copy held against the one kept', () => {
  it.each([
    ['newer', one, changed(one, 'a', 'x')],
    ['older', changed(one, 'a', 'x'), one],
    ['same', one, one],
    ['both', changed(one, 'a', 'x'), changed(one, 'b', 'x')],
    ['both', one, { ...one, found: { ...one.found, note: 'written into the file by hand' } }],
  ] as const)('is %s', (standing, kept, comes) => {
    expect(standingOf(kept, comes)).toBe(standing);
  });

  it('comes as well out of a copy of all that is kept on a device', () => {
    const backup = {
      kind: 'warm-mould-backup',
      version: 1,
      saved: '2026-11-20',
      kept: {},
      pours: [one, two],
    };
    expect(readLog(JSON.stringify(backup))).toEqual({ pours: [one, two], problems: [] });
  });
});
