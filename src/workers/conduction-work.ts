import { acrossThinnest } from '../../calculators/models/conduction/across.ts';
import type { Case } from '../../calculators/models/conduction/case.ts';
import { temperatures, type Engine } from '../../calculators/models/conduction/engine.ts';
import { exactEngine } from '../../calculators/models/conduction/exact-engine.ts';
import { freezing, type Freezing } from '../../calculators/models/conduction/freeze.ts';
import { metalCells, sizeOf, volumeOf, type Three } from '../../calculators/models/conduction/mesh.ts';
import { noMemory, refuse } from '../../calculators/models/conduction/refuse.ts';
import { metalArea, paceOf, roughTime } from '../../calculators/models/conduction/pace.ts';
import { statedError } from '../../calculators/models/conduction/stated-error.ts';
import type { Slab } from '../../calculators/models/conduction/slab.ts';
import type { Cubes } from './conduction-cubes.ts';
import type { FromSecond, HalfJob, Move, ToSecond, Whole, Wire } from './conduction-halves.ts';
import { isInCubes, layOut, passesOf, sized, type Pass, type Shape } from './conduction-shape.ts';
import { keeper, type Frame } from './frames.ts';
import type { OneOrTwo } from './one-or-two.ts';

/** A casting to freeze, as plain data. SI, temperatures K; `start` by region. */
export interface Part extends Omit<Case, 'mesh' | 'start' | 'sides'> {
  readonly shape: Shape;
  readonly start: readonly number[];
  /** The most cells this device is asked to hold. */
  readonly most: number;
  /** Keeps about so many pictures of the way, evenly in time: what play-back shows. */
  readonly frames?: number;
}

/** To the worker. */
export type Request =
  | { readonly asked: number; readonly part: Part }
  | { readonly stop: number }
  /** A body of equal cubes will be asked for: what it needs is fetched meanwhile. */
  | { readonly soon: 'cubes' };

export type { Frame } from './frames.ts';

export type Reply = { readonly asked: number } & (
  | {
      /** A pass begins: what its cells are. */
      readonly kind: 'mesh';
      readonly pass: Pass;
      readonly size: Three;
      readonly edges: readonly [Float64Array, Float64Array, Float64Array];
      readonly region: Uint8Array;
      /** Cells across the thinnest section, its thickness, and the part the mesh may put times off by. */
      readonly across: number;
      readonly thickness: number;
      readonly error: number;
      /** Volume over cooled surface, m. */
      readonly modulus: number;
      readonly mirror: readonly boolean[];
      /** What computes: `simd`, `plain` or `exact`. */
      readonly by: string;
    }
  | {
      readonly kind: 'going';
      readonly pass: Pass;
      readonly time: number;
      /** 0 to 1. */
      readonly progress: number;
      /** Of every cell now, K. */
      readonly temperature: Float32Array;
    }
  | {
      readonly kind: 'frozen';
      readonly pass: Pass;
      readonly result: Freezing;
      /** The part by which the last time moved from the coarse pass to the fine one. */
      readonly moved?: number;
      readonly frames: readonly Frame[];
      /** What it took, ms. */
      readonly took: number;
      /** Nothing more comes. */
      readonly done: boolean;
    }
  | { readonly kind: 'refused'; readonly why: string }
  | { readonly kind: 'stopped' }
);

/** What the surroundings lend: what solves cubes, a clock in ms, a turn for messages to come in, a word to stop. */
export interface Means {
  /** Fetched when the first body of equal cubes is asked for. */
  readonly cubes: () => Promise<Cubes>;
  readonly now: () => number;
  readonly turn: () => Promise<void>;
  readonly stopped: () => boolean;
  /** A second worker, for half of the cells; left out where there is none. */
  readonly second?: {
    /** It will be asked for soon. */
    readonly wake: () => void;
    /** Gives it the upper half; nothing when it is not there. */
    readonly ask: (job: HalfJob) => Wire<ToSecond, FromSecond> | undefined;
    /** What one or two took for a body that two could share, per cell and stage. */
    readonly took?: OneOrTwo['took'];
  };
}

/** Works this long before it lets messages in, and this long before it shows how far it is, ms. */
const spell = 16;
const showEvery = 80;
/** Numbers that kept pictures may take in all: 12 million bytes. */
const mostInFrames = 3e6;

