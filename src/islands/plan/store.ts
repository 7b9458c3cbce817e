import type { TextCell, TextRow, Texts } from '../form-entries.ts';

/** Named plans kept on this device. Nothing leaves it unless the reader exports a file or shares a link. */
export interface Plan {
  readonly name: string;
  /** What the reader has put in, by input name; an input that is absent takes its usual value. */
  readonly texts: Texts;
}

export interface Shelf {
  readonly plans: readonly Plan[];
  readonly open: number;
}

export interface Loaded {
  readonly shelf: Shelf;
  /** What could not be read, as sentences. */
  readonly problems: readonly string[];
}

export const shelfKey = 'warm-mould:plans:1';
/** What could not be read is put here before anything is kept over it. */
const asideKey = `${shelfKey}:unread`;

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const cellFrom = (value: unknown): TextCell | undefined =>
  typeof value === 'string' || typeof value === 'boolean'
    ? value
    : typeof value === 'number'
      ? String(value)
      : undefined;

function cellsFrom(record: Record<string, unknown>): TextRow {
  return Object.fromEntries(
    Object.entries(record).flatMap(([name, value]) => {
      const cell = cellFrom(value);
      return cell === undefined ? [] : [[name, cell]];
    }),
  );
}

/** Texts from anything; what is not a text, a flag or rows of these is left out and named. */
export function textsFrom(value: unknown): { readonly texts: Texts; readonly lost: readonly string[] } {
  const texts: Record<string, TextCell | readonly TextRow[]> = {};
  const lost: string[] = [];
  for (const [name, entry] of Object.entries(isRecord(value) ? value : {})) {
    const cell = cellFrom(entry);
    if (cell !== undefined) texts[name] = cell;
    else if (Array.isArray(entry)) texts[name] = entry.filter(isRecord).map(cellsFrom);
    else lost.push(name);
  }
  return { texts, lost };
}

/** The shelf a stored text stands for; whatever can be read is kept. */
export function shelfFrom(text: string, first: Plan): Loaded {
  const nothing: Loaded = {
    shelf: { plans: [first], open: 0 },
    problems: [
      'The plans kept on this device could not be read. They are put aside, and the sample is open.',
    ],
  };
  let stored: unknown;
  try {
    stored = JSON.parse(text);
  } catch {
    return nothing;
  }
  if (!isRecord(stored) || !Array.isArray(stored['plans'])) return nothing;
  const problems: string[] = [];
  const plans = stored['plans'].flatMap((plan: unknown, at): Plan[] => {
    if (!isRecord(plan)) {
      problems.push(`Plan ${at + 1} of those kept on this device could not be read.`);
      return [];
    }
    const name = typeof plan['name'] === 'string' && plan['name'] !== '' ? plan['name'] : `Plan ${at + 1}`;
    if (!isRecord(plan['texts']))
      problems.push(`The inputs of “${name}” could not be read: it starts from the sample.`);
    const { texts, lost } = textsFrom(plan['texts']);
    if (lost.length > 0) problems.push(`In “${name}” these could not be read: ${lost.join(', ')}.`);
    return [{ name, texts }];
  });
  if (plans.length === 0) return nothing;
  const open = Math.trunc(Number(stored['open']));
  return { shelf: { plans, open: open > 0 && open < plans.length ? open : 0 }, problems };
}

/** The plans on this device, and sentences when they could not all be read. */
export function loadShelf(first: Plan): Loaded {
  try {
    const text = localStorage.getItem(shelfKey);
    if (text === null) return { shelf: { plans: [first], open: 0 }, problems: [] };
    const loaded = shelfFrom(text, first);
    if (loaded.problems.length > 0) localStorage.setItem(asideKey, text);
    return loaded;
  } catch {
    return {
      shelf: { plans: [first], open: 0 },
      problems: ['This browser keeps nothing for this page. Export a plan to keep it.'],
    };
  }
}

/** Keeps the plans; answers with a sentence when the device would not. */
export function saveShelf(shelf: Shelf): string | undefined {
  try {
    localStorage.setItem(shelfKey, JSON.stringify(shelf));
    return undefined;
  } catch {
    return 'The last change is not kept on this device. Export the plan to keep it.';
  }
}

/** A name no other plan has. */
export function freeName(wanted: string, plans: readonly Plan[]): string {
  const taken = new Set(plans.map(({ name }) => name));
  if (!taken.has(wanted)) return wanted;
  const stem = wanted.replace(/ \d+$/, '');
  for (let i = 2; ; i += 1) if (!taken.has(`${stem} ${i}`)) return `${stem} ${i}`;
}

const sameTexts = (a: Texts, b: Texts): boolean => {
  const sorted = (texts: Texts): string =>
    JSON.stringify(Object.entries(texts).sort(([x], [y]) => (x < y ? -1 : 1)));
  return sorted(a) === sorted(b);
};

/** A plan from a link or a file is put beside the others and opened; the same plan is not kept twice. */
export function withPlan(shelf: Shelf, plan: Plan): Shelf {
  const same = shelf.plans.findIndex(({ name, texts }) => name === plan.name && sameTexts(texts, plan.texts));
  if (same >= 0) return { ...shelf, open: same };
  return {
    plans: [...shelf.plans, { ...plan, name: freeName(plan.name, shelf.plans) }],
    open: shelf.plans.length,
  };
}

/** Without the plan that is open; there is always one. */
export function withoutOpen(shelf: Shelf, first: Plan): Shelf {
  const plans = shelf.plans.filter((_, at) => at !== shelf.open);
  return plans.length === 0
    ? { plans: [first], open: 0 }
    : { plans, open: Math.min(shelf.open, plans.length - 1) };
}

export function withOpen(shelf: Shelf, plan: Plan): Shelf {
  return { ...shelf, plans: shelf.plans.map((other, at) => (at === shelf.open ? plan : other)) };
}
