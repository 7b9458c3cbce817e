import { readKept, type Kept } from './exercise-store.ts';

export type Standing = 'untried' | 'tried' | 'right';

/** How an exercise stands by what the device keeps of it. */
export function standingOf(kept: Kept | undefined): Standing {
  const marked = Object.values(kept?.marked ?? {});
  if (marked.length > 0 && marked.every(({ verdict }) => verdict === 'right')) return 'right';
  return kept?.tried ? 'tried' : 'untried';
}

export interface Count {
  readonly right: number;
  readonly tried: number;
  readonly of: number;
}

export function countOf(ids: readonly string[], read = readKept): Count {
  const standings = ids.map((id) => standingOf(read(id)));
  return {
    right: standings.filter((standing) => standing === 'right').length,
    tried: standings.filter((standing) => standing !== 'untried').length,
    of: ids.length,
  };
}

/** `'2 of 3 exercises right'`, or nothing before the first was tried. */
export function countWords({ right, tried, of }: Count): string {
  if (tried === 0) return '';
  return `${right} of ${of} ${of === 1 ? 'exercise' : 'exercises'} right`;
}

export interface Stop {
  readonly title: string;
  readonly href: string;
  readonly exercises: readonly string[];
}

/**
 * Where a reader who comes back goes on: the last lesson in which an exercise was tried, or the one after it
 * when all of that lesson's are right. Nothing before the first was tried, or when the last is done.
 */
export function whereNext(stops: readonly Stop[], read = readKept): Stop | undefined {
  const counts = stops.map(({ exercises }) => countOf(exercises, read));
  const at = counts.findLastIndex(({ tried }) => tried > 0);
  const count = counts[at];
  if (!count) return undefined;
  return count.right < count.of ? stops[at] : stops[at + 1];
}

/** Shows the place that carries `data-stops` with a link to where this reader goes on, when there is one. */
export function showNext(place: HTMLElement | null): void {
  const stops = JSON.parse(place?.dataset['stops'] ?? '[]') as Stop[];
  const next = whereNext(stops);
  const link = place?.querySelector('a');
  if (!place || !link || !next) return;
  link.textContent = next.title;
  link.href = next.href;
  place.hidden = false;
}

/** Writes the count beside every lesson on the page that carries `data-exercises`. */
export function showCounts(root: ParentNode): void {
  for (const place of root.querySelectorAll<HTMLElement>('[data-exercises]')) {
    place.textContent = countWords(countOf((place.dataset['exercises'] ?? '').split(' ').filter(Boolean)));
  }
}
