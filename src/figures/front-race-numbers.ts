import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { front } from '../../calculators/models/front.ts';
import { follow } from '../../calculators/models/front/follow.ts';
import { pourOf } from '../../calculators/models/front/given-pour.ts';
import type { Ending, Moment } from '../../calculators/models/front/race.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import type { FigureTable } from './drawing.ts';

/** At the cavity, kPa. */
const suctions = [0, 0.5, 1, 1.5, 2, 3, 5, 10, 15];
const tick = 0.04;
const ticks = 18;
/** Standing on its edge: how far each section climbs, in metres, in the order of the model’s own sections. */
const rises = [0, 0.018, 0.015, 0.004, 0.017];

export interface FrontRaceProps {
  readonly suctions: readonly number[];
  /** Seconds from the first metal at the gate. */
  readonly times: readonly number[];
  readonly sections: readonly {
    readonly name: string;
    /** In millimetres: way from the gate to its near end, and its length. */
    readonly before: number;
    readonly length: number;
    /** By suction: how it ended, and by time how far the metal has come (mm) and its head (°C). */
    readonly ended: readonly Ending[];
    readonly reached: readonly (readonly number[])[];
    readonly celsius: readonly (readonly number[])[];
  }[];
}

/** A number of the race at some time, between the two moments about it. */
function at(history: readonly Moment[], time: number, of: (moment: Moment) => number): number {
  const after = history.findIndex((moment) => moment.time >= time);
  const next = history[after] ?? history.at(-1)!;
  const before = history[after - 1];
  if (after < 1 || before === undefined) return of(next);
  const part = (time - before.time) / (next.time - before.time);
  return of(before) + part * (of(next) - of(before));
}

/** The race of the fronts of the lamp shield standing on its edge, for each suction, as the model starts otherwise. */
export function frontRaceNumbers(): FrontRaceProps & { readonly table: FigureTable } {
  const { values } = completeInputs(front, {}, resolvedMaterials(materials));
  const given = values['sections'];
  if (!Array.isArray(given)) throw new Error('the race of the fronts starts with no sections');
  const sections = given.map((row, i) => ({ ...row, rise: rises[i] ?? 0 }));
  const times = Array.from({ length: ticks }, (_, i) => Number((i * tick).toFixed(2)));
  const races = suctions.map((kPa) => {
    const read = pourOf({ ...values, sections, suction: kPa * 1000 });
    if (!read.ok) throw new Error(read.why);
    return { pour: read.pour, race: follow(read.pour, true) };
  });
  const { channels } = races[0]!.pour;
  const all = channels.map(({ name, before, length }, c) => ({
    name,
    before: Math.round(before * 1000),
    length: Math.round(length * 1000),
    ended: races.map(({ race }) => race.fronts[c]!.ended),
    reached: races.map(({ race }) =>
      times.map((t) => Number((1000 * at(race.history, t, ({ reached }) => reached[c]!)).toFixed(1))),
    ),
    celsius: races.map(({ race }) =>
      times.map((t) => Math.round(at(race.history, t, ({ temperature }) => temperature[c]!) - 273.15)),
    ),
  }));
  const table: FigureTable = {
    caption: 'How far the metal comes, in millimetres',
    head: ['Suction at the cavity', ...all.map(({ name, length }) => `${name}, of ${length}`)],
    rows: suctions.map((kPa, s) => [
      `${kPa} kPa`,
      ...races[s]!.race.fronts.map(({ reached }) => (reached * 1000).toFixed(0)),
    ]),
  };
  return { suctions, times, sections: all, table };
}
