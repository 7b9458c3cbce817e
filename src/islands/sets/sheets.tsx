import { parseEquation } from '../../../calculators/core/expression.ts';
import type { SymbolSpec } from '../../../calculators/core/formula.ts';
import { printNumber, unitLabel } from '../../../calculators/core/print.ts';
import { substituted } from '../../../calculators/core/typeset.ts';
import type { Library } from '../../../calculators/exercises/answer.ts';
import type { Exercise, Variant } from '../../../calculators/exercises/definition.ts';
import { partNumbers, withNumbers } from '../../../calculators/exercises/question-text.ts';
import { variantFor } from '../../../calculators/exercises/sets/learner.ts';
import { rightAnswers } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { marksOf, type GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { workedOf } from '../../../calculators/exercises/worked.ts';
import { Line, Marks, Paragraphs, Worked } from '../exercise.tsx';
import { Sign } from '../sign.tsx';
import { leversOf, soughtOf } from './workshop.ts';

interface SheetProps {
  readonly set: GradedSet;
  readonly library: Library;
  readonly name: string;
}

const letter = (at: number): string => String.fromCharCode(65 + at);

export function WorkSheet({
  set,
  library,
  name,
  named,
  square,
  version,
}: SheetProps & { readonly named: boolean; readonly square: string; readonly version: string }) {
  return (
    <article class="paper-sheet">
      <div class="top">
        <div>
          <h2>
            <bdi>{set.title}</bdi>
          </h2>
          <p>
            {set.asks}:{' '}
            {named ? (
              <strong>
                <bdi>{name}</bdi>
              </strong>
            ) : (
              `………………………… (${name})`
            )}{' '}
            &emsp; Date: ……………
          </p>
          <p class="soft">
            {set.marks} marks. Edition {set.edition}, version {version}.
            {set.rules.closes !== undefined && ` Hand in by ${set.rules.closes}.`}
            {square !== '' && ' The square opens the live set.'}
          </p>
        </div>
        {square !== '' && (
          <div
            class="square"
            role="img"
            aria-label="Square code that opens the live set"
            dangerouslySetInnerHTML={{ __html: square }}
          />
        )}
      </div>
      {set.note !== undefined && <p>{set.note}</p>}
      {set.questions.map((exercise, at) => (
        <PaperQuestion
          key={exercise.id}
          number={at + 1}
          exercise={exercise}
          variant={variantFor(set, name, exercise)}
          set={set}
          library={library}
        />
      ))}
    </article>
  );
}

interface PaperQuestionProps {
  readonly set: GradedSet;
  readonly library: Library;
  readonly number: number;
  readonly exercise: Exercise;
  readonly variant: Variant;
}

function PaperQuestion({ set, library, number, exercise, variant }: PaperQuestionProps) {
  const sought = soughtOf(exercise, library);
  return (
    <section class="paper-question">
      <h3>
        {number}. {exercise.title} <Marks of={marksOf(exercise)} />
      </h3>
      <Paragraphs text={withNumbers(exercise.question, variant.given)} />
      {exercise.kind === 'diagnose' && (
        <ul>
          {exercise.evidence.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      {exercise.kind === 'number' && (
        <>
          <div class="space" data-tall="number" />
          <p class="line-for-answer">
            <Sign text={sought[0]!.sign} /> ={' '}
          </p>
        </>
      )}
      {exercise.kind === 'steps' && (
        <ol type="a">
          {exercise.parts.map((part, at) => (
            <li key={part.id}>
              <p>
                {withNumbers(part.question, partNumbers(variant.given, part.given))} <Marks of={part.marks} />
              </p>
              <div class="space" data-tall="number" />
              <p class="line-for-answer">
                <Sign text={sought[at]!.sign} /> ={' '}
              </p>
            </li>
          ))}
        </ol>
      )}
      {'options' in exercise && (
        <>
          <p>
            {exercise.options.filter(({ right }) => right).length > 1
              ? 'Tick every one that fits.'
              : 'Tick one.'}
          </p>
          <ul class="boxes">
            {variant.order.map((at, place) => (
              <li key={at}>
                <span class="box" /> {letter(place)}. {exercise.options[at]!.text}
              </li>
            ))}
          </ul>
        </>
      )}
      {exercise.kind === 'order' && (
        <>
          <p>Number the boxes in order.</p>
          <ul class="boxes">
            {variant.order.map((at, place) => (
              <li key={at}>
                <span class="box" /> {letter(place)}. {exercise.items[at]}
              </li>
            ))}
          </ul>
        </>
      )}
      {exercise.kind === 'design' && (
        <>
          <p>Work it in the live set, and write down what you chose.</p>
          {leversOf(exercise, library, set.stock).map(({ input, name, text, options }) => (
            <p key={input} class="line-for-answer">
              {name}, now {options?.[text] ?? text}:{' '}
            </p>
          ))}
        </>
      )}
      {exercise.kind === 'text' && <div class="space" data-tall="text" />}
    </section>
  );
}

export function KeySheet({ set, library, name, worked }: SheetProps & { readonly worked: boolean }) {
  return (
    <article class="paper-sheet">
      <h2>
        Key: <bdi>{set.title}</bdi>
      </h2>
      <p>
        For{' '}
        <strong>
          <bdi>{name}</bdi>
        </strong>
        . {set.marks} marks, edition {set.edition}.
      </p>
      <ol>
        {set.questions.map((exercise) => (
          <li key={exercise.id} class="paper-question">
            <strong>{exercise.title}</strong> <Marks of={marksOf(exercise)} />
            <KeyAnswer
              set={set}
              library={library}
              exercise={exercise}
              variant={variantFor(set, name, exercise)}
              worked={worked}
            />
          </li>
        ))}
      </ol>
    </article>
  );
}

interface KeyAnswerProps {
  readonly set: GradedSet;
  readonly library: Library;
  readonly exercise: Exercise;
  readonly variant: Variant;
  readonly worked: boolean;
}

function KeyAnswer({ set, library, exercise, variant, worked }: KeyAnswerProps) {
  const letters =
    'options' in exercise
      ? variant.order.flatMap((at, place) => (exercise.options[at]!.right ? [letter(place)] : [])).join(', ')
      : exercise.kind === 'order'
        ? exercise.items.map((_, at) => letter(variant.order.indexOf(at))).join(', ')
        : undefined;
  let right: Readonly<Record<string, string>>;
  let lines: ReturnType<typeof workedOf>;
  try {
    right = rightAnswers(exercise, variant, library);
    lines = workedOf(exercise, variant, library);
  } catch (error) {
    return <p>It could not be worked out: {error instanceof Error ? error.message : ''}</p>;
  }
  return (
    <>
      <p>{letters ?? Object.values(right).join('; ')}</p>
      {worked && (
        <Worked
          exercise={exercise}
          lines={lines}
          levers={exercise.kind === 'design' ? leversOf(exercise, library, set.stock) : []}
        />
      )}
    </>
  );
}

/** The constants the set's formulas use, and the formulas where the instructor gives them. */
export function Constants({ set, formulas }: { readonly set: GradedSet; readonly formulas: boolean }) {
  const all = Object.values(set.formulas);
  const constants = new Map(
    all.flatMap(({ symbols }) =>
      Object.entries<SymbolSpec>(symbols).flatMap(([name, spec]) =>
        spec.constant === undefined
          ? []
          : [
              [
                `${spec.name} ${spec.unit}`,
                { ...spec, sign: spec.sign ?? name, constant: spec.constant },
              ] as const,
            ],
      ),
    ),
  );
  if (constants.size === 0 && !formulas) return null;
  return (
    <article class="paper-sheet">
      <h2>{formulas ? 'Constants and formulas' : 'Constants'}</h2>
      {constants.size > 0 && (
        <ul>
          {[...constants.values()].map(({ name, sign, constant, unit }) => (
            <li key={name}>
              <Sign text={sign} /> ={' '}
              {printNumber(constant, { figures: 7 }).replace(/0+$/, (zeros) =>
                String(constant).endsWith(zeros) ? zeros : '',
              )}
              {unitLabel(unit) && ` ${unitLabel(unit)}`}, {name}
            </li>
          ))}
        </ul>
      )}
      {formulas && (
        <ul>
          {all.map(({ id, title, equation, symbols }) => {
            const { left, right } = parseEquation(equation);
            const sign = (name: string): string =>
              (symbols as Readonly<Record<string, SymbolSpec>>)[name]?.sign ?? name;
            return (
              <li key={id}>
                {title}: <Line text={`${substituted(left, sign)} = ${substituted(right, sign)}`} />
              </li>
            );
          })}
        </ul>
      )}
    </article>
  );
}
