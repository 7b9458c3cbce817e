import { decidingIn, marginIn, mouthMargin } from './deciding.ts';
import { follow } from './follow.ts';
import type { Pour } from './pour.ts';
import type { Race } from './race.ts';

/** What one may change at the bench, by the name of its input; in SI. */
export type Lever = 'suction' | 'head' | 'T_mould' | 'T_gate';
export const levers: readonly Lever[] = ['suction', 'head', 'T_mould', 'T_gate'];

const reading: Readonly<Record<Lever, (pour: Pour) => number>> = {
  suction: ({ drive }) => drive.suction,
  head: ({ drive }) => drive.head,
  T_mould: ({ mould }) => mould.temperature,
  T_gate: ({ metal }) => metal.gate,
};

const changed: Readonly<Record<Lever, (pour: Pour, to: number) => Pour>> = {
  suction: (pour, suction) => ({ ...pour, drive: { ...pour.drive, suction } }),
  head: (pour, head) => ({ ...pour, drive: { ...pour.drive, head } }),
  T_mould: (pour, temperature) => ({ ...pour, mould: { ...pour.mould, temperature } }),
  T_gate: (pour, gate) => ({ ...pour, metal: { ...pour.metal, gate } }),
};

export const leverOf = (pour: Pour, lever: Lever): number => reading[lever](pour);
export const withLever = (pour: Pour, lever: Lever, to: number): Pour => changed[lever](pour, to);

/** The least margin of all sections: above nought every one of them fills with enough pressure at its mouth. */
function leastMargin(pour: Pour): number {
  // Where a mouth holds out against what can be brought to it, no race is needed.
  const mouth = Math.min(...pour.channels.map((channel) => mouthMargin(pour, channel)));
  if (mouth < 0) return mouth;
  const race = follow(pour);
  if (race.fronts.some(({ ended }) => ended === 'never')) return -5;
  return marginIn(pour, race, decidingIn(pour, race));
}

/** A race changed by so much in one input, and how it went. */
export interface Changed {
  readonly lever: Lever;
  readonly by: number;
  readonly pour: Pour;
  readonly race: Race;
}

/** Three changes that are cheap at the bench, each alone: 50 kelvin of mould, 5 kPa at the cavity, 50 kelvin of superheat. */
export function whatEachDoes(pour: Pour): Changed[] {
  return (
    [
      ['T_mould', 50],
      ['suction', 5000],
      ['T_gate', 50],
    ] as const
  ).map(([lever, by]) => {
    const other = withLever(pour, lever, leverOf(pour, lever) + by);
    return { lever, by, pour: other, race: follow(other) };
  });
}

/** The search is done on fewer cells and then looked at on all of them. */
const searchCells = 20;
const halvings = 8;

/**
 * The least value of one lever, between where it is and `end`, with which every section fills with enough in hand;
 * undefined when even the end does not do. Found by halving, closer steps near the value now; good to about one
 * part in a hundred of the way to the end.
 */
export function leastOf(pour: Pour, lever: Lever, end: number): number | undefined {
  const from = leverOf(pour, lever);
  if (!(end > from)) return undefined;
  const coarse = { ...pour, cells: Math.min(pour.cells, searchCells) };
  const at = (share: number): number => from + (end - from) * share * share;
  const enough = (share: number, on: Pour): boolean => leastMargin(withLever(on, lever, at(share))) >= 0;
  if (!enough(1, coarse)) return undefined;
  let [short, good] = [0, 1];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (short + good) / 2;
    if (enough(middle, coarse)) good = middle;
    else short = middle;
  }
  // The finer sum may want a little more.
  for (let i = 0; i < 8; i += 1) {
    if (enough(good, pour)) return at(good);
    good = Math.min(1, good + 0.5 ** halvings * 2 ** i);
  }
  return undefined;
}
