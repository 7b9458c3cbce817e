import type { Texts } from '../form-entries.ts';
import type { Plan } from './store.ts';

/** What came from outside: a plan when there is one, and sentences about what could not be read of it. */
export interface Brought {
  readonly plan: Plan | undefined;
  readonly problems: readonly string[];
}

const mark = '#pour-plan:';
/** A plan of a hundred rows is a few kilobytes; anything far beyond is not one. */
const largest = 1_000_000;

const readers = async () => {
  const [{ pourPlan }, files, fragments] = await Promise.all([
    import('../../../calculators/models/pour-plan.ts'),
    import('../../../calculators/models/pour-plan/plan-file.ts'),
    import('../../../calculators/models/pour-plan/fragment.ts'),
  ]);
  return { pourPlan, ...files, ...fragments };
};

/** The plan in the part of the address after `#`; undefined when that is an anchor or nothing. */
export async function planFromFragment(hash: string): Promise<Brought | undefined> {
  if (!hash.startsWith(mark)) return undefined;
  const parts = hash.slice(mark.length).split('&');
  const called = parts.find((part) => part.startsWith('plan='));
  const { pourPlan, readFragment } = await readers();
  const { inputs, problems } = readFragment(pourPlan, parts.filter((part) => part !== called).join('&'));
  return { plan: { name: nameFrom(called) || 'Plan from a link', texts: inputs }, problems };
}

function nameFrom(called = ''): string {
  try {
    return decodeURIComponent(called.slice('plan='.length).replace(/\+/g, ' ')).trim().slice(0, 60);
  } catch {
    return '';
  }
}

export async function planFromFile(file: File): Promise<Brought> {
  if (file.size > largest)
    return { plan: undefined, problems: [`“${file.name}” is too large to be a plan.`] };
  const { pourPlan, readPlanFile } = await readers();
  const { name, inputs, problems } = readPlanFile(await file.text(), pourPlan);
  if (problems.length > 0 && Object.keys(inputs).length === 0) return { plan: undefined, problems };
  return { plan: { name: name.slice(0, 60), texts: inputs }, problems };
}

/** The address of this page with the whole plan after its `#`. */
export async function planLink({ name, texts }: Plan): Promise<string> {
  const { pourPlan, writeFragment, escaped } = await readers();
  const inputs = writeFragment(pourPlan, texts);
  const called = `plan=${escaped(name)}`;
  return `${location.origin}${location.pathname}${mark}${called}${inputs === '' ? '' : `&${inputs}`}`;
}

/** The text of the file that export saves, the same as the command line reads. */
export async function planToFile({
  name,
  texts,
}: {
  readonly name: string;
  readonly texts: Texts;
}): Promise<string> {
  const { writePlanFile } = await readers();
  return writePlanFile({ name, inputs: texts });
}
