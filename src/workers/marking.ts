import type { Outcome } from '../../calculators/exercises/sets/class-table.ts';
import { markerFor } from '../../calculators/exercises/sets/marking-hand-ins.ts';
import type { GradedSet } from '../../calculators/exercises/sets/set-file.ts';
import { inflate } from '../platform/deflate.ts';
import { openerWith, type KeyFile } from '../platform/seal.ts';
import { workshopFor } from './library.ts';
import { kindOf, outcomeOf, type Markers, type Piece } from './mark-hand-ins.ts';

/** What the worker is asked: what files are, what to mark by, then pieces, some at a time. */
export type Request =
  | { readonly files: readonly File[]; readonly answer: MessagePort }
  | { readonly sets: readonly GradedSet[]; readonly keys: readonly KeyFile[] }
  | { readonly turn: number; readonly from: number; readonly pieces: readonly Piece[] };
export interface Reply {
  readonly turn: number;
  readonly from: number;
  readonly outcomes: readonly Outcome[];
}

let sets: readonly GradedSet[] = [];
/** Markers stay from one asking to the next, and with them the answers they have met. */
const known = new Map<string, Promise<Markers>>();
let keys: readonly KeyFile[] = [];
let opener: Parameters<typeof outcomeOf>[3] = { inflate };

async function markerOf(set: GradedSet): Promise<Markers> {
  return new Map([[set.hash, markerFor(set, await workshopFor(set))]]);
}

addEventListener('message', ({ data }: MessageEvent<Request>) => {
  if ('files' in data) {
    const { files, answer } = data;
    void Promise.all(files.map(kindOf)).then((kinds) => answer.postMessage(kinds));
    return;
  }
  if ('sets' in data) {
    sets = data.sets;
    for (const set of sets) if (!known.has(set.hash)) known.set(set.hash, markerOf(set));
    if (JSON.stringify(keys) !== JSON.stringify(data.keys)) {
      keys = data.keys;
      opener = { inflate, ...(keys.length > 0 && { open: openerWith(keys) }) };
    }
    return;
  }
  void (async () => {
    const by = sets;
    const open = opener;
    const found = await Promise.all(by.map(({ hash }) => known.get(hash)!));
    const markers: Markers = new Map(found.flatMap((one) => [...one]));
    // Together, so that one is marked while the seal of another opens.
    const outcomes = await Promise.all(data.pieces.map((piece) => outcomeOf(piece, by, markers, open)));
    postMessage({ turn: data.turn, from: data.from, outcomes } satisfies Reply);
  })();
});
