import { useEffect, useRef, useState } from 'preact/hooks';
import { printNumber } from '../../../calculators/core/print.ts';
import type { Habit } from '../../../calculators/core/shop-units.ts';
import type { Beside } from '../../../calculators/models/front/beside-plan.ts';
import type { FrontReply, FrontRequest } from '../../workers/plan-front.ts';
import type { Books, Texts } from '../form-entries.ts';

/** The plan's quick sums of filling beside the metal followed from the gate, a section a line, when asked. */
export function AskFront(props: {
  readonly texts: Texts;
  readonly books: Books;
  /** Changes when the plan does: an answer to other numbers is taken away. */
  readonly of: string;
  readonly blocked: boolean;
  readonly habit: Habit;
}) {
  const [reply, setReply] = useState<FrontReply>();
  const [working, setWorking] = useState(false);
  const [failed, setFailed] = useState(false);
  const worker = useRef<Worker>(undefined);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
    setWorking(false);
  };
  useEffect(() => {
    setReply(undefined);
    return end;
  }, [props.of]);

  const ask = (): void => {
    end();
    setFailed(false);
    const fail = (): void => {
      end();
      setFailed(true);
    };
    try {
      const made = new Worker(new URL('../../workers/plan-race.ts', import.meta.url), { type: 'module' });
      worker.current = made;
      setWorking(true);
      made.onerror = fail;
      made.onmessage = ({ data }: MessageEvent<FrontReply>) => {
        setReply(data);
        end();
      };
      made.postMessage({
        texts: props.texts,
        books: props.books,
        habit: props.habit,
      } satisfies FrontRequest);
    } catch {
      fail();
    }
  };
  return (
    <section class="ask-solver ask-front on-screen needs-script" aria-labelledby="ask-front">
      <h3 id="ask-front">Filling, followed beside the quick sums</h3>
      <p>
        The quick sums take each section by itself. Followed, the metal leaves the gate once, all sections
        drink of it together, and each front loses speed and heat on its own way.
      </p>
      <p>
        <button type="button" disabled={props.blocked} onClick={ask}>
          Follow the metal
        </button>
      </p>
      <div role="status">
        {failed && <p>The sums could not be run in this browser.</p>}
        {working && <p>The metal is being followed.</p>}
        {reply && 'why' in reply && <p>{reply.why}</p>}
        {reply && 'rows' in reply && (
          <ul class="notes">
            {reply.rows.map((row) => (
              <li key={row.id}>
                <strong>{row.name}.</strong> {lineOf(row)}
              </li>
            ))}
          </ul>
        )}
      </div>
    </section>
  );
}

function lineOf({ filled, has, quick, sum, story, why }: Beside): string {
  const spare = filled && has < 100 ? ` It has ${printNumber(has, { figures: 2 })} times what it needs.` : '';
  const apart = (filled ? quick >= 1 : !(quick >= 1)) ? '' : ' The two do not agree.';
  return `${sum} Followed: ${story.charAt(0).toLowerCase()}${story.slice(1)}${spare}${apart} ${why}`;
}
