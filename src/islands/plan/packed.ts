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

/** The element whose `data-packed` the text is. */
export const packedId = 'plan-packed';

let held = '';
let data: Packed | undefined;

/** Before the page is built: what the plan is to be made of. */
export function hold(packed: Packed): void {
  held = pack(packed);
  data = undefined;
}

/** The text for the page as it is built; in a browser it stands there already. */
export const packedText = (): string | undefined => (held === '' ? undefined : held);

/** What the plan is made of: at build what was held, in a browser what stands in the page. */
export function unpacked(): Packed {
  data ??= JSON.parse(
    held === '' ? (document.getElementById(packedId)?.dataset['packed'] ?? '') : held,
  ) as Packed;
  return data;
}
