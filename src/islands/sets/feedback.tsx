import { useMemo, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import {
  marksStanding,
  remarkOn,
  totalOf,
  type Attempt,
  type Remark,
  type Row,
} from '../../../calculators/exercises/sets/class-table.ts';
import { variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { rightAnswers } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { useByAndBy } from './by-and-by.ts';

interface FeedbackProps {
  readonly rows: readonly Row[];
  readonly remarks: readonly Remark[];
  readonly libraries: ReadonlyMap<string, Library>;
}

/** A sheet for each learner, made when asked for and printed one a page. */
export function Feedback({ rows, remarks, libraries }: FeedbackProps) {
  const [shown, setShown] = useState(false);
  const attempts = rows.flatMap(({ counted }) => counted ?? []);
  const ready = useByAndBy(attempts.length, 5, shown);
  return (
    <>
      <p class="deeds on-screen">
        <button type="button" onClick={() => setShown(!shown)} aria-expanded={shown}>
          Feedback sheets
        </button>
        {shown &&
          (ready < attempts.length ? (
            <span role="status">
              {ready} of {attempts.length} drawn
            </span>
          ) : (
            <button type="button" onClick={() => window.print()}>
              Print them
            </button>
          ))}
      </p>
      {shown &&
        attempts
          .slice(0, ready)
          .map((attempt) => (
            <FeedbackSheet
              key={attempt.handIn.sum}
              attempt={attempt}
              remarks={remarks}
              library={libraries.get(attempt.set.hash)!}
            />
          ))}
    </>
  );
}

interface FeedbackSheetProps {
  readonly attempt: Attempt;
  readonly remarks: readonly Remark[];
  readonly library: Library;
}

/** Drawn again only when something in it changed. */
function FeedbackSheet({ attempt, remarks, library }: FeedbackSheetProps) {
  return useMemo(() => feedbackSheet({ attempt, remarks, library }), [attempt, remarks, library]);
}

function feedbackSheet({ attempt, remarks, library }: FeedbackSheetProps) {
  const { handIn, set, marked } = attempt;
  return (
    <article class="feedback-sheet">
      <h3>
        <bdi>{handIn.learner}</bdi>: {totalOf(attempt, remarks)} of {set.marks} marks
      </h3>
      <p class="soft">
        <bdi>{set.title}</bdi>, edition {set.edition}
      </p>
      <ol>
        {marked.questions.map((question, at) => {
          const exercise = set.questions[at]!;
          const remark = remarkOn(attempt, question.id, remarks);
          const marks = marksStanding(attempt, question, remarks);
          return (
            <li key={question.id}>
              <strong>{exercise.title}</strong>: {marks} of {question.of}
              {question.parts.map(({ id, answer, marked: part }) => (
                <p key={id}>
                  You wrote: <bdi class="as-written">{answer.trim() === '' ? 'nothing' : listed(answer)}</bdi>
                  . {answer.trim() === '' ? '' : part.says.join(' ')}
                </p>
              ))}
              {marks < question.of && exercise.kind !== 'text' && (
                <p>
                  Right:{' '}
                  {listed(
                    Object.values(
                      safely(() =>
                        rightAnswers(exercise, variantFor(set, handIn.learner, exercise), library),
                      ),
                    ).join('; '),
                  )}
                  .
                </p>
              )}
              {remark?.reason !== undefined && <p>Marked by hand: {remark.reason}</p>}
              {remark?.comment !== undefined && <p class="as-written">{remark.comment}</p>}
            </li>
          );
        })}
      </ol>
    </article>
  );
}

/** Options and lines within a sentence lose the full stops of their own. */
const listed = (text: string): string => text.replace(/\.(?=; |\s*$)/g, '');

function safely(work: () => Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  try {
    return work();
  } catch {
    return {};
  }
}
