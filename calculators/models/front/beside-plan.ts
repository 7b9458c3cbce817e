import type { Result } from '../../core/model.ts';
import { marginOf } from '../pour-plan/verdict.ts';
import { celsius, say } from '../pour-plan/say.ts';
import { entryMargin } from './deciding.ts';
import { treeOf, type Channel } from './channel.ts';
import { follow } from './follow.ts';
import type { PlanSection } from './plan-tree.ts';
import type { Pour } from './pour.ts';
import type { Front, Race } from './race.ts';
import { storyOf } from './story.ts';

/** A section of a plan followed, beside the plan's quick sum of it. */
export interface Beside {
  readonly id: string;
  readonly name: string;
  readonly filled: boolean;
  /** What it has over what it needs, followed and by the quick sum; NaN where that has none. */
  readonly has: number;
  readonly quick: number;
  /** The race in a sentence, the quick sum in one, and why they differ. */
  readonly story: string;
  readonly sum: string;
  readonly why: string;
}

/** Less apart than this is no difference to explain: the coefficient alone is known no better. */
const agree = Math.log(1.25);
/** A part of the physics that shifts the answer by less is not named. */
const worthNaming = Math.log(1.1);

interface Part {
  /** The pour with this part as the quick sum has it. */
  readonly as: (pour: Pour, section: PlanSection, plan: Result) => Pour;
  readonly says: (has: string) => string;
}

const parts: readonly Part[] = [
  {
    as: (pour) =>
      changed(pour, { metal: { ...pour.metal, mu: 0 } }, (one) => (one.parent < 0 ? one.loss : 0)),
    says: (has) =>
      `The quick sum leaves out friction along the way and the loss where one section leaves another. Without them it would have ${has}.`,
  },
  {
    as: (pour, _, { values }) => ({
      ...pour,
      mould: { ...pour.mould, permeability: Number.NaN },
      drive: { ...pour.drive, gas: values['gas'] ?? pour.drive.gas },
    }),
    says: (has) =>
      `The quick sum has one gas pressure for the whole casting; followed, the air ahead of a front has less and less sand to leave by. With the plan’s own gas it would have ${has}.`,
  },
  {
    as: alone,
    says: (has) =>
      `The quick sum gives it all of the flow; followed, the other sections drink of it at the same time. Alone it would have ${has}.`,
  },
  {
    as: (pour) => ({ ...pour, mould: { ...pour.mould, b: 1e3 * pour.mould.b } }),
    says: (has) =>
      `The quick sum lets every drop meet fresh sand; followed, the sand behind the front has warmed. On sand that stays cold it would have ${has}.`,
  },
  {
    as: (pour) => {
      const { c, latent, solidus, liquidus } = pour.metal;
      return {
        ...pour,
        metal: { ...pour.metal, latent: Math.max(0.1 * latent, latent - c * (liquidus - solidus)) },
      };
    },
    says: (has) =>
      `The quick sum counts latent heat alone while it freezes; followed, the metal also cools on the way through its range. Without that it would have ${has}.`,
  },
];

/**
 * Follows a plan's sections and sets each beside the plan's quick sum. Where they differ, the race is run again with
 * one part of its physics at a time as the quick sum has it; the part that closes most of the gap is named, with what
 * the section would have then.
 */
export function besidePlan(pour: Pour, sections: readonly PlanSection[], plan: Result): Beside[] {
  const race = follow(pour, true);
  return sections.map((section) => {
    const front = endOf(pour, race, section);
    const quick = plan.values[`${section.id}.margin`] ?? Number.NaN;
    const margin = marginFor(pour, race, section);
    return {
      id: section.id,
      name: section.name,
      filled: front.ended === 'filled',
      has: Math.exp(margin),
      quick,
      story: storyOf(front, section.run),
      sum: sumOf(plan, section.id, quick),
      why: whyOf({ pour, race, plan, section, quick, margin }),
    };
  });
}

/** The front of a section as if it were one channel: its last piece where that is full, else the piece it stopped in. */
function endOf({ channels }: Pour, { fronts }: Race, { pieces }: PlanSection): Front {
  let before = 0;
  for (const piece of pieces) {
    const front = fronts[piece]!;
    if (front.ended !== 'filled' || piece === pieces.at(-1)) {
      // Where an earlier piece is full, the metal did come: it stopped at the cut.
      const ended = front.ended === 'never' && before > 0 ? 'froze' : front.ended;
      return { ...front, ended, reached: before + front.reached };
    }
    before += channels[piece]!.length;
  }
  throw new Error('a section without channels');
}