/** Freezes a part in passes, replying as it goes. Ends after `frozen` with `done`, `refused` or `stopped`. */
export async function* solvePart(asked: number, part: Part, means: Means): AsyncGenerator<Reply, void> {
  const { shape, most, frames: wanted = 0, ...rest } = part;
  const size = sized(shape);
  if (size !== undefined) {
    yield { asked, kind: 'refused', why: size };
    return;
  }
  const inCubes = isInCubes(shape) ? await means.cubes() : undefined;
  if (isInCubes(shape) && inCubes && inCubes.cubesOf(shape) >= inCubes.worthTwo) means.second?.wake();
  let coarse: number | undefined;
  for (const pass of passesOf(shape)) {
    const begun = means.now();
    const laid = isInCubes(shape) ? inCubes!.layCubes(shape, pass, most) : await layOut(shape, pass, most);
    if (typeof laid === 'string') {
      yield { asked, kind: 'refused', why: laid };
      return;
    }
    const given: Case = { ...rest, mesh: laid.mesh, sides: laid.sides };
    const why = refuse(given);
    if (why !== undefined) {
      // A coarse mesh may miss what a fine one finds.
      if (pass === 'coarse') continue;
      yield { asked, kind: 'refused', why };
      return;
    }
    const cubes = laid.cubes && given.metal.base === undefined ? inCubes : undefined;
    const rough = roughTime(given);
    const pace = paceOf(given, rough);
    const kept = Math.min(wanted, Math.ceil(mostInFrames / given.mesh.region.length));
    const apart = rough / Math.max(1, kept);
    const job = cubes?.halfOf(part, pass, given, pace, kept, apart);
    const second = job && means.second?.ask(job);
    const build = (slab?: Slab): Engine => (cubes ? cubes.engine(given, slab) : exactEngine(given));
    let engine: Engine;
    try {
      engine = build(second && cubes!.lowerOf(job!));
    } catch (error) {
      second?.say({ kind: 'leave' });
      if (!(error instanceof RangeError)) throw error;
      yield {
        asked,
        kind: 'refused',
        why: noMemory,
      };
      return;
    }
    const staircase = laid.cubes && given.mesh.share !== undefined;
    const across = acrossThinnest(given.mesh, laid.mirror, staircase ? 0.05 : 0);
    yield {
      asked,
      kind: 'mesh',
      pass,
      size: sizeOf(given.mesh),
      edges: given.mesh.axes.map(({ edges }) => edges) as unknown as [
        Float64Array,
        Float64Array,
        Float64Array,
      ],
      region: given.mesh.region,
      across: across.cells,
      thickness: across.thickness,
      error: statedError(given, across, rough),
      modulus: modulusOf(given),
      mirror: laid.mirror,
      by: cubes?.by ?? 'exact',
    };
    let letIn = means.now();
    // The first picture comes after the first spell.
    let shown = letIn + spell - showEvery;
    const due = (): boolean => means.now() - shown >= showEvery;
    const paced = { ...given, pace };
    let way = second
      ? cubes!.solveTogether(paced, engine, job!, second, due)
      : solveAlone(paced, engine, kept, apart, due);
    for (;;) {
      const next = await way.next();
      if (next.done && next.value === undefined) {
        // The second worker fell out: all of it here.
        way = solveAlone(paced, build(), kept, apart, due);
        continue;
      }
      if (next.done) {
        const { result, frames } = next.value!;
        const time = result.last?.time;
        const moved = coarse !== undefined && time !== undefined ? Math.abs(coarse / time - 1) : undefined;
        coarse = time;
        const took = means.now() - begun;
        if (job) means.second?.took?.(second ? 'two' : 'one', took / (result.cells * result.stages));
        yield {
          asked,
          kind: 'frozen',
          pass,
          result,
          ...(moved !== undefined && { moved }),
          frames,
          took,
          done: pass === 'fine',
        };
        break;
      }
      const { time, progress, temperature } = next.value;
      if (temperature) {
        shown = means.now();
        yield { asked, kind: 'going', pass, time, progress, temperature };
      }
      if (means.now() - letIn < spell) continue;
      await means.turn();
      if (means.stopped()) {
        await way.return(undefined);
        yield { asked, kind: 'stopped' };
        return;
      }
      letIn = means.now();
    }
  }
}

/** One worker's way through all of it. */
async function* solveAlone(
  given: Case,
  engine: Engine,
  frames: number,
  apart: number,
  wanted: () => boolean,
): AsyncGenerator<Move, Whole, undefined> {
  const kept = keeper(frames, apart);
  kept.keep(0, () => temperatures(engine, 0));
  const way = freezing(given, engine);
  for (;;) {
    const next = way.next();
    if (next.done) return { result: next.value, frames: kept.kept(next.value) };
    const { time, progress, newest } = next.value;
    kept.keep(time, () => temperatures(engine, newest));
    yield { time, progress, ...(wanted() && { temperature: temperatures(engine, newest) }) };
  }
}

function modulusOf({ mesh }: Case): number {
  const volume = metalCells(mesh).reduce((sum, cell) => sum + volumeOf(mesh, cell), 0);
  return volume / metalArea(mesh);
}
