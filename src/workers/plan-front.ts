import type { Habit } from '../../calculators/core/shop-units.ts';
import { besidePlan, type Beside } from '../../calculators/models/front/beside-plan.ts';
import { pourOfPlan } from '../../calculators/models/front/of-plan.ts';
import { textAt } from '../../calculators/models/given.ts';
import { completeInputs, type ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { saidIn } from '../../calculators/models/pour-plan/say.ts';
import { runPlan } from '../../calculators/models/pour-plan/run.ts';

export interface FrontRequest {
  readonly texts: Parameters<typeof completeInputs>[1];
  readonly books: ResolvedMaterials;
  readonly habit?: Habit;
}

/** The sections followed, or one sentence saying why they could not be. */
export type FrontReply = { readonly rows: readonly Beside[] } | { readonly why: string };

/** Follows the fronts of one plan off the main thread, beside the plan's quick sums. */
export function followPlan({ texts, books, habit = 'metric' }: FrontRequest): FrontReply {
  return saidIn(habit, () => followed(texts, books));
}

function followed(texts: FrontRequest['texts'], books: ResolvedMaterials): FrontReply {
  const { values } = completeInputs(pourPlan, texts, books);
  const result = runPlan(values, { warming: false });
  const book = books[textAt(values, 'metal')] as Readonly<Record<string, { value: number }>> | undefined;
  const made = pourOfPlan(values, result, book?.['viscosity']?.value ?? Number.NaN);
  return made.ok ? { rows: besidePlan(made.pour, made.sections, result) } : { why: made.why };
}
