import type { Pace } from './case.ts';
import { totalHeat, type Engine } from './engine.ts';
import { stageOf, stagesFor } from './legendre.ts';
import { sizeOf } from './mesh.ts';
import { startRecord, type FreezeRecord } from './record.ts';
import { waiting, type Said, type Waiting } from './slab.ts';

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
  /** Heat made by arithmetic, or lost where it is below nought, and what the metal had at the start, J. */
  readonly made: number;
  readonly held: number;
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
export function march(
  engine: Engine,
  pace: Pace,
  until = Infinity,
  probes: readonly (readonly number[])[] = [],
): Generator<Moment, March, undefined> {
  // With nobody beside it, it never waits.
  return marchBeside(engine, pace, until, probes, () => undefined) as Generator<Moment, March, undefined>;
}

/**
 * The same, of one half of a casting where the engine has a border: tells the other half by `give` and waits for what
 * that says. Both take the same steps, and each cell comes out as it would in one piece.
 */
export function* marchBeside(
  engine: Engine,
  pace: Pace,
  until: number,
  probes: readonly (readonly number[])[],
  give: (said: Said) => void,
): Generator<Moment | Waiting, March, Said | undefined> {
  const { metal, places, border } = engine;
  const record = startRecord(engine, probes);
  const atStart = totalHeat(engine, 0);
  const leftIn = heatLeft(engine);
  let held = 0;
  for (let m = 0; m < metal.length; m += 1) held += engine.capacity(metal[m]!) * engine.heat[0][places[m]!]!;
  let newest: 0 | 1 = 0;
  let time = 0;
  let steps = 0;
  let stages = 0;
  let lost = 0;
  let ended: March['ended'] = 'solid';
  let { fastest } = engine;
  const mine = leftIn(0);
  let left = inOrder(mine);
  if (border) {
    give({ kind: 'ready', fastest, left: mine });
    const said = heard('ready', yield waiting);
    fastest = Math.max(fastest, said.fastest);
    left = border.half === 'lower' ? inOrder(mine, said.left) : inOrder(said.left, mine);
  }
  const toGive = left;
  let needed = Infinity;

  while (left > 0) {
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
    const s = stagesFor(step * fastest);
    if (!(stages + s <= mostStages)) {
      ended = 'steps';
      break;
    }
    let leaving: [before: number, now: number] = [0, 0];
    for (let j = 1; j <= s; j += 1) {
      const { back, part } = stageOf(j, s);
      const add = part * step * engine.outflow(newest);
      leaving = [leaving[1], leaving[1] - back * (leaving[1] - leaving[0]) + add];
      const other: 0 | 1 = newest === 0 ? 1 : 0;
      if (border) {
        border.first(newest, back, part * step);
        give({ kind: 'stage', warmth: border.warmth(other) });
        border.rest(newest, back, part * step);
        border.takeWarmth(other, heard('stage', yield waiting).warmth);
      } else engine.stage(newest, back, part * step);
      newest = other;
    }
    lost += leaving[1];
    const here = leftIn(newest);
    if (border) give({ kind: 'step', left: here, heats: border.heats(newest) });
    record.keep(newest, time, time + step);
    time += step;
    steps += 1;
    stages += s;
    let now = inOrder(here);
    if (border) {
      const said = heard('step', yield waiting);
      border.takeHeats(newest, said.heats);
      now = border.half === 'lower' ? inOrder(here, said.left) : inOrder(said.left, here);
    }
    needed = now < left ? (now * step) / (left - now) : Infinity;
    left = now;
    yield { time, progress: toGive > 0 ? 1 - now / toGive : 1, newest, record };
  }
  record.close();
  const made = totalHeat(engine, newest) + lost - atStart;
  return { ended, time, steps, stages, newest, record, made, held, lost };
}

/** Heat the metal has to give until it is solid, J, plane by plane: so that halves add up to the same as the whole. */
function heatLeft({
  metal,
  mesh,
  capacity,
  heat,
  places,
  curve,
  own,
}: Engine): (newest: 0 | 1) => Float64Array {
  const [nx, ny] = sizeOf(mesh);
  const plane = nx * ny;
  const first = own.from / plane;
  const one = Math.fround(metal.length > 0 ? capacity(metal[0]!) : 0);
  // Equal cubes are worth the same and need no list.
  const worth = metal.every((cell) => Math.fround(capacity(cell)) === one)
    ? undefined
    : Float32Array.from(metal, capacity);
  return (newest) => {
    const now = heat[newest];
    const sums = new Float64Array((own.to - own.from) / plane);
    let m = 0;
    for (let k = 0; k < sums.length; k += 1) {
      const end = (k + 1 + first) * plane;
      let sum = 0;
      for (; m < metal.length && metal[m]! < end; m += 1) {
        const above = now[places[m]!]! - curve.solidus;
        if (above > 0) sum += (worth ? worth[m]! : one) * above;
      }
      sums[k] = sum;
    }
    return sums;
  };
}

function inOrder(...parts: readonly Float64Array[]): number {
  let sum = 0;
  for (const part of parts) for (const each of part) sum += each;
  return sum;
}

function heard<Kind extends Said['kind']>(kind: Kind, said: Said | undefined): Extract<Said, { kind: Kind }> {
  if (said?.kind !== kind) throw new Error(`The other half was to say "${kind}".`);
  return said as Extract<Said, { kind: Kind }>;
}
