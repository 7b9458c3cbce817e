import { beforeAll, describe, expect, it } from 'vitest';
import { axis } from '../../calculators/models/conduction/axis.ts';
import type { Case } from '../../calculators/models/conduction/case.ts';
import { wholeZero } from '../../calculators/models/conduction/exact-engine.ts';
import {
  freezing,
  freezingHalf,
  wholeOf,
  type Freezing,
  type HalfFrozen,
} from '../../calculators/models/conduction/freeze.ts';
import { sizeOf } from '../../calculators/models/conduction/mesh.ts';
import { paceOf } from '../../calculators/models/conduction/pace.ts';
import { cutOf, waiting, type Said, type Slab } from '../../calculators/models/conduction/slab.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import { plainKernel, type KernelMaker } from '../../calculators/models/conduction/voxel-kernel.ts';
import { voxelMesh } from '../../calculators/models/conduction/voxels.ts';
import { cubesBy } from '../../src/workers/conduction-cubes.ts';
import { solveHalf, worthTwo, type FromSecond, type ToSecond } from '../../src/workers/conduction-halves.ts';
import { solvePart, type Means, type Part, type Reply } from '../../src/workers/conduction-work.ts';
import { compileKernel } from '../../src/workers/kernel/compile.ts';
import { wasmKernels } from '../../src/workers/kernel/wasm-kernel.ts';
import { wireOver } from '../../src/workers/wire.ts';
import { bossOf, bronze, partOf, sand } from '../models/conduction/ways.ts';

let simd: KernelMaker;
beforeAll(async () => {
  simd = wasmKernels(await compileKernel());
});

function inOne(given: Case, maker: KernelMaker): Freezing {
  const way = freezing(given, voxelEngine(given, maker));
  for (;;) {
    const next = way.next();
    if (next.done) return next.value;
  }
}

/** Both halves in one thread, each going on as far as it can: no transport, the same exchange. */
function inTwo(given: Case, maker: KernelMaker, cut: number): Freezing {
  const zero = wholeZero(given);
  const planes = sizeOf(given.mesh)[2];
  const slabs: readonly Slab[] = [
    { half: 'lower', from: 0, to: cut, zero },
    { half: 'upper', from: cut, to: planes, zero },
  ];
  const told: readonly Said[][] = [[], []];
  const ways = slabs.map((slab, n) =>
    freezingHalf(given, voxelEngine(given, maker, slab), slab, paceOf(given), (said) =>
      // What is told is another's from then on, as over a port.
      told[1 - n]!.push(structuredClone(said)),
    ),
  );
  const ended: HalfFrozen[] = [];
  const waits = [false, false];
  for (let turn = 0; ended[0] === undefined || ended[1] === undefined; turn += 1) {
    const n = turn % 2;
    while (ended[n] === undefined) {
      if (waits[n] && told[n]!.length === 0) break;
      const next = ways[n]!.next(waits[n] ? told[n]!.shift() : undefined);
      if (next.done) ended[n] = next.value;
      else waits[n] = next.value === waiting;
    }
  }
  return wholeOf(ended[0], ended[1]);
}

/** A ball with a chill beside it: stairs, three stuffs, and planes that are no whole groups of four. */
const ballOf = (spacing: number) =>
  voxelMesh({
    solids: [
      { kind: 'ball', region: 0, centre: [0, 0, 0], radius: 0.003 },
      { kind: 'box', region: 2, low: [-0.002, -0.002, -0.006], high: [0.002, 0.0025, -0.0025] },
    ],
    spacing,
    wall: 0.004,
    mirror: [false, true, false],
  });

/** Numbers as the bits they are kept in: quick to compare, and nothing is let pass as nearly equal. */
function inBits(found: object): object {
  return Object.fromEntries(
    Object.entries(found).map(([name, each]: [string, unknown]) => [
      name,
      ArrayBuffer.isView(each)
        ? Buffer.from(each.buffer, each.byteOffset, each.byteLength).toString('base64')
        : each,
    ]),
  );
}

function expectSame(one: Freezing, two: Freezing): void {
  const { drift, bytesPerCell: _, ...same } = one;
  const { drift: other, bytesPerCell: __, ...found } = two;
  expect(inBits(found)).toEqual(inBits(same));
  expect(Math.max(drift, other)).toBeLessThan(1e-6);
}

