import { describe, expect, it } from 'vitest';
import { plainKernel } from '../../calculators/models/conduction/voxel-kernel.ts';
import { cubesBy } from '../../src/workers/conduction-cubes.ts';
import type { Shape } from '../../src/workers/conduction-shape.ts';
import { solvePart, type Means, type Part, type Reply } from '../../src/workers/conduction-work.ts';
import { bronze, sand } from '../models/conduction/ways.ts';

const cube: Shape = {
  kind: 'voxels',
  voxels: {
    solids: [{ kind: 'box', region: 0, low: [0, 0, 0], high: [0.004, 0.004, 0.004] }],
    spacing: 0.001,
    wall: 0.006,
    mirror: [true, true, true],
  },
};

const partOf = (shape: Shape, more: Partial<Part> = {}): Part => ({
  metal: bronze,
  others: [sand],
  start: [1373.15, 293.15],
  most: 1e5,
  shape,
  ...more,
});

/** A clock that moves on by so many ms each time it is read. */
function meansOf(each: number, stopAfter = Infinity): Means {
  let clock = 0;
  let turns = 0;
  return {
    cubes: () => Promise.resolve(cubesBy('plain', plainKernel)),
    now: () => (clock += each),
    turn: () => {
      turns += 1;
      return Promise.resolve();
    },
    stopped: () => turns > stopAfter,
  };
}

async function replies(part: Part, means = meansOf(0)): Promise<Reply[]> {
  const all: Reply[] = [];
  for await (const reply of solvePart(7, part, means)) all.push(reply);
  return all;
}

const kinds = (all: readonly Reply[]): string[] =>
  all.map((reply) => ('pass' in reply ? `${reply.kind} ${reply.pass}` : reply.kind));

describe('a part, solved in passes', () => {
  it('comes coarse first, then fine, and says how far the time moved', async () => {
    const all = await replies(partOf(cube));
    expect(kinds(all)).toEqual(['mesh coarse', 'frozen coarse', 'mesh fine', 'frozen fine']);
    const [last] = all.slice(-1);
    if (last?.kind !== 'frozen') throw new Error('not frozen');
    expect(last.done).toBe(true);
    expect(last.moved).toBeGreaterThan(0);
    const mesh = all[2]!;
    if (mesh.kind !== 'mesh') throw new Error('no mesh');
    expect(mesh.across).toBe(8);
    const coarse = all[0]!;
    if (coarse.kind !== 'mesh') throw new Error('no mesh');
    expect(last.moved).toBeLessThan(coarse.error);
    expect(mesh.region).toHaveLength(last.result.cells);
    // Everything can be sent to another thread.
    expect(() => structuredClone(all)).not.toThrow();
  });

  it('shows how far it is while it works, never going back', async () => {
    const going = (await replies(partOf(cube), meansOf(20))).filter((reply) => reply.kind === 'going');
    expect(going.length).toBeGreaterThan(5);
    const fine = going.filter(({ pass }) => pass === 'fine').map(({ progress }) => progress);
    expect(fine).toEqual([...fine].sort((a, b) => a - b));
    expect(going[0]!.temperature[0]).toBeGreaterThan(1100);
  });

  it('stops when asked', async () => {
    expect(kinds(await replies(partOf(cube), meansOf(20, 3))).at(-1)).toBe('stopped');
  });

  it('refuses in words what cannot be done', async () => {
    const why = async (part: Part): Promise<string> => {
      const [last] = (await replies(part)).slice(-1);
      return last?.kind === 'refused' ? last.why : '';
    };
    const tiny = { ...cube, voxels: { ...cube.voxels, spacing: 1e-5 } } as Shape;
    // At 0.23 mm 18 cells of part and 27 of mould lie along each side: 91,125. At 0.22 mm, 19 and 28: too many.
    expect(await why(partOf(tiny))).toMatch(/1,000,000,000 cells.*spacing of 0\.23 mm would fit/);
    expect(await why(partOf({ ...cube, voxels: { ...cube.voxels, spacing: 0 } } as Shape))).toContain(
      'nought',
    );
    expect(await why(partOf({ ...cube, voxels: { ...cube.voxels, solids: [] } } as Shape))).toContain(
      'drawn',
    );
    expect(await why(partOf(cube, { start: [1373, -1] }))).toContain('absolute zero');
    expect(await why(partOf(cube, { metal: { ...bronze, solidus: 1300 } }))).toContain('above the liquidus');
  });

  it('solves lines, sections and drawings too', async () => {
    const rectangles = [{ x: 0, y: 0, width: 0.003, height: 0.004, region: 0 }];
    const mirror = { x: true, y: true };
    const squares = new Uint8Array(5 * 6).fill(1);
    for (let j = 0; j < 4; j += 1) squares.fill(0, 5 * j, 5 * j + 3);
    const shapes: Shape[] = [
      { kind: 'line', line: { shape: 'round', half: 0.003, outer: 0.03, cells: 6, first: 2e-4, ratio: 1.2 } },
      {
        kind: 'section',
        section: { turned: true, rectangles, spacing: 0.0005, wall: 0.02, ratio: 1.2, mirror },
      },
      {
        kind: 'drawing',
        cut: 2,
        drawing: {
          turned: true,
          width: 5,
          height: 6,
          squares,
          side: 0.001,
          wall: 0.02,
          ratio: 1.2,
          mirror,
          smooth: false,
        },
      },
    ];
    const times: number[] = [];
    for (const shape of shapes) {
      const [last] = (await replies(partOf(shape))).slice(-1);
      if (last?.kind !== 'frozen') throw new Error('not frozen');
      times.push(last.result.last!.time);
    }
    // The drawing is the section; the bar without end is slower.
    expect(Math.abs(times[2]! / times[1]! - 1)).toBeLessThan(0.01);
    expect(times[0]).toBeGreaterThan(times[1]!);
  });
});
