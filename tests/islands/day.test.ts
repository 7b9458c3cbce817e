import { describe, expect, it } from 'vitest';
import { printQuantity } from '../../calculators/core/print.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { blank, diaryFrom, diaryText, printClock } from '../../src/islands/day/diary.ts';
import { noteOf, withDraft } from '../../src/islands/day/draft.ts';
import { readPhoto } from '../../src/islands/day/photos.ts';
import { dayScreens, seconds } from '../../src/islands/day/screens.ts';

const books = resolvedMaterials(materials);
const day = (texts: Record<string, string>) => {
  const { values } = completeInputs(pourPlan, texts, books);
  const result = pourPlan.run(values);
  return { result, screens: dayScreens(values, result) };
};

describe('the day of a pour', () => {
  it('goes in the order it is done', () => {
    expect(day({}).screens.map(({ id }) => id)).toEqual([
      'before',
      'charge',
      'mould',
      'cope',
      'gauge',
      'melt',
      'pour',
      'hold',
      'leave',
      'after',
    ]);
  });

  it('rounds a time that must not be passed down, and one that must be waited up', () => {
    const told = [3.96, 9.99, 12.7, 99.6, 1234.5].map((value) =>
      [Math.floor, Math.ceil].map((round) => seconds(value, round)?.replace(/\s/u, ' ')),
    );
    expect(told).toEqual([
      ['3.9 s', '4.0 s'],
      ['9.9 s', '10.0 s'],
      ['12 s', '13 s'],
      ['99 s', '100 s'],
      ['1234 s', '1235 s'],
    ]);
    expect(seconds(undefined, Math.floor)).toBeUndefined();
  });

  it('shows the numbers of the plan, and runs its clocks by them', () => {
    const { result, screens } = day({ 'melt.carry': '8 s' });
    const of = (id: string) => screens.find((screen) => screen.id === id)!;
    expect(of('charge').number).toBe(printQuantity(result.values['charge']!, 'g'));
    expect(of('pour').clock?.seconds).toBe(result.values['melt.window']);
    expect(of('hold').clock?.seconds).toBe(result.values['release']);
    expect(of('melt').number).toBe('1135 °C');
    expect(of('mould').number).toBe('150 °C');
    expect(of('pour').clock?.kind).toBe('window');
    expect(of('hold').clock?.kind).toBe('wait');
  });

  it('says first what the plan says no to', () => {
    const { result, screens } = day({});
    for (const { title, verdict } of result.checks)
      if (verdict === 'fails') expect(screens[0]!.says.join(' ')).toContain(title.toLowerCase());
  });

  it('leaves the pump out where nothing sucks', () => {
    const { screens } = day({ 'suction.gauge': '0 kPa' });
    expect(screens.map(({ id }) => id)).not.toContain('gauge');
    expect(screens.map(({ id }) => id)).not.toContain('hold');
  });

  it('works for every mould and metal there is, without a gap in a sentence', () => {
    for (const { id, role } of Object.values(materials)) {
      if (role !== 'metal' && role !== 'mould') continue;
      const { screens } = day({ [role]: id });
      expect(screens.length, id).toBeGreaterThan(5);
      expect(JSON.stringify(screens), id).not.toMatch(/undefined|NaN|null/);
    }
  });
});

describe('the diary', () => {
  it('reads what was kept, and starts anew on anything else', () => {
    const diary = {
      at: 3,
      ticks: { 'charge:x': true },
      notes: { pour: 'late' },
      moments: { out: 5 },
      loud: true,
      pour: 'day-1',
    };
    expect(diaryFrom(JSON.stringify(diary))).toEqual(diary);
    for (const text of [null, '', '{', '3', '{"at":"x","moments":{"out":"now"}}'])
      expect(diaryFrom(text)).toEqual(blank);
  });

  it('prints a clock as a clock', () => {
    expect([0, 7.4, 60, 760, 3725].map(printClock)).toEqual(['0:00', '0:07', '1:00', '12:40', '1:02:05']);
  });

  it('copies as text with the seconds that were taken', () => {
    const text = diaryText('Latch keeper', [{ id: 'pour', title: 'Seconds in hand', number: '28 s' }], {
      ...blank,
      moments: { out: 1000, in: 7400, released: 14400 },
      notes: { pour: 'a little late' },
    });
    expect(text).toContain('From the furnace into the mould: 6.4 s');
    expect(text).toContain('Suction held: 7.0 s');
    expect(text).toContain('Seconds in hand: 28 s. a little late');
  });
});

describe('what a day hands to the log', () => {
  const diary = {
    ...blank,
    notes: { after: 'two pits under the rim', pour: ' a splash ', charge: '' },
    moments: { out: 1000, in: 7400, released: 14_400 },
  };

  it('is the notes in the order of the day, then the seconds', () => {
    expect(noteOf(diary).split('\n')).toEqual([
      'a splash',
      'two pits under the rim',
      'From the furnace into the mould: 6.4 s.',
      'Suction held: 7.0 s.',
    ]);
  });

  it('leaves out seconds of a clock that was begun again after it ended', () => {
    expect(noteOf({ ...diary, moments: { out: 9000, in: 7400 } })).not.toContain('furnace');
  });

  it('is written down twice without saying anything twice', () => {
    const day = { id: 'day-1', day: '2026-03-14', plan: 'Hinge', note: noteOf(diary), photos: ['data:a'] };
    const pour = {
      id: 'day-1',
      day: '2026-03-14',
      plan: { name: 'Hinge', inputs: {} },
      predicted: {},
      did: {},
      found: { sections: [], defects: [], note: day.note, photos: ['data:a'] },
      marks: ['x'],
    };
    expect(withDraft(pour, day)).toEqual(pour);
    const more = withDraft(pour, { ...day, note: `${day.note}\ncool now`, photos: ['data:a', 'data:b'] });
    expect(more.found.note.endsWith('\ncool now')).toBe(true);
    expect(more.found.photos).toEqual(['data:a', 'data:b']);
  });

  it('takes a photo of these pages and nothing else', () => {
    const photo = { id: 'a', plan: 'Hinge', screen: 'pour', at: 5, picture: 'data:image/jpeg;base64,AA' };
    expect(readPhoto(photo)).toEqual(photo);
    for (const other of [
      null,
      3,
      {},
      { ...photo, picture: 'https://elsewhere/x.jpg' },
      { ...photo, at: 'x' },
    ])
      expect(readPhoto(other)).toBeUndefined();
  });
});
