import { printQuantity, unitLabel } from '../core/print.ts';
import { readQuantity, readSpread } from '../core/quantity.ts';
import { fromSI, toSI, unit, widthFromSI, type UnitSymbol } from '../core/units.ts';
import { answerOf, partQuestion, questionOf, type Carried, type Library, type Question } from './answer.ts';
import type {
  ChoiceExercise,
  DiagnoseExercise,
  Mistake,
  NumberExercise,
  OrderExercise,
  Part,
  StepsExercise,
  Variant,
} from './definition.ts';
import { lastPlaceOf } from './figures.ts';
import { wrongWays, type WrongWay } from './mistakes.ts';

export interface Marked {
  /** `unread`: no number could be read, so nothing is marked and nothing is lost. */
  readonly verdict: 'right' | 'wrong' | 'unread';
  readonly unit: 'right' | 'wrong' | 'missing' | 'none';
  readonly marks: number;
  readonly of: number;
  /** Sentences for the learner, the most useful first. */
  readonly says: readonly string[];
  /** The learner's number in SI, as later parts take it. */
  readonly value?: number;
}

/** Marks the answer to a number exercise. */
export function markNumber(
  exercise: NumberExercise,
  variant: Variant,
  text: string,
  library: Library,
): Marked {
  return markQuestion(questionOf(exercise, variant, library), exercise.mistakes, exercise.marks, text);
}

/** The answer as it is shown: in the unit asked, to the figures the givens allow. */
export function printAnswer(question: Question, si: number): string {
  return printQuantity(si, question.answerUnit, { figures: figuresShown(question, si) });
}

/** Trailing whole-number places are kept, since 1083 °C from two figures would read 1100 °C. */
function figuresShown({ answerUnit, figures }: Question, si: number): number {
  return unit(answerUnit).kind === 'temperature'
    ? Math.max(figures, wholePlaces(fromSI(si, answerUnit)))
    : figures;
}

const wholePlaces = (shown: number): number =>
  Math.max(1, Math.floor(Math.log10(Math.max(1, Math.abs(shown)))) + 1);

/** How far the learner's number may be from the answer, in the answer's unit. */
export function allowance(question: Question, si: number): number {
  const { answerUnit, tolerance } = question;
  const shown = fromSI(si, answerUnit);
  const wide = widthFromSI(readSpread(tolerance, si, answerUnit), answerUnit);
  if (shown === 0) return wide;
  const lastPlace = 10 ** (Math.floor(Math.log10(Math.abs(shown))) - figuresShown(question, si) + 1);
  return Math.max(wide, lastPlace / 2) * (1 + 1e-9);
}

/**
 * Marks one number. Right within the larger of the tolerance and half a unit of the last figure the givens
 * allow. One mark of two or more is the unit's: a wrong or missing unit loses that mark and no other.
 */
export function markQuestion(
  question: Question,
  mistakes: readonly Mistake[],
  of: number,
  text: string,
  carried?: Question,
): Marked {
  const read = readAnswer(question, text);
  if ('says' in read) return { verdict: 'unread', unit: 'none', marks: 0, of, says: [read.says] };
  const hasUnit = question.answerUnit !== '1';
  const unitMark = hasUnit && of > 1 ? 1 : 0;
  for (const [asked, onOwn] of [[question, false] as const, ...(carried ? [[carried, true] as const] : [])]) {
    const answer = answerOf(asked);
    if (!answer.ok) continue;
    const match = read.candidates.find(({ value }) => isClose(asked, value, answer.value));
    if (!match) continue;
    const says = [...unitSays(question, match.unit)];
    if (onOwn) says.push('It follows from your own earlier answer.');
    const marks = of - unitMark + (match.unit === 'right' || !hasUnit ? unitMark : 0);
    return { verdict: 'right', unit: hasUnit ? match.unit : 'none', marks, of, says, value: match.value };
  }
  const first = read.candidates[0]!;
  const unitVerdict = hasUnit ? first.unit : 'none';
  const says = [diagnosis(carried ?? question, mistakes, read), ...unitSays(question, unitVerdict)];
  return {
    verdict: 'wrong',
    unit: unitVerdict,
    marks: unitVerdict === 'right' ? unitMark : 0,
    of,
    says,
    value: first.value,
  };
}

