import { fromSI, toSI } from '../core/units.ts';
import { warningsFor } from '../core/solve.ts';
import { answerOf, partQuestion, questionOf, type Carried, type Library, type Question } from './answer.ts';
import type { Exercise, Mistake, Variant } from './definition.ts';
import { allowance, carriedFrom } from './marking.ts';
import { authored } from './mistakes.ts';

/**
 * What is wrong with the numbers of one variant of a computed exercise, a sentence each: no answer, a value
 * outside its range, an answer that stands among the givens, a mistake that would be marked right.
 */
export function checkVariant(exercise: Exercise, variant: Variant, library: Library): string[] {
  if (exercise.kind === 'number') {
    return attempt(() => checkQuestion(questionOf(exercise, variant, library), exercise.mistakes));
  }
  if (exercise.kind !== 'steps') return [];
  const truth: Record<string, Carried> = {};
  return exercise.parts.flatMap((part) =>
    attempt(() => {
      const question = partQuestion(exercise, part, variant, truth, library);
      const answer = answerOf(question);
      if (answer.ok) truth[part.id] = carriedFrom(question, answer.value);
      return checkQuestion(question, part.mistakes);
    }).map((problem) => `part "${part.id}": ${problem}`),
  );
}

function attempt(check: () => string[]): string[] {
  try {
    return check();
  } catch (error) {
    return [error instanceof Error ? error.message : String(error)];
  }
}

function checkQuestion(question: Question, mistakes: readonly Mistake[]): string[] {
  const answer = answerOf(question);
  if (!answer.ok) return [`no answer: ${answer.reason}`];
  const problems = outsideRanges(question, answer.value);
  const allowed = allowance(question, answer.value);
  const shown = fromSI(answer.value, question.answerUnit);
  const near = (si: number): boolean => Math.abs(fromSI(si, question.answerUnit) - shown) <= allowed;
  for (const [name, written] of Object.entries(question.written)) {
    const same = written.unit === question.answerUnit || written.unit === question.sought.unit;
    if (same && near(toSI(written.written, question.answerUnit)))
      problems.push(`the answer stands among the givens as ${name}`);
  }
  for (const mistake of mistakes) {
    const ways = authored(question, mistake);
    if (ways.length === 0) problems.push(`the mistake “${mistake.says}” leads to no number`);
    if (ways.some(({ value }) => near(value)))
      problems.push(`the mistake “${mistake.says}” leads to the answer`);
  }
  return problems;
}

function outsideRanges(question: Question, value: number): string[] {
  const { calculation, find } = question;
  if ('formula' in calculation) {
    return Object.entries(calculation.formula.symbols).flatMap(([name, spec]) => {
      const si = name === find ? value : question.values[name];
      return typeof si === 'number'
        ? warningsFor(spec, name, si).map(({ message }) => `${name} is ${message}`)
        : [];
    });
  }
  return Object.entries(calculation.model.inputs).flatMap(([name, input]) => {
    const si = question.values[name];
    return input.kind === 'quantity' && typeof si === 'number'
      ? warningsFor(input, name, si).map(({ message }) => `${name} is ${message}`)
      : [];
  });
}
