import type { Output } from '../../../calculators/core/model.ts';
import type { Outcome } from '../../workers/plan-outcome.ts';
import type { Books, Inputs } from '../form-entries.ts';
import type { MaterialName } from '../model-form.tsx';
import type { Equations } from './decision.tsx';

/** What the plan is made of in a browser. */
export interface Packed {
  readonly inputs: Inputs;
  readonly outputs: Readonly<Record<string, Output>>;
  readonly materials: readonly MaterialName[];
  /** Each material's numbers in SI. */
  readonly books: Books;
  readonly equations: Equations;
  /** The sample, worked when the page was built. */
  readonly initial: Outcome;
  /** Where formula cards stand. */
  readonly cards: string;
  readonly version: string;
}

/**
 * As one text: a browser reads it at a stroke, where an island's own properties are turned round one by one.
 * Throws on a number that such a text cannot hold.
 */
export function pack(data: Packed): string {
  return JSON.stringify(data, (name, value: unknown) => {
    if (typeof value === 'number' && !Number.isFinite(value))
      throw new Error(`the plan's "${name}" is ${value}, which cannot be packed`);
    return value;
  });
}

export const unpack = (text: string): Packed => JSON.parse(text) as Packed;
