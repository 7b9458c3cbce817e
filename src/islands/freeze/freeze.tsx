import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Formula } from '../../../calculators/core/formula.ts';
import type { Input } from '../../../calculators/core/model.ts';
import { unitLabel } from '../../../calculators/core/print.ts';
import { fromSI } from '../../../calculators/core/units.ts';
import { completeInputs } from '../../../calculators/models/inputs.ts';
import { formFrom, textsOf, unreadable, type Books, type Form, type Inputs } from '../form-entries.ts';
import { Kept } from '../kept.tsx';
import { ModelForm, type MaterialName } from '../model-form.tsx';
import { Answers } from './answers.tsx';
import { seconds } from './answer.ts';
import { partOf, type Asked } from './part.ts';
import { shown, type ShapeName } from './shapes.ts';
import { useSolver } from './solver.ts';
import { emptyTee, readSquares, writeSquares } from './squares.ts';
import '../../styles/freeze.css';

export interface FreezeProps {
  readonly inputs: Inputs;
  readonly materials: readonly MaterialName[];
  readonly books: Books;
  /** The quick rule the solver stands beside, without its prose. */
  readonly rule: Formula;
}

const mark = '#freeze:';
const none: Readonly<Record<string, readonly string[]>> = {};

/** Reads and writes what stands after `#`; fetched when there is something to read or to keep. */
const fragments = () => import('../../../calculators/models/pour-plan/fragment.ts');

