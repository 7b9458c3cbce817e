import type { Check } from '../../core/model.ts';
import { entryPressure } from '../../formulas/filling/entry-pressure.ts';
import { fillTime } from '../../formulas/filling/fill-time.ts';
import { flowLength } from '../../formulas/filling/flow-length.ts';
import { flowTime } from '../../formulas/filling/flow-time.ts';
import { flowTimeInterface } from '../../formulas/filling/flow-time-interface.ts';
import { sectionSpeed } from '../../formulas/filling/section-speed.ts';
import { velocity } from '../../formulas/filling/velocity.ts';
import { alongRun } from './chain.ts';
import type { Cooling } from './freezing.ts';
import type { Drive } from './pressure.ts';
import { lineOf } from './ledger.ts';
import { celsius, say } from './say.ts';
import { upstreamOf, type Section } from './sections.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** Time it keeps flowing over time to fill: below this a section is short for any small doubt. */
export const raceFactor = 1.5;
/** Pressure at hand over pressure to enter, likewise. */
export const entryFactor = 1.5;

/** The margin wanted: the reader's own fill factor, if there is one, with the same to spare as the book's. */
function wantedMargin({ number }: Working): number {
  const own = number('own.margin');
  return own > 0 ? raceFactor * own : raceFactor;
}

const short = (x: number): string => String(Number(x.toPrecision(2)));

/** What pushes the front: pressures in pascal, flow into one casting in m³/s, head left in metres. */
type Push = Pick<Drive, 'pressure' | 'gas' | 'flow' | 'headLeft' | 'suction'>;

interface Entry {
  readonly resists: number;
  readonly speed: number;
}

export interface Race {
  readonly section: Section;
  readonly resists: number;
  /** Pressure to enter and to press the gas out. */
  readonly needs: number;
  readonly speed: number;
  readonly arrives: number;
  readonly fills: number;
  readonly flows: number;
  readonly freezes: number;
  readonly margin: number;
}

/** What a section's opening resists with, and the speed of the front in it: pressure or shared flow, whichever is less. */
function workEntry(working: Working, section: Section, drive: Push, kept: boolean): Entry {
  const { number, work, state } = working;
  const { id, name } = section;
  const tag = kept ? id : lineOf(id, 'upstream');
  const resists = work(lineOf(tag, 'resists'), `${name}: pressure to enter`, entryPressure, {
    gamma: number('metal.surface-tension'),
    theta: number('entry.angle'),
    a: section.sides[0],
    c: section.sides[1],
  });
  const shared = work(lineOf(tag, 'shared'), `${name}: speed its share of the flow gives`, sectionSpeed, {
    Q: drive.flow,
    n: section.fronts,
    A: section.channel,
  });
  if (!(drive.pressure > resists + drive.gas)) return { resists, speed: 0 };
  const pushed = work(lineOf(tag, 'pushed'), `${name}: speed the pressure gives`, velocity, {
    C: number('gate.discharge'),
    h: drive.headLeft,
    dp: drive.suction,
    p_cap: resists + drive.gas,
    rho: number('metal.density.liquid'),
  });
  const speed = state(
    lineOf(tag, 'speed'),
    `${name}: speed of the front`,
    Math.min(shared, pushed),
    'm/s',
    shared < pushed ? 'The flow shared between the channels is less.' : 'The pressure gives less.',
  );
  return { resists, speed };
}

export function workRace(
  working: Working,
  section: Section,
  all: readonly Section[],
  gate: number,
  drive: Push,
  cooling: Cooling,
  freezes: number,
): Race {
  const { number, work, state } = working;
  const { id, name } = section;
  const { resists, speed } = workEntry(working, section, drive, true);
  const before = upstreamOf(section, all);
  const way = before ? workEntry(working, { ...before, id }, drive, false) : { resists, speed };
  const arrives = state(
    lineOf(id, 'arrives'),
    `${name}: the metal arrives at`,
    alongRun(
      working,
      lineOf(id, 'chain'),
      `${name}: temperature after ${before ? before.name.toLowerCase() : 'the way'}`,
      {
        from: gate,
        length: section.before,
        modulus: (before ?? section).modulus,
        speed: way.speed,
      },
    ),
    'K',
    'What the furnace gave, less every loss on the way.',
  );
  const given = {
    rho: number('metal.density.liquid'),
    M: section.modulus,
    f: Math.min(1, number('metal.critical-solid')),
    L: number('metal.latent'),
    c: number('metal.heat.liquid'),
    dT: arrives - number('metal.liquidus'),
    h: number('mould.interface'),
    T_f: cooling.freezing,
    T_m: number('mould.temperature'),
  };
  // Below the liquidus part of the flow's share of latent heat is already spent: dT goes below zero.
  const flows = work(
    lineOf(id, 'flows'),
    `${name}: time it keeps flowing, front on fresh sand`,
    flowTimeInterface,
    given,
  );
  if (flows > 0) {
    const warming = { ...given, b: cooling.diffusivity };
    work(
      lineOf(id, 'flows.latest'),
      `${name}: the same, sand warming behind the front`,
      flowTime,
      warming,
      't',
      flows,
    );
  }
  const needs = resists + drive.gas;
  if (!(speed > 0)) {
    const margin = -5 + Math.max(-5, marginOf(drive.pressure, needs));
    return {
      section,
      resists,
      needs,
      speed: 0,
      arrives,
      fills: Number.POSITIVE_INFINITY,
      flows,
      freezes,
      margin,
    };
  }
  const fills = work(lineOf(id, 'fills'), `${name}: time to fill`, fillTime, { l: section.run, v: speed });
  work(lineOf(id, 'reach'), `${name}: length it would run`, flowLength, { ...given, v: speed });
  const wanted = wantedMargin(working);
  const margin = marginOf(Number.isNaN(flows) ? 0 : flows, wanted * fills);
  if (Number.isFinite(fills) && flows > 0) {
    state(
      lineOf(id, 'margin'),
      `${name}: flow time over fill time`,
      flows / fills,
      '1',
      wanted === raceFactor
        ? `Wanted: ${raceFactor} or more.`
        : `Wanted: ${short(wanted)} or more, by your own pours; by the book ${raceFactor}.`,
    );
  }
  return { section, resists, needs, speed, arrives, fills, flows, freezes, margin };
}

