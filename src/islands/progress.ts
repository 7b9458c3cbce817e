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

/** Writes the count beside every lesson on the page that carries `data-exercises`. */
export function showCounts(root: ParentNode): void {
  for (const place of root.querySelectorAll<HTMLElement>('[data-exercises]')) {
    place.textContent = countWords(countOf((place.dataset['exercises'] ?? '').split(' ').filter(Boolean)));
  }
}
