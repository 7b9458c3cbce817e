import type { Exercise } from '../definition.ts';
import { marksStanding, remarkOn, type Remark, type Row } from './class-table.ts';
import type { GradedSet } from './set-file.ts';

/** One wrong way several took, by what it was recognised as. */
export interface WrongWayTaken {
  /** The sentence the learner is told, of the first who took it. */
  readonly says: string;
  readonly part: string;
  readonly count: number;
  readonly learners: readonly string[];
  readonly answers: readonly string[];
  /** False where only the direction of the error is known. */
  readonly recognised: boolean;
}

export interface ItemAnalysis {
  readonly id: string;
  readonly title: string;
  /** Hand-ins counted, and those of them that left it blank. */
  readonly count: number;
  readonly blank: number;
  /** Answers in words that nobody has marked yet. */
  readonly waiting: number;
  /** The mean share of its marks, 0 to 1: classical test theory's difficulty index. Undefined while answers wait. */
  readonly facility: number | undefined;
  /** Correlation of its marks with the marks of all other questions; undefined when either does not vary. */
  readonly discrimination: number | undefined;
  readonly ways: readonly WrongWayTaken[];
  /** Median seconds spent on it by those who spent any. */
  readonly seconds: number | undefined;
}

export interface OutcomeReached {
  readonly id: string;
  readonly text: string;
  readonly questions: readonly string[];
  /** The class's share of the marks it could have had on these questions. */
  readonly share: number;
  readonly reached: boolean;
}

/** What is said when a wrong number fits nothing known. */
const onlyDirection = ['Too small. Write', 'Too large. Write', 'Start with a number', 'Write the answer as'];

interface Counted {
  readonly learner: string;
  readonly marks: readonly number[];
  readonly row: Row;
}

/** How each question did. Only hand-ins of this edition are compared. */
export function itemAnalysis(
  set: GradedSet,
  rows: readonly Row[],
  remarks: readonly Remark[] = [],
): ItemAnalysis[] {
  const counted: Counted[] = rows.flatMap((row) => {
    const attempt = row.counted;
    if (attempt?.set.hash !== set.hash) return [];
    const marks = attempt.marked.questions.map((question) => marksStanding(attempt, question, remarks));
    return [{ learner: row.learner, marks, row }];
  });
  return set.questions.map((exercise, at) => {
    const own = counted.map(({ marks }) => marks[at]!);
    const rest = counted.map(({ marks }) => marks.reduce((sum, mark) => sum + mark, 0) - marks[at]!);
    const questions = counted.map(({ row }) => row.counted!.marked.questions[at]!);
    const waiting = counted.filter(({ row: { counted: attempt } }, i) => {
      const byHand = remarkOn(attempt!, exercise.id, remarks)?.marks !== undefined;
      return questions[i]!.state === 'waiting' && !byHand;
    }).length;
    // Words nobody has marked yet say nothing about the question.
    const judged = counted.length > 0 && waiting === 0;
    const of = questions[0]?.of ?? 1;
    const times = questions.flatMap(({ seconds }) => (seconds > 0 ? [seconds] : [])).sort((a, b) => a - b);
    return {
      id: exercise.id,
      title: exercise.title,
      count: counted.length,
      blank: questions.filter(({ state }) => state === 'blank').length,
      waiting,
      facility: judged ? mean(own) / of : undefined,
      discrimination: judged && set.questions.length > 1 ? correlation(own, rest) : undefined,
      ways: waysTaken(exercise, counted, at),
      seconds: median(times),
    };
  });
}

/** A whole order would fill a paragraph: its lines by their places in the right one. */
const orderTaken = (placed: readonly number[]): string =>
  `Lines put in the order ${placed.map((line) => line + 1).join(', ')}, by their right places.`;

/** Wrong answers by what they were recognised as: the most frequent first. Numbers within a sentence do not part groups. */
function waysTaken(exercise: Exercise, counted: readonly Counted[], at: number): WrongWayTaken[] {
  const groups = new Map<
    string,
    { says: string; part: string; learners: string[]; answers: string[]; recognised: boolean }
  >();
  for (const { learner, row } of counted) {
    // What waits for a person is no wrong way.
    if (row.counted!.marked.questions[at]!.state === 'waiting') continue;
    for (const { id, answer, marked } of row.counted!.marked.questions[at]!.parts) {
      const read = marked.verdict !== 'unread' || answer.trim() === '';
      if (read && marked.verdict !== 'wrong') continue;
      const judged = 'options' in exercise || exercise.kind === 'order';
      const placed = row.counted!.handIn.answers[exercise.id]?.chosen ?? [];
      const says = exercise.kind === 'order' ? orderTaken(placed) : judged ? answer : (marked.says[0] ?? '');
      const key = judged ? says : `${id} ${says.replace(/[\d.,  ]+/g, '#')}`;
      const group = groups.get(key) ?? {
        says,
        part: id,
        learners: [],
        answers: [],
        recognised: !onlyDirection.some((start) => says.startsWith(start)),
      };
      group.learners.push(learner);
      if (!group.answers.includes(answer)) group.answers.push(answer);
      groups.set(key, group);
    }
  }
  return [...groups.values()]
    .map((group) => ({ ...group, count: group.learners.length }))
    .sort((a, b) => Number(b.recognised) - Number(a.recognised) || b.count - a.count);
}

/** Which outcomes the class has, from all marked questions that ask for each. `enough` is the share that counts as reached. */
export function outcomesReached(
  set: GradedSet,
  rows: readonly Row[],
  remarks: readonly Remark[] = [],
  enough = 0.6,
  items: readonly ItemAnalysis[] = itemAnalysis(set, rows, remarks),
): OutcomeReached[] {
  const ids = [...new Set(set.questions.map(({ outcome }) => outcome))];
  return ids
    .flatMap((id) => {
      const own = items.filter(
        (item, at) => set.questions[at]!.outcome === id && item.facility !== undefined,
      );
      // Of an outcome that nobody's marks speak of yet, nothing is said.
      if (own.length === 0) return [];
      const weights = own.map((item) => weightOf(set, rows, item.id));
      const all = weights.reduce((sum, weight) => sum + weight, 0);
      const got = own.reduce((sum, item, at) => sum + item.facility! * weights[at]!, 0);
      const share = all === 0 ? 0 : got / all;
      return {
        id,
        text: set.outcomes[id] ?? id,
        questions: set.questions.flatMap((question) => (question.outcome === id ? [question.id] : [])),
        share,
        reached: share >= enough,
      };
    })
    .sort((a, b) => a.share - b.share);
}

function weightOf(set: GradedSet, rows: readonly Row[], id: string): number {
  const attempt = rows.find(({ counted }) => counted?.set.hash === set.hash)?.counted;
  return attempt?.marked.questions.find((question) => question.id === id)?.of ?? 0;
}

const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;

function median(sorted: readonly number[]): number | undefined {
  if (sorted.length === 0) return undefined;
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}

/** Pearson's correlation; undefined with fewer than three pairs or where one side does not vary. */
export function correlation(x: readonly number[], y: readonly number[]): number | undefined {
  if (x.length < 3 || x.length !== y.length) return undefined;
  const [mx, my] = [mean(x), mean(y)];
  const sum = (value: (i: number) => number): number => x.reduce((total, _, i) => total + value(i), 0);
  const xx = sum((i) => (x[i]! - mx) ** 2);
  const yy = sum((i) => (y[i]! - my) ** 2);
  if (xx < 1e-12 || yy < 1e-12) return undefined;
  return sum((i) => (x[i]! - mx) * (y[i]! - my)) / Math.sqrt(xx * yy);
}
