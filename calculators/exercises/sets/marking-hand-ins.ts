import { answerOf, partQuestion, questionOf, type Carried, type Library } from '../answer.ts';
import type { Exercise, Variant } from '../definition.ts';
import { markDesign } from '../design.ts';
import {
  carriedFrom,
  markChoice,
  markNumber,
  markOrder,
  markSteps,
  printAnswer,
  type Marked,
} from '../marking.ts';
import type { Given, HandIn } from './hand-in.ts';
import { variantFor } from './learner.ts';
import { marksOf, sentence, type GradedSet } from './set-file.ts';

/** `part`: some marks of several. `waiting`: written in words, for a person to mark. */
export type State = 'right' | 'part' | 'wrong' | 'blank' | 'waiting';

export interface PartMark {
  readonly id: string;
  /** As the learner wrote it. */
  readonly answer: string;
  readonly marked: Marked;
}

export interface QuestionMark {
  readonly id: string;
  readonly state: State;
  readonly marks: number;
  readonly of: number;
  readonly parts: readonly PartMark[];
  readonly seconds: number;
}

export interface MarkedHandIn {
  readonly questions: readonly QuestionMark[];
  readonly marks: number;
  readonly of: number;
  /** Marks that wait for a person. */
  readonly waiting: number;
}

/** Where marking a set finds what computes: its own formulas and materials, and the library's models. */
export function libraryOf({ formulas, materials }: GradedSet, models: Library['model']): Library {
  return {
    formula: (id) => (Object.hasOwn(formulas, id) ? formulas[id] : undefined),
    model: models,
    materials,
  };
}

const longest = 200;

/**
 * Marks hand-ins of one set. Every mark is worked out from the set and the numbers the generator gives this
 * learner; nothing is believed but what was answered. Never throws. Answers met before are not worked out again.
 */
export function markerFor(
  set: GradedSet,
  library: Library,
): (handIn: Pick<HandIn, 'learner' | 'answers'>) => MarkedHandIn {
  const met = new Map<string, QuestionMark>();
  return ({ learner, answers }) => {
    const questions = set.questions.map((exercise) => {
      const given = Object.hasOwn(answers, exercise.id) ? answers[exercise.id]! : {};
      const variant = variantFor(set, learner, exercise);
      const key = JSON.stringify([exercise.id, variant.given, given.texts, given.chosen]);
      const known = met.get(key) ?? markOne(exercise, variant, given, library);
      met.set(key, known);
      return { ...known, seconds: given.seconds ?? 0 };
    });
    return {
      questions,
      marks: total(questions, ({ marks }) => marks),
      of: set.marks,
      waiting: total(questions, ({ state, of }) => (state === 'waiting' ? of : 0)),
    };
  };
}

const total = <T>(list: readonly T[], value: (item: T) => number): number =>
  list.reduce((sum, item) => sum + value(item), 0);

function markOne(exercise: Exercise, variant: Variant, given: Given, library: Library): QuestionMark {
  const of = marksOf(exercise);
  let parts: PartMark[];
  try {
    parts = partsOf(exercise, variant, given, library);
  } catch (error) {
    const says = [`This question could not be worked out: ${sentence(error)}`];
    parts = [{ id: 'answer', answer: '', marked: { verdict: 'unread', unit: 'none', marks: 0, of, says } }];
    return { id: exercise.id, state: 'waiting', marks: 0, of, parts, seconds: 0 };
  }
  const marks = total(parts, ({ marked }) => marked.marks);
  const blank = isBlank(exercise, given);
  const state: State = blank
    ? 'blank'
    : exercise.kind === 'text'
      ? 'waiting'
      : marks === of
        ? 'right'
        : marks > 0
          ? 'part'
          : 'wrong';
  return { id: exercise.id, state, marks, of, parts, seconds: 0 };
}

export function isBlank(exercise: Exercise, { texts = {}, chosen = [] }: Given): boolean {
  if ('options' in exercise || exercise.kind === 'order') return chosen.length === 0;
  const asked = exercise.kind === 'steps' ? exercise.parts.map(({ id }) => id) : Object.keys(texts);
  return asked.every((id) => !Object.hasOwn(texts, id) || texts[id]!.trim() === '');
}

