import { completeInputs, type ResolvedMaterials } from '../../calculators/models/inputs.ts';
import type { Habit } from '../../calculators/core/shop-units.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { saidIn } from '../../calculators/models/pour-plan/say.ts';
import type { Result, Values } from '../../calculators/core/model.ts';

export interface PlanRequest {
  readonly texts: Parameters<typeof completeInputs>[1];
  readonly books: ResolvedMaterials;
  readonly habit: Habit;
}

/** A plan worked out once, or nothing where it could not be. */
export type PlanReply = { readonly values: Values; readonly result: Result } | undefined;

/** Works one plan off the main thread, for pages that only follow it. */
addEventListener('message', ({ data: { texts, books, habit } }: MessageEvent<PlanRequest>) => {
  let reply: PlanReply;
  try {
    const { values } = completeInputs(pourPlan, texts, books);
    reply = { values, result: saidIn(habit, () => pourPlan.run(values)) };
  } catch {
    reply = undefined;
  }
  postMessage(reply);
});
