import type { Marker, Outcome } from '../../calculators/exercises/sets/class-table.ts';
import { handInLimits, receive, type Opener } from '../../calculators/exercises/sets/hand-in.ts';
import type { GradedSet } from '../../calculators/exercises/sets/set-file.ts';

/** A hand-in before it is opened: a file, or a code that was pasted. */
export interface Piece {
  readonly source: string;
  readonly content: File | string;
}

/** What a dropped file is, by how it begins, when it is not a hand-in. */
export type Kind = 'set' | 'key' | 'mark-book';

export async function kindOf(file: File): Promise<Kind | undefined> {
  if (file.size > 60_000_000) return undefined;
  const start = await file
    .slice(0, 200)
    .text()
    .catch(() => '');
  return /"format":\s*"warm-mould-(set|key|mark-book)"/.exec(start)?.[1] as Kind | undefined;
}

/** By the set's hash. */
export type Markers = ReadonlyMap<string, Marker>;

/** Reads one and marks it. Never rejects: what cannot be read is an outcome too. */
export async function outcomeOf(
  { content }: Piece,
  sets: readonly GradedSet[],
  markers: Markers,
  opener: Opener,
): Promise<Outcome> {
  const size = typeof content === 'string' ? content.length : content.size;
  if (size > handInLimits.characters)
    return { ok: false, why: 'damaged', reason: 'It is far larger than a hand-in can be.' };
  const text = typeof content === 'string' ? content : await content.text().catch(() => '');
  const received = await receive(text, sets, opener);
  if (!received.ok) return received;
  const { handIn, set, sealed } = received;
  return { ok: true, handIn, set: set.hash, sealed, marked: markers.get(set.hash)!(handIn) };
}
