import {
  createPile,
  type Attempt,
  type Marker,
  type Refused,
} from '../../../calculators/exercises/sets/class-table.ts';
import { codeMark, handInLimits, receive, type Opener } from '../../../calculators/exercises/sets/hand-in.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';

/** A hand-in before it is opened: a file, or a code that was pasted. */
export interface Piece {
  readonly source: string;
  readonly size: number;
  readonly text: () => Promise<string>;
}

export const pieceOf = (file: File): Piece => ({
  source: file.name,
  size: file.size,
  text: () => file.text(),
});

/** Codes from pasted text, each from its mark to the next. */
export function codesIn(text: string): Piece[] {
  return text
    .slice(0, 20_000_000)
    .split(/(?=wm1-)/)
    .flatMap((piece, at) => {
      const code = piece.startsWith(codeMark) ? (piece.split(/\n\s*\n/)[0] ?? '') : '';
      return code === ''
        ? []
        : [{ source: `code ${at + 1}`, size: code.length, text: () => Promise.resolve(code) }];
    });
}

export interface Run {
  readonly attempts: readonly Attempt[];
  readonly refused: readonly Refused[];
}

/** How long marking may hold the page before it lets it breathe. */
const slice = 12;
const breathe = (): Promise<void> => new Promise((done) => setTimeout(done));

/** Marks every piece, giving the page its turn in between; `tell` hears how many are done. */
export async function markAll(
  pieces: readonly Piece[],
  sets: readonly GradedSet[],
  markers: ReadonlyMap<string, Marker>,
  opener: Opener,
  tell: (done: number) => void,
): Promise<Run> {
  const pile = createPile();
  let began = performance.now();
  let told = began;
  for (const [at, piece] of pieces.entries()) {
    if (piece.size > handInLimits.characters) {
      pile.refused.push({
        source: piece.source,
        why: 'damaged',
        reason: 'It is far larger than a hand-in can be.',
      });
    } else {
      const text = await piece.text().catch(() => '');
      pile.add(piece.source, await receive(text, sets, opener), (set) => markers.get(set.hash)!);
    }
    if (performance.now() - began > slice) {
      if (performance.now() - told > 150) {
        tell(at + 1);
        told = performance.now();
      }
      await breathe();
      began = performance.now();
    }
  }
  return pile;
}
