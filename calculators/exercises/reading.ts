import type { Citation, How } from '../core/formula.ts';
import type {
  ChoiceExercise,
  DesignStart,
  Exercise,
  ExerciseKind,
  Givens,
  Mistake,
  Option,
  Part,
  Variation,
} from './definition.ts';
import { slips } from './definition.ts';

/** What is wrong with an exercise file, one sentence for each fault. */
export class ExerciseError extends Error {
  override name = 'ExerciseError';
  readonly problems: readonly string[];
  constructor(id: string, problems: readonly string[]) {
    super(`exercise "${id}": ${problems.join(' ')}`);
    this.problems = problems;
  }
}

type Data = Readonly<Record<string, unknown>>;

const common = [
  'title',
  'kind',
  'outcome',
  'misconceptions',
  'marks',
  'difficulty',
  'question',
  'hints',
  'source',
  'worked',
];
const asked = ['formula', 'model', 'find', 'given', 'answer-unit', 'mistakes'];
const keysOf: Readonly<Record<ExerciseKind, readonly string[]>> = {
  number: [...asked, 'vary', 'tolerance'],
  steps: ['given', 'vary', 'tolerance', 'parts'],
  choice: ['options'],
  diagnose: ['evidence', 'options'],
  order: ['items', 'because'],
  design: ['model', 'start', 'change', 'must', 'passing'],
  text: ['rubric'],
};
const hows: readonly string[] = ['read', 'memory', 'common practice', 'estimate'] satisfies How[];

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * An exercise from the data of its file. Throws an `ExerciseError` with a sentence for every fault of shape;
 * whether symbols and units fit the formula is `checkExercise`'s question. A question an instructor writes for
 * one set may diagnose fewer mistakes than those of the course.
 */
export function readExercise(id: string, data: unknown, { leastMistakes = 2 } = {}): Exercise {
  const problems: string[] = [];
  const exercise = isData(data) ? new Reader(problems, leastMistakes).exercise(id, data) : undefined;
  if (!exercise && problems.length === 0) problems.push('The file must hold keys and values.');
  if (!exercise || problems.length > 0) throw new ExerciseError(id, problems);
  return exercise;
}

class Reader {
  readonly problems: string[];
  readonly leastMistakes: number;
  constructor(problems: string[], leastMistakes: number) {
    this.problems = problems;
    this.leastMistakes = leastMistakes;
  }

  exercise(id: string, data: Data): Exercise | undefined {
    const kind = data['kind'] as ExerciseKind;
    const own = Object.hasOwn(keysOf, String(kind)) ? keysOf[kind] : undefined;
    if (!own) {
      this.problems.push(`"kind" must be one of ${Object.keys(keysOf).join(', ')}.`);
      return undefined;
    }
    this.onlyKeys(data, [...common, ...own], 'The file');
    const difficulty = data['difficulty'];
    if (difficulty !== 1 && difficulty !== 2 && difficulty !== 3)
      this.problems.push('"difficulty" must be 1, 2 or 3.');
    const source = this.source(data['source']);
    const worked = data['worked'] === undefined ? undefined : this.text(data, 'worked');
    const base = {
      id,
      title: this.text(data, 'title'),
      outcome: this.text(data, 'outcome'),
      misconceptions: this.texts(data['misconceptions'] ?? [], '"misconceptions"'),
      marks: this.marks(data['marks'], '"marks"'),
      difficulty: difficulty as 1 | 2 | 3,
      question: this.text(data, 'question'),
      hints: this.texts(data['hints'] ?? [], '"hints"'),
      ...(source && { source }),
      ...(worked !== undefined && { worked }),
    };
    const tolerance = data['tolerance'] === undefined ? '2 %' : String(data['tolerance']);
    switch (kind) {
      case 'number':
        return {
          ...base,
          kind,
          ...this.asked(data, 'The exercise', this.leastMistakes),
          vary: this.vary(data['vary']),
          tolerance,
        };
      case 'steps':
        return {
          ...base,
          kind,
          given: this.givens(data['given'] ?? {}, '"given"'),
          vary: this.vary(data['vary']),
          tolerance,
          parts: this.parts(data['parts']),
        };
      case 'choice':
        return { ...base, kind, options: this.options(data['options']) };
      case 'diagnose':
        return {
          ...base,
          kind,
          evidence: this.texts(data['evidence'], '"evidence"', 1),
          options: this.options(data['options']),
        };
      case 'order':
        return {
          ...base,
          kind,
          items: this.texts(data['items'], '"items"', 3),
          because: this.text(data, 'because'),
        };
      case 'design':
        return {
          ...base,
          kind,
          model: this.text(data, 'model'),
          start: this.start(data['start'] ?? {}),
          change: this.texts(data['change'], '"change"', 1),
          must: this.texts(data['must'], '"must"', 1),
          passing: this.givens(data['passing'], '"passing"'),
        };
      case 'text':
        return { ...base, kind, rubric: this.texts(data['rubric'], '"rubric"', 1) };
    }
  }

