import { acrossThinnest } from '../../calculators/models/conduction/across.ts';
import type { Case } from '../../calculators/models/conduction/case.ts';
import { temperatures, type Engine } from '../../calculators/models/conduction/engine.ts';
import { exactEngine } from '../../calculators/models/conduction/exact-engine.ts';
import { freezing, type Freezing } from '../../calculators/models/conduction/freeze.ts';
import { metalCells, sizeOf, volumeOf, type Three } from '../../calculators/models/conduction/mesh.ts';
import { refuse } from '../../calculators/models/conduction/refuse.ts';
import { metalArea, roughTime } from '../../calculators/models/conduction/pace.ts';
import { statedError } from '../../calculators/models/conduction/stated-error.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import type { KernelMaker } from '../../calculators/models/conduction/voxel-kernel.ts';
import { layOut, passesOf, sized, type Pass, type Shape } from './conduction-shape.ts';

/** A casting to freeze, as plain data. SI, temperatures K; `start` by region. */
export interface Part extends Omit<Case, 'mesh' | 'start' | 'sides'> {
  readonly shape: Shape;
  readonly start: readonly number[];
  /** The most cells this device is asked to hold. */
  readonly most: number;
  /** Keeps about so many pictures of the way, evenly in time: what play-back shows. */
  readonly frames?: number;
}

/** The temperature of every cell at a time, K. */
export interface Frame {
  readonly time: number;
  readonly temperature: Float32Array;
}

/** To the worker. */
export type Request = { readonly asked: number; readonly part: Part } | { readonly stop: number };

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

/** What the surroundings lend: kernels, a clock in ms, a turn for messages to come in, a word to stop. */
export interface Means {
  readonly kernels: { readonly by: string; readonly maker: KernelMaker };
  readonly now: () => number;
  readonly turn: () => Promise<void>;
  readonly stopped: () => boolean;
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
  let coarse: number | undefined;
  for (const pass of passesOf(shape)) {
    const begun = means.now();
    const laid = layOut(shape, pass, most);
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
    const single = laid.cubes && given.metal.base === undefined;
    let engine: Engine;
    try {
      engine = single ? voxelEngine(given, means.kernels.maker) : exactEngine(given);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      yield {
        asked,
        kind: 'refused',
        why: 'This device has not the memory for so many cells: take wider ones.',
      };
      return;
    }
    const staircase = laid.cubes && given.mesh.share !== undefined;
    const picture = (newest: 0 | 1): Float32Array => temperatures(engine, newest);
    const frames = keeper(Math.min(wanted, Math.ceil(mostInFrames / given.mesh.region.length)), given);
    frames.keep(0, () => picture(0));
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
      error: statedError(given, across),
      modulus: modulusOf(given),
      mirror: laid.mirror,
      by: single ? means.kernels.by : 'exact',
    };
    const way = freezing(given, engine);
    let letIn = means.now();
    let shown = letIn;
    for (;;) {
      const next = way.next();
      if (next.done) {
        const result = next.value;
        const time = result.last?.time;
        const moved = coarse !== undefined && time !== undefined ? Math.abs(coarse / time - 1) : undefined;
        coarse = time;
        yield {
          asked,
          kind: 'frozen',
          pass,
          result,
          ...(moved !== undefined && { moved }),
          frames: frames.kept(result),
          took: means.now() - begun,
          done: pass === 'fine',
        };
        break;
      }
      frames.keep(next.value.time, () => picture(next.value.newest));
      if (means.now() - letIn < spell) continue;
      await means.turn();
      if (means.stopped()) {
        yield { asked, kind: 'stopped' };
        return;
      }
      letIn = means.now();
      if (letIn - shown < showEvery) continue;
      shown = letIn;
      const { time, progress, newest } = next.value;
      yield { asked, kind: 'going', pass, time, progress, temperature: picture(newest) };
    }
  }
}

function modulusOf({ mesh }: Case): number {
  const volume = metalCells(mesh).reduce((sum, cell) => sum + volumeOf(mesh, cell), 0);
  return volume / metalArea(mesh);
}

/** Keeps pictures evenly in time: when there are too many, every second one goes and the next ones come half as often. */
function keeper(most: number, given: Case) {
  let apart = roughTime(given) / Math.max(1, most);
  let kept: Frame[] = [];
  let due = 0;
  return {
    keep: (time: number, picture: () => Float32Array): void => {
      if (most < 1 || time < due) return;
      kept.push({ time, temperature: picture() });
      if (kept.length > 2 * most) {
        kept = kept.filter((_, n) => n % 2 === 0);
        apart *= 2;
      }
      due = time + apart;
    },
    /** With the end of the way as the last of them. */
    kept: ({ time, temperature }: Freezing): readonly Frame[] =>
      most < 1 ? [] : [...kept.filter((frame) => frame.time < time), { time, temperature }],
  };
}