describe('two halves of a body', () => {
  it.each([
    ['compiled', 'boss', 2],
    ['compiled', 'boss', 7],
    ['compiled', 'boss', 9],
    ['compiled', 'ball', 5],
    ['compiled', 'ball', 9],
    ['plain', 'boss', 8],
    ['plain', 'ball', 8],
  ] as const)('%s, %s, cut before plane %i: the numbers of one piece, bit for bit', (how, body, cut) => {
    const maker = how === 'plain' ? plainKernel : simd;
    const given = partOf(body === 'boss' ? bossOf(0.001) : ballOf(0.0007));
    expectSame(inOne(given, maker), inTwo(given, maker, cut));
  });

  it('are cut where both have as much to do', () => {
    const mesh = bossOf(0.001);
    const cut = cutOf(mesh)!;
    // Metal lies in planes 9 to 14 of 21, most of it in 9 and 10.
    expect(cut).toBeGreaterThanOrEqual(9);
    expect(cut).toBeLessThanOrEqual(11);
    const flat = bossOf(0.003);
    expect(cutOf({ ...flat, axes: [flat.axes[0], flat.axes[1], axis([0, 1, 2, 3])] })).toBeUndefined();
  });
});

const wide: Part = {
  metal: bronze,
  others: [sand],
  start: [1373.15, 293.15],
  most: 1e6,
  frames: 4,
  shape: {
    kind: 'voxels',
    voxels: {
      solids: [{ kind: 'box', region: 0, low: [0, 0, 0], high: [0.022, 0.02, 0.002] }],
      spacing: 0.0005,
      wall: 0.006,
      mirror: [false, false, false],
    },
  },
};

/** Two workers' ends of one channel, in one thread; `fails` after so many messages of the second. */
function meansOf(withSecond: boolean, fails = Infinity, stopAfter = Infinity) {
  let clock = 0;
  let turns = 0;
  let asked = 0;
  const left: Promise<void>[] = [];
  const ports: MessagePort[] = [];
  const means: Means = {
    cubes: () => Promise.resolve(cubesBy('simd', simd)),
    now: () => (clock += 5),
    turn: () => new Promise((resolve) => setImmediate(resolve)).then(() => void (turns += 1)),
    stopped: () => turns > stopAfter,
    ...(withSecond && {
      second: {
        wake: () => undefined,
        ask: (job) => {
          asked += 1;
          const { port1, port2 } = new MessageChannel();
          const first = wireOver<ToSecond, FromSecond>((message, moved) => port1.postMessage(message, moved));
          const other = wireOver<FromSecond, ToSecond>((message, moved) => port2.postMessage(message, moved));
          port1.onmessage = ({ data }: MessageEvent<FromSecond>) => first.heard(data);
          port2.onmessage = ({ data }: MessageEvent<ToSecond>) => other.heard(data);
          let said = 0;
          const say = (message: FromSecond): void => {
            said += 1;
            if (said < fails) other.say(message);
            else first.cut();
          };
          left.push(solveHalf(structuredClone(job), simd, { ...other, say }));
          ports.push(port1);
          return first;
        },
      },
    }),
  };
  const end = async (): Promise<void> => {
    await Promise.all(left);
    for (const port of ports) port.close();
  };
  return { means, asked: () => asked, end };
}

async function replies(part: Part, means: Means): Promise<Reply[]> {
  const all: Reply[] = [];
  for await (const reply of solvePart(7, part, means)) all.push(reply);
  return all;
}
const lastOf = (all: readonly Reply[]) => {
  const last = all.at(-1);
  if (last?.kind !== 'frozen') throw new Error(`ended with ${last?.kind ?? 'nothing'}`);
  return last;
};

describe('a part solved by two workers', { timeout: 60_000 }, () => {
  it('answers as one does: same numbers, same kept pictures, pictures on the way', async () => {
    const [one, two] = [meansOf(false), meansOf(true)];
    const alone = await replies(wide, one.means);
    const together = await replies(wide, two.means);
    expect(two.asked()).toBe(1);
    await two.end();
    const [a, b] = [lastOf(alone), lastOf(together)];
    expect(a.result.cells).toBeGreaterThan(worthTwo);
    expectSame(a.result, b.result);
    expect(b.frames.map(inBits)).toEqual(a.frames.map(inBits));
    expect(b.moved).toBe(a.moved);
    const pictures = together.filter((reply) => reply.kind === 'going' && reply.pass === 'fine');
    expect(pictures.length).toBeGreaterThan(3);
    for (const reply of pictures)
      if (reply.kind === 'going') expect(reply.temperature).toHaveLength(a.result.cells);
  });

  it('goes on alone when the second falls out, and when it is stopped lets the second go', async () => {
    const alone = await replies(wide, meansOf(false).means);
    const broken = meansOf(true, 40);
    const found = await replies(wide, broken.means);
    expectSame(lastOf(alone).result, lastOf(found).result);
    const stopped = meansOf(true, Infinity, 150);
    const ended = await replies(wide, stopped.means);
    expect(ended.at(-1)?.kind).toBe('stopped');
    expect(stopped.asked()).toBe(1);
    // The second's half ends too, or this would wait for ever.
    await stopped.end();
  });
});
