import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Formula } from '../../calculators/core/formula.ts';
import type { Exercise, Option, Variant } from '../../calculators/exercises/definition.ts';
import type { ResolvedMaterials } from '../../calculators/models/inputs.ts';
import type { Marked } from '../../calculators/exercises/marking.ts';
import { partNumbers, withNumbers } from '../../calculators/exercises/question-text.ts';
import type { WorkedLine } from '../../calculators/exercises/worked.ts';
import { noteMarked } from './again.ts';
import { Sign } from './sign.tsx';
import { firstSeed, fresh, keep, readKept, type Kept } from './exercise-store.ts';

/** An input a design exercise lets the learner change. */
export interface Lever {
  readonly input: string;
  readonly name: string;
  /** As it stands at the start. */
  readonly text: string;
  /** Where it is a choice: its values and what they are called. */
  readonly options?: Readonly<Record<string, string>>;
}

export interface ExerciseProps {
  readonly exercise: Exercise;
  /** The formulas it computes with, as plain data. */
  readonly formulas: Readonly<Record<string, Formula>>;
  /** Name and sign of what each part asks for. */
  readonly sought: readonly { readonly name: string; readonly sign: string }[];
  readonly levers: readonly Lever[];
  /** What a model's numbers come from; empty for an exercise on formulas. */
  readonly materials: ResolvedMaterials;
  /** The first variant and its working, so that the page reads without a script. */
  readonly first: Variant;
  readonly worked: readonly (readonly WorkedLine[])[];
}

const load = (): Promise<typeof import('./exercise-work.ts')> => import('./exercise-work.ts');

