import { useMemo } from 'preact/hooks';
import { itemAnalysis, outcomesReached } from '../../../calculators/exercises/sets/item-analysis.ts';
import { waitingOf, type Remark, type Row } from '../../../calculators/exercises/sets/class-table.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';

interface AnalysisProps {
  readonly set: GradedSet;
  readonly rows: readonly Row[];
  readonly remarks: readonly Remark[];
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
const minutes = (seconds: number): string =>
  seconds < 90 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;

/** Of several parts, which one. */
function partName(set: GradedSet, question: string, part: string): string {
  const exercise = set.questions.find(({ id }) => id === question);
  const at = exercise?.kind === 'steps' ? exercise.parts.findIndex(({ id }) => id === part) : -1;
  return at < 0 ? '' : `Part ${at + 1}: `;
}

/** What the class shows: how each question did, which wrong ways were taken, which outcomes are not there yet. */
export function Analysis({ set, rows, remarks }: AnalysisProps) {
  const waiting = useMemo(
    () => rows.reduce((sum, { counted }) => sum + (counted ? waitingOf(counted, remarks) : 0), 0),
    [rows, remarks],
  );
  const items = useMemo(() => itemAnalysis(set, rows, remarks), [set, rows, remarks]);
  const outcomes = useMemo(() => outcomesReached(set, rows, remarks, undefined, items), [items]);
  return (
    <details class="analysis on-screen" open>
      <summary>What the class shows</summary>
      {waiting > 0 && (
        <p>
          {waiting === 1
            ? 'One answer in words waits to be marked by hand and counts'
            : `${waiting} answers in words wait to be marked by hand and count`}{' '}
          nothing yet.
        </p>
      )}
      <h3>Outcomes not reached</h3>
      {outcomes.every(({ reached }) => reached) ? (
        <p>The class has at least 60 % of the marks of every outcome.</p>
      ) : (
        <ul>
          {outcomes
            .filter(({ reached }) => !reached)
            .map(({ id, text, share }) => (
              <li key={id}>
                {text.replace(/\.$/, '')}: {percent(share)} of its marks
              </li>
            ))}
        </ul>
      )}
      <h3>Question by question</h3>
      <p class="soft">
        The share is the class’s mean of the marks. Discrimination compares a question with all the others:
        near 1, who did well elsewhere did well here; near 0 or below, look at the question itself. Few
        hand-ins say little.
      </p>
      <ol class="items">
        {items.map((item) => (
          <li key={item.id}>
            <p>
              <strong>{item.title}</strong>{' '}
              {item.facility === undefined
                ? item.count === 0
                  ? 'nobody yet'
                  : `${item.waiting} to be marked by hand first`
                : `${percent(item.facility)} of its marks${item.discrimination === undefined ? '' : `, discrimination ${item.discrimination.toFixed(2).replace('-', '−')}`}${item.blank > 0 ? `, ${item.blank} blank` : ''}${item.seconds === undefined ? '' : `, half took less than ${minutes(item.seconds)}`}`}
            </p>
            {item.ways.length > 0 && (
              <ul>
                {item.ways.map((way) => (
                  <li key={way.part + way.says}>
                    <strong>
                      {way.count} of {item.count}
                    </strong>{' '}
                    {partName(set, item.id, way.part)}
                    <span class="as-written">{way.says}</span>{' '}
                    <span class="soft">
                      {way.learners.slice(0, 6).map((name, at) => (
                        <>
                          {at > 0 && ', '}
                          <bdi>{name}</bdi>
                        </>
                      ))}
                      {way.learners.length > 6 && ` and ${way.learners.length - 6} more`}
                    </span>
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
    </details>
  );
}