const isClose = (question: Question, value: number, answer: number): boolean =>
  Math.abs(fromSI(value, question.answerUnit) - fromSI(answer, question.answerUnit)) <=
  allowance(question, answer);

interface Candidate {
  readonly value: number;
  readonly unit: 'right' | 'wrong' | 'missing';
  /** Half of the last place written, in SI. */
  readonly half: number;
}
interface ReadAnswer {
  /** What the text can mean, in SI; the likeliest first. */
  readonly candidates: readonly Candidate[];
  readonly written: number;
  readonly figures: number;
}

function readAnswer({ answerUnit, sought }: Question, text: string): ReadAnswer | { says: string } {
  const reading = readQuantity(text, { unit: answerUnit });
  const [, numberText = '', unitText = ''] =
    /^([-+−]?\s*[\d.,·\s/]*(?:(?:[eE]|\s*[×x*]\s*10\s*\^?)[-+−]?\d+)?)(.*)$/u.exec(text.trim()) ?? [];
  const bare = readQuantity(numberText, { unit: answerUnit });
  const named = unitText.trim() !== '';
  if (!bare.ok) return { says: reading.ok ? 'Write the answer as a number and its unit.' : reading.message };
  const { written, figures } = bare;
  // The bare number in the unit asked for, and in the unit the equation is written in.
  const as = (symbol: UnitSymbol, unit: Candidate['unit']): Candidate => ({
    value: toSI(written, symbol),
    half: lastPlaceOf({ written, unit: symbol, figures }) / 2,
    unit,
  });
  const plain = (unit: Candidate['unit']): Candidate[] =>
    [answerUnit, sought.unit].map((symbol) => as(symbol, unit));
  if (!named) return { candidates: plain('missing'), written, figures };
  const candidates = plain('wrong');
  if (reading.ok) candidates.unshift({ ...as(reading.unit, 'right'), value: reading.value });
  return { candidates, written, figures };
}

function unitSays({ answerUnit, sought }: Question, verdict: Candidate['unit'] | 'none'): string[] {
  if (verdict === 'right' || verdict === 'none') return [];
  const like = `${sought.name}, here in ${unitLabel(answerUnit) || 'no unit'}`;
  if (verdict === 'missing') return [`A number without its unit says nothing: this is the ${like}.`];
  return [`The unit does not fit: this is the ${like}.`];
}

function diagnosis(question: Question, mistakes: readonly Mistake[], read: ReadAnswer): string {
  const answer = answerOf(question);
  if (!answer.ok) return `With that there is no answer: ${answer.reason.replace(/\.$/, '')}.`;
  const [best] = read.candidates;
  const ways = wrongWays(question, mistakes);
  for (const candidate of read.candidates) {
    const way = nearestWay(question, ways, candidate);
    if (way) return way.says;
  }
  const shown = fromSI(answer.value, question.answerUnit);
  const own = fromSI(best!.value, question.answerUnit);
  if (read.figures < 2 && Number(shown.toPrecision(1)) === own)
    return 'Rounded too far: write at least two figures.';
  if (Math.abs(own - shown) <= 0.1 * Math.abs(shown)) {
    return 'Close, but outside the tolerance. Keep every figure until the last line, then round.';
  }
  if (shown !== 0 && Math.abs(own + shown) <= allowance(question, answer.value))
    return 'Right size, wrong sign.';
  return own < shown
    ? 'Too small. Write down the line with the numbers in, each with its unit.'
    : 'Too large. Write down the line with the numbers in, each with its unit.';
}

