import { entryResistance, pushAt, type Pour } from './pour.ts';
import type { Flow } from './flow.ts';
import type { Cell, Front, Race } from './race.ts';
import type { Stuff } from './stuff.ts';

/** The metal in the channels at the end: how much, with what heat, and cell by cell. */
export function leftIn(
  { channels, metal: { rho } }: Pour,
  flows: readonly Flow[],
  stuff: Stuff,
): Pick<Race, 'held' | 'kept' | 'cells'> {
  const sum = (of: (heat: number) => number): number =>
    flows.reduce((all, { metal: { volumes, heats } }) => {
      const here = volumes.reduce((part, volume, k) => part + volume * of(heats[k]!), 0);
      return all + here;
    }, 0);
  return {
    held: sum(() => 1),
    kept: sum((heat) => rho * heat),
    cells: flows.map((flow, c) => cellsOf(flow, channels[c]!.area * channels[c]!.alike, stuff)),
  };
}

function cellsOf({ metal: { volumes, heats }, x }: Flow, area: number, stuff: Stuff): Cell[] {
  let far = x;
  return volumes
    .map((volume, k) => {
      const length = volume / area;
      far -= length;
      const heat = heats[k]!;
      return { at: far + length / 2, length, temperature: stuff.temperature(heat), solid: stuff.solid(heat) };
    })
    .reverse();
}

/** A front that never was: the channel before it did not fill. */
export function neverCame(pour: Pour, c: number): Front {
  const channel = pour.channels[c]!;
  const resists = entryResistance(channel, pour.metal);
  return {
    ended: 'never',
    reached: 0,
    entered: Number.NaN,
    time: Number.NaN,
    temperature: Number.NaN,
    solid: Number.NaN,
    speed: 0,
    spare: 0,
    pressure: pushAt(pour, channel, 0) + resists,
    resists,
  };
}
