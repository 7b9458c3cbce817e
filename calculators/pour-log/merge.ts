import type { Pour } from './record.ts';

/** Two copies of one pour that were both changed since they were the same. */
export interface Conflict {
  readonly id: string;
  readonly here: Pour;
  readonly there: Pour;
}

export interface Merged {
  /** Every pour of both; where there is a conflict, the one that was here. */
  readonly pours: readonly Pour[];
  readonly added: number;
  readonly renewed: number;
  readonly conflicts: readonly Conflict[];
}

const within = (one: readonly string[], other: readonly string[]): boolean =>
  one.every((mark) => other.includes(mark));

/**
 * What a copy that comes in is to the one kept: `newer` holds all its marks and more, `older` adds nothing, `same`
 * is it again, and `both` means that both went on by themselves.
 */
export function standingOf(kept: Pour, comes: Pour): 'newer' | 'older' | 'same' | 'both' {
  if (within(comes.marks, kept.marks)) {
    if (comes.marks.length < kept.marks.length) return 'older';
    // The same marks with other numbers can only come from a hand that wrote in the file.
    return JSON.stringify(comes) === JSON.stringify(kept) ? 'same' : 'both';
  }
  return within(kept.marks, comes.marks) ? 'newer' : 'both';
}

/**
 * Brings pours from a file or another device to those kept here. A copy whose changes are those of the other and
 * more is the newer; an old copy changes nothing; where both went on, both are shown and nothing is lost.
 */
export function mergePours(here: readonly Pour[], there: readonly Pour[]): Merged {
  const kept = new Map(here.map((pour) => [pour.id, pour]));
  const conflicts: Conflict[] = [];
  let added = 0;
  let renewed = 0;
  for (const pour of there) {
    const own = kept.get(pour.id);
    if (!own) {
      kept.set(pour.id, pour);
      added += 1;
      continue;
    }
    const standing = standingOf(own, pour);
    if (standing === 'both') conflicts.push({ id: pour.id, here: own, there: pour });
    if (standing !== 'newer') continue;
    kept.set(pour.id, pour);
    renewed += 1;
  }
  return {
    pours: [...kept.values()].sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : 0)),
    added,
    renewed,
    conflicts,
  };
}

/** The pour that stands after a conflict: what was chosen, carrying the marks of both. */
export function settled({ here, there }: Conflict, choice: 'here' | 'there', mark: string): Pour {
  const chosen = choice === 'here' ? here : there;
  const other = choice === 'here' ? there : here;
  const extra = other.marks.filter((one) => !chosen.marks.includes(one));
  return { ...chosen, marks: [...chosen.marks, ...extra, mark] };
}
