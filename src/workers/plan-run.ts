import { completeInputs, type ResolvedMaterials } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import type { Result, Values } from '../../calculators/core/model.ts';

export interface PlanRequest {
  readonly texts: Parameters<typeof completeInputs>[1];
  readonly books: ResolvedMaterials;
}

/** A plan worked out once, or nothing where it could not be. */
export type PlanReply = { readonly values: Values; readonly result: Result } | undefined;

/** Works one plan off the main thread, for pages that only follow it. */
addEventListener('message', ({ data: { texts, books } }: MessageEvent<PlanRequest>) => {
  let reply: PlanReply;
  try {
    const { values } = completeInputs(pourPlan, texts, books);
    reply = { values, result: pourPlan.run(values) };
  } catch {
    reply = undefined;
  }
  postMessage(reply);
});