const raceLevers = [
  'suction.gauge',
  'head',
  'melt.temperature',
  'mould.temperature',
  'pour.seconds',
  'melt.carry',
  'gate.area',
];

/** Thinnest first. */
export function judgeRaces(working: Working, races: readonly Race[], drive: Push): Check[] {
  return [...races]
    .sort((a, b) => a.section.modulus - b.section.modulus)
    .flatMap((race) => judgeRace(working, race, drive));
}

function judgeRace(working: Working, race: Race, drive: Push): Check[] {
  const { id, name } = race.section;
  if (race.speed > 0 && Number.isNaN(race.arrives)) {
    working.note(
      `${name}: how warm the metal arrives is not known with these numbers, so its race is not worked.`,
    );
    return [];
  }
  const book = working.kept.get(lineOf(id, 'freeze.book'));
  const wanted = wantedMargin(working);
  const times = (): string =>
    `In the mould at ${celsius(working.number('mould.temperature'))} it flows for ${say(race.flows, 's')} and needs ${say(race.fills, 's')} to fill; it is solid right through after ${say(race.freezes, 's')}${book === undefined ? '' : `, by the book ${say(book, 's')}`}`;
  const cold = !(race.flows > 0);
  return weigh(working, id, race.margin, () => ({
    shows: lineOf(id, 'margin'),
    title: `${name}: fills before it stops`,
    levers: raceLevers,
    steps: [
      'modulus',
      'resists',
      'speed',
      'arrives',
      'flows',
      'fills',
      'freeze',
      ...(book === undefined ? [] : ['freeze.book']),
    ].map((line) => lineOf(id, line)),
    why: {
      holds: `It fills. ${times()}.`,
      close: `It fills, with little to spare. ${times()}.`,
      fails:
        race.speed <= 0
          ? `It does not fill: the metal presses with ${say(drive.pressure, 'kPa')}, and to enter against the gas takes ${say(race.needs, 'kPa')}. No warmth changes that.`
          : cold
            ? `It does not fill: the metal arrives at ${celsius(race.arrives)}, too far frozen to flow.`
            : `It runs short: want ${wanted === raceFactor ? raceFactor : `${short(wanted)} by your own pours, ${raceFactor} by the book,`} times as long as it needs. ${times()}.`,
    },
  }));
}

/** The opening that resists most must be pushed well past its resistance: a front that only just enters stops at the first speck. */
export function judgeEntry(working: Working, races: readonly Race[], drive: Push): Check[] {
  const [hardest] = [...races].sort((a, b) => b.needs - a.needs);
  if (!hardest) return [];
  const { id, name } = hardest.section;
  const sizes = (): string =>
    `${name}: the opening resists with ${say(hardest.resists, 'kPa')} and the gas with ${say(drive.gas, 'kPa')}; the metal has ${say(drive.pressure, 'kPa')}`;
  return weigh(working, 'entry', marginOf(drive.pressure, entryFactor * hardest.needs), () => ({
    shows: 'pressure',
    title: 'Pressure to enter the thinnest opening',
    levers: ['suction.gauge', 'head', 'mould.moisture', 'mould.permeability'],
    steps: [lineOf(id, 'resists'), 'gas', 'suction', 'pressure'],
    why: {
      holds: `The metal goes in. ${sizes()}.`,
      close: `It goes in, with little to spare. ${sizes()}.`,
      fails: `Bring more pressure to the cavity: want ${entryFactor} times what resists. ${sizes()}. Pressure decides this, not heat.`,
    },
  }));
}
