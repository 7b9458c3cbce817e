import type { Channel } from './channel.ts';

/** A channel on the way to some fronts, while those run. */
export interface Way {
  readonly c: number;
  /** Which of those fronts it feeds, by their place in the list. */
  readonly feeds: readonly number[];
  /** Head of its own speed lost where the channels after it are wider together (Borda). */
  readonly widens: number;
}

/** The channels on the way to these fronts. Asked at every step, so the last answer is kept until the fronts change. */
export function wayFinder(channels: readonly Channel[]): (at: readonly number[]) => readonly Way[] {
  let asked = '';
  let list: readonly Way[] = [];
  return (at) => {
    const key = at.join();
    if (key === asked) return list;
    asked = key;
    list = [...new Set(at.flatMap((c) => channels[c]!.path))].map((c): Way => {
      const { area, alike, children } = channels[c]!;
      const after = children.reduce((sum, child) => sum + channels[child]!.area * channels[child]!.alike, 0);
      return {
        c,
        feeds: at.flatMap((front, i) => (channels[front]!.path.includes(c) ? [i] : [])),
        widens: after > 0 ? Math.max(0, 1 - (area * alike) / after) ** 2 : 0,
      };
    });
    return list;
  };
}
