/**
 * Spaced return: an exercise that was got wrong comes back after a day, and each time it is then right, later
 * again, until it has been right five times. Days, not hours: nobody is chased.
 */
export interface Return {
  /** The day it is due, `2026-03-14`, by the device's own calendar. */
  readonly due: string;
  /** How many times it was right since it was last wrong. */
  readonly right: number;
}

/** Days until it comes back, by how often it has been right since. */
export const gaps = [1, 3, 7, 21, 60] as const;

const keyStart = 'warm-mould:again:1:';

/** The day, by the clock of the device. */
export function dayOf(date: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

function daysLater(day: string, days: number): string {
  const [year, month, date] = day.split('-').map(Number);
  return dayOf(new Date(year!, month! - 1, date! + days));
}

/**
 * What follows from an exercise being marked today: `undefined` where it need not come back. Right before it
 * is due changes nothing, so that doing it twice in a row is not learning it twice.
 */
export function afterMarking(before: Return | undefined, right: boolean, today: string): Return | undefined {
  if (!right) return { due: daysLater(today, gaps[0]), right: 0 };
  if (!before || before.due > today) return before;
  const gap = gaps[before.right + 1];
  return gap === undefined ? undefined : { due: daysLater(today, gap), right: before.right + 1 };
}

/** The exercises that are due, the longest due first. */
export function dueOf(returns: ReadonlyMap<string, Return>, today: string): string[] {
  return [...returns]
    .filter(([, { due }]) => due <= today)
    .sort(([a, one], [b, other]) => one.due.localeCompare(other.due) || a.localeCompare(b))
    .map(([id]) => id);
}

function readReturn(text: string | null): Return | undefined {
  try {
    const { due, right } = JSON.parse(text ?? 'null') as Partial<Return>;
    if (typeof due !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(due)) return undefined;
    return typeof right === 'number' && right >= 0 && right < gaps.length ? { due, right } : undefined;
  } catch {
    return undefined;
  }
}

/** Every exercise of these that is to come back, as the device keeps it. */
export function readReturns(ids: readonly string[]): Map<string, Return> {
  const found = new Map<string, Return>();
  try {
    for (const id of ids) {
      const kept = readReturn(localStorage.getItem(keyStart + id));
      if (kept) found.set(id, kept);
    }
  } catch {
    // Storage is off: nothing comes back.
  }
  return found;
}

/** Notes on the device that an exercise was marked. */
export function noteMarked(id: string, right: boolean): void {
  try {
    const next = afterMarking(readReturn(localStorage.getItem(keyStart + id)), right, dayOf(new Date()));
    if (next) localStorage.setItem(keyStart + id, JSON.stringify(next));
    else localStorage.removeItem(keyStart + id);
  } catch {
    // Storage is off or full: the exercise is marked, it only does not come back by itself.
  }
}
