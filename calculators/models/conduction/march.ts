import type { Pace } from './case.ts';
import { totalHeat, type Engine } from './engine.ts';
import { stageOf, stagesFor } from './legendre.ts';
import { startRecord, type FreezeRecord } from './record.ts';

/** Where a march stands, after every step. */
export interface Moment {
  readonly time: number;
  /** Of the heat to be lost until all is solid, the part that is lost, 0 to 1. */
  readonly progress: number;
  readonly newest: 0 | 1;
  readonly record: FreezeRecord;
}

export interface March {
  readonly ended: 'solid' | 'time' | 'steps';
  readonly time: number;
  readonly steps: number;
  readonly stages: number;
  readonly newest: 0 | 1;
  readonly record: FreezeRecord;
  /** Heat made or lost by arithmetic, over the heat the metal had to give. */
  readonly drift: number;
  /** Heat that left the mesh, J. */
  readonly lost: number;
}

/** More steps than any freezing needs: 20,000 of 2 % reach beyond the age of the Earth. */
const mostSteps = 20_000;
/** A stuff of next to no heat capacity asks for stages without end; a freezing takes some thousands. */
const mostStages = 400_000;

/**
 * Towards the end steps are that part of the time still needed, down to that part of the step they would be:
 * once the last cell is solid it cools together with its neighbours, and how far into a step that was is
 * no longer to be read from its heat.
 */
const towardsEnd = { part: 0.25, least: 1 / 20 };

/** Marches a casting until it is solid. A generator, so that whoever drives it can show, wait and stop. */
export function* march(
  engine: Engine,
  pace: Pace,
  until = Infinity,
  probes: readonly (readonly number[])[] = [],
): Generator<Moment, March, undefined> {
  const { metal, heat, guard, curve } = engine;
  const record = startRecord(engine, probes);
  const atStart = totalHeat(engine, 0);
  const worth = Float32Array.from(metal, engine.capacity);
  const metalHeat = (newest: 0 | 1): number => {
    const now = heat[newest];
    let sum = 0;
    for (let m = 0; m < metal.length; m += 1)
      sum += worth[m]! * Math.max(0, now[metal[m]! + guard]! - curve.solidus);
    return sum;
  };
  const allMetalHeat = metal.reduce((sum, cell) => sum + engine.capacity(cell) * heat[0][cell + guard]!, 0);
  const toGive = metalHeat(0);
  let newest: 0 | 1 = 0;
  let time = 0;
  let steps = 0;
  let stages = 0;
  let lost = 0;
  let ended: March['ended'] = 'solid';
  let left = toGive;
  let needed = Infinity;

  while (record.frozen() < metal.length) {
    if (time >= until) {
      ended = 'time';
      break;
    }
    if (steps >= mostSteps) {
      ended = 'steps';
      break;
    }
    const usual = Math.max(pace.shortest, Math.min(pace.longest, pace.growth * time));
    const step = Math.min(usual, Math.max(towardsEnd.part * needed, towardsEnd.least * usual), until - time);
    engine.refresh(newest);
    const s = stagesFor(step / engine.safeStep);
    if (!(stages + s <= mostStages)) {
      ended = 'steps';
      break;
    }
    let leaving: [before: number, now: number] = [0, 0];
    for (let j = 1; j <= s; j += 1) {
      const { back, part } = stageOf(j, s);
      const add = part * step * engine.outflow(newest);
      leaving = [leaving[1], leaving[1] - back * (leaving[1] - leaving[0]) + add];
      engine.stage(newest, back, part * step);
      newest = newest === 0 ? 1 : 0;
    }
    lost += leaving[1];
    record.keep(newest, time, time + step);
    time += step;
    steps += 1;
    stages += s;
    const now = metalHeat(newest);
    needed = now < left ? (now * step) / (left - now) : Infinity;
    left = now;
    yield { time, progress: toGive > 0 ? 1 - now / toGive : 1, newest, record };
  }
  const drift =
    Math.abs(totalHeat(engine, newest) + lost - atStart) / Math.max(1e-300, Math.abs(allMetalHeat));
  return { ended, time, steps, stages, newest, record, drift, lost };
}
