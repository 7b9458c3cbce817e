import { useEffect, useRef, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import { partNumbers, withNumbers } from '../../../calculators/exercises/question-text.ts';
import { fromBase64 } from '../../../calculators/exercises/sets/bytes.ts';
import { remarkOn, type Attempt, type Remark } from '../../../calculators/exercises/sets/class-table.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';
import { variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { rightAnswers } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { workedOf } from '../../../calculators/exercises/worked.ts';
import { Paragraphs, Worked } from '../exercise.tsx';
import { leversOf } from './workshop.ts';

interface OpenAnswerProps {
  readonly attempt: Attempt;
  readonly question: string;
  readonly remarks: readonly Remark[];
  readonly library: Library;
  readonly remark: (remark: Remark) => void;
  readonly close: () => void;
}

/** One answer beside the right one, with the working of both, and the instructor's own word on it. */
export function OpenAnswer({ attempt, question, remarks, library, remark, close }: OpenAnswerProps) {
  const { handIn, set, marked } = attempt;
  const exercise = set.questions.find(({ id }) => id === question)!;
  const found = marked.questions.find(({ id }) => id === question)!;
  const variant = variantFor(set, handIn.learner, exercise);
  const given = handIn.answers[question] ?? {};
  const before = remarkOn(attempt, question, remarks);
  const [marks, setMarks] = useState(before?.marks === undefined ? '' : String(before.marks));
  const [reason, setReason] = useState(before?.reason ?? '');
  const [comment, setComment] = useState(before?.comment ?? '');
  const [said, setSaid] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => head.current?.focus(), []);
  let right: Readonly<Record<string, string>> = {};
  let lines: ReturnType<typeof workedOf> = [];
  try {
    right = rightAnswers(exercise, variant, library);
    lines = workedOf(exercise, variant, library);
  } catch {
    // A question that cannot be worked out says so in its marking.
  }
  const keep = (): void => {
    const number = Number(marks.replace(',', '.'));
    if (marks.trim() !== '' && !(number >= 0 && number <= found.of))
      return setSaid(`Marks from 0 to ${found.of}.`);
    if (marks.trim() !== '' && found.state !== 'waiting' && reason.trim() === '')
      return setSaid('Give a reason for changing the mark.');
    remark({
      set: set.hash,
      learner: handIn.learner,
      question,
      ...(marks.trim() !== '' && { marks: number }),
      ...(reason.trim() !== '' && { reason: reason.trim() }),
      ...(comment.trim() !== '' && { comment: comment.trim() }),
    });
    setSaid('Kept.');
  };
  return (
    <section class="open-answer on-screen" aria-labelledby="open-answer">
      <h3 id="open-answer" tabIndex={-1} ref={head}>
        <bdi>{handIn.learner}</bdi>: {exercise.title}
      </h3>
      <Paragraphs text={withNumbers(exercise.question, variant.given)} />
      <div class="scrolls" tabIndex={0} role="group" aria-label="Answers">
        <table>
          <thead>
            <tr>
              <th scope="col">Answered</th>
              <th scope="col">Right is</th>
              <th scope="col">Marks</th>
              <th scope="col">Told</th>
            </tr>
          </thead>
          <tbody>
            {found.parts.map(({ id, answer, marked: one }) => {
              const part =
                exercise.kind === 'steps' ? exercise.parts.find((own) => own.id === id) : undefined;
              return (
                <tr key={id}>
                  <td>
                    {part && (
                      <span class="soft">
                        {withNumbers(part.question, partNumbers(variant.given, part.given))}{' '}
                      </span>
                    )}
                    <bdi class="as-written">{answer.trim() === '' ? '(nothing)' : answer}</bdi>
                  </td>
                  <td>{right[id] ?? right['answer']}</td>
                  <td>
                    {one.marks} of {one.of}
                  </td>
                  <td>{one.says.join(' ')}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {given.working !== undefined && (
        <>
          <h4>Their working</h4>
          <p class="as-written">{given.working}</p>
        </>
      )}
      {given.photo && <Photograph photo={given.photo} />}
      <details>
        <summary>Worked answer</summary>
        <Worked
          exercise={exercise}
          lines={lines}
          levers={exercise.kind === 'design' ? leversOf(exercise, library, set.stock) : []}
        />
      </details>
      <form
        method="dialog"
        class="remark"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <label htmlFor="remark-marks">Marks by hand, of {found.of}</label>
        <input
          id="remark-marks"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={marks}
          onInput={({ currentTarget }) => setMarks(currentTarget.value)}
        />
        <label htmlFor="remark-reason">Reason</label>
        <input
          id="remark-reason"
          type="text"
          maxLength={1000}
          value={reason}
          onInput={({ currentTarget }) => setReason(currentTarget.value)}
        />
        <label htmlFor="remark-comment">Comment for the learner</label>
        <textarea
          id="remark-comment"
          rows={2}
          maxLength={2000}
          value={comment}
          onInput={({ currentTarget }) => setComment(currentTarget.value)}
        />
        <p class="deeds">
          <button type="submit" class="first">
            Keep
          </button>
          <button type="button" onClick={close}>
            Close
          </button>
          <span role="status">{said}</span>
        </p>
      </form>
    </section>
  );
}

/** The photograph is drawn from its bytes; a file that only says it is one shows nothing. */
function Photograph({ photo }: { readonly photo: Exclude<Given['photo'], undefined> }) {
  const [url, setUrl] = useState('');
  useEffect(() => {
    const bytes = fromBase64(photo.bytes);
    if (!bytes) return undefined;
    const made = URL.createObjectURL(new Blob([bytes], { type: photo.type }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [photo]);
  return url === '' ? null : <img class="photograph" src={url} alt="Photograph of the learner’s working" />;
}
