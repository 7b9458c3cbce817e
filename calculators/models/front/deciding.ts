import { marginOf } from '../pour-plan/verdict.ts';
import type { Channel } from './channel.ts';
import { entryResistance, pushAt, type Pour } from './pour.ts';
import type { Front, Race } from './race.ts';

/** Pressure at hand over what the mouth resists with: below it a front that gets in stops at the first speck. */
export const entryFactor = 1.5;

/**
 * How well a section does, as a logarithm: above nought it fills with that in hand. The race gives what heat the
 * front had over what it gave, or, short of the end, the way run over the way to run; the mouth gives the pressure
 * over `entryFactor` times its resistance. The smaller counts. NaN where the metal never came.
 */
export function marginIn(pour: Pour, race: Race, c: number): number {
  return Math.min(raceMargin(pour, race, c), entryMargin(race.fronts[c]!));
}

export function raceMargin({ channels }: Pour, { fronts }: Race, c: number): number {
  const { ended, spare, reached } = fronts[c]!;
  if (ended === 'never') return Number.NaN;
  if (ended === 'filled') return Math.max(0, Math.min(5, Math.log(spare)));
  const { before, length } = channels[c]!;
  return Math.min(-1e-9, marginOf(before + reached, before + length));
}

export function entryMargin({ ended, pressure, resists }: Front): number {
  return ended === 'never' ? Number.NaN : mouth(pressure, resists);
}

/** The same of a section before any race: at its far end, where the pressure is least unless it falls. */
export function mouthMargin(pour: Pour, channel: Channel): number {
  const resists = entryResistance(channel, pour.metal);
  return mouth(pushAt(pour, channel, channel.length) + resists, resists);
}

const mouth = (pressure: number, resists: number): number =>
  marginOf(pressure, entryFactor * Math.max(resists, 0));

/** The section with the least margin among those the metal came to. */
export function decidingIn(pour: Pour, race: Race): number {
  let worst = -1;
  for (let c = 0; c < pour.channels.length; c += 1) {
    const margin = marginIn(pour, race, c);
    if (!Number.isNaN(margin) && !(worst >= 0 && margin >= marginIn(pour, race, worst))) worst = c;
  }
  return worst;
}
