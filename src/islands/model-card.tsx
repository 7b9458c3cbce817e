import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Model, Output, Result } from '../../calculators/core/model.ts';
import { printNumber, printQuantity } from '../../calculators/core/print.ts';
import type { Habit } from '../../calculators/core/shop-units.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import {
  formIn,
  inputsIn,
  textsOf,
  unitsFollowing,
  unreadable,
  type Books,
  type Form,
  type Inputs,
  type UnitOf,
} from './form-entries.ts';
import { sentence } from './field.tsx';
import { readHabit } from './habit.ts';
import { HabitChoice } from './habit-choice.tsx';
import { ListField } from './list-field.tsx';
import { ModelForm, type MaterialName } from './model-form.tsx';
import '../styles/model-card.css';

export interface ModelCardProps {
  /** The file of the model in `calculators/models`, without its ending. */
  readonly file: string;
  readonly id: string;
  readonly title: string;
  readonly inputs: Inputs;
  readonly outputs: Readonly<Record<string, Output>>;
  readonly materials: readonly MaterialName[];
  readonly books: Books;
  /** What the usual inputs give, worked at build: the model is fetched when something changes. */
  readonly first: Result;
}

/** Each model is a file of its own to a browser, fetched when it is first needed. */
const files = import.meta.glob<Record<string, unknown>>('../../calculators/models/*.ts');

const isModel = (thing: unknown): thing is Model =>
  typeof thing === 'object' && thing !== null && 'run' in thing && 'inputs' in thing;

type Run = (form: Form, habit: Habit) => Result;

async function runnerOf({ file, inputs, books }: ModelCardProps): Promise<Run> {
  const [module, { completeInputs }, { saidIn }] = await Promise.all([
    files[`../../calculators/models/${file}.ts`]!(),
    import('../../calculators/models/inputs.ts'),
    import('../../calculators/models/pour-plan/say.ts'),
  ]);
  const model = Object.values(module).find(isModel);
  if (!model) throw new Error(`models/${file}.ts has no model`);
  return (form, habit) =>
    saidIn(habit, () => model.run(completeInputs(model, textsOf(inputs, form, books), books).values));
}

/** A model's form and what comes of it: numbers, decisions, the working and what it cannot say. */
export function ModelCard(props: ModelCardProps) {
  const { books } = props;
  const [form, setForm] = useState<Form>({});
  const [habit, setHabit] = useState<Habit>('metric');
  const [run, setRun] = useState<Run>();
  const [failed, setFailed] = useState(false);
  const [said, setSaid] = useState('');
  const kept = useRef(props.first);
  const inputs = useMemo(() => inputsIn(props.inputs, habit), [habit]);
  const unread = useMemo(() => unreadable(inputs, form, books), [form]);
  const touched = Object.keys(form).length > 0;
  // The page was built with metric sentences.
  const asked = touched || habit !== 'metric';
  const unitOf = unitsFollowing(inputs, form, habit);

  useEffect(() => setHabit(readHabit()), []);

  useEffect(() => {
    if (!asked || run) return;
    runnerOf(props).then(
      (made) => setRun(() => made),
      () => setFailed(true),
    );
  }, [asked]);
  const result = useMemo(() => {
    if (run && unread.length === 0) kept.current = asked ? run(form, habit) : props.first;
    return kept.current;
  }, [run, form, habit]);
  const lines = Object.entries(result.values).map(([name, value]) =>
    lineOf(props.outputs[name], name, value, unitOf),
  );
  const spoken = lines.length > 0 ? lines.join(', ') : (result.notes[0] ?? '');
  useEffect(() => {
    if (!touched) return undefined;
    const wait = setTimeout(() => setSaid(spoken), 700);
    return () => clearTimeout(wait);
  }, [spoken]);

  return (
    <section
      class="model-card"
      aria-label={`Calculator: ${props.title}`}
      data-stale={unread.length > 0 || (touched && !run)}
    >
      <ModelForm
        rows={ListField}
        id={props.id.replace('/', '-')}
        inputs={inputs}
        form={form}
        books={books}
        materials={props.materials}
        withSpread={false}
        onChange={setForm}
        more={<h2>The rest</h2>}
      />
      <p class="deeds">
        <button type="button" onClick={() => setForm({})}>
          Reset
        </button>
        <HabitChoice
          habit={habit}
          onChange={(wanted) => {
            setHabit(wanted);
            if (touched) setForm(formIn(inputsIn(props.inputs, wanted), form));
          }}
        />
      </p>
      <div class="outcome">
        {unread.length > 0 && <p class="old">From the last numbers that could be read.</p>}
        {touched && !run && failed && (
          <p class="old">The sums could not be fetched, so these are of the example. Load the page again.</p>
        )}
        <dl>
          {Object.entries(result.values).map(([name, value]) => (
            <div>
              <dt>{props.outputs[name]?.name ?? name}</dt>{' '}
              <dd>{amountOf(props.outputs[name], value, unitOf)}</dd>
            </div>
          ))}
        </dl>
        {result.checks.length > 0 && (
          <ul>
            {result.checks.map((check) => (
              <li>
                <strong>{check.verdict}</strong>: {sentence(check.title)} {sentence(check.why)}
              </li>
            ))}
          </ul>
        )}
        {result.notes.map((note) => (
          <p>{sentence(note)}</p>
        ))}
        {result.steps.length > 0 && (
          <details open>
            <summary>Working</summary>
            <ol>
              {result.steps.map((step) => (
                <li>
                  {step.title}
                  {step.value !== undefined &&
                    ` = ${stepAmount(props.outputs[step.id], step.value, step.unit, unitOf)}`}
                  {step.note !== undefined && `. ${sentence(step.note)}`}
                </li>
              ))}
            </ol>
          </details>
        )}
      </div>
      <p class="unseen" role="status">
        {said}
      </p>
    </section>
  );
}

const amountOf = (output: Output | undefined, value: number, unitOf: UnitOf): string =>
  output ? printQuantity(value, unitOf(output.show ?? output.unit, output)) : printNumber(value);

/** What the bench says for a unit of the equations; the others are said as they are. */
const bench: Partial<Record<UnitSymbol, UnitSymbol>> = {
  K: '°C',
  ΔK: 'Δ°C',
  m: 'mm',
  Pa: 'kPa',
  kg: 'g',
  'm³/s': 'cm³/s',
};

const stepAmount = (
  output: Output | undefined,
  value: number,
  unit: UnitSymbol | undefined,
  unitOf: UnitOf,
): string =>
  output
    ? amountOf(output, value, unitOf)
    : unit
      ? printQuantity(value, unitOf(bench[unit] ?? unit))
      : printNumber(value);

const lineOf = (output: Output | undefined, name: string, value: number, unitOf: UnitOf): string =>
  `${output?.name ?? name} ${amountOf(output, value, unitOf)}`;
