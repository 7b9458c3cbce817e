import type { Citation } from '../core/formula.ts';

/** An exercise as its file states it. The answer of a computed kind is never written: the engine computes it. */
export type Exercise =
  | NumberExercise
  | StepsExercise
  | ChoiceExercise
  | OrderExercise
  | DiagnoseExercise
  | DesignExercise
  | TextExercise;

export type ExerciseKind = Exercise['kind'];

interface Common {
  /** The file's name without its ending; also the address. */
  readonly id: string;
  readonly title: string;
  /** The lesson outcome it exercises. */
  readonly outcome: string;
  /** Beliefs of `content/misconceptions.yaml` it catches and answers. */
  readonly misconceptions: readonly string[];
  readonly marks: number;
  readonly difficulty: 1 | 2 | 3;
  /** `{h}` in it prints that given with its unit. */
  readonly question: string;
  /** Shown one by one. */
  readonly hints: readonly string[];
  readonly source?: Citation;
  /** What the worked answer says besides its sums. */
  readonly worked?: string;
}

/** Quantities as text (`'150 mm'`), or a word where a model asks for a choice. */
export type Givens = Readonly<Record<string, string>>;

/** Where a design begins: quantities as text, and lists, such as the sections of a part, row by row. */
export type DesignStart = Readonly<Record<string, string | readonly Givens[]>>;

export type Variation =
  readonly string[] | { readonly from: string; readonly to: string; readonly step: string };

interface Asked {
  /** Exactly one of the two. */
  readonly formula?: string;
  readonly model?: string;
  readonly find: string;
  readonly given: Givens;
  /** The unit the answer is asked in; the bench unit of the symbol when absent. */
  readonly answerUnit?: string;
  readonly mistakes: readonly Mistake[];
}

export interface NumberExercise extends Common, Asked {
  readonly kind: 'number';
  readonly vary: Readonly<Record<string, Variation>>;
  /** `'2 %'` of the answer, or a width in its unit. */
  readonly tolerance: string;
}

export interface Part extends Asked {
  readonly id: string;
  readonly question: string;
  readonly marks: number;
  readonly hints: readonly string[];
}

export interface StepsExercise extends Common {
  readonly kind: 'steps';
  readonly given: Givens;
  readonly vary: Readonly<Record<string, Variation>>;
  readonly tolerance: string;
  /** A part's given is a quantity, `=h` for a shared given, or `$part` for the answer of an earlier part. */
  readonly parts: readonly Part[];
}

/** A wrong way to the answer that can be recognised, with what to say to whoever took it. */
export type Mistake =
  | { readonly kind: 'equation'; readonly equation: string; readonly says: string }
  | { readonly kind: 'slip'; readonly slip: Slip; readonly of?: string; readonly says: string }
  | { readonly kind: 'change'; readonly change: Readonly<Record<string, string>>; readonly says: string };

export const slips = [
  'gauge-for-absolute',
  'celsius-for-kelvin',
  'diameter-for-radius',
  'factor-1000',
] as const;
export type Slip = (typeof slips)[number];

export interface Option {
  readonly text: string;
  readonly right: boolean;
  readonly because: string;
}

export interface ChoiceExercise extends Common {
  readonly kind: 'choice';
  readonly options: readonly Option[];
}

export interface DiagnoseExercise extends Common {
  readonly kind: 'diagnose';
  readonly evidence: readonly string[];
  readonly options: readonly Option[];
}

export interface OrderExercise extends Common {
  readonly kind: 'order';
  /** In the right order. */
  readonly items: readonly string[];
  readonly because: string;
}

export interface DesignExercise extends Common {
  readonly kind: 'design';
  readonly model: string;
  /** Inputs as text; whatever is not named takes the model's own start. */
  readonly start: DesignStart;
  /** The inputs a learner may change. */
  readonly change: readonly string[];
  /** Ids of the checks that must hold. */
  readonly must: readonly string[];
  /** One plan that passes, so that the exercise is known to have an answer. */
  readonly passing: Givens;
}

export interface TextExercise extends Common {
  readonly kind: 'text';
  /** What a marker looks for; shown once the learner has written. */
  readonly rubric: readonly string[];
}

/** Which numbers, and in which order, one learner sees. */
export interface Variant {
  readonly seed: string;
  readonly given: Givens;
  /** Positions of the options or items as shown. */
  readonly order: readonly number[];
}
