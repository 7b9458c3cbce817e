import type { Watch } from '../../core/model.ts';
import type { Case } from './case.ts';
import { exactEngine } from './exact-engine.ts';
import { temperatures, type Engine } from './engine.ts';
import { march, type March, type Moment } from './march.ts';
import { centreOf, type Place } from './mesh.ts';
import { paceOf } from './pace.ts';
import type { Frozen, Trace } from './record.ts';
import { refuse } from './refuse.ts';

/** How a casting froze. Times s, temperatures K; maps by metal cell, `metal` says which cells these are. */
export interface Freezing extends Frozen {
  readonly ok: true;
  readonly ended: March['ended'] | 'cancelled';
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

function resultOf(
  given: Case,
  engine: Engine,
  done: Omit<March, 'ended'> & { ended: Freezing['ended'] },
): Freezing {
  const { record, newest, ...rest } = done;
  const { mesh, zero, guard, metal } = engine;
  const { cell, time } = record.last();
  const count = mesh.region.length;
  return {
    ok: true,
    ended: rest.ended,
    time: rest.time,
    steps: rest.steps,
    stages: rest.stages,
    drift: rest.drift,
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
    solid: Float32Array.from(metal, (at) => engine.curve.solidOf(engine.heat[newest][at + guard]!)),
    bytesPerCell: engine.bytes / count,
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
