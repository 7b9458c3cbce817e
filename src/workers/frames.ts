import type { Freezing } from '../../calculators/models/conduction/freeze.ts';

/** The temperature of every cell at a time, K. */
export interface Frame {
  readonly time: number;
  readonly temperature: Float32Array;
}

/**
 * Keeps about so many pictures evenly in time, at first so far apart: when there are too many, every second one goes and
 * the next ones come half as often.
 */
export function keeper(most: number, atFirst: number) {
  let apart = atFirst;
  let kept: Frame[] = [];
  let due = 0;
  return {
    keep: (time: number, picture: () => Float32Array): void => {
      if (most < 1 || time < due) return;
      kept.push({ time, temperature: picture() });
      if (kept.length > 2 * most) {
        kept = kept.filter((_, n) => n % 2 === 0);
        apart *= 2;
      }
      due = time + apart;
    },
    /** With the end of the way as the last of them. */
    kept: ({ time, temperature }: Freezing): readonly Frame[] =>
      most < 1 ? [] : [...kept.filter((frame) => frame.time < time), { time, temperature }],
  };
}