  private onlyKeys(data: Data, allowed: readonly string[], what: string): void {
    for (const key of Object.keys(data)) {
      if (!allowed.includes(key))
        this.problems.push(`${what} has "${key}", which is not one of ${allowed.join(', ')}.`);
    }
  }

  private text(data: Data, key: string, what = ''): string {
    const value = data[key];
    if (typeof value === 'string' && value.trim()) return value.trim();
    this.problems.push(`${what}"${key}" must be text.`);
    return '';
  }

  private texts(value: unknown, what: string, least = 0): string[] {
    const list = typeof value === 'string' ? [value] : value;
    if (
      !Array.isArray(list) ||
      list.length < least ||
      !list.every((item) => typeof item === 'string' && item.trim())
    ) {
      this.problems.push(`${what} must be a list of ${least > 0 ? `at least ${least} ` : ''}texts.`);
      return [];
    }
    return list.map((item: string) => item.trim());
  }

  private marks(value: unknown, what: string): number {
    if (Number.isInteger(value) && (value as number) > 0) return value as number;
    this.problems.push(`${what} must be a whole number above zero.`);
    return 1;
  }

  private source(value: unknown): Citation | undefined {
    if (value === undefined) return undefined;
    if (isData(value) && typeof value['key'] === 'string' && hows.includes(String(value['how']))) {
      return { key: value['key'], at: String(value['at'] ?? ''), how: value['how'] } as Citation;
    }
    this.problems.push(`"source" needs a key, a place ("at") and how it is known (${hows.join(', ')}).`);
    return undefined;
  }

  private givens(value: unknown, what: string): Givens {
    if (!isData(value)) {
      this.problems.push(`${what} must name quantities: h: '40 mm'.`);
      return {};
    }
    return Object.fromEntries(Object.entries(value).map(([name, text]) => [name, plainText(text)]));
  }

  private start(value: unknown): DesignStart {
    const rows = isData(value) ? Object.entries(value).filter(([, one]) => Array.isArray(one)) : [];
    const lists = new Set(rows.map(([name]) => name));
    const plain = isData(value)
      ? Object.fromEntries(Object.entries(value).filter(([name]) => !lists.has(name)))
      : value;
    return {
      ...this.givens(plain, '"start"'),
      ...Object.fromEntries(
        rows.map(([name, list]) => [
          name,
          (list as unknown[]).map((row, i) => this.givens(row, `Row ${i + 1} of "start" ${name}`)),
        ]),
      ),
    };
  }

  private vary(value: unknown): Record<string, Variation> {
    const found: Record<string, Variation> = {};
    for (const [name, spec] of Object.entries(isData(value) ? value : {})) {
      if (Array.isArray(spec)) found[name] = spec.map(plainText);
      else if (isData(spec) && ['from', 'to', 'step'].every((key) => spec[key] !== undefined)) {
        found[name] = {
          from: plainText(spec['from']),
          to: plainText(spec['to']),
          step: plainText(spec['step']),
        };
      } else this.problems.push(`"vary" of ${name} must be a list, or from, to and step.`);
    }
    return found;
  }

