import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../calculators/core/random.ts';
import { treeOf, type Stretch } from '../../../calculators/models/front/channel.ts';
import { follow } from '../../../calculators/models/front/follow.ts';
import type { Pour } from '../../../calculators/models/front/pour.ts';
import { afs10, bronze, open, pour, push, sand } from './pour.ts';

const named = (given: Pour, keep = false) => {
  const race = follow(given, keep);
  return { race, of: Object.fromEntries(given.channels.map(({ name }, c) => [name, race.fronts[c]!])) };
};
const frame = { width: 0.0045, thickness: 0.0045, loss: 0 } as const;

describe('fronts that race', () => {
  it('share the flow so that what comes in goes on', () => {
    const parts = [
      { name: 'Foot', length: 0.03, ...frame },
      { name: 'Left', from: 'Foot', length: 0.06, ...frame },
      { name: 'Right', from: 'Foot', length: 0.06, ...frame },
    ];
    const { race, of } = named(pour(parts, { mould: open, drive: push({ head: 0.1, flow: 8e-6 }) }));
    expect(of['Left']!.time).toBeCloseTo(of['Right']!.time, 12);
    const volume = 0.15 * 0.0045 ** 2;
    expect(race.poured / volume).toBeCloseTo(1, 9);
    // The pour is what is short: it takes its own time whatever the branches.
    expect(race.time).toBeCloseTo(volume / 8e-6, 3);
  });

  it('go the same whether two alike are written as one row or as two', () => {
    const drive = push({ head: 0.04, suction: 5000 });
    const foot = { name: 'Foot', length: 0.03, ...frame };
    const once = named(pour([foot, { name: 'Web', from: 'Foot', alike: 2 }], { drive }));
    const twice = named(
      pour([foot, { name: 'Web', from: 'Foot' }, { name: 'Other', from: 'Foot' }], { drive }),
    );
    expect(twice.of['Web']!.time / once.of['Web']!.time).toBeCloseTo(1, 3);
    expect(twice.of['Web']!.temperature).toBeCloseTo(once.of['Web']!.temperature, 0);
  });

  it('let a web wait at its mouth while the frame is the easier way', () => {
    const parts = [
      { name: 'Foot', length: 0.045, ...frame },
      { name: 'Web', from: 'Foot', length: 0.03 },
      { name: 'Side', from: 'Foot', length: 0.06, ...frame },
    ];
    const { race, of } = named(
      pour(parts, { drive: push({ head: 0.04, suction: 15_000, flow: 4e-6 }) }),
      true,
    );
    const atSideFull = race.history.find(({ time }) => time >= of['Side']!.time * 0.99)!;
    expect(atSideFull.reached[1]!).toBeLessThan(0.002);
    expect(of['Web']!.ended).toBe('filled');
    expect(of['Web']!.time).toBeGreaterThan(of['Side']!.time);
  });

  it('stop what comes after them: a branch past a frozen one never gets metal', () => {
    const parts = [
      { name: 'Web', length: 0.3 },
      { name: 'Leaf', from: 'Web', length: 0.02 },
    ];
    const { of } = named(pour(parts, { drive: push({ head: 0.045 }) }));
    expect(of['Web']!.ended).toBe('froze');
    expect(of['Leaf']).toMatchObject({ ended: 'never', reached: 0 });
  });

  it('do not enter where the mouth holds out, and say so at once', () => {
    const [front] = follow(pour([{ thickness: 0.0008 }], { drive: push({ head: 0.04 }) })).fronts;
    expect(front).toMatchObject({ ended: 'held', reached: 0, time: 0 });
    expect(front!.pressure).toBeLessThan(front!.resists);
  });

  it('do not freeze in a mould as hot as the metal', () => {
    const mould = { ...sand, temperature: 1400 };
    expect(follow(pour([{ length: 0.4 }], { mould, drive: push({ head: 0.08 }) })).fronts[0]!.ended).toBe(
      'filled',
    );
  });
});

