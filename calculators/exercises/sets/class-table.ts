import type { HandIn, Received, Refusal } from './hand-in.ts';
import { learnerKey } from './learner.ts';
import type { MarkedHandIn, QuestionMark } from './marking-hand-ins.ts';
import type { GradedSet, Rules } from './set-file.ts';

/** One hand-in that was read and marked. */
export interface Attempt {
  /** The file, or the place of the code in the list. */
  readonly source: string;
  readonly handIn: HandIn;
  readonly set: GradedSet;
  readonly sealed: boolean;
  readonly marked: MarkedHandIn;
}

/** One that was not, and why. */
export interface Refused {
  readonly source: string;
  readonly why: Refusal;
  readonly reason: string;
}

/** What the instructor decided about one question of one learner. */
export interface Remark {
  /** The set's hash. */
  readonly set: string;
  readonly learner: string;
  readonly question: string;
  readonly marks?: number;
  readonly reason?: string;
  readonly comment?: string;
}

export interface Row {
  /** As typed by the learner, or as it stands in the roster. */
  readonly learner: string;
  readonly key: string;
  /** The hand-in that counts; absent for who has not handed in. */
  readonly counted: Attempt | undefined;
  /** Every hand-in of this learner, in the order they were handed in. */
  readonly attempts: readonly Attempt[];
  /** Not in the roster that was given. */
  readonly stranger: boolean;
}

/** What became of one piece: read and marked by a set named by its hash, or put aside. */
export type Outcome =
  | (Pick<Attempt, 'handIn' | 'sealed' | 'marked'> & { readonly ok: true; readonly set: string })
  | { readonly ok: false; readonly why: Refusal; readonly reason: string };

export type Marker = (handIn: Pick<HandIn, 'learner' | 'answers'>) => MarkedHandIn;

/** Gathers hand-ins one by one, so that a page can stay awake between them. */
export function createPile(): {
  readonly add: (source: string, received: Received, marker: (set: GradedSet) => Marker) => void;
  readonly attempts: Attempt[];
  readonly refused: Refused[];
} {
  const attempts: Attempt[] = [];
  const refused: Refused[] = [];
  const seen = new Map<string, string>();
  return {
    attempts,
    refused,
    add: (source, received, marker) => {
      if (!received.ok) {
        refused.push({ source, why: received.why, reason: received.reason });
        return;
      }
      const { handIn, set, sealed } = received;
      const before = seen.get(handIn.sum);
      if (before !== undefined) {
        refused.push({ source, why: 'duplicate', reason: `It is the same hand-in as ${before}.` });
        return;
      }
      seen.set(handIn.sum, source);
      attempts.push({ source, handIn, set, sealed, marked: marker(set)(handIn) });
    },
  };
}

/** One row a learner of one set, whatever edition each hand-in was made for. Rows stand in the order of their names. */
export function classRows(
  attempts: readonly Attempt[],
  keep: Rules['keep'],
  remarks: readonly Remark[] = [],
  roster: readonly string[] = [],
): Row[] {
  const byKey = new Map<string, Attempt[]>();
  for (const attempt of attempts) {
    const key = learnerKey(attempt.handIn.learner);
    byKey.set(key, [...(byKey.get(key) ?? []), attempt]);
  }
  const listed = new Map(roster.map((name) => [learnerKey(name), name]));
  listed.delete('');
  const keys = [...new Set([...listed.keys(), ...byKey.keys()])];
  return keys
    .map((key): Row => {
      const own = [...(byKey.get(key) ?? [])].sort((a, b) => order(a.handIn.handedIn, b.handIn.handedIn));
      return {
        learner: listed.get(key) ?? own[0]!.handIn.learner,
        key,
        counted: chosen(own, keep, remarks),
        attempts: own,
        stranger: listed.size > 0 && !listed.has(key),
      };
    })
    .sort((a, b) => order(a.key, b.key));
}

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function chosen(
  own: readonly Attempt[],
  keep: Rules['keep'],
  remarks: readonly Remark[],
): Attempt | undefined {
  if (keep === 'first') return own[0];
  if (keep === 'last') return own.at(-1);
  return own.reduce<Attempt | undefined>(
    (best, one) => (best && totalOf(best, remarks) >= totalOf(one, remarks) ? best : one),
    undefined,
  );
}

/** The remark on one question of one hand-in, when there is one. */
export function remarkOn(attempt: Attempt, question: string, remarks: readonly Remark[]): Remark | undefined {
  if (remarks.length === 0) return undefined;
  const key = learnerKey(attempt.handIn.learner);
  const own = remarks.filter(
    (remark) =>
      remark.question === question && remark.set === attempt.set.hash && learnerKey(remark.learner) === key,
  );
  return own.at(-1);
}

/** The marks that stand: those decided by a person, else those worked out. Never more than the question has. */
export function marksStanding(attempt: Attempt, question: QuestionMark, remarks: readonly Remark[]): number {
  const marks = remarkOn(attempt, question.id, remarks)?.marks;
  return marks === undefined ? question.marks : Math.min(Math.max(0, marks), question.of);
}

export function totalOf(attempt: Attempt, remarks: readonly Remark[]): number {
  return attempt.marked.questions.reduce(
    (sum, question) => sum + marksStanding(attempt, question, remarks),
    0,
  );
}

/** Answers in words that nobody has marked yet. */
export function waitingOf(attempt: Attempt, remarks: readonly Remark[]): number {
  return attempt.marked.questions.filter(
    ({ id, state }) => state === 'waiting' && remarkOn(attempt, id, remarks)?.marks === undefined,
  ).length;
}

export interface Total {
  readonly learner: string;
  readonly key: string;
  /** By the set's id. */
  readonly sets: Readonly<Record<string, { readonly marks: number; readonly of: number }>>;
  readonly marks: number;
  /** Of every set, handed in or not. */
  readonly of: number;
}

/** Several sets together: what was not handed in counts nought of its marks. */
export function totals(
  tables: readonly { readonly set: GradedSet; readonly rows: readonly Row[] }[],
  remarks: readonly Remark[] = [],
): Total[] {
  const names = new Map(
    tables.flatMap(({ rows }) => rows.map(({ key, learner }) => [key, learner] as const)),
  );
  return [...names]
    .map(([key, learner]) => {
      const sets = Object.fromEntries(
        tables.map(({ set, rows }) => {
          const counted = rows.find((row) => row.key === key)?.counted;
          return [
            set.id,
            { marks: counted ? totalOf(counted, remarks) : 0, of: counted?.set.marks ?? set.marks },
          ];
        }),
      );
      const all = Object.values(sets);
      return {
        learner,
        key,
        sets,
        marks: all.reduce((sum, { marks }) => sum + marks, 0),
        of: all.reduce((sum, one) => sum + one.of, 0),
      };
    })
    .sort((a, b) => order(a.key, b.key));
}
