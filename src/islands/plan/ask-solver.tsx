import { useEffect, useRef, useState } from 'preact/hooks';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import type { Outcome } from '../../workers/plan-outcome.ts';
import type { Reply, Request } from '../../workers/conduction-work.ts';
import type { Books, Texts } from '../form-entries.ts';

interface Row {
  readonly id: string;
  readonly name: string;
  readonly time?: number;
  readonly error?: number;
  readonly why?: string;
}

const seconds = (value: number): string => printQuantity(value, 's', { figures: 2 });

/** The plan's quick sums of freezing beside the solver's, a section a line, when asked. */
export function AskSolver(props: {
  readonly texts: Texts;
  readonly books: Books;
  readonly outcome: Outcome;
  /** Changes when the plan does: an answer to other numbers is taken away. */
  readonly of: string;
  readonly blocked: boolean;
}) {
  const [rows, setRows] = useState<readonly Row[]>();
  const [range, setRange] = useState(0);
  const [failed, setFailed] = useState(false);
  const worker = useRef<Worker>(undefined);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  useEffect(() => {
    setRows(undefined);
    return end;
  }, [props.of]);

  const ask = async (): Promise<void> => {
    end();
    setFailed(false);
    try {
      const [{ sectionParts, rangeOf }, { pourPlan }, { completeInputs }] = await Promise.all([
        import('./section-parts.ts'),
        import('../../../calculators/models/pour-plan.ts'),
        import('../../../calculators/models/inputs.ts'),
      ]);
      const { values } = completeInputs(pourPlan, props.texts, props.books);
      const parts = sectionParts(values, props.books);
      setRange(rangeOf(values));
      setRows(parts.map(({ id, name }) => ({ id, name })));
      const made = new Worker(new URL('../../workers/conduction.ts', import.meta.url), { type: 'module' });
      worker.current = made;
      made.onerror = () => setFailed(true);
      const put = (n: number, more: Partial<Row>): void =>
        setRows((now) => now?.map((row, at) => (at === n ? { ...row, ...more } : row)));
      const next = (n: number): void => {
        if (n < parts.length) made.postMessage({ asked: n, part: parts[n]!.part } satisfies Request);
        else end();
      };
      made.onmessage = ({ data }: MessageEvent<Reply>) => {
        if (data.kind === 'mesh') put(data.asked, { error: data.error });
        if (data.kind === 'refused') put(data.asked, { why: data.why });
        if (data.kind === 'frozen' && data.result.last) put(data.asked, { time: data.result.last.time });
        if (data.kind === 'refused' || (data.kind === 'frozen' && data.done)) next(data.asked + 1);
      };
      next(0);
    } catch {
      setFailed(true);
    }
  };
  const quick = (id: string): number | undefined => {
    const value = props.outcome.result.values[`${id}.freeze`];
    return typeof value === 'number' ? value : undefined;
  };
  return (
    <section class="ask-solver on-screen needs-script" aria-labelledby="ask-solver">
      <h3 id="ask-solver">Freezing, solved beside the quick sums</h3>
      <p>
        The times above come from a formula. The solver follows the heat of each section from cell to cell.
      </p>
      <p>
        <button type="button" disabled={props.blocked} onClick={() => void ask()}>
          Solve each section
        </button>
      </p>
      <div role="status">
        {failed && <p>The sums could not be run in this browser.</p>}
        {rows && (
          <ul class="notes">
            {rows.map((row) => (
              <li key={row.id}>{lineOf(row, quick(row.id), range)}</li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}

function lineOf({ name, time, error, why }: Row, quick: number | undefined, range: number): string {
  if (why !== undefined) return `${name}: ${why}`;
  if (time === undefined) return `${name}: being solved.`;
  const mesh =
    error === undefined
      ? ''
      : `, which its cells put off by up to ${printNumber(100 * error, { figures: 2 })} %`;
  if (quick === undefined) return `${name}: solved ${seconds(time)}${mesh}.`;
  return `${name}: quick sum ${seconds(quick)}, solved ${seconds(time)}${mesh}. ${reason(time / quick - 1, range)}`;
}

/** What makes them differ. The quick sum may be used either way: its range is wider than most of this. */
function reason(part: number, range: number): string {
  if (Math.abs(part) < 0.1) return 'They agree.';
  if (part > 0)
    return range > 20
      ? `The quick sum freezes it at the middle of its range; the solver waits for the solidus and lets out the heat of all ${Math.round(range)} degrees.`
      : 'The quick sum lets heat through the metal without hindrance; the solver does not.';
  return 'The quick sum takes a mould that is everywhere flat or evenly round; at edges and corners more of it is there to take heat.';
}
