import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Library } from '../../../calculators/exercises/answer.ts';
import {
  marksStanding,
  remarkOn,
  totalOf,
  waitingOf,
  type Attempt,
  type Remark,
  type Row,
  type Total,
} from '../../../calculators/exercises/sets/class-table.ts';
import type { State } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { useByAndBy } from './by-and-by.ts';

type OpenAnswerComponent = typeof import('./open-answer.tsx').OpenAnswer;

/** A shape and a number: never a tint alone. */
const shapes: Readonly<Record<State, string>> = {
  right: '✓',
  part: '◐',
  wrong: '✗',
  blank: '–',
  waiting: '?',
};
const stateWords: Readonly<Record<State, string>> = {
  right: 'right',
  part: 'some marks',
  wrong: 'wrong',
  blank: 'not answered',
  waiting: 'to be marked by hand',
};

interface Place {
  readonly key: string;
  readonly question: string;
}

/** Rows drawn at a time, so that a class of hundreds does not hold the page. */
const together = 20;

interface ClassTableProps {
  readonly set: GradedSet;
  readonly rows: readonly Row[];
  readonly remarks: readonly Remark[];
  readonly libraries: ReadonlyMap<string, Library>;
  readonly remark: (remark: Remark) => void;
}

export function ClassTable({ set, rows, remarks, libraries, remark }: ClassTableProps) {
  const [open, setOpen] = useState<Place>();
  const table = useRef<HTMLDivElement>(null);
  const row = rows.find(({ key }) => key === open?.key);
  const [OpenAnswer, setOpenAnswer] = useState<OpenAnswerComponent>();
  // What shows one answer is fetched once the table stands, so that a press finds it there.
  useEffect(() => {
    void import('./open-answer.tsx').then((found) => setOpenAnswer(() => found.OpenAnswer));
  }, []);
  const blocks = useMemo(
    () =>
      Array.from({ length: Math.ceil(rows.length / together) }, (_, at) =>
        rows.slice(at * together, (at + 1) * together),
      ),
    [rows],
  );
  const shown = useByAndBy(blocks.length, 1);
  const press = useMemo(
    () => (place: Place) =>
      setOpen((now) => (now?.key === place.key && now.question === place.question ? undefined : place)),
    [],
  );
  return (
    <>
      <p class="legend soft">
        {Object.entries(shapes)
          .map(([state, shape]) => `${shape} ${stateWords[state as State]}`)
          .join(' · ')}
        . Press a mark to see the answer.
      </p>
      <div ref={table} class="scrolls" tabIndex={0} role="group" aria-label="Marks by learner and question">
        <table class="class-table by-question">
          <colgroup>
            <col class="learner" />
            <col class="total" />
            <col span={set.questions.length} />
          </colgroup>
          <thead>
            <tr>
              <th scope="col">Learner</th>
              <th scope="col">Of {set.marks}</th>
              {set.questions.map(({ id, title }, at) => (
                <th scope="col" key={id} title={title}>
                  {at + 1}
                </th>
              ))}
            </tr>
          </thead>
          {blocks.slice(0, shown).map((block, at) => (
            <Block
              key={at}
              set={set}
              rows={block}
              remarks={remarks}
              open={block.some(({ key }) => key === open?.key) ? open : undefined}
              press={press}
            />
          ))}
        </table>
      </div>
      {OpenAnswer && open && row?.counted && (
        <OpenAnswer
          key={`${open.key} ${open.question}`}
          attempt={row.counted}
          question={open.question}
          remarks={remarks}
          library={libraries.get(row.counted.set.hash)!}
          remark={remark}
          close={() => {
            // Back to the mark that opened it.
            table.current?.querySelector<HTMLElement>('[aria-expanded="true"]')?.focus();
            setOpen(undefined);
          }}
        />
      )}
    </>
  );
}

interface BlockProps {
  readonly set: GradedSet;
  readonly rows: readonly Row[];
  readonly remarks: readonly Remark[];
  readonly open: Place | undefined;
  readonly press: (place: Place) => void;
}

/** Some rows together, drawn again only when something in them changed. */
function Block({ set, rows, remarks, open, press }: BlockProps) {
  return useMemo(
    () => (
      <tbody>
        {rows.map(({ key, learner, counted, attempts, stranger }) => (
          <tr key={key}>
            <th scope="row">
              <bdi>{learner}</bdi>
              {stranger && <span class="soft"> (not in the roster)</span>}
              {attempts.length > 1 && <span class="soft"> ({attempts.length} hand-ins)</span>}
            </th>
            {counted ? (
              <>
                <td>
                  <strong>{totalOf(counted, remarks)}</strong>
                  {waitingOf(counted, remarks) > 0 && ' ?'}
                  {counted.set.edition !== set.edition && (
                    <span class="soft"> ed. {counted.set.edition}</span>
                  )}
                </td>
                {set.questions.map(({ id }) => (
                  <Mark
                    key={id}
                    attempt={counted}
                    question={id}
                    remarks={remarks}
                    pressed={open?.key === key && open.question === id}
                    press={() => press({ key, question: id })}
                  />
                ))}
              </>
            ) : (
              <td colSpan={set.questions.length + 1}>not handed in</td>
            )}
          </tr>
        ))}
      </tbody>
    ),
    [set, rows, remarks, open, press],
  );
}

interface MarkProps {
  readonly attempt: Attempt;
  readonly question: string;
  readonly remarks: readonly Remark[];
  readonly pressed: boolean;
  readonly press: () => void;
}

function Mark({ attempt, question, remarks, pressed, press }: MarkProps) {
  const marked = attempt.marked.questions.find(({ id }) => id === question);
  if (!marked) return <td />;
  const marks = marksStanding(attempt, marked, remarks);
  const byHand = remarkOn(attempt, question, remarks)?.marks !== undefined;
  const state: State = byHand ? (marks === marked.of ? 'right' : marks > 0 ? 'part' : 'wrong') : marked.state;
  return (
    <td data-state={state}>
      <button type="button" aria-expanded={pressed} onClick={press}>
        <span aria-hidden="true">{shapes[state]}</span> {marks}
        <span class="unseen">
          {' '}
          of {marked.of}, {stateWords[state]}
        </span>
        {byHand && '*'}
      </button>
    </td>
  );
}

export function TotalsTable({
  sets,
  totals,
}: {
  readonly sets: readonly GradedSet[];
  readonly totals: readonly Total[];
}) {
  return (
    <section aria-labelledby="totals">
      <h2 id="totals">All sets together</h2>
      <div class="scrolls" tabIndex={0} role="group" aria-label="Marks by learner and set">
        <table class="class-table">
          <thead>
            <tr>
              <th scope="col">Learner</th>
              {sets.map((set) => (
                <th scope="col" key={set.id}>
                  <bdi>{set.title}</bdi>
                </th>
              ))}
              <th scope="col">Together</th>
            </tr>
          </thead>
          <tbody>
            {totals.map((total) => (
              <tr key={total.key}>
                <th scope="row">
                  <bdi>{total.learner}</bdi>
                </th>
                {sets.map(({ id }) => (
                  <td key={id}>
                    {total.sets[id]!.marks} of {total.sets[id]!.of}
                  </td>
                ))}
                <td>
                  <strong>{total.marks}</strong> of {total.of}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
