import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { habitUnit, type Habit } from '../../../calculators/core/shop-units.ts';
import type { Outcome, Reply, Request } from '../../workers/plan-outcome.ts';
import { sentence } from '../field.tsx';
import {
  formFrom,
  formIn,
  inputsIn,
  textsOf,
  unreadable,
  type Books,
  type Form,
  type UnitOf,
} from '../form-entries.ts';
import { readHabit } from '../habit.ts';
import { HabitChoice } from '../habit-choice.tsx';
import { atBuild, inTurn, Later, turnsTaken } from '../later.tsx';
import { ListField } from '../list-field.tsx';
import { ModelForm } from '../model-form.tsx';
import { AskFront } from './ask-front.tsx';
import { AskSolver } from './ask-solver.tsx';
import { Decision, NumberRow, VerdictMark } from './decision.tsx';
import { namesOf, rowNames } from './names.ts';
import { packedId, packedText, unpacked } from './packed.ts';
import { Paper, PaperInputs } from './paper.tsx';
import { ShelfBar } from './shelf-bar.tsx';
import {
  freeName,
  loadShelf,
  saveShelf,
  shelfFrom,
  shelfKey,
  withOpen,
  withoutOpen,
  withPlan,
  type Plan,
  type Shelf,
} from './store.ts';
import { planFromFile, planFromFragment, planLink, planToFile } from './sharing.ts';
import '../../styles/plan.css';

const sample: Plan = { name: 'Lamp shield', texts: {} };

/** Worked to before the pour, and found after it. */
const before = [
  'pattern.length',
  'charge',
  'mould.needed',
  'oven.time',
  'kiln.total',
  'kiln.peak',
  'gauge.reading',
  'melt.energy',
  'melt.time',
  'melt.window',
  'melt.hydrogen',
];
/** What to have ready, and what one slip would do. */
const safe = ['spill.sand', 'radiant', 'drop', 'run-out', 'vapour'];
const after = ['release', 'last', 'cool', 'weigh.water'];

interface Shown {
  readonly outcome: Outcome;
  /** The habit and the texts it was worked from. */
  readonly from: string;
  readonly habit: Habit;
}

/** The pour plan: several plans kept on the device, one open, every decision with its reason and its working. */
export function PourPlan() {
  // Read in a turn of its own before the page is woken.
  useState(() => !atBuild && inTurn(unpacked));
  return (
    <Later class="later" on={[]}>
      {() => <OpenPlan />}
    </Later>
  );
}