/** Put a section together or draw it, see it freeze. The address keeps what was put in. */
export function FreezeSection(props: FreezeProps) {
  const { inputs, books, rule } = props;
  const [form, setForm] = useState<Form>({});
  const [awake, setAwake] = useState(false);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [said, setSaid] = useState('');
  const model = useMemo(() => ({ id: 'freeze', inputs }), [inputs]);
  const own = useRef('');
  // Squared paper is fetched when somebody wants to draw.
  const [Grid, setGrid] = useState<typeof import('./grid.tsx').Grid>();

  useEffect(() => {
    const follow = async (): Promise<void> => {
      if (!location.hash.startsWith(mark) || location.hash === own.current) return;
      own.current = location.hash;
      const { readFragment } = await fragments();
      const found = readFragment(model, location.hash.slice(mark.length));
      setForm(formFrom(inputs, found.inputs));
      setProblems(found.problems);
    };
    void follow().then(() => setAwake(true));
    const listen = (): void => void follow();
    addEventListener('hashchange', listen);
    return () => removeEventListener('hashchange', listen);
  }, []);

  const texts = useMemo(() => textsOf(inputs, form, books), [form]);
  const key = JSON.stringify(texts);
  const unread = useMemo(() => unreadable(inputs, form, books), [form]);
  const shape = (typeof form['shape'] === 'string' ? form['shape'] : 'tee') as ShapeName;
  const asked = useMemo((): { values: ReturnType<typeof completeInputs>['values']; found: Asked } => {
    const { values } = completeInputs(model, texts, books);
    const memory = (navigator as { readonly deviceMemory?: number } | undefined)?.deviceMemory;
    return { values, found: partOf(values, 48, rule, memory) };
  }, [key]);
  const { found, values } = asked;
  const ready = awake && unread.length === 0 && found.ok;
  const solver = useSolver(key, ready ? found.part : undefined);
  const wrong = found.ok ? none : found.problems;
  const stale = !ready || solver.going !== undefined || solver.behind || solver.refused !== undefined;

  useEffect(() => {
    if (!awake) return undefined;
    let late = false;
    const keep = async (): Promise<void> => {
      const changed = Object.keys(texts).length > 0;
      const link = changed ? `${mark}${(await fragments()).writeFragment(model, texts)}` : '';
      if (late || link === location.hash) return;
      own.current = link;
      history.replaceState(history.state, '', link || location.pathname + location.search);
    };
    void keep();
    return () => {
      late = true;
    };
  }, [key, awake]);

  const change = (next: Form): void => {
    setSaid('');
    setForm(next);
  };
  const text = typeof form['squares'] === 'string' ? form['squares'] : '';
  const sheet = readSquares(text) ?? emptyTee();
  useEffect(() => {
    if (shape === 'drawn') void import('./grid.tsx').then((found) => setGrid(() => found.Grid));
  }, [shape]);
  const save = async (what: 'numbers' | 'pictures'): Promise<void> => {
    const { csvOf, download, savePicture } = await import('./saving.ts');
    if (what === 'numbers' && solver.solved) {
      download(`${name}.csv`, new Blob([csvOf(solver.solved, location.href)], { type: 'text/csv' }));
    } else {
      savePicture('map-when', `${name}.png`);
      savePicture('map-last', `${name}-order.png`);
    }
    setSaid(`The ${what} are saved.`);
  };
  const chilled = form['chill'] === 'under' || (shape === 'drawn' && sheet.squares.includes(2));
  const visible = useMemo(() => shown(inputs, shape, chilled), [shape, chilled]);
  const { solved, going } = solver;
  const name = `freeze-${shape}`;

  return (
    <div class="freeze" data-awake={awake} data-solved={solved !== undefined && !stale} data-stale={stale}>
      {problems.length > 0 && (
        <div class="problems on-screen" role="alert">
          {problems.map((problem) => (
            <p>{problem}</p>
          ))}
          <button type="button" onClick={() => setProblems([])}>
            Close
          </button>
        </div>
      )}
      <section class="questions on-screen" aria-labelledby="put-together">
        <h2 id="put-together">Put the section together</h2>
        <Kept on={[visible, form, wrong]}>
          {() => (
            <ModelForm
              id="freeze"
              inputs={visible}
              form={form}
              books={books}
              materials={props.materials}
              withSpread={false}
              problems={wrong}
              onChange={change}
              more={<h3>Numbers of metal and mould</h3>}
            />
          )}
        </Kept>
        {shape === 'drawn' && Grid && (
          <Grid
            sheet={sheet}
            turned={form['turned'] === true}
            says={wrong['squares'] ?? []}
            onChange={(next) => change({ ...form, squares: writeSquares(next) })}
          />
        )}
      </section>

      <div class="answers">
        <dl class="on-paper beside">
          {Object.entries(visible).map(([key, input]) => (
            <div>
              <dt>{input.name}</dt>
              <dd>{writtenOut(input, values[key], props.materials)}</dd>
            </div>
          ))}
        </dl>
        <div class="state on-screen">
          <p role="status">
            {!awake
              ? 'Waiting for the script.'
              : unread.length > 0
                ? 'A number could not be read: look beside its field. What is shown is from before.'
                : !found.ok
                  ? 'Something is asked for that cannot be: look beside its field. What is shown is from before.'
                  : (solver.refused ??
                    (going
                      ? going.pass === 'coarse' && solved === undefined
                        ? 'Solving, a coarse answer first.'
                        : 'Solving finer.'
                      : said || (solved ? `Solved in ${Math.round(solved.frozen.took)} ms.` : '')))}
          </p>
          <progress
            value={going?.progress ?? (solved ? 1 : 0)}
            max="1"
            aria-label="Part of the freezing that is solved"
          />
          <button type="button" disabled={!going} onClick={solver.stop}>
            Stop
          </button>
        </div>
        {solver.live && !solved && <p class="so-far">{seconds(solver.live.time)} of freezing so far.</p>}
        {solved && (
          <Kept on={[solved, values, stale]}>
            {() => <Answers solved={solved} values={values} quick={rule} stale={stale} />}
          </Kept>
        )}
        {solved && (
          <p class="deeds on-screen">
            <button type="button" onClick={() => window.print()}>
              Print
            </button>
            <button type="button" onClick={() => void save('numbers')}>
              Save numbers, CSV
            </button>
            <button type="button" onClick={() => void save('pictures')}>
              Save pictures, PNG
            </button>
            <button
              type="button"
              onClick={() =>
                void navigator.clipboard.writeText(location.href).then(
                  () => setSaid('Link copied. It holds every number you changed.'),
                  () => setSaid('The link is in the address bar: copy it from there.'),
                )
              }
            >
              Copy link
            </button>
          </p>
        )}
      </div>
    </div>
  );
}

/** What was put in, for the paper: a sheet must tell what it is of. */
function writtenOut(input: Input, value: unknown, materials: readonly MaterialName[]): string {
  if (input.kind === 'quantity' && typeof value === 'number') {
    const unit = input.show ?? input.unit;
    return `${String(Number(fromSI(value, unit).toPrecision(4))).replace('-', '−')} ${unitLabel(unit)}`;
  }
  if (input.kind === 'flag') return value === true ? 'yes' : 'no';
  const text = typeof value === 'string' ? value : '';
  if (input.kind === 'choice') return input.options[text] ?? text;
  return materials.find(({ id }) => id === text)?.name ?? text;
}
