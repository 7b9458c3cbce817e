import { answerOf, partQuestion, questionOf, type Carried } from '../../../calculators/exercises/answer.ts';
import type {
  Exercise,
  NumberExercise,
  StepsExercise,
  Variant,
} from '../../../calculators/exercises/definition.ts';
import { carriedFrom, markNumber, markSteps } from '../../../calculators/exercises/marking.ts';
import { wrongWays } from '../../../calculators/exercises/mistakes.ts';
import { libraryOf } from '../../../calculators/exercises/sets/marking-hand-ins.ts';
import { qtiPackage } from '../../../calculators/exercises/sets/qti/package.ts';
import { gradedSet, type GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { valuesOf } from '../../../calculators/exercises/variants.ts';
import { fromSI } from '../../../calculators/core/units.ts';
import { bank, draftOf, fileOf, modelOf } from './course-bank.ts';

/** Sets of forty of every exercise of the course, so that every kind and formula passes through a package. */
const ids = bank.exercises.map(({ id }) => id);
export const files = Array.from({ length: Math.ceil(ids.length / 40) }, (_, at) =>
  fileOf(draftOf(ids.slice(40 * at, 40 * (at + 1)), { id: `all-${at + 1}` })),
);
export const packed = files.map((file) => ({ file, ...qtiPackage(file) }));
const graded = files.map(gradedSet);
export const exercises = graded.flatMap(({ questions }) => questions);
const formulas = Object.assign({}, ...graded.map((one) => one.formulas)) as GradedSet['formulas'];
export const library = libraryOf({ ...graded[0]!, formulas }, modelOf);
export const items = new Map(
  packed.flatMap(({ files: inside }) =>
    Object.entries(inside).flatMap(([path, text]) =>
      path.startsWith('items/') ? [[path.slice(6, -4), text] as const] : [],
    ),
  ),
);
export const expressed = exercises.filter(({ id }) => items.has(id));

/** The variant an item drew, from the places it drew. */
export function variantOf(exercise: Exercise, at: (name: string) => number): Variant {
  const vary = 'vary' in exercise ? exercise.vary : {};
  const drawn = Object.entries(vary).map(
    ([name, variation]) => [name, valuesOf(variation)[at(name)]!] as const,
  );
  return {
    seed: '',
    given: { ...('given' in exercise ? exercise.given : {}), ...Object.fromEntries(drawn) },
    order: [],
  };
}

/** A name as a package writes it in an identifier. */
export const tag = (name: string): string => name.replace(/[^A-Za-z0-9]/g, '_');

/** What is typed into an item, by response, and the marks that marking gives for the same. */
export interface Try {
  readonly responses: Readonly<Record<string, string>>;
  readonly marks: number;
}

/** Right, within the tolerance, outside it on either side, of the wrong sign, and by every diagnosed mistake. */
export function numberTries(exercise: NumberExercise, variant: Variant): Try[] {
  const question = questionOf(exercise, variant, library);
  const answer = answerOf(question);
  if (!answer.ok) throw new Error(answer.reason);
  const shown = fromSI(answer.value, question.answerUnit);
  const place = 10 ** (Math.floor(Math.log10(Math.abs(shown))) - question.figures + 1);
  const wrong = wrongWays(question, exercise.mistakes).map(({ value }) => fromSI(value, question.answerUnit));
  return [
    shown,
    shown * 1.0149,
    shown * 0.985,
    shown * 1.021,
    shown * 1.06,
    shown * 0.94,
    -shown,
    // Either side of half a unit of the last figure.
    shown + 0.49 * place,
    shown - 0.52 * place,
    ...wrong,
  ].flatMap((value) => {
    if (!Number.isFinite(value) || Math.abs(value) >= 1e15) return [];
    const text = value.toPrecision(8);
    const own = markNumber(exercise, variant, withUnit(text, question.answerUnit), library);
    // Marking also tries the number in the equation's unit; in QTI it stands in the unit asked for.
    if (own.verdict === 'unread' || (own.verdict === 'right' && own.unit === 'wrong')) return [];
    return [{ responses: { RESPONSE: text }, marks: own.verdict === 'right' ? exercise.marks : 0 }];
  });
}

/** Right throughout; the first part off by a tenth, or a fifth, and followed; the first part left blank. */
export function stepsTries(exercise: StepsExercise, variant: Variant): Try[] {
  return [1, 1.1, 0.8, undefined].flatMap((slip): Try[] => {
    const carried: Record<string, Carried> = {};
    const answers: Record<string, string> = {};
    const responses: Record<string, string> = {};
    for (const [n, part] of exercise.parts.entries()) {
      const question = partQuestion(exercise, part, variant, carried, library);
      const answer = answerOf(question);
      if (!answer.ok) return [];
      const shown = fromSI(answer.value, question.answerUnit) * (n === 0 ? (slip ?? 1) : 1);
      const blank = n === 0 && slip === undefined;
      const text = shown.toPrecision(8);
      answers[part.id] = blank ? '' : withUnit(text, question.answerUnit);
      if (!blank) responses[`RESPONSE_${tag(part.id)}`] = text;
      const marked = markSteps(exercise, variant, answers, library)[part.id]!;
      carried[part.id] = carriedFrom(question, marked.value ?? answer.value);
    }
    const own = markSteps(exercise, variant, answers, library);
    const marks = exercise.parts.reduce(
      (sum, part) => sum + (own[part.id]!.verdict === 'right' ? part.marks : 0),
      0,
    );
    return [{ responses, marks }];
  });
}

const withUnit = (text: string, unit: string): string => `${text} ${unit === '1' ? '' : unit}`;
