import type { Random } from '../../calculators/core/random.ts';

/** One reader of what comes from outside: how inputs for it are made, and what must be true of each. */
export interface Reader {
  readonly name: string;
  readonly make: (random: Random) => string;
  /** What is wrong, or nothing. A throw is wrong too. */
  readonly wrong: (text: string) => string | undefined | Promise<string | undefined>;
}
