import { describe, expect, it } from 'vitest';
import { printQuantity } from '../../calculators/core/print.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { blank, diaryFrom, diaryText, printClock } from '../../src/islands/day/diary.ts';
import { dayScreens } from '../../src/islands/day/screens.ts';

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

  it('shows the numbers of the plan, and runs its clocks by them', () => {
    const { result, screens } = day({ 'melt.carry': '8 s' });
    const of = (id: string) => screens.find((screen) => screen.id === id)!;
    expect(of('charge').number).toBe(printQuantity(result.values['charge']!, 'g'));
    expect(of('pour').clock?.seconds).toBe(result.values['melt.window']);
    expect(of('hold').clock?.seconds).toBe(result.values['release']);
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
    const diary = { at: 3, ticks: { 'charge:x': true }, notes: { pour: 'late' }, moments: { out: 5 } };
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
