import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Bank, Pick } from '../../../calculators/exercises/sets/building.ts';
import { SmallEntry } from '../small-entry.tsx';

interface PicksProps {
  readonly bank: Bank | undefined;
  readonly picks: readonly Pick[];
  readonly change: (picks: Pick[]) => void;
}

/** What is in the set, in order, each with its marks and tolerance. */
export function Picks({ bank, picks, change }: PicksProps) {
  const put = (at: number, part: Partial<Pick>): void =>
    change(picks.map((pick, i) => (i === at ? { ...pick, ...part } : pick)));
  const own = useRef<HTMLElement>(null);
  /** What was done last, to which rows, and where the keyboard goes on: rows that move or go take it with them. */
  const [done, setDone] = useState({ says: '', focus: '', made: picks });
  useLayoutEffect(() => {
    if (done.focus !== '') own.current?.querySelector<HTMLElement>(`[id="${done.focus}"]`)?.focus();
  }, [done]);
  const titleOf = (pick: Pick): string => String(dataOf(bank, pick)['title'] ?? pick.id);
  const move = (at: number, to: number): void => {
    const pick = picks[at]!;
    if (to < 0 || to >= picks.length) return;
    const next = [...picks];
    next.splice(at, 1);
    next.splice(to, 0, pick);
    change(next);
    setDone({
      says: `“${titleOf(pick)}” is now ${to + 1} of ${picks.length}.`,
      focus: `${to < at ? 'up' : 'down'}-${pick.id}`,
      made: next,
    });
  };
  const takeOut = (at: number): void => {
    const next = picks.filter((_, i) => i !== at);
    const beside = next[at] ?? next[at - 1];
    change(next);
    setDone({
      says: `“${titleOf(picks[at]!)}” is taken out.`,
      focus: beside ? `out-${beside.id}` : 'picks',
      made: next,
    });
  };
  const all = picks.reduce((sum, pick) => sum + (pick.marks ?? Number(dataOf(bank, pick)['marks'] ?? 0)), 0);
  return (
    <section aria-labelledby="picks" ref={own}>
      <h2 id="picks" tabIndex={-1}>
        In the set
      </h2>
      <p class="soft" role="status">
        {picks.length} {picks.length === 1 ? 'question' : 'questions'}, {all} {all === 1 ? 'mark' : 'marks'}.{' '}
        {done.made === picks && done.says}
      </p>
      <ol class="rows picks">
        {picks.map((pick, at) => {
          const data = dataOf(bank, pick);
          const title = titleOf(pick);
          const computed = data['kind'] === 'number' || data['kind'] === 'steps';
          return (
            <li key={pick.id}>
              <span class="whole">
                {at + 1}. {title}
              </span>
              <SmallEntry
                id={`marks-${pick.id}`}
                label="Marks"
                of={title}
                value={String(pick.marks ?? Number(data['marks'] ?? 1))}
                read={(text) => marksFrom(text, data)}
                put={(marks) => put(at, { marks })}
              />
              {computed && (
                <SmallEntry
                  id={`tolerance-${pick.id}`}
                  label="Tolerance"
                  of={title}
                  value={pick.tolerance ?? String(data['tolerance'] ?? '2 %')}
                  read={toleranceFrom}
                  put={(tolerance) => put(at, { tolerance })}
                />
              )}
              <button
                type="button"
                id={`up-${pick.id}`}
                aria-label={`Move up: ${title}`}
                aria-disabled={at === 0}
                onClick={() => move(at, at - 1)}
              >
                ↑
              </button>
              <button
                type="button"
                id={`down-${pick.id}`}
                aria-label={`Move down: ${title}`}
                aria-disabled={at === picks.length - 1}
                onClick={() => move(at, at + 1)}
              >
                ↓
              </button>
              <button
                type="button"
                id={`out-${pick.id}`}
                aria-label={`Take out: ${title}`}
                onClick={() => takeOut(at)}
              >
                Take out
              </button>
            </li>
          );
        })}
      </ol>
    </section>
  );
}

const dataOf = (bank: Bank | undefined, pick: Pick): Readonly<Record<string, unknown>> =>
  pick.own ?? bank?.exercises.find(({ id }) => id === pick.id)?.exercise ?? {};

/** Whole marks, at least one a part. */
function marksFrom(text: string, data: Readonly<Record<string, unknown>>): { value: number } | string {
  const least = Array.isArray(data['parts']) ? data['parts'].length : 1;
  const marks = /^\s*\d+\s*$/.test(text) ? Number(text) : NaN;
  if (marks >= least && marks <= 100) return { value: marks };
  return `Marks are a whole number from ${least}${least > 1 ? ', one for each part,' : ''} to 100.`;
}

/** A share; what an exercise itself allows, also a width in a unit, stays until another is typed. */
function toleranceFrom(text: string): { value: string } | string {
  const share = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(text)?.[1]?.replace(',', '.');
  if (share !== undefined && Number(share) > 0 && Number(share) <= 50) return { value: `${share} %` };
  return 'A tolerance is a share above 0 % and up to 50 %.';
}