export function ExerciseIsland(props: ExerciseProps): JSX.Element {
  const { exercise, formulas, sought, levers, materials, first, worked } = props;
  const { id } = exercise;
  const [kept, setKept] = useState<Kept>(fresh);
  const [variant, setVariant] = useState(first);
  const [working, setWorking] = useState(worked);
  const [says, setSays] = useState('');
  const dirty = useRef(false);

  useEffect(() => {
    const before = readKept(id);
    if (!before) return;
    setKept(before);
    if (before.seed !== firstSeed) void show(before.seed);
  }, []);
  useEffect(() => {
    if (dirty.current) keep(id, kept);
  }, [kept]);

  function change(next: Partial<Kept>): void {
    dirty.current = true;
    setKept((now) => ({ ...now, ...next }));
  }

  async function show(seed: string): Promise<void> {
    const { drawVariant, libraryFor, workedOf } = await load();
    const library = await libraryFor(exercise, formulas, materials);
    const drawn = drawVariant(exercise, seed);
    setVariant(drawn);
    setWorking(workedOf(exercise, drawn, library));
  }

  async function renew(): Promise<void> {
    const seed = String(Number(kept.seed) + 1);
    await show(seed);
    change({ ...fresh, seed });
    setSays('New numbers.');
  }

  async function check(): Promise<void> {
    const work = await load();
    const library = await work.libraryFor(exercise, formulas, materials);
    const answer = kept.answers['answer'] ?? '';
    let marked: Record<string, Marked> = {};
    switch (exercise.kind) {
      case 'number':
        marked = { answer: work.markNumber(exercise, variant, answer, library) };
        break;
      case 'steps':
        marked = work.markSteps(exercise, variant, kept.answers, library);
        break;
      case 'choice':
      case 'diagnose':
        if (kept.chosen.length === 0) return setSays('Choose first.');
        marked = { answer: work.markChoice(exercise, kept.chosen) };
        break;
      case 'order':
        marked = { answer: work.markOrder(exercise, placed) };
        break;
      case 'design': {
        const model = library.model(exercise.model)!;
        const { verdict, marks, of, says } = work.markDesign(exercise, kept.answers, model, materials);
        marked = { answer: { verdict, unit: 'none', marks, of, says } };
        break;
      }
      case 'text':
        break;
    }
    const all = Object.values(marked);
    const read = all.some(({ verdict }) => verdict !== 'unread') || exercise.kind === 'text';
    change({ marked, tried: kept.tried || read });
    if (read && all.length > 0)
      noteMarked(
        id,
        all.every(({ verdict }) => verdict === 'right'),
      );
    setSays(read && all.length > 0 ? summary(all) : '');
  }

  const placed = kept.chosen.length === variant.order.length ? kept.chosen : variant.order;
  const computed = exercise.kind === 'number' || exercise.kind === 'steps';
  const answered = (part: string, text: string): void => {
    const { [part]: _, ...marked } = kept.marked;
    change({ answers: { ...kept.answers, [part]: text }, marked });
    setSays('');
  };
  const field = (part: string, at: number): JSX.Element => (
    <AnswerField
      id={`${id}-${part}`}
      sought={sought[at]!}
      part={exercise.kind === 'steps'}
      text={kept.answers[part] ?? ''}
      marked={kept.marked[part]}
      change={(text) => answered(part, text)}
    />
  );

  return (
    <form
      // Without its script a form of this kind goes nowhere, so no answer is lost to a reload.
      method="dialog"
      class="exercise"
      data-tried={kept.tried ? 'yes' : 'no'}
      onSubmit={(event) => {
        event.preventDefault();
        void check();
      }}
    >
      <Paragraphs text={withNumbers(exercise.question, variant.given)} />
      {exercise.kind === 'number' && field('answer', 0)}
      {exercise.kind === 'steps' && (
        <ol class="exercise-parts">
          {exercise.parts.map((part, at) => (
            <li key={part.id}>
              <p id={`${id}-${part.id}-asks`}>
                {withNumbers(part.question, partNumbers(variant.given, part.given))} <Marks of={part.marks} />
              </p>
              {field(part.id, at)}
              {kept.hints > 0 && (
                <Hints
                  hints={part.hints}
                  shown={part.hints.length}
                  given={partNumbers(variant.given, part.given)}
                />
              )}
            </li>
          ))}
        </ol>
      )}
      {exercise.kind === 'diagnose' && (
        <ul>
          {exercise.evidence.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      {'options' in exercise && (
        <Options
          id={id}
          options={exercise.options}
          order={variant.order}
          chosen={kept.chosen}
          change={(chosen) => {
            change({ chosen, marked: {} });
            setSays('');
          }}
        />
      )}
      {exercise.kind === 'order' && (
        <Ordering
          id={id}
          items={exercise.items}
          placed={placed}
          change={(chosen, moved) => {
            change({ chosen, marked: {} });
            setSays(moved);
          }}
        />
      )}
      {levers.map((lever) => (
        <LeverField
          key={lever.input}
          id={`${id}-${lever.input}`}
          lever={lever}
          text={kept.answers[lever.input] ?? lever.text}
          change={(text) => {
            change({ answers: { ...kept.answers, [lever.input]: text }, marked: {} });
            setSays('');
          }}
        />
      ))}
      {exercise.kind === 'text' && (
        <textarea
          class="needs-script"
          aria-label="Your answer"
          rows={5}
          value={kept.answers['answer'] ?? ''}
          onInput={({ currentTarget }) => answered('answer', currentTarget.value)}
        />
      )}
      {!computed && (
        <div role="status">{kept.marked['answer'] && <Verdict marked={kept.marked['answer']} />}</div>
      )}
      {exercise.kind === 'number' && kept.marked['answer']?.verdict === 'right' && exercise.worked && (
        <Paragraphs text={exercise.worked} />
      )}
      <Hints hints={exercise.hints} shown={kept.hints} given={variant.given} />
      <p class="exercise-keys needs-script">
        <button type="submit" class="first">
          {exercise.kind === 'text' ? 'Compare' : 'Check'}
        </button>
        {hintCount(exercise) > 0 && (
          <HintKey
            of={hintCount(exercise)}
            shown={kept.hints}
            unnumbered={exercise.kind === 'steps' && kept.hints === 0}
            ask={() => change({ hints: kept.hints + 1 })}
          />
        )}
        {(computed || exercise.kind === 'order') && (
          <button type="button" onClick={() => void renew()}>
            {computed ? 'New numbers' : 'Start again'}
          </button>
        )}
      </p>
      <p role="status" class="exercise-says">
        {says}
      </p>
      <details class="exercise-worked">
        <summary>Worked answer</summary>
        <Worked exercise={exercise} lines={working} levers={levers} />
      </details>
    </form>
  );
}

const hintCount = (exercise: Exercise): number =>
  exercise.hints.length ||
  (exercise.kind === 'steps' && exercise.parts.some(({ hints }) => hints.length > 0) ? 1 : 0);

function summary(all: readonly Marked[]): string {
  const got = all.reduce((sum, { marks }) => sum + marks, 0);
  const of = all.reduce((sum, marked) => sum + marked.of, 0);
  return `${got} of ${of} ${of === 1 ? 'mark' : 'marks'}.`;
}

export const Marks = ({ of }: { of: number }): JSX.Element => (
  <span class="exercise-marks">{`${of} ${of === 1 ? 'mark' : 'marks'}`}</span>
);

export function Paragraphs({ text }: { text: string }): JSX.Element {
  return (
    <>
      {text.split(/\n\s*\n/).map((part) => (
        <p key={part}>{part}</p>
      ))}
    </>
  );
}

interface AnswerFieldProps {
  readonly id: string;
  readonly sought: { readonly name: string; readonly sign: string };
  /** One of several parts: what it asks has the id of the field with `-asks`. */
  readonly part?: boolean;
  readonly text: string;
  readonly marked: Marked | undefined;
  readonly change: (text: string) => void;
}

export function AnswerField({
  id,
  sought,
  part = false,
  text,
  marked,
  change,
}: AnswerFieldProps): JSX.Element {
  const name = sought.name.charAt(0).toUpperCase() + sought.name.slice(1);
  return (
    <div class="exercise-answer">
      <label for={id}>
        {name}, <Sign text={sought.sign} />, with its unit
      </label>
      <span>
        <Sign text={sought.sign} /> ={' '}
        <input
          id={id}
          type="text"
          inputMode="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={text}
          aria-invalid={marked?.verdict === 'unread'}
          aria-describedby={`${part ? `${id}-asks ` : ''}${id}-says`}
          onInput={({ currentTarget }) => change(currentTarget.value)}
        />
      </span>
      <div id={`${id}-says`} role="status">
        {marked && <Verdict marked={marked} />}
      </div>
    </div>
  );
}

interface LeverFieldProps {
  readonly id: string;
  readonly lever: Lever;
  readonly text: string;
  readonly change: (text: string) => void;
}

export function LeverField({ id, lever: { name, options }, text, change }: LeverFieldProps): JSX.Element {
  return (
    <div class="exercise-answer">
      <label for={id}>{name}</label>
      <span>
        {options ? (
          <select id={id} value={text} onChange={({ currentTarget }) => change(currentTarget.value)}>
            {Object.entries(options).map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        ) : (
          <input
            id={id}
            type="text"
            autocomplete="off"
            value={text}
            onInput={({ currentTarget }) => change(currentTarget.value)}
          />
        )}
      </span>
    </div>
  );
}

/** A shape and a word first, a tint second. */
export function Verdict({ marked }: { marked: Marked }): JSX.Element {
  const { verdict, marks, of } = marked;
  const word = verdict === 'right' ? (marks === of ? '✓ Right.' : '✓ The number is right.') : '✗ Not yet.';
  return (
    <p class="exercise-verdict" data-verdict={verdict}>
      {verdict !== 'unread' && <strong>{word} </strong>}
      {marked.says.map((say, at) => (
        <span key={say} class={at > 0 ? 'exercise-say' : undefined}>
          {say}
        </span>
      ))}
    </p>
  );
}

interface HintKeyProps {
  readonly of: number;
  readonly shown: number;
  readonly unnumbered: boolean;
  readonly ask: () => void;
}

/** Asks for the next hint. It stays when there is none left: whoever pressed it by the keyboard stands on it. */
export function HintKey({ of, shown, unnumbered, ask }: HintKeyProps): JSX.Element {
  const left = shown < of;
  return (
    <button type="button" aria-disabled={!left} onClick={() => left && ask()}>
      {!left ? 'No more hints' : unnumbered ? 'Hints' : `Hint ${shown + 1} of ${of}`}
    </button>
  );
}

interface HintsProps {
  readonly hints: readonly string[];
  readonly shown: number;
  readonly given: Readonly<Record<string, string>>;
}

export function Hints({ hints, shown, given }: HintsProps): JSX.Element {
  return (
    <ul class="exercise-hints" aria-live="polite">
      {hints.slice(0, shown).map((hint) => (
        <li key={hint}>{withNumbers(hint, given)}</li>
      ))}
    </ul>
  );
}

interface OptionsProps {
  readonly id: string;
  readonly options: readonly Option[];
  readonly order: readonly number[];
  readonly chosen: readonly number[];
  readonly change: (chosen: number[]) => void;
}

export function Options({ id, options, order, chosen, change }: OptionsProps): JSX.Element {
  const many = options.filter(({ right }) => right).length > 1;
  return (
    <fieldset class="exercise-options">
      <legend>{many ? 'Choose every one that fits.' : 'Choose one.'}</legend>
      {order.map((at) => (
        <label key={at}>
          <input
            type={many ? 'checkbox' : 'radio'}
            name={id}
            checked={chosen.includes(at)}
            onChange={({ currentTarget: { checked } }) =>
              change(many ? [...chosen.filter((other) => other !== at), ...(checked ? [at] : [])] : [at])
            }
          />{' '}
          {options[at]!.text}
        </label>
      ))}
    </fieldset>
  );
}

interface OrderingProps {
  readonly id: string;
  readonly items: readonly string[];
  readonly placed: readonly number[];
  readonly change: (placed: number[], moved: string) => void;
}

export function Ordering({ id, items, placed, change }: OrderingProps): JSX.Element {
  const move = (from: number, to: number, word: string): void => {
    const next = [...placed];
    const [item] = next.splice(from, 1);
    next.splice(to, 0, item!);
    change(next, `Moved to place ${to + 1}.`);
    // A button that moves with its line loses the focus; the hand on the keyboard is still there.
    requestAnimationFrame(() => document.getElementById(`${id}-${word}-${item!}`)?.focus());
  };
  const key = (from: number, to: number, sign: string, word: string): JSX.Element => (
    <button
      type="button"
      id={`${id}-${word}-${placed[from]!}`}
      class="needs-script"
      aria-disabled={to < 0 || to >= items.length}
      aria-label={`Move ${word}: ${items[placed[from]!]!}`}
      onClick={() => to >= 0 && to < items.length && move(from, to, word)}
    >
      {sign}
    </button>
  );
  return (
    <ol class="exercise-order">
      {placed.map((item, at) => (
        <li key={item}>
          <div>
            <span>{items[item]}</span>
            {key(at, at - 1, '↑', 'up')}
            {key(at, at + 1, '↓', 'down')}
          </div>
        </li>
      ))}
    </ol>
  );
}

interface WorkedProps {
  readonly exercise: Exercise;
  readonly lines: readonly (readonly WorkedLine[])[];
  readonly levers: readonly Lever[];
}

export function Worked({ exercise, lines, levers }: WorkedProps): JSX.Element {
  return (
    <>
      {lines.map((part, at) => (
        <Lines key={at} title={exercise.kind === 'steps' ? `Part ${at + 1}` : ''} lines={part} />
      ))}
      {'options' in exercise && (
        <ul>
          {exercise.options.map(({ text, right, because }) => (
            <li key={text}>
              <strong>{right ? '✓' : '✗'}</strong> {text}: {because}
            </li>
          ))}
        </ul>
      )}
      {exercise.kind === 'order' && (
        <>
          <ol>
            {exercise.items.map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ol>
          <p>{exercise.because}</p>
        </>
      )}
      {exercise.kind === 'design' && (
        <ul>
          {levers.map(({ input, name, options }) => {
            const text = exercise.passing[input] ?? '';
            return text && <li key={input}>{`${name}: ${options?.[text] ?? text}`}</li>;
          })}
        </ul>
      )}
      {exercise.kind === 'text' && (
        <ul>
          {exercise.rubric.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      )}
      {exercise.worked !== undefined && <Paragraphs text={exercise.worked} />}
    </>
  );
}

function Lines({ title, lines }: { title: string; lines: readonly WorkedLine[] }): JSX.Element {
  return (
    <div class="exercise-lines">
      {title && <strong>{title}</strong>}
      {lines.map(({ kind, text }) => (
        <p key={text} data-kind={kind}>
          {kind === 'note' ? text : <Line text={text} />}
        </p>
      ))}
    </div>
  );
}

/** A line of sums with its indices lowered and its powers raised. */
export function Line({ text }: { text: string }): JSX.Element {
  return (
    <>
      {text.split(/([\p{L}]+_[\p{L}\d_]+|\^[\p{L}\d.]+)/u).map((piece, at) => {
        if (at % 2 === 0) return piece;
        if (piece.startsWith('^')) return <sup key={at}>{piece.slice(1)}</sup>;
        const [head, ...index] = piece.split('_');
        return (
          <span key={at}>
            {head}
            <sub>{index.join(',')}</sub>
          </span>
        );
      })}
    </>
  );
}
