import type { Case, Pace } from '../../calculators/models/conduction/case.ts';
import { temperatures, type Engine } from '../../calculators/models/conduction/engine.ts';
import { wholeZero } from '../../calculators/models/conduction/exact-engine.ts';
import {
  freezingHalf,
  joined,
  wholeOf,
  type Freezing,
  type HalfFrozen,
} from '../../calculators/models/conduction/freeze.ts';
import { sizeOf } from '../../calculators/models/conduction/mesh.ts';
import { cutOf, waiting, type Said, type Slab } from '../../calculators/models/conduction/slab.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import type { KernelMaker } from '../../calculators/models/conduction/voxel-kernel.ts';
import { layCubes } from './conduction-lay-cubes.ts';
import { isInCubes, type Pass } from './conduction-shape.ts';
import type { Part } from './conduction-work.ts';
import { keeper, type Frame } from './frames.ts';

/** The half that the second worker is asked to solve. */
export interface HalfJob {
  readonly part: Part;
  readonly pass: Pass;
  readonly slab: Slab;
  readonly pace: Pace;
  /** Pictures to keep of the way, and how far apart at first, s. */
  readonly frames: number;
  readonly apart: number;
}

/** From the first worker; `show` asks for a picture of that moment. */
export type ToSecond = (Said & { readonly show?: boolean }) | { readonly kind: 'leave' };

export type FromSecond =
  | Said
  | { readonly kind: 'picture'; readonly temperature: Float32Array }
  | { readonly kind: 'frozen'; readonly half: HalfFrozen; readonly frames: readonly Frame[] }
  | { readonly kind: 'unable' };

/** A way to the other worker. `hear` gives nothing once no more can come. */
export interface Wire<Out, In> {
  readonly say: (message: Out) => void;
  readonly hear: () => Promise<In | undefined>;
}

/** Below so many cells a stage is over before word of it has gone from worker to worker. */
export const worthTwo = 120_000;

/** The upper half, where two may share the work: cubes enough, none of whose heat leaves the mesh. */
export function halfOf(
  part: Part,
  pass: Pass,
  given: Case,
  pace: Pace,
  frames: number,
  apart: number,
): HalfJob | undefined {
  const { mesh, outside, probes } = given;
  if (mesh.region.length < worthTwo || (outside && outside.kind !== 'insulated') || probes) return undefined;
  const cut = cutOf(mesh);
  if (cut === undefined) return undefined;
  return {
    part,
    pass,
    slab: { half: 'upper', from: cut, to: sizeOf(mesh)[2], zero: wholeZero(given) },
    pace,
    frames,
    apart,
  };
}

/** The half that stays with the first worker. */
export const lowerOf = ({ slab }: HalfJob): Slab => ({ ...slab, half: 'lower', from: 0, to: slab.from });

/** The second worker's part of it. */
export async function solveHalf(
  { part, pass, slab, pace, frames, apart }: HalfJob,
  kernels: KernelMaker,
  { say, hear }: Wire<FromSecond, ToSecond>,
): Promise<void> {
  const { shape, most, frames: _, ...rest } = part;
  const laid = isInCubes(shape) ? layCubes(shape, pass, most) : '';
  let engine: Engine | undefined;
  try {
    if (typeof laid !== 'string') engine = voxelEngine({ ...rest, mesh: laid.mesh }, kernels, slab);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  if (typeof laid === 'string' || !engine) {
    say({ kind: 'unable' });
    return;
  }
  const kept = keeper(frames, apart);
  kept.keep(0, () => temperatures(engine, 0));
  const way = freezingHalf({ ...rest, mesh: engine.mesh }, engine, slab, pace, say);
  let told: Exclude<ToSecond, { kind: 'leave' }> | undefined;
  for (;;) {
    const next = way.next(told);
    if (next.done) {
      const half = next.value;
      say({ kind: 'frozen', half, frames: kept.kept(half.frozen) });
      return;
    }
    if (next.value === waiting) {
      const heard = await hear();
      if (heard === undefined || heard.kind === 'leave') return;
      told = heard;
      continue;
    }
    const { time, newest } = next.value;
    const picture = (): Float32Array => temperatures(engine, newest);
    kept.keep(time, picture);
    if (told?.show === true) say({ kind: 'picture', temperature: picture() });
  }
}

/** How far it is, with a picture when one was wanted and has come together. */
export interface Move {
  readonly time: number;
  readonly progress: number;
  readonly temperature?: Float32Array;
}

export interface Whole {
  readonly result: Freezing;
  readonly frames: readonly Frame[];
}

/**
 * The first worker's part of it: the lower half, and the whole put together. Gives nothing when the second cannot go on.
 * `wanted` is asked after each step whether the next is to be shown.
 */
export async function* solveTogether(
  given: Case,
  engine: Engine,
  job: HalfJob,
  wire: Wire<ToSecond, FromSecond>,
  wanted: () => boolean,
): AsyncGenerator<Move, Whole | undefined, undefined> {
  const kept = keeper(job.frames, job.apart);
  kept.keep(0, () => temperatures(engine, 0));
  let show = false;
  let shown: { readonly move: Move; readonly mine: Float32Array } | undefined;
  let told: Said | undefined;
  let over = false;
  const way = freezingHalf(given, engine, lowerOf(job), job.pace, (said) =>
    wire.say(show && said.kind === 'step' ? { ...said, show } : said),
  );
  try {
    for (;;) {
      const next = way.next(told);
      if (next.done) {
        let last = await wire.hear();
        if (last?.kind === 'picture') last = await wire.hear();
        if (last?.kind !== 'frozen') return undefined;
        over = true;
        const mine = kept.kept(next.value.frozen);
        return {
          result: wholeOf(next.value, last.half),
          frames: last.frames.map(({ time, temperature }, n) => {
            return { time, temperature: joined(mine[n]!.temperature, temperature) };
          }),
        };
      }
      if (next.value === waiting) {
        let heard = await wire.hear();
        if (heard?.kind === 'picture') {
          if (shown) yield { ...shown.move, temperature: joined(shown.mine, heard.temperature) };
          shown = undefined;
          heard = await wire.hear();
        }
        if (
          heard === undefined ||
          heard.kind === 'unable' ||
          heard.kind === 'frozen' ||
          heard.kind === 'picture'
        )
          return undefined;
        told = heard;
        continue;
      }
      const { time, progress, newest } = next.value;
      const picture = (): Float32Array => temperatures(engine, newest);
      kept.keep(time, picture);
      if (show) shown = { move: { time, progress }, mine: picture() };
      show = !shown && wanted();
      yield { time, progress };
    }
  } finally {
    if (!over) wire.say({ kind: 'leave' });
  }
}
