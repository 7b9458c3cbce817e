export type Way = 'one' | 'two';

/** Remembers how fast one worker and two have been here, and says which to take. */
export interface OneOrTwo {
  readonly next: () => Way;
  /** What a way took for a body, in any unit per cell and stage. */
  readonly took: (way: Way, pace: number) => void;
}

/**
 * Two are faster where each has a core of its own, and slower where they share one or the page needs it: no browser
 * tells. So after a first body, by the way that is likelier for so many cores, each way is taken once, the other
 * first, and from then on the faster. The first does not count: the browser still compiles. Both ways come to the same
 * numbers.
 */
export function oneOrTwo(cores: number): OneOrTwo {
  const best: Record<Way, number> = { one: Infinity, two: Infinity };
  const [likelier, other]: readonly [Way, Way] = cores > 2 ? ['two', 'one'] : ['one', 'two'];
  let bodies = 0;
  return {
    next: () => {
      if (cores < 2) return 'one';
      if (bodies === 0) return likelier;
      if (best[other] === Infinity) return other;
      return best[likelier] === Infinity || best[likelier] < best[other] ? likelier : other;
    },
    took: (way, pace) => {
      if (bodies > 0) best[way] = Math.min(best[way], pace);
      bodies += 1;
    },
  };
}
