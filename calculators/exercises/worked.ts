import { parseEquation } from '../core/expression.ts';
import type { Formula } from '../core/formula.ts';
import { printNumber, printQuantity, unitLabel } from '../core/print.ts';
import { constantsOf, rearrange, type Solved } from '../core/solve.ts';
import { equationUnit } from '../core/sum-units.ts';
import { substituted } from '../core/typeset.ts';
import { fromSI } from '../core/units.ts';
import {
  answerOf,
  numbersOf,
  partQuestion,
  questionOf,
  type Carried,
  type Library,
  type Question,
} from './answer.ts';
import type { Exercise, NumberExercise, StepsExercise, Variant } from './definition.ts';
import { carriedFrom, printAnswer } from './marking.ts';

/** One line of a worked answer. `equation` is in signs, `numbers` has the numbers in, `answer` is the last. */
export interface WorkedLine {
  readonly kind: 'given' | 'equation' | 'numbers' | 'answer' | 'note';
  readonly text: string;
}

export function workedNumber(exercise: NumberExercise, variant: Variant, library: Library): WorkedLine[] {
  return workedQuestion(questionOf(exercise, variant, library));
}

/** The working of every part, each with the true answers of the parts before it. */
export function workedSteps(
  exercise: StepsExercise,
  variant: Variant,
  library: Library,
): { readonly id: string; readonly lines: WorkedLine[] }[] {
  const truth: Record<string, Carried> = {};
  return exercise.parts.map((part) => {
    const question = partQuestion(exercise, part, variant, truth, library);
    const answer = answerOf(question);
    if (answer.ok) truth[part.id] = carriedFrom(question, answer.value);
    return { id: part.id, lines: workedQuestion(question) };
  });
}

/** The lines from the givens to the answer. */
export function workedQuestion(question: Question): WorkedLine[] {
  const answer = answerOf(question);
  if (!answer.ok) return [{ kind: 'note', text: answer.reason }];
  const sign = question.sought.sign ?? question.find;
  const last: WorkedLine = { kind: 'answer', text: `${sign} = ${printAnswer(question, answer.value)}` };
  const { calculation } = question;
  if ('formula' in calculation) return [...formulaLines(question, calculation.formula, answer.value), last];
  const result = calculation.model.run(question.values);
  const lines = result.steps.map((step): WorkedLine => {
    const value =
      step.value !== undefined && step.unit !== undefined ? printQuantity(step.value, step.unit) : '';
    return {
      kind: 'numbers',
      text: [`${step.title}${value ? `: ${value}` : ''}`, step.note].filter(Boolean).join('. '),
    };
  });
  return [...lines, last];
}

function formulaLines(question: Question, formula: Formula, value: number): WorkedLine[] {
  const { find } = question;
  const values = { ...constantsOf(formula), ...numbersOf(question.values) };
  const signOf = (name: string): string => formula.symbols[name]?.sign ?? name;
  const numberOf = (name: string): string => {
    if (isAngle(formula, name))
      return printQuantity(values[name] ?? value, 'deg', { figures: 4 }).replace(/\.0+°/, '°');
    const own = fromSI(values[name] ?? value, equationUnit(formula, name));
    return printNumber(own, { figures: exactFigures(own) });
  };
  const lines: WorkedLine[] = [];
  for (const [name, written] of Object.entries(question.written)) {
    const target = equationUnit(formula, name);
    if (written.unit === target || isAngle(formula, name)) continue;
    const equal = `${numberOf(name)} ${unitLabel(target)}`.trim();
    lines.push({ kind: 'given', text: `${signOf(name)} = ${question.given[name]} = ${equal}` });
  }
  const stated = parseEquation(formula.equation);
  const rearranged: Extract<Solved, { ok: true }>['rearranged'] = rearrange(formula, find);
  const { left, right } = rearranged ?? stated;
  lines.push({ kind: 'equation', text: `${substituted(left, signOf)} = ${substituted(right, signOf)}` });
  if (rearranged) {
    lines.push({ kind: 'numbers', text: `${signOf(find)} = ${substituted(right, numberOf)}` });
    return lines;
  }
  const both = [left, right].map((side) =>
    substituted(side, (name) => (name === find ? signOf(name) : numberOf(name))),
  );
  lines.push(
    { kind: 'numbers', text: both.join(' = ') },
    {
      kind: 'note',
      text: `${signOf(find)} stands in it more than once, so it is found by trial: the value that makes both sides equal.`,
    },
  );
  return lines;
}

/** An angle is read and written in degrees, whatever the equation does with it. */
const isAngle = (formula: Formula, name: string): boolean =>
  !formula.empirical && ['deg', 'rad'].includes(formula.symbols[name]?.unit ?? '1');

/** Every figure of a number that was typed, four of one that was computed. */
function exactFigures(value: number): number {
  const short = Number(value.toPrecision(7));
  for (let figures = 1; figures < 7; figures += 1)
    if (Number(short.toPrecision(figures)) === short) return figures;
  return 4;
}

/** The working of a computed exercise: one list of lines, or one for each part. */
export function workedOf(exercise: Exercise, variant: Variant, library: Library): WorkedLine[][] {
  if (exercise.kind === 'number') return [workedNumber(exercise, variant, library)];
  if (exercise.kind === 'steps') return workedSteps(exercise, variant, library).map(({ lines }) => lines);
  return [];
}
