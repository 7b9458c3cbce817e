import { upstreamOf, type Section } from '../pour-plan/sections.ts';
import type { Stretch } from './channel.ts';

/** A section of a plan among the channels of a pour: the pieces it was cut into where others leave it. */
export interface PlanSection {
  /** `sections.2`, as in the plan's own numbers. */
  readonly id: string;
  readonly name: string;
  readonly run: number;
  /** Indexes into the channels, from its mouth to its far end. */
  readonly pieces: readonly number[];
}

export interface PlanTree {
  readonly stretches: readonly Stretch[];
  readonly sections: readonly PlanSection[];
}

/** Heads lost where one section leaves another: a sharp entry. */
const sharp = 0.5;
/** Sections that leave closer together than this share of the run leave as one. */
const closest = 0.02;

interface Rooted {
  readonly section: Section;
  readonly parent: Section | undefined;
  /** How far along its parent it leaves. */
  readonly at: number;
}

/**
 * The sections of a plan as channels: each leaves the one it is reached through where its run lies upstream, so a
 * frame that feeds webs half way is cut there. `rise` is height per metre of run; `loss` is in heads at the gate.
 */
export function planTree(sections: readonly Section[], rise: number, loss: number): PlanTree {
  const rooted = sections.map((section): Rooted => {
    const parent = wayUp(section, sections);
    const at = parent ? Math.min(parent.run, Math.max(0, section.before - parent.before)) : 0;
    return { section, parent, at };
  });
  const stretches: Stretch[] = [];
  const placed = new Map<Section, readonly Piece[]>();

  function place({ section, parent, at }: Rooted): void {
    const branches = rooted.filter((other) => other.parent === section);
    // Where no section is named for what lies upstream, it runs as one channel from the gate.
    const run = parent ? section.run : section.run + section.before;
    const cuts = cutsOf(branches, run);
    let from = parent ? mouthIn(placed.get(parent)!, at, parent.run) : gate;
    const pieces = cuts.map((to, k): Piece => {
      const length = to - (cuts[k - 1] ?? 0);
      const piece = { to, index: stretches.length, from };
      const name = `piece ${piece.index}`;
      const lost = k > 0 ? 0 : from === gate ? loss : sharp;
      stretches.push(stretchOf(section, { name, from, length, loss: lost, rise: rise * length }));
      from = name;
      return piece;
    });
    placed.set(section, pieces);
    for (const branch of branches) place(branch);
  }
  for (const one of rooted) if (!one.parent) place(one);
  return {
    stretches,
    sections: sections.map((section) => {
      const pieces = placed.get(section)!;
      return {
        id: section.id,
        name: section.name,
        run: pieces.at(-1)!.to,
        pieces: pieces.map(({ index }) => index),
      };
    }),
  };
}

const gate = 'gate';

interface Piece {
  /** Its far end, along the section. */
  readonly to: number;
  readonly index: number;
  readonly from: string;
}

/** The name of the channel at whose end a branch leaves: the cut nearest to it, or what the section itself leaves. */
function mouthIn(pieces: readonly Piece[], at: number, run: number): string {
  if (at < closest * run) return pieces[0]!.from;
  const nearest = pieces.reduce((one, other) =>
    Math.abs(other.to - at) < Math.abs(one.to - at) ? other : one,
  );
  return `piece ${nearest.index}`;
}

/** The section it is reached through; none where the names go round in a circle. */
function wayUp(section: Section, all: readonly Section[]): Section | undefined {
  const parent = upstreamOf(section, all);
  const seen = new Set([section]);
  for (let on = parent; on; on = upstreamOf(on, all)) {
    if (seen.has(on)) return undefined;
    seen.add(on);
  }
  return parent;
}

/** Where a run is cut, its end last. */
function cutsOf(branches: readonly Rooted[], run: number): readonly number[] {
  const cuts: number[] = [];
  for (const x of branches.map(({ at }) => at).sort((a, b) => a - b))
    if (x - (cuts.at(-1) ?? 0) > closest * run && run - x > closest * run) cuts.push(x);
  return [...cuts, run];
}

function stretchOf(
  { sides, fronts, round }: Section,
  rest: Pick<Stretch, 'name' | 'from' | 'length' | 'loss' | 'rise'>,
): Stretch {
  const [thickness, width] = sides;
  const shape = round ? 'round' : 'bar';
  return { shape, thickness, width, alike: Math.max(1, Math.round(fronts)), vent: 0, ...rest };
}
