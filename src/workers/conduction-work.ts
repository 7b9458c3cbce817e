import { acrossThinnest } from '../../calculators/models/conduction/across.ts';
import type { Case } from '../../calculators/models/conduction/case.ts';
import type { Engine } from '../../calculators/models/conduction/engine.ts';
import { exactEngine } from '../../calculators/models/conduction/exact-engine.ts';
import { freezing, type Freezing } from '../../calculators/models/conduction/freeze.ts';
import { sizeOf, type Three } from '../../calculators/models/conduction/mesh.ts';
import { refuse } from '../../calculators/models/conduction/refuse.ts';
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

/** Freezes a part in passes, replying as it goes. Ends after `frozen` with `done`, `refused` or `stopped`. */
export async function* solvePart(asked: number, part: Part, means: Means): AsyncGenerator<Reply, void> {
  const { shape, most, ...rest } = part;
  const size = sized(shape);
  if (size !== undefined) {
    yield { asked, kind: 'refused', why: size };
    return;
  }
  let coarse: number | undefined;
  for (const pass of passesOf(shape)) {
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
          done: pass === 'fine',
        };
        break;
      }
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
      const from = engine.temperature[newest];
      const temperature = Float32Array.from(
        from.subarray(engine.guard, engine.guard + given.mesh.region.length),
        (warm) => warm + engine.zero,
      );
      yield { asked, kind: 'going', pass, time, progress, temperature };
    }
  }
}
