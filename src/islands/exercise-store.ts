import type { Marked } from '../../calculators/exercises/marking.ts';

/** What the device keeps of one exercise. */
export interface Kept {
  readonly seed: string;
  /** By part, or under `answer` when there are no parts. */
  readonly answers: Readonly<Record<string, string>>;
  /** Positions chosen, or the order as placed. */
  readonly chosen: readonly number[];
  readonly hints: number;
  readonly tried: boolean;
  readonly marked: Readonly<Record<string, Marked>>;
}

export const firstSeed = '1';
export const fresh: Kept = { seed: firstSeed, answers: {}, chosen: [], hints: 0, tried: false, marked: {} };

/** The number is the version of the shape: an older one is left alone, never misread. */
const keyOf = (id: string): string => `warm-mould:exercise:1:${id}`;

/** What was kept, or undefined when nothing was, it cannot be read, or the browser keeps nothing. */
export function readKept(id: string): Kept | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(keyOf(id)) ?? 'null') as Partial<Kept> | null;
    if (typeof kept?.seed !== 'string' || typeof kept.answers !== 'object' || !Array.isArray(kept.chosen)) {
      return undefined;
    }
    return { ...fresh, ...kept, marked: typeof kept.marked === 'object' ? kept.marked : {} };
  } catch {
    return undefined;
  }
}

export function keep(id: string, kept: Kept): void {
  try {
    localStorage.setItem(keyOf(id), JSON.stringify(kept));
  } catch {
    // Storage is off or full: the exercise works, it is only not remembered.
  }
}
