import type { Citation } from '../../calculators/core/formula.ts';
import type { Quantity } from '../../calculators/core/units.ts';

/** A value somebody else printed, with what they were given: the library must come to the same figure. */
export type PublishedCheck = {
  /** Short name of the check, unique over all chapters. */
  readonly id: string;
  /** The formula that is put to the test. */
  readonly formula: string;
  readonly title: string;
  /** What the source states, symbol by symbol. Constants of the formula need not be given. */
  readonly given: Readonly<Record<string, Quantity>>;
  /** The symbol that is asked for. */
  readonly find: string;
  /** The printed figure. */
  readonly expect: Quantity;
  /** A share of the printed figure ('0.1 %') or a plain quantity ('0.5 kPa'). */
  readonly tolerance: Quantity;
  /** The work itself; a reading through a companion says so in `where`. `how` is 'read' or 'memory'. */
  readonly source: Citation;
  readonly note?: string;
};