describe('one front, whatever the numbers', () => {
  const random = createRandom('fronts');
  const between = (low: number, high: number): number => low * (high / low) ** random.uniform();
  const any = (): Pour => {
    const liquidus = between(800, 1300);
    return pour([{ length: between(0.01, 0.4), thickness: between(0.0008, 0.008), loss: between(0.1, 2) }], {
      metal: { ...bronze, liquidus, solidus: liquidus - between(1, 120), gate: liquidus + between(1, 200) },
      mould: {
        ...sand,
        temperature: between(293, 750),
        h: between(300, 4000),
        permeability: afs10 * between(0.2, 20),
      },
      drive: push({ head: between(0.02, 0.2), suction: between(10, 40_000) }),
      cells: 40,
    });
  };
  const more = {
    head: (p: Pour, by: number) => ({ ...p, drive: { ...p.drive, head: p.drive.head * (1 + by) } }),
    suction: (p: Pour, by: number) => ({ ...p, drive: { ...p.drive, suction: p.drive.suction + 2e4 * by } }),
    'mould temperature': (p: Pour, by: number) => ({
      ...p,
      mould: { ...p.mould, temperature: p.mould.temperature + 200 * by },
    }),
    'metal temperature': (p: Pour, by: number) => ({
      ...p,
      metal: { ...p.metal, gate: p.metal.gate + 100 * by },
    }),
  };

  // A step ends where it ends: two runs may differ by this share of the length for that alone.
  it.each(Object.entries(more))('never runs shorter for more %s', (_name, change) => {
    for (let i = 0; i < 60; i += 1) {
      const given = any();
      const length = given.channels[0]!.length;
      const [less, then] = [given, change(given, random.uniform())].map((p) => follow(p).fronts[0]!.reached);
      expect(then! - less!, JSON.stringify(given)).toBeGreaterThan(-0.005 * length);
    }
  });

  it('ends, keeps its metal and its heat, and is finite, in trees too', () => {
    for (let i = 0; i < 60; i += 1) {
      const given = any();
      const [stem] = given.channels;
      const twig = { ...stem!, from: 'Web' };
      const tree = treeOf([stem!, { ...twig, name: 'A', thickness: 0.001 }, { ...twig, name: 'B' }]);
      if (!tree.ok) throw new Error(tree.why);
      const race = follow({ ...given, channels: tree.channels });
      expect(race.steps).toBeLessThan(5000);
      expect(Math.abs(race.held - race.poured)).toBeLessThan(1e-12 * race.poured + 1e-20);
      expect(Math.abs(race.brought - race.kept - race.given)).toBeLessThan(
        1e-9 * Math.abs(race.given) + 1e-12,
      );
      for (const { reached, ended } of race.fronts) {
        expect(Number.isFinite(reached)).toBe(true);
        if (ended === 'filled') expect(reached).toBeCloseTo(stem!.length, 9);
      }
    }
  });
});

describe('sections that do not fit together', () => {
  const web: Stretch = { ...pour([{}], {}).channels[0]!, name: 'Web', from: 'gate' };
  const why = (...parts: readonly Partial<Stretch>[]): string => {
    const tree = treeOf(parts.map((part) => ({ ...web, ...part })));
    return tree.ok ? '' : tree.why;
  };

  it('are refused with a sentence each', () => {
    expect(why()).toMatch(/no section/);
    expect(why({ length: 0 })).toMatch(/length must be above nought/);
    expect(why({ thickness: -1 })).toMatch(/thickness must be above nought/);
    expect(why({ width: Number.NaN })).toMatch(/width must be above nought/);
    expect(why({ name: 'Frame' }, { name: 'Web', from: 'Fram' })).toMatch(
      /no section here; did you mean "frame"/i,
    );
    expect(why({ name: 'A', from: 'B' }, { name: 'B', from: 'A' })).toMatch(/loop/);
    expect(why({ name: 'A' }, { name: 'a' })).toMatch(/Two sections are called/);
    expect(why({ name: 'gate' })).toMatch(/name of its own/);
    expect(why({ loss: -1 })).toMatch(/loss/);
    expect(why({ vent: -1 })).toMatch(/vent/);
  });
});