function OpenPlan() {
  const props = useMemo(unpacked, []);
  const { books } = props;
  const [habit, setHabit] = useState<Habit>('metric');
  const inputs = useMemo(() => inputsIn(props.inputs, habit), [habit]);
  const [shelf, setShelf] = useState<Shelf>({ plans: [sample], open: 0 });
  const [form, setForm] = useState<Form>({});
  const [awake, setAwake] = useState(false);
  const [withSpread, setWithSpread] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  const [undo, setUndo] = useState<Shelf>();
  const [shown, setShown] = useState<Shown>({
    outcome: props.initial,
    from: keyOf('metric', {}),
    habit: 'metric',
  });
  const [qr, setQr] = useState<{ readonly link: string; readonly svg: string }>();
  const touched = useRef(false);
  const now = useRef({ habit, inputs });
  now.current = { habit, inputs };

  const open = shelf.plans[shelf.open]!;
  const key = useMemo(() => keyOf(habit, open.texts), [habit, open.texts]);
  const unread = useMemo(() => unreadable(inputs, form, books), [form]);

  /** Shows another shelf: the form follows the plan that is open in it. */
  const show = (next: Shelf): void => {
    setShelf(next);
    setForm(formFrom(now.current.inputs, next.plans[next.open]!.texts));
  };
  const deed = (next: Shelf, message: string, back?: Shelf): void => {
    touched.current = true;
    show(next);
    setSaid(message);
    setUndo(back);
  };

  useEffect(() => {
    const wanted = readHabit();
    now.current = { habit: wanted, inputs: inputsIn(props.inputs, wanted) };
    setHabit(wanted);
    const loaded = loadShelf(sample);
    if (loaded.shelf.plans[0] !== sample) show(loaded.shelf);
    if (loaded.problems.length > 0) setProblems(loaded.problems);
    const follow = async (): Promise<void> => {
      const found = await planFromFragment(location.hash);
      if (!found) return;
      setProblems((now) => [...now, ...found.problems]);
      const { plan } = found;
      if (!plan) return;
      touched.current = true;
      setShelf((held) => {
        const next = withPlan(held, plan);
        setForm(formFrom(now.current.inputs, next.plans[next.open]!.texts));
        return next;
      });
      setSaid(`“${plan.name}” came with the link and is kept beside your other plans.`);
    };
    const other = (event: StorageEvent): void => {
      if (event.key !== shelfKey || event.newValue === null) return;
      // Another tab changed the plans: follow it, and stay on the plan of this name.
      touched.current = false;
      setShelf((held) => {
        const theirs = shelfFrom(event.newValue!, sample).shelf;
        const here = theirs.plans.findIndex(({ name }) => name === held.plans[held.open]!.name);
        const next = { ...theirs, open: here < 0 ? theirs.open : here };
        setForm(formFrom(now.current.inputs, next.plans[next.open]!.texts));
        return next;
      });
    };
    // Nothing is asked of the plan before the address is read: the answer would be to another plan.
    const listen = (): Promise<void> =>
      follow().catch(() =>
        setProblems((now) => [...now, 'The plan in the address could not be read. Load the page again.']),
      );
    void listen()
      .then(turnsTaken)
      .then(() => setAwake(true));
    addEventListener('hashchange', listen);
    addEventListener('storage', other);
    return () => {
      removeEventListener('hashchange', listen);
      removeEventListener('storage', other);
    };
  }, []);

  useEffect(() => {
    if (!touched.current) return;
    const problem = saveShelf(shelf);
    if (problem !== undefined) setProblems((now) => (now.includes(problem) ? now : [...now, problem]));
  }, [shelf]);

  const blocked = unread.length > 0;
  const asked = { key, texts: open.texts, habit };
  const works = useOutcomes(books, asked, blocked || key === shown.from, (outcome, from) =>
    setShown({ outcome, from, habit: now.current.habit }),
  );
  const stale = blocked || works.failed;

  const { outcome } = shown;
  const counts = countsOf(outcome);
  const summary = summaryOf(counts);
  useEffect(() => {
    if (!touched.current || key !== shown.from) return undefined;
    const wait = setTimeout(() => setSaid((now) => (undo === undefined ? summary : now)), 900);
    return () => clearTimeout(wait);
  }, [summary, shown.from]);

  const change = (next: Form, message?: string): void => {
    touched.current = true;
    setUndo(message === undefined ? undefined : shelf);
    if (message !== undefined) setSaid(message);
    else if (undo !== undefined) setSaid('');
    setForm(next);
    setShelf(withOpen(shelf, { ...open, texts: textsOf(inputs, next, books) }));
    setQr(undefined);
  };

  /** What was typed is shown in the units of the shop too, and kept as it was typed. */
  const measureIn = (wanted: Habit): void => {
    setHabit(wanted);
    if (Object.keys(form).length > 0) change(formIn(inputsIn(props.inputs, wanted), form));
  };

  const bring = async (file: File): Promise<void> => {
    const { plan, problems: found } = await planFromFile(file);
    setProblems(found);
    if (plan) deed(withPlan(shelf, plan), `“${plan.name}” is read and kept beside your other plans.`, shelf);
  };
  const share = async (): Promise<void> => {
    const link = await planLink(open);
    history.replaceState(history.state, '', link);
    try {
      await navigator.clipboard.writeText(link);
      setSaid('Link copied. It holds every number you changed.');
    } catch {
      setSaid('The link is in the address bar: copy it from there.');
    }
    setUndo(undefined);
  };
  const print = async (): Promise<void> => {
    const link = await planLink(open);
    try {
      const { renderSVG } = await import('uqr');
      setQr({ link, svg: renderSVG(link, { border: 1 }) });
    } catch {
      setQr({ link, svg: '' });
    }
    setTimeout(() => window.print(), 60);
  };
  const save = async (): Promise<void> => {
    const url = URL.createObjectURL(new Blob([await planToFile(open)], { type: 'application/json' }));
    const anchor = document.createElement('a');
    anchor.href = url;
    anchor.download = `${
      open.name
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '') || 'plan'
    }.json`;
    anchor.click();
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
    setSaid(`“${open.name}” is exported.`);
    setUndo(undefined);
  };

  const called = rowNames(inputs, form);
  const nameOf = useMemo(() => namesOf(inputs, props.outputs, form), [called]);
  // Typing changes none of this until an answer comes.
  const lines = useMemo(() => {
    const { equations, outputs, cards } = props;
    const built = outcome.result === props.initial.result;
    const saidIn: UnitOf = (home, role) => habitUnit(home, shown.habit, role);
    const worked = { outcome, equations, outputs, cards, nameOf, saidIn, built };
    const known = (name: string): boolean =>
      outcome.result.steps.some(({ id, value }) => id === name && value !== undefined);
    const figures = (names: readonly string[]) => (
      <ul class="figures">
        {names.filter(known).map((name) => (
          <Later key={name} as="li" class="figure" on={[outcome.result, outcome.trials, nameOf, shown.habit]}>
            {() => <NumberRow name={name} {...worked} />}
          </Later>
        ))}
      </ul>
    );
    return {
      before: figures(before),
      decisions: (
        <ol class="rows">
          {outcome.result.checks.map((check) => (
            <Later
              key={check.id}
              as="li"
              class="decision"
              id={`decision-${check.id}`}
              data-verdict={check.verdict}
              on={[check, outcome.changes[check.id], outcome.trials, nameOf, shown.habit]}
            >
              {() => <Decision check={check} {...worked} />}
            </Later>
          ))}
        </ol>
      ),
      safe: figures(safe),
      after: figures(after),
    };
  }, [outcome, nameOf, shown.habit]);
  const first =
    outcome.result.checks.find(({ verdict }) => verdict === 'fails') ??
    outcome.result.checks.find(({ verdict }) => verdict === 'close');

  return (
    <div class="plan" data-stale={stale} data-awake={awake} data-working={key !== shown.from && !stale}>
      {problems.length > 0 && (
        <div class="problems on-screen" role="alert">
          {problems.map((text) => (
            <p>{text}</p>
          ))}
          <button type="button" onClick={() => setProblems([])}>
            Close
          </button>
        </div>
      )}
      <Later class="shelf on-screen" role="group" aria-label="Plans on this device" on={[shelf]}>
        {() => (
          <ShelfBar
            shelf={shelf}
            onOpen={(at) => deed({ ...shelf, open: at }, `“${shelf.plans[at]!.name}” is open.`)}
            onName={(name) => {
              touched.current = true;
              setShelf(withOpen(shelf, { ...open, name }));
            }}
            onNamed={() => {
              const others = shelf.plans.filter((_, at) => at !== shelf.open);
              const name = freeName(open.name.trim() || 'Plan', others);
              if (name !== open.name) setShelf(withOpen(shelf, { ...open, name }));
            }}
            onNew={() =>
              deed(
                withPlan(shelf, { name: freeName('New plan', shelf.plans), texts: {} }),
                'A new plan starts from the sample’s numbers. Put your own sections in and take the others out; then, under Part, the largest size and the area from above.',
                shelf,
              )
            }
            onCopy={() =>
              deed(
                withPlan(shelf, { ...open, name: freeName(`${open.name} copy`, shelf.plans) }),
                `A copy of “${open.name}” is open.`,
                shelf,
              )
            }
            onDelete={() => deed(withoutOpen(shelf, sample), `“${open.name}” is deleted.`, shelf)}
            onExport={() => void save()}
            onImport={(file) => void bring(file)}
            onShare={() => void share()}
            onPrint={() => void print()}
          />
        )}
      </Later>
      <p class="said on-screen">
        <span role="status">{said}</span>
        {undo !== undefined && (
          <button type="button" onClick={() => deed(undo, 'Undone.')}>
            Undo
          </button>
        )}
      </p>

      <Paper name={open.name} qr={qr} version={props.version} habit={habit} />

      <section class="tally" aria-label="How it stands">
        <p class="counts">
          {(['holds', 'close', 'fails'] as const).map((verdict) => (
            <span class="count-of">
              <strong>{counts[verdict]}</strong> <VerdictMark verdict={verdict} />
            </span>
          ))}
        </p>
        <p class="first on-screen">
          {stale ? (
            <span class="old">
              {works.failed
                ? 'The sums could not be run in this browser. These are the last ones.'
                : `From the last numbers that could be read. Look at: ${unread.map(({ input }) => nameOf(input)).join(', ')}.`}
            </span>
          ) : first ? (
            <>
              First to look at:{' '}
              <a href={`#decision-${first.id}`} onClick={(event) => reveal(event, first.id)}>
                {first.title}
              </a>
            </>
          ) : (
            'Every decision holds.'
          )}
        </p>
      </section>

      <Later
        as="section"
        class="questions on-screen"
        aria-labelledby="questions"
        on={[form, inputs, withSpread, shelf, undo]}
      >
        {() => (
          <>
            <div class="head">
              <h2 id="questions">What you are casting</h2>
              <p class="deeds">
                <button type="button" aria-pressed={withSpread} onClick={() => setWithSpread(!withSpread)}>
                  ± spread
                </button>
                <HabitChoice habit={habit} onChange={measureIn} />
              </p>
            </div>
            <ModelForm
              rows={ListField}
              id="plan"
              inputs={inputs}
              form={form}
              books={books}
              materials={props.materials}
              withSpread={withSpread}
              onChange={change}
              more={<h3>The rest, by subject</h3>}
              late={Later}
            />
          </>
        )}
      </Later>

      <Later as="section" class="decisions" aria-labelledby="decisions" on={[lines, key, awake, stale]}>
        {() => (
          <>
            <h2 id="decisions">Decisions, in the order you take them</h2>
            {lines.before}
            {lines.decisions}
            <section class="on-screen" aria-labelledby="safe">
              <h3 id="safe">To be safe</h3>
              <p class="local">
                Shown to teach, never to permit. Your local rules and licensed people decide.
              </p>
              {lines.safe}
            </section>
            <h3>After the pour</h3>
            {lines.after}
            <AskFront texts={open.texts} books={books} of={key} blocked={!awake || stale} habit={habit} />
            <AskSolver
              texts={open.texts}
              books={books}
              outcome={outcome}
              of={key}
              blocked={!awake || stale}
            />
            {outcome.result.notes.length > 0 && (
              <>
                <h3>What these sums cannot say</h3>
                <ul class="notes">
                  {outcome.result.notes.map((note) => (
                    <li>{sentence(note)}</li>
                  ))}
                </ul>
              </>
            )}
            {outcome.trials > 0 && (
              <p class="how">
                Ranges in brackets hold in 95 of 100 of {outcome.trials} trials, in which every number with a
                spread is drawn within it, once a trial. The same inputs give the same trials.
              </p>
            )}
          </>
        )}
      </Later>

      <Later class="paper-inputs" on={[form, inputs]}>
        {() => <PaperInputs inputs={inputs} form={form} books={books} materials={props.materials} />}
      </Later>
      {/* Last, so that the plan is read while this is on its way. */}
      <div hidden id={packedId} data-packed={packedText()} />
    </div>
  );
}

