import type { Watch } from '../../core/model.ts';
import type { Case, Pace } from './case.ts';
import { exactEngine } from './exact-engine.ts';
import { temperatures, type Engine } from './engine.ts';
import { march, marchBeside, type March, type Moment } from './march.ts';
import { centreOf, sizeOf, type Place } from './mesh.ts';
import { paceOf } from './pace.ts';
import type { Frozen, Trace } from './record.ts';
import { refuse } from './refuse.ts';
import { heldBy, type Said, type Slab, type Waiting } from './slab.ts';

/** How a casting froze. Times s, temperatures K; maps by metal cell, `metal` says which cells these are. */
export interface Freezing extends Frozen {
  readonly ok: true;
  readonly ended: March['ended'];
  readonly time: number;
  readonly steps: number;
  readonly stages: number;
  readonly cells: number;
  readonly metal: Int32Array;
  readonly last: { readonly cell: number; readonly place: Place; readonly time: number } | undefined;
  readonly drift: number;
  /** Heat that left the outside, J. */
  readonly lost: number;
  readonly traces: readonly Trace[];
  /** By region, the hottest any of it has been. */
  readonly hottest: readonly number[];
  /** Of every cell, at the end. */
  readonly temperature: Float32Array;
  /** Share solid of each metal cell at the end. */
  readonly solid: Float32Array;
  readonly bytesPerCell: number;
}

export interface Refusal {
  readonly ok: false;
  readonly why: string;
}

/** Freezes a casting with the engine given, step by step; the caller may stop asking at any step. */
export function* freezing(given: Case, engine: Engine): Generator<Moment, Freezing, undefined> {
  const done = yield* march(engine, paceOf(given), given.until, given.probes);
  return resultOf(given, engine, done);
}

/** What a half has to say at the end: its cells, numbered as those of the whole, and what the sum of drifts needs. */
export interface HalfFrozen {
  readonly frozen: Freezing;
  /** Of the half, J. */
  readonly made: number;
  readonly held: number;
}

/** Freezes one half of a casting beside the other. No probes: a whole has them. */
export function* freezingHalf(
  given: Case,
  engine: Engine,
  slab: Slab,
  pace: Pace,
  give: (said: Said) => void,
): Generator<Moment | Waiting, HalfFrozen, Said | undefined> {
  const done = yield* marchBeside(engine, pace, given.until ?? Infinity, [], give);
  const frozen = resultOf(given, engine, done);
  const [nx, ny] = sizeOf(engine.mesh);
  const skipped = heldBy(slab).first * nx * ny;
  const { last } = frozen;
  return {
    frozen: {
      ...frozen,
      metal: frozen.metal.map((cell) => cell + skipped),
      last: last && { ...last, cell: last.cell + skipped },
    },
    made: done.made,
    held: done.held,
  };
}

/** The whole of two halves. */
export function wholeOf(lower: HalfFrozen, upper: HalfFrozen): Freezing {
  const [one, two] = [lower.frozen, upper.frozen];
  const cells = one.temperature.length + two.temperature.length;
  const last = two.last && two.last.time > (one.last?.time ?? -Infinity) ? two.last : one.last;
  const bytes = one.bytesPerCell * one.cells + two.bytesPerCell * two.cells;
  return {
    ...one,
    cells,
    metal: joined(one.metal, two.metal),
    liquidus: joined(one.liquidus, two.liquidus),
    solidus: joined(one.solidus, two.solidus),
    feeding: joined(one.feeding, two.feeding),
    last,
    drift: Math.abs(lower.made + upper.made) / Math.max(1e-300, Math.abs(lower.held + upper.held)),
    lost: one.lost + two.lost,
    hottest: one.hottest.map((each, region) => Math.max(each, two.hottest[region]!)),
    temperature: joined(one.temperature, two.temperature),
    solid: joined(one.solid, two.solid),
    bytesPerCell: bytes / cells,
  };
}

/** One after the other. */
export function joined<Numbers extends Float32Array | Int32Array>(one: Numbers, two: Numbers): Numbers {
  const both = new (one.constructor as new (length: number) => Numbers)(one.length + two.length);
  both.set(one);
  both.set(two, one.length);
  return both;
}

function resultOf(given: Case, engine: Engine, done: March): Freezing {
  const { record, newest, ...rest } = done;
  const { mesh, zero, metal } = engine;
  const { cell, time } = record.last();
  const count = mesh.region.length;
  return {
    ok: true,
    ended: rest.ended,
    time: rest.time,
    steps: rest.steps,
    stages: rest.stages,
    drift: Math.abs(rest.made) / Math.max(1e-300, Math.abs(rest.held)),
    lost: rest.lost,
    cells: count,
    metal,
    liquidus: record.liquidus,
    solidus: record.solidus,
    feeding: record.feeding,
    last: cell < 0 || rest.ended !== 'solid' ? undefined : { cell, place: centreOf(mesh, cell), time },
    traces: record.traces,
    hottest: Array.from({ length: given.others.length + 1 }, (_, region) => record.hottest[region]! + zero),
    temperature: temperatures(engine, newest),
    solid: Float32Array.from(engine.places, (place) => engine.curve.solidOf(engine.heat[newest][place]!)),
    bytesPerCell: (engine.bytes + record.bytes) / count,
  };
}

/** Freezes a casting at once, in double precision. A sentence where it cannot. */
export function freeze(
  given: Case,
  watch: Watch = {},
  engineOf: (given: Case) => Engine = exactEngine,
): Freezing | Refusal {
  const why = refuse(given);
  if (why !== undefined) return { ok: false, why };
  const way = freezing(given, engineOf(given));
  for (;;) {
    const next = way.next();
    if (next.done) return next.value;
    watch.progress?.(next.value.progress);
    if (watch.cancelled?.()) return { ok: false, why: 'Stopped before it was solid.' };
  }
}
