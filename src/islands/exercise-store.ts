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

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** From kept text; what is missing or damaged in it starts anew, and without a seed nothing can be told. */
export function keptFrom(text: string | null): Kept | undefined {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? 'null');
  } catch {
    return undefined;
  }
  if (!isRecord(kept) || typeof kept['seed'] !== 'string') return undefined;
  const { seed, answers, chosen, hints, tried, marked } = kept;
  const texts = Object.entries(isRecord(answers) ? answers : {}).filter(
    (pair): pair is [string, string] => typeof pair[1] === 'string',
  );
  const marks = Object.entries(isRecord(marked) ? marked : {}).filter(([, mark]) => isRecord(mark));
  return {
    seed,
    answers: Object.fromEntries(texts),
    chosen: Array.isArray(chosen) ? chosen.filter((at): at is number => Number.isInteger(at)) : [],
    hints: Number.isFinite(hints) && Number(hints) > 0 ? Math.trunc(Number(hints)) : 0,
    tried: tried === true,
    marked: Object.fromEntries(marks) as Record<string, Marked>,
  };
}

/** What was kept, or undefined when nothing was, it cannot be read, or the browser keeps nothing. */
export function readKept(id: string): Kept | undefined {
  try {
    return keptFrom(localStorage.getItem(keyOf(id)));
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