/** What an outcome is worked from: its sentences are in the units of the shop. */
const keyOf = (habit: Habit, texts: Plan['texts']): string => `${habit} ${JSON.stringify(texts)}`;

/** Goes to a decision without writing its anchor over a shared plan in the address. */
function reveal(event: Event, id: string): void {
  const row = document.getElementById(`decision-${id}`);
  if (!row) return;
  event.preventDefault();
  row.tabIndex = -1;
  row.focus({ preventScroll: true });
  row.scrollIntoView({ block: 'start' });
}

interface Counts {
  readonly holds: number;
  readonly close: number;
  readonly fails: number;
}

function countsOf({ result }: Outcome): Counts {
  const of = (wanted: string): number => result.checks.filter(({ verdict }) => verdict === wanted).length;
  return { holds: of('holds'), close: of('close'), fails: of('fails') };
}

function summaryOf({ holds, close, fails }: Counts): string {
  return `${holds} ${holds === 1 ? 'holds' : 'hold'}, ${close} ${close === 1 ? 'is' : 'are'} close, ${fails} ${fails === 1 ? 'fails' : 'fail'}.`;
}

/** Works the plan off the main thread whenever its texts change; `put` gets the answer, then the fuller ones. */
function useOutcomes(
  books: Books,
  { key, texts, habit }: { readonly key: string; readonly texts: Plan['texts']; readonly habit: Habit },
  idle: boolean,
  put: (outcome: Outcome, from: string) => void,
): { readonly failed: boolean } {
  const worker = useRef<Worker>(undefined);
  const asked = useRef({ number: 0, key: '' });
  const now = useRef(key);
  now.current = key;
  const [failed, setFailed] = useState(false);

  const start = (): Worker => {
    if (worker.current) return worker.current;
    const made = new Worker(new URL('../../workers/plan-spread.ts', import.meta.url), { type: 'module' });
    let kept: Reply | undefined;
    made.onerror = () => setFailed(true);
    made.onmessage = ({ data }: MessageEvent<Reply>) => {
      const { number, key: from } = asked.current;
      if (data.asked !== number) return;
      // The fuller answers bring the same result again: left as it is, so that what hangs on it alone is not drawn again.
      if (kept?.asked !== data.asked) kept = data;
      if (from === now.current) put({ ...data.outcome, result: kept.outcome.result }, from);
    };
    made.postMessage({ books });
    worker.current = made;
    return made;
  };

  useEffect(() => {
    if (idle) return undefined;
    const wait = setTimeout(() => {
      asked.current = { number: asked.current.number + 1, key };
      try {
        start().postMessage({ asked: asked.current.number, texts, habit } satisfies Request);
      } catch {
        setFailed(true);
      }
    }, 150);
    return () => clearTimeout(wait);
  }, [key, idle]);
  useEffect(() => () => worker.current?.terminate(), []);
  return { failed };
}