  private asked(
    data: Data,
    what: string,
    leastMistakes: number,
  ): Omit<Part, 'id' | 'question' | 'marks' | 'hints'> {
    const formula = data['formula'];
    const model = data['model'];
    if ((typeof formula === 'string') === (typeof model === 'string')) {
      this.problems.push(`${what} needs a formula or a model, and not both.`);
    }
    const unit = data['answer-unit'];
    return {
      ...(typeof formula === 'string' && { formula }),
      ...(typeof model === 'string' && { model }),
      find: this.text(data, 'find'),
      given: this.givens(data['given'] ?? {}, '"given"'),
      ...(unit !== undefined && { answerUnit: String(unit) }),
      mistakes: this.mistakes(data['mistakes'], what, leastMistakes),
    };
  }

  private mistakes(value: unknown, what: string, least: number): Mistake[] {
    const list = Array.isArray(value) ? (value as unknown[]) : [];
    if (list.length < least) this.problems.push(`${what} needs at least ${least} diagnosed mistakes.`);
    return list.flatMap((item) => this.mistake(item) ?? []);
  }

  private mistake(item: unknown): Mistake | undefined {
    if (!isData(item)) {
      this.problems.push('A mistake needs an equation, a slip or a change.');
      return undefined;
    }
    this.onlyKeys(item, ['equation', 'slip', 'of', 'change', 'says'], 'A mistake');
    const says = this.text(item, 'says', 'A mistake: ');
    if (typeof item['equation'] === 'string') return { kind: 'equation', equation: item['equation'], says };
    if (isData(item['change']))
      return { kind: 'change', change: this.givens(item['change'], '"change"'), says };
    const slip = slips.find((name) => name === item['slip']);
    if (slip)
      return { kind: 'slip', slip, ...(item['of'] !== undefined && { of: String(item['of']) }), says };
    this.problems.push(`A mistake needs an equation, a change, or a slip: ${slips.join(', ')}.`);
    return undefined;
  }

  private parts(value: unknown): Part[] {
    if (!Array.isArray(value) || value.length < 2) {
      this.problems.push('"parts" must be a list of at least two parts.');
      return [];
    }
    return (value as unknown[]).flatMap((item, i) => {
      const what = `Part ${i + 1}`;
      if (!isData(item)) {
        this.problems.push(`${what} must hold keys and values.`);
        return [];
      }
      this.onlyKeys(item, ['id', 'question', 'marks', 'hints', ...asked], what);
      return {
        id: this.text(item, 'id', `${what}: `),
        question: this.text(item, 'question', `${what}: `),
        marks: this.marks(item['marks'] ?? 1, `${what}: "marks"`),
        hints: this.texts(item['hints'] ?? [], `${what}: "hints"`),
        ...this.asked(item, what, 0),
      };
    });
  }

  private options(value: unknown): ChoiceExercise['options'] {
    const list = Array.isArray(value) ? (value as unknown[]) : [];
    const options = list.flatMap((item): Option[] => {
      if (isData(item) && typeof item['text'] === 'string' && typeof item['because'] === 'string') {
        return [
          { text: item['text'].trim(), right: item['right'] === true, because: item['because'].trim() },
        ];
      }
      this.problems.push('Every option needs a text and a because.');
      return [];
    });
    if (options.length < 2 || !options.some((o) => o.right) || options.every((o) => o.right)) {
      this.problems.push('"options" needs at least two, of which some are right and some are not.');
    }
    return options;
  }
}

/** `0.7`, `'0.7 1'` and `'0.7'` are the same number without a unit. */
function plainText(value: unknown): string {
  return String(value).trim().replace(/ 1$/, '');
}
