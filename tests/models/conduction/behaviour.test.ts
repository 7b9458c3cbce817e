import { describe, expect, it } from 'vitest';
import { acrossThinnest } from '../../../calculators/models/conduction/across.ts';
import { freeze } from '../../../calculators/models/conduction/freeze.ts';
import { indexOf, sizeOf, type Mesh } from '../../../calculators/models/conduction/mesh.ts';
import { sectionMesh } from '../../../calculators/models/conduction/section.ts';
import { statedError } from '../../../calculators/models/conduction/stated-error.ts';
import { barOf, blockOf, bossOf, bronze, chill, done, lineOf, partOf, sand } from './ways.ts';

const meshes: [string, Mesh, single: boolean][] = [
  ['plate', lineOf('straight', 8), false],
  ['bar', lineOf('round', 8), false],
  ['ball', lineOf('ball', 8), false],
  ['turned section', barOf(0.001), false],
  ['body', bossOf(0.001), true],
];

describe.each(meshes)('a %s', (_name, mesh, single) => {
  const most = single ? 1e-3 : 1e-9;

  it('keeps its heat', () => {
    expect(done(partOf(mesh), single).drift).toBeLessThan(most);
    const air = { kind: 'air' as const, temperature: 293.15, h: 10, emissivity: 0.9 };
    const open = done(partOf(mesh, { outside: air }), single);
    expect(open.lost).toBeGreaterThan(0);
    expect(open.drift).toBeLessThan(most);
  });

  it('freezes no sooner in a warmer mould, and no place is ever hotter or colder than at the start', () => {
    let before = 0;
    for (const warm of [293.15, 423.15, 573.15, 773.15]) {
      const found = done(partOf(mesh, { start: [1373.15, warm, warm] }), single);
      expect(found.last!.time).toBeGreaterThan(before);
      before = found.last!.time;
      for (const hottest of found.hottest.slice(0, 2)) expect(hottest).toBeLessThanOrEqual(1373.15 + 1e-3);
      expect(Math.min(...found.temperature)).toBeGreaterThanOrEqual(warm - 0.01);
    }
  });

  it('passes the liquidus before the solidus everywhere', () => {
    const found = done(partOf(mesh), single);
    found.solidus.forEach((time, m) => {
      expect(found.liquidus[m]).toBeGreaterThan(0);
      expect(time).toBeGreaterThan(found.liquidus[m]!);
    });
    expect(found.last!.time).toBeCloseTo(Math.max(...found.solidus), 3);
  });
});

describe('what is symmetric', () => {
  it('stays symmetric', () => {
    const mesh = bossOf(0.001);
    const { solidus, metal } = done(partOf(mesh), true);
    const size = sizeOf(mesh);
    const at = new Map([...metal].map((cell, m) => [cell, solidus[m]!]));
    for (const [cell, time] of at) {
      const [i, j, k] = indexOf(cell, size);
      const flipped = size[0] - 1 - i + size[0] * (j + size[1] * k);
      const turned = j + size[0] * (i + size[1] * k);
      expect(Math.abs(at.get(flipped)! / time - 1)).toBeLessThan(1e-3);
      expect(Math.abs(at.get(turned)! / time - 1)).toBeLessThan(1e-3);
    }
  });

  it('is the same as its half with a plane of symmetry', () => {
    const bar = (mirror: boolean): Mesh =>
      sectionMesh({
        turned: false,
        rectangles: mirror
          ? [{ x: 0, y: 0, width: 0.003, height: 0.004, region: 0 }]
          : [{ x: -0.003, y: -0.004, width: 0.006, height: 0.008, region: 0 }],
        spacing: 0.001,
        wall: 0.01,
        ratio: 1.2,
        mirror: { x: mirror, y: mirror },
      });
    const [half, whole] = [done(partOf(bar(true))), done(partOf(bar(false)))];
    expect(Math.abs(half.last!.time / whole.last!.time - 1)).toBeLessThan(1e-6);
  });
});

describe('halving the cells', () => {
  const shift = (
    coarse: Mesh,
    fine: Mesh,
    mirror: readonly boolean[],
    others = [sand, chill],
    single = false,
  ) => {
    const given = partOf(coarse, { others });
    const [a, b] = [done(given, single), done(partOf(fine, { others }), single)];
    const stated = statedError(given, acrossThinnest(coarse, mirror));
    expect(Math.abs(a.last!.time / b.last!.time - 1)).toBeLessThan(stated);
  };
  const direct = [{ ...sand, h: Infinity }];
  const hard = [{ name: 'mould', k: 30, rhoc: 3.6e6, h: 5000 }];

  it.each([2, 4, 8])('moves a line of %i cells by less than stated', (cells) => {
    for (const shape of ['straight', 'round', 'ball'] as const)
      for (const others of [[sand], direct, hard])
        shift(lineOf(shape, cells), lineOf(shape, 2 * cells), [true], others);
  });

  // Some six seconds of work: the limit is for a machine that has other work to do.
  it('moves a section and a body by less than stated', { timeout: 120_000 }, () => {
    shift(barOf(0.002), barOf(0.001), [true, true]);
    shift(barOf(0.001), barOf(0.0005), [true, true]);
    shift(bossOf(0.001), bossOf(0.0005), [], [sand, chill], true);
    for (const others of [[sand], direct, hard])
      for (const spacing of [0.002, 0.001]) {
        const all = [true, true, true];
        shift(blockOf(spacing), blockOf(spacing / 2), all, others, true);
      }
  });
});

describe('ways to freeze', () => {
  it('by the lever rule is over sooner than evenly: more heat leaves while the metal is hot', () => {
    const mesh = lineOf('straight', 8);
    const even = done(partOf(mesh));
    const lever = done(partOf(mesh, { metal: { ...bronze, base: 1357.77 } }));
    expect(lever.drift).toBeLessThan(1e-9);
    expect(lever.last!.time).toBeLessThan(even.last!.time);
  });

  it('stops when asked, and says what it cannot do', () => {
    const given = partOf(lineOf('straight', 8));
    let asked = 0;
    const stopped = freeze(given, { cancelled: () => (asked += 1) > 5 });
    expect(stopped).toMatchObject({ ok: false, why: expect.stringContaining('Stopped') as string });
    const why = (more: Parameters<typeof partOf>[1]): string => {
      const found = freeze({ ...given, ...more });
      return found.ok ? '' : found.why;
    };
    expect(why({ start: [1373, -5, 293] })).toContain('absolute zero');
    expect(why({ metal: { ...bronze, solidus: 1300 } })).toContain('above the liquidus');
    expect(why({ metal: { ...bronze, rho: 0 } })).toContain('density');
    expect(why({ start: [1373, 1200, 1200] })).toContain('too hot');
    expect(why({ mesh: { ...given.mesh, region: given.mesh.region.map(() => 1) } })).toContain('No cell');
    const { axes } = lineOf('straight', 8, 0.003);
    const flipped = { ...axes[0], edges: axes[0].edges.map((x) => -x) };
    expect(why({ mesh: { ...given.mesh, axes: [flipped, axes[1], axes[2]] } })).toContain('above nought');
  });
});
