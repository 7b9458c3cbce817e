import type { Citation } from '../../calculators/core/formula.ts';
import type { Quantity } from '../../calculators/core/units.ts';

/** A value somebody else printed, put to a model as `PublishedCheck` is put to a formula. */
export interface ModelCheck {
  readonly id: string;
  readonly model: string;
  readonly title: string;
  /** What the source states, input by input; the rest takes its start. Lists are rows of texts. */
  readonly given: Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;
  /** The output asked for. */
  readonly find: string;
  readonly expect: Quantity;
  readonly tolerance: Quantity;
  readonly source: Citation;
  readonly note?: string;
}