const unread = (of: number, ...says: string[]): Marked => ({
  verdict: 'unread',
  unit: 'none',
  marks: 0,
  of,
  says,
});

function partsOf(exercise: Exercise, variant: Variant, given: Given, library: Library): PartMark[] {
  const texts = given.texts ?? {};
  const chosen = given.chosen ?? [];
  const text = (id: string): string => (Object.hasOwn(texts, id) ? texts[id]!.slice(0, longest) : '');
  const one = (answer: string, marked: Marked): PartMark[] => [{ id: 'answer', answer, marked }];
  switch (exercise.kind) {
    case 'number':
      return one(text('answer'), markNumber(exercise, variant, text('answer'), library));
    case 'steps': {
      const answers = Object.fromEntries(exercise.parts.map(({ id }) => [id, text(id)]));
      const marked = markSteps(exercise, variant, answers, library);
      return exercise.parts.map(({ id }) => ({ id, answer: answers[id]!, marked: marked[id]! }));
    }
    case 'choice':
    case 'diagnose': {
      if (chosen.length === 0) return one('', unread(exercise.marks));
      const wrong =
        chosen.some((at) => at >= exercise.options.length) || new Set(chosen).size < chosen.length;
      const answer = chosen.map((at) => exercise.options[at]?.text ?? '').join('; ');
      if (wrong) return one(answer, unread(exercise.marks, 'These are not choices of this question.'));
      return one(answer, markChoice(exercise, chosen));
    }
    case 'order': {
      if (chosen.length === 0) return one('', unread(exercise.marks));
      const { items } = exercise;
      const whole = chosen.length === items.length && items.every((_, at) => chosen.includes(at));
      const answer = chosen.map((at) => items[at] ?? '').join('; ');
      if (!whole) return one(answer, unread(exercise.marks, 'These are not the items of this question.'));
      return one(answer, markOrder(exercise, chosen));
    }
    case 'design': {
      const model = library.model(exercise.model);
      if (!model) throw new Error(`there is no model "${exercise.model}"`);
      const answer = Object.entries(texts)
        .map(([name, value]) => `${model.inputs[name]?.name ?? name}: ${value.slice(0, longest)}`)
        .join('; ');
      if (Object.values(texts).every((value) => value.trim() === '')) return one('', unread(exercise.marks));
      const { verdict, marks, of, says } = markDesign(exercise, texts, model, library.materials);
      return one(answer, { verdict, unit: 'none', marks, of, says });
    }
    case 'text': {
      const answer = Object.hasOwn(texts, 'answer') ? texts['answer']! : '';
      return one(answer, unread(exercise.marks, ...(answer.trim() ? ['This is marked by a person.'] : [])));
    }
  }
}

/** The right answer of each part as it is shown, for the page that puts both side by side. */
export function rightAnswers(
  exercise: Exercise,
  variant: Variant,
  library: Library,
): Readonly<Record<string, string>> {
  switch (exercise.kind) {
    case 'number': {
      const question = questionOf(exercise, variant, library);
      const answer = answerOf(question);
      return { answer: answer.ok ? printAnswer(question, answer.value) : answer.reason };
    }
    case 'steps': {
      const truth: Record<string, Carried> = {};
      const right: Record<string, string> = {};
      for (const part of exercise.parts) {
        const question = partQuestion(exercise, part, variant, truth, library);
        const answer = answerOf(question);
        right[part.id] = answer.ok ? printAnswer(question, answer.value) : answer.reason;
        if (answer.ok) truth[part.id] = carriedFrom(question, answer.value);
      }
      return right;
    }
    case 'choice':
    case 'diagnose':
      return { answer: exercise.options.flatMap(({ right, text }) => (right ? [text] : [])).join('; ') };
    case 'order':
      return { answer: exercise.items.join('; ') };
    case 'design':
      return {
        answer: Object.entries(exercise.passing)
          .map(([name, text]) => `${library.model(exercise.model)?.inputs[name]?.name ?? name}: ${text}`)
          .join('; '),
      };
    case 'text':
      return { answer: exercise.rubric.join('; ') };
  }
}