function marginFor(pour: Pour, race: Race, section: PlanSection): number {
  const front = endOf(pour, race, section);
  if (front.ended === 'filled') return Math.max(0, Math.min(5, Math.log(front.spare)));
  const { before } = pour.channels[section.pieces[0]!]!;
  return Math.min(-1e-9, marginOf(before + front.reached, before + section.run));
}

function sumOf({ values }: Result, id: string, quick: number): string {
  const [fills, flows, speed] = ['fills', 'flows', 'speed'].map((name) => values[`${id}.${name}`]);
  if (!Number.isNaN(quick) && fills !== undefined && flows !== undefined)
    return `Quick sum: flows for ${say(flows, 's')}, needs ${say(fills, 's')}, so it has ${times(quick)}.`;
  return speed === undefined || !(speed > 0)
    ? 'Quick sum: the metal does not enter.'
    : 'Quick sum: it arrives too stiff to flow.';
}

interface Asked {
  readonly pour: Pour;
  readonly race: Race;
  readonly plan: Result;
  readonly section: PlanSection;
  readonly quick: number;
  readonly margin: number;
}

function whyOf(asked: Asked): string {
  const { pour, race, plan, section, quick, margin } = asked;
  if (Number.isNaN(quick)) return noQuick(asked);
  const gap = Math.log(quick) - margin;
  const same = endOf(pour, race, section).ended === 'filled' ? quick >= 1 : quick < 1;
  if (same && Math.abs(gap) < agree) return 'They agree.';
  let most: { readonly says: string; readonly closes: number } | undefined;
  for (const { as, says } of parts) {
    const other = as(pour, section, plan);
    const its = other.channels.length === pour.channels.length ? section : pathOf(pour, section);
    const then = marginFor(other, follow(other), its);
    const closes = (then - margin) * Math.sign(gap);
    if (closes > worthNaming && closes > (most?.closes ?? 0))
      most = { says: says(times(Math.exp(then))), closes };
  }
  const comes = arrival(pour, race, plan, section);
  return most ? [most.says, most.closes < 0.5 * Math.abs(gap) ? comes : ''].join(' ').trim() : comes;
}

/** Where the quick sum has no time to compare: it says the metal does not enter, or comes too stiff. */
function noQuick({ pour, race, plan, section }: Asked): string {
  const front = endOf(pour, race, section);
  const { [`${section.id}.resists`]: resists, gas, pressure } = plan.values;
  if (front.ended === 'held' && front.reached === 0) return 'They agree.';
  if (resists === undefined || gas === undefined || pressure === undefined || pressure > resists + gas)
    return arrival(pour, race, plan, section);
  const barely =
    entryMargin(front) < 0
      ? ' But it has too little to enter with in hand: a speck of skin or sand stops it.'
      : '';
  return pressure > resists
    ? `The quick sum sets ${say(gas, 'kPa')} of gas against it from the first; followed, a slow front lets that gas leave as it comes.${barely}`
    : `It stands lower than the far end for which the quick sum has the pressure.${barely}`;
}

const times = (has: number): string =>
  has >= 100 ? 'a hundred times what it needs or more' : `${say(has, '1')} times what it needs`;

/** How warm the metal came to its mouth, followed and by the quick sum. */
function arrival(pour: Pour, race: Race, plan: Result, { id, pieces }: PlanSection): string {
  const first = pieces[0]!;
  const { entered } = race.fronts[first]!;
  const there = race.history.find(({ time }) => time >= entered);
  const quick = plan.values[`${id}.arrives`];
  if (!there || quick === undefined)
    return 'Several small things add up: friction, gas, and what the others drink.';
  const parent = pour.channels[first]!.parent;
  const temperature = parent < 0 ? pour.metal.gate : there.temperature[parent]!;
  return `Followed, the first metal comes to its mouth at ${celsius(temperature)} after ${say(entered, 's')}; the quick sum has it there at ${celsius(quick)}, and counts from then. Followed, the heat lost on the way there counts too.`;
}

function changed(pour: Pour, rest: Partial<Pour>, loss: (channel: Channel) => number): Pour {
  return { ...pour, ...rest, channels: pour.channels.map((one) => ({ ...one, loss: loss(one) })) };
}

/** Only the channels on the way to a section. */
function alone(pour: Pour, section: PlanSection): Pour {
  const path = pour.channels[section.pieces.at(-1)!]!.path;
  const tree = treeOf(path.map((c) => pour.channels[c]!));
  return tree.ok ? { ...pour, channels: tree.channels } : pour;
}

/** A section's pieces as `alone` counts them. */
function pathOf(pour: Pour, section: PlanSection): PlanSection {
  const { path } = pour.channels[section.pieces.at(-1)!]!;
  return { ...section, pieces: section.pieces.map((piece) => path.indexOf(piece)) };
}
