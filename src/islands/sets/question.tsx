import type { Library } from '../../../calculators/exercises/answer.ts';
import type { Exercise, Variant } from '../../../calculators/exercises/definition.ts';
import { partNumbers, withNumbers } from '../../../calculators/exercises/question-text.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';
import type { QuestionMark } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { marksOf } from '../../../calculators/exercises/sets/set-file.ts';
import { workedOf } from '../../../calculators/exercises/worked.ts';
import {
  AnswerField,
  HintKey,
  Hints,
  LeverField,
  Marks,
  Options,
  Ordering,
  Paragraphs,
  Verdict,
  Worked,
} from '../exercise.tsx';
import { leversOf, soughtOf } from './workshop.ts';

export interface QuestionProps {
  readonly set: GradedSet;
  readonly number: number;
  readonly exercise: Exercise;
  readonly variant: Variant;
  readonly library: Library;
  readonly given: Given;
  readonly marked: QuestionMark | undefined;
  readonly hints: boolean;
  readonly worked: boolean;
  readonly change: (given: Given, said?: string) => void;
}

/** One question of a set with the fields to answer it. */
export function Question(props: QuestionProps) {
  const { set, number, exercise, variant, library, given, marked, change } = props;
  const sought = soughtOf(exercise, library);
  const levers = exercise.kind === 'design' ? leversOf(exercise, library, set.stock) : [];
  const texts = given.texts ?? {};
  const chosen = given.chosen ?? [];
  const id = `q-${exercise.id}`;
  const write = (part: string, text: string): void => change({ ...given, texts: { ...texts, [part]: text } });
  // A field left empty was not marked: nothing is said beside it.
  const markedPart = (part: string) =>
    (texts[part] ?? '').trim() === '' ? undefined : marked?.parts.find((one) => one.id === part)?.marked;
  const shownHints = given.hints ?? 0;
  const allHints = exercise.kind === 'steps' ? [] : exercise.hints;
  const partHints = exercise.kind === 'steps' && exercise.parts.some(({ hints }) => hints.length > 0);
  const hintsInAll = partHints ? 1 : allHints.length;
  const numbered = exercise.kind === 'steps' ? exercise.hints : [];
  return (
    <>
      <h2 id={`${id}-title`}>
        {number}. {exercise.title} <Marks of={marksOf(exercise)} />
      </h2>
      <Paragraphs text={withNumbers(exercise.question, variant.given)} />
      {exercise.kind === 'number' && (
        <AnswerField
          id={`${id}-answer`}
          sought={sought[0]!}
          text={texts['answer'] ?? ''}
          marked={markedPart('answer')}
          change={(text) => write('answer', text)}
        />
      )}
      {exercise.kind === 'steps' && (
        <ol class="exercise-parts">
          {exercise.parts.map((part, at) => (
            <li key={part.id}>
              <p id={`${id}-${part.id}-asks`}>
                {withNumbers(part.question, partNumbers(variant.given, part.given))} <Marks of={part.marks} />
              </p>
              <AnswerField
                id={`${id}-${part.id}`}
                sought={sought[at]!}
                part
                text={texts[part.id] ?? ''}
                marked={markedPart(part.id)}
                change={(text) => write(part.id, text)}
              />
              {shownHints > 0 && (
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
          chosen={chosen}
          change={(next) => change({ ...given, chosen: next })}
        />
      )}
      {exercise.kind === 'order' && (
        <>
          <Ordering
            id={id}
            items={exercise.items}
            placed={chosen.length === exercise.items.length ? chosen : variant.order}
            change={(placed, moved) => change({ ...given, chosen: placed }, moved)}
          />
          {chosen.length === 0 && !marked && <p class="soft">Not answered until you move a line.</p>}
        </>
      )}
      {levers.map((lever) => (
        <LeverField
          key={lever.input}
          id={`${id}-${lever.input}`}
          lever={lever}
          text={texts[lever.input] ?? lever.text}
          change={(text) => write(lever.input, text)}
        />
      ))}
      {exercise.kind === 'text' && (
        <textarea
          aria-labelledby={`${id}-title`}
          rows={6}
          maxLength={5000}
          value={texts['answer'] ?? ''}
          onInput={({ currentTarget }) => write('answer', currentTarget.value)}
        />
      )}
      {exercise.kind !== 'number' && exercise.kind !== 'steps' && marked && marked.state !== 'blank' && (
        <div role="status">
          <Verdict marked={marked.parts[0]!.marked} />
        </div>
      )}
      {marked && <p class="soft">{standing(marked)}</p>}
      {props.hints && (
        <>
          <Hints hints={[...numbered, ...allHints]} shown={shownHints} given={variant.given} />
          {hintsInAll > 0 && (
            <HintKey
              of={hintsInAll}
              shown={shownHints}
              unnumbered={exercise.kind === 'steps'}
              ask={() => change({ ...given, hints: shownHints + 1 })}
            />
          )}
        </>
      )}
      {props.worked && (
        <details>
          <summary>Worked answer</summary>
          <Worked
            exercise={exercise}
            lines={safely(() => workedOf(exercise, variant, library))}
            levers={levers}
          />
        </details>
      )}
    </>
  );
}

/** What a marked question has brought; words wait for a person. */
const standing = ({ state, marks, of }: QuestionMark): string =>
  state === 'waiting'
    ? `${of} ${of === 1 ? 'mark waits' : 'marks wait'} for your instructor.`
    : `${state === 'blank' ? 'Not answered: ' : ''}${marks} of ${of} ${of === 1 ? 'mark' : 'marks'}.`;

/** A set from elsewhere may hold a question that cannot be worked out; the page still stands. */
function safely<T>(work: () => T[]): T[] {
  try {
    return work();
  } catch {
    return [];
  }
}
