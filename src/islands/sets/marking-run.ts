import {
  createPile,
  type Attempt,
  type Outcome,
  type Refused,
} from '../../../calculators/exercises/sets/class-table.ts';
import { codeMark, type Opener } from '../../../calculators/exercises/sets/hand-in.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { inflate } from '../../platform/deflate.ts';
import { openerWith, type KeyFile } from '../../platform/seal.ts';
import { kindOf, outcomeOf, type Kind, type Markers, type Piece } from '../../workers/mark-hand-ins.ts';
import type { Reply, Request } from '../../workers/marking.ts';

export type { Kind, Piece } from '../../workers/mark-hand-ins.ts';
export const pieceOf = (file: File): Piece => ({ source: file.name, content: file });

/** Codes from pasted text, each from its mark to the next. */
export function codesIn(text: string): Piece[] {
  return text
    .slice(0, 20_000_000)
    .split(/(?=wm1-)/)
    .flatMap((piece, at) => {
      const code = piece.startsWith(codeMark) ? (piece.split(/\n\s*\n/)[0] ?? '') : '';
      return code === '' ? [] : [{ source: `code ${at + 1}`, content: code }];
    });
}

export interface Run {
  readonly attempts: readonly Attempt[];
  readonly refused: readonly Refused[];
}

/** What marking is done by. */
export interface By {
  readonly sets: readonly GradedSet[];
  readonly markers: Markers;
  readonly keys: readonly KeyFile[];
}

/** Marks every piece; `tell` hears how many are done. A later run makes an earlier one stop without an answer. */
export interface Marking {
  /** What each file is, looked at beside the page: to look at hundreds here would hold it. */
  readonly kinds: (files: readonly File[]) => Promise<readonly (Kind | undefined)[]>;
  readonly prepare: (by: By) => void;
  readonly close: () => void;
  readonly run: (pieces: readonly Piece[], by: By, tell: (done: number) => void) => Promise<Run | undefined>;
}

/** Files fewer than this are looked at in the page. */
const few = 20;
/** Pieces that go to a worker at a time. */
const together = 8;

/** Marks in workers, beside the page, or in the page itself where there are none. */
export function createMarking(): Marking {
  let turn = 0;
  let workers: Worker[] | undefined;
  let broken = false;
  let prepared: Request | undefined;
  const pool = (): Worker[] => {
    if (workers || broken) return workers ?? [];
    try {
      const count = Math.min(4, Math.max(1, navigator.hardwareConcurrency - 1));
      workers = Array.from(
        { length: count },
        () => new Worker(new URL('../../workers/marking.ts', import.meta.url), { type: 'module' }),
      );
      if (prepared) for (const worker of workers) worker.postMessage(prepared);
    } catch {
      broken = true;
    }
    return workers ?? [];
  };
  const kinds = async (files: readonly File[]): Promise<readonly (Kind | undefined)[]> => {
    const [worker] = pool();
    if (!worker || files.length < few) return Promise.all(files.map(kindOf));
    return new Promise((done) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }: MessageEvent<readonly (Kind | undefined)[]>) => done(data);
      // A worker that does not start says so, and the page looks itself.
      worker.addEventListener('error', () => done(Promise.all(files.map(kindOf))), { once: true });
      worker.postMessage({ files, answer: port2 } satisfies Request, [port2]);
    });
  };
  const prepare = ({ sets, keys }: By): void => {
    prepared = { sets, keys };
    for (const worker of pool()) worker.postMessage(prepared);
  };

  const close = (): void => {
    turn += 1;
    workers?.forEach((worker) => worker.terminate());
    workers = undefined;
  };

  return {
    kinds,
    prepare,
    close,
    run: async (pieces, by, tell) => {
      const own = (turn += 1);
      const live = (): boolean => own === turn;
      prepare(by);
      const found = pool();
      const outcomes =
        found.length === 0
          ? await inPage(pieces, by, tell, live)
          : await inWorkers(found, own, pieces, tell, live).catch(async () => {
              // A worker that does not start, or ends: the page does it.
              broken = true;
              found.forEach((worker) => worker.terminate());
              workers = undefined;
              return inPage(pieces, by, tell, live);
            });
      return live() && outcomes ? gathered(pieces, outcomes, by.sets) : undefined;
    },
  };
}

/** In the order in which they came, whoever was marked first. */
function gathered(pieces: readonly Piece[], outcomes: readonly Outcome[], sets: readonly GradedSet[]): Run {
  const byHash = new Map(sets.map((set) => [set.hash, set]));
  const pile = createPile();
  for (const [at, outcome] of outcomes.entries())
    pile.add(
      pieces[at]!.source,
      outcome.ok ? { ...outcome, set: byHash.get(outcome.set)! } : outcome,
      () => () => (outcome as Extract<Outcome, { ok: true }>).marked,
    );
  return pile;
}

function inWorkers(
  workers: readonly Worker[],
  turn: number,
  pieces: readonly Piece[],
  tell: (done: number) => void,
  live: () => boolean,
): Promise<Outcome[] | undefined> {
  return new Promise((done, fail) => {
    const outcomes: Outcome[] = [];
    let next = 0;
    let back = 0;
    let told = performance.now();
    const give = (worker: Worker): void => {
      if (next >= pieces.length || !live()) return;
      const request: Request = { turn, from: next, pieces: pieces.slice(next, next + together) };
      next += together;
      worker.postMessage(request);
    };
    const end = (): void => {
      for (const worker of workers) {
        worker.onmessage = null;
        worker.onerror = null;
      }
    };
    for (const worker of workers) {
      worker.onmessage = ({ data }: MessageEvent<Reply>) => {
        if (data.turn !== turn) return;
        if (!live()) return done(undefined);
        for (const [i, outcome] of data.outcomes.entries()) outcomes[data.from + i] = outcome;
        back += data.outcomes.length;
        if (performance.now() - told > 150) {
          tell(back);
          told = performance.now();
        }
        if (back === pieces.length) {
          end();
          done(outcomes);
        } else give(worker);
      };
      worker.onerror = () => {
        end();
        fail(new Error('a worker ended'));
      };
    }
    // Two at each, so that none waits for the page.
    for (const worker of [...workers, ...workers]) give(worker);
    if (pieces.length === 0) done(outcomes);
  });
}

/** How long marking in the page may hold it before it lets it breathe. */
const slice = 12;
const breathe = (): Promise<void> => new Promise((done) => setTimeout(done));

async function inPage(
  pieces: readonly Piece[],
  { sets, markers, keys }: By,
  tell: (done: number) => void,
  live: () => boolean,
): Promise<Outcome[] | undefined> {
  const opener: Opener = { inflate, ...(keys.length > 0 && { open: openerWith(keys) }) };
  const outcomes: Outcome[] = [];
  let began = performance.now();
  let told = began;
  for (const piece of pieces) {
    outcomes.push(await outcomeOf(piece, sets, markers, opener));
    if (performance.now() - began <= slice) continue;
    if (!live()) return undefined;
    if (performance.now() - told > 150) {
      tell(outcomes.length);
      told = performance.now();
    }
    await breathe();
    began = performance.now();
  }
  return outcomes;
}
