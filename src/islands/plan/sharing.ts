import type { Model } from '../../../calculators/core/model.ts';
import { readFragment, writeFragment } from '../../../calculators/models/pour-plan/fragment.ts';
import { readPlanFile, writePlanFile } from '../../../calculators/models/pour-plan/plan-file.ts';
import type { Inputs } from '../form-entries.ts';
import type { Plan } from './store.ts';

/** A plan that came from elsewhere, and what of it could not be read. No plan when nothing of it could. */
export interface Brought {
  readonly plan: Plan | undefined;
  readonly problems: readonly string[];
}

/** Reading looks at a model's inputs only, and those the page has as plain data. */
const asModel = (inputs: Inputs): Model => ({ inputs }) as unknown as Model;

const opening = 'plan:';
const most = 200_000;

/** `plan:name=Lamp+shield&head=60+mm`: what stands after `#` in a shared address. */
export function planFragment({ name, texts }: Plan, inputs: Inputs): string {
  const rest = writeFragment(asModel(inputs), texts);
  return `${opening}name=${encodeURIComponent(name).replace(/%20/g, '+')}${rest === '' ? '' : `&${rest}`}`;
}

/** The plan in an address; undefined when the part after `#` is an anchor and no plan. */
export function planFromFragment(hash: string, inputs: Inputs): Brought | undefined {
  const text = hash.replace(/^#/, '');
  if (!text.startsWith(opening)) return undefined;
  const parts = text.slice(opening.length, most).split('&').filter((part) => part !== '');
  const named = parts.find((part) => part.startsWith('name='));
  const rest = parts.filter((part) => part !== named);
  const { inputs: texts, problems } = readFragment(asModel(inputs), rest.join('&'));
  const name = nameIn(named?.slice('name='.length) ?? '');
  const nothing = parts.length === 0 || (Object.keys(texts).length === 0 && problems.length > 0);
  return nothing
    ? { plan: undefined, problems: ['Nothing in this link could be read as a plan.', ...problems] }
    : { plan: { name, texts }, problems };
}

function nameIn(text: string): string {
  try {
    return decodeURIComponent(text.replace(/\+/g, ' ')).trim().slice(0, 60) || 'Plan from a link';
  } catch {
    return 'Plan from a link';
  }
}

export const planToFile = ({ name, texts }: Plan): string => writePlanFile({ name, inputs: texts });

export function planFromText(text: string, inputs: Inputs): Brought {
  if (text.length > most) return { plan: undefined, problems: ['That file is too large to be a plan.'] };
  const read = readPlanFile(text, asModel(inputs));
  const nothing = read.problems.some((problem) => problem.startsWith('This is not a plan'));
  return { plan: nothing ? undefined : { name: read.name, texts: read.inputs }, problems: read.problems };
}