/**
 * The mistake that leads closest to the number written, among those within tolerance. Those that round to the very
 * figures written are equally close, and then the one named first speaks: the file's own before any slip.
 */
function nearestWay(
  question: Question,
  ways: readonly WrongWay[],
  { value, half }: Candidate,
): WrongWay | undefined {
  let best: { way: WrongWay; off: number } | undefined;
  for (const way of ways) {
    if (!isClose(question, value, way.value)) continue;
    const off = Math.max(Math.abs(way.value - value), half);
    if (!best || off < best.off * (1 - 1e-9)) best = { way, off };
  }
  return best?.way;
}

/**
 * Marks every part in order. A part that builds on an earlier one is right with the true earlier answer or
 * with the learner's own, so one slip costs its marks once.
 */
export function markSteps(
  exercise: StepsExercise,
  variant: Variant,
  answers: Readonly<Record<string, string>>,
  library: Library,
): Record<string, Marked> {
  const marked: Record<string, Marked> = {};
  const truth: Record<string, Carried> = {};
  const own: Record<string, Carried> = {};
  for (const part of exercise.parts) {
    const question = partQuestion(exercise, part, variant, truth, library);
    const follows = usesOwn(part, own, truth);
    const carried = follows
      ? partQuestion(exercise, part, variant, { ...truth, ...own }, library)
      : undefined;
    const result = markQuestion(question, part.mistakes, part.marks, answers[part.id] ?? '', carried);
    marked[part.id] = result;
    const answer = answerOf(question);
    if (answer.ok) truth[part.id] = carriedFrom(question, answer.value);
    if (result.value !== undefined) own[part.id] = carriedFrom(question, result.value);
  }
  return marked;
}

function usesOwn(
  part: Part,
  own: Readonly<Record<string, Carried>>,
  truth: Readonly<Record<string, Carried>>,
): boolean {
  return Object.values(part.given).some((text) => {
    const id = text.slice(1);
    return text.startsWith('$') && own[id] !== undefined && own[id].value !== truth[id]?.value;
  });
}

export function carriedFrom(question: Question, value: number): Carried {
  const figures = figuresShown(question, value);
  const written = fromSI(value, question.answerUnit);
  return { value, text: printAnswer(question, value), figures, written, unit: question.answerUnit };
}

/** Marks a choice: `chosen` are positions in the file's own order. All or nothing. */
export function markChoice(exercise: ChoiceExercise | DiagnoseExercise, chosen: readonly number[]): Marked {
  const { options, marks: of } = exercise;
  const right = options.every((option, i) => option.right === chosen.includes(i));
  const says = chosen.flatMap((i) => options[i]?.because ?? []);
  // All that was chosen is right and the whole is not: something is missing.
  if (!right && chosen.every((i) => options[i]?.right)) says.push('There is more to find.');
  return { verdict: right ? 'right' : 'wrong', unit: 'none', marks: right ? of : 0, of, says };
}

/** Marks an order: `placed` are positions in the file's order. Part marks for each neighbour pair that is kept. */
export function markOrder(exercise: OrderExercise, placed: readonly number[]): Marked {
  const { items, marks: of } = exercise;
  const wrongAt = placed.findIndex((item, i) => item !== i);
  if (wrongAt === -1 && placed.length === items.length) {
    return { verdict: 'right', unit: 'none', marks: of, of, says: [exercise.because] };
  }
  const kept = placed.filter((item, i) => i > 0 && item === placed[i - 1]! + 1).length;
  const says =
    wrongAt === -1
      ? 'Some are not placed yet.'
      : `Place ${wrongAt + 1} is not right yet: “${items[placed[wrongAt]!] ?? ''}” does not belong there.`;
  return {
    verdict: 'wrong',
    unit: 'none',
    marks: Math.floor((of * kept) / (items.length - 1)),
    of,
    says: [says],
  };
}
