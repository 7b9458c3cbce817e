import type { Citation } from './formula.ts';
import type { Quantity, UnitSymbol } from './units.ts';

/** What a calculation can be told. Quantities are SI numbers inside `run`, whatever the reader typed. */
export type Input = QuantityInput | ChoiceInput | MaterialInput | FlagInput | TextInput | ListInput;

interface InputBase {
  readonly name: string;
  /** One line under the field: what it changes. */
  readonly note?: string;
  /** The heading the form puts it under. */
  readonly group?: string;
  /** Asked at once; the rest are folded. */
  readonly first?: boolean;
}

export interface QuantityInput extends InputBase {
  readonly kind: 'quantity';
  readonly sign?: string;
  readonly unit: UnitSymbol;
  readonly show?: UnitSymbol;
  /** In `unit`, as in a formula. */
  readonly range?: readonly [number, number];
  readonly why?: string;
  readonly limit?: { readonly above?: number; readonly below?: number; readonly why: string };
  /** In `unit`. Absent: the quantity may be left open. */
  readonly usual?: number;
  /** Half-width of the 95 % interval of `usual`, as text: `'2 mm'` or `'20 %'`. */
  readonly spread?: string;
  /** Not asked in a row whose choice of that name is this one: a round bar has no width. */
  readonly unless?: { readonly choice: string; readonly is: string };
  /** The number comes from this property of the material chosen in that input, until the reader writes their own. */
  readonly from?: { readonly input: string; readonly property: string };
  /** As in a formula: a stress, no pressure that a gauge shows. */
  readonly stress?: true;
}

export interface ChoiceInput extends InputBase {
  readonly kind: 'choice';
  readonly options: Readonly<Record<string, string>>;
  readonly usual: string;
}

export interface MaterialInput extends InputBase {
  readonly kind: 'material';
  readonly role: 'metal' | 'mould' | 'pattern' | 'crucible';
  readonly usual: string;
}

export interface FlagInput extends InputBase {
  readonly kind: 'flag';
  readonly usual: boolean;
}

export interface TextInput extends InputBase {
  readonly kind: 'text';
  readonly usual: string;
}

export interface ListInput extends InputBase {
  readonly kind: 'list';
  readonly item: Readonly<Record<string, Exclude<Input, ListInput>>>;
  readonly usual: readonly Row[];
  readonly most: number;
}

export type Scalar = number | string | boolean | undefined;
export type Row = Readonly<Record<string, Scalar>>;
export type Values = Readonly<Record<string, Scalar | readonly Row[]>>;

export interface Output {
  readonly name: string;
  readonly sign?: string;
  readonly unit: UnitSymbol;
  readonly show?: UnitSymbol;
  /** As in a formula: a stress, no pressure that a gauge shows. */
  readonly stress?: true;
}

/** One line of working: a formula with its numbers in, or a sentence where there is no formula. */
export interface Step {
  readonly id: string;
  readonly title: string;
  /** The id of a formula, when the step is one; `given` then has its symbols in SI. */
  readonly formula?: string;
  readonly given?: Readonly<Record<string, number>>;
  readonly find?: string;
  readonly value?: number;
  readonly unit?: UnitSymbol;
  readonly note?: string;
}

export type Verdict = 'holds' | 'close' | 'fails';

export interface Check {
  readonly id: string;
  readonly title: string;
  readonly verdict: Verdict;
  /** One sentence with the numbers, saying the decision first. */
  readonly why: string;
  /** Above zero it holds: usually ln(have / need). What a lever is solved for. */
  readonly margin: number;
  /** Quantity inputs whose change could make it hold, most practical first. */
  readonly levers: readonly string[];
  /** Ids of steps behind it. */
  readonly steps?: readonly string[];
  /** The step whose number the decision turns on. */
  readonly shows?: string;
}

export interface Result {
  /** Outputs in SI; an output that does not apply is absent and the notes say why. */
  readonly values: Readonly<Record<string, number>>;
  readonly steps: readonly Step[];
  readonly checks: readonly Check[];
  readonly notes: readonly string[];
}

export interface Watch {
  readonly progress?: (fraction: number) => void;
  readonly cancelled?: () => boolean;
}

/** A run with its answers worked by hand or printed by somebody else. */
export interface ModelExample {
  readonly title: string;
  /** As typed: quantities with their unit, names of options, lists of rows. What is absent starts as usual. */
  readonly given: Readonly<Record<string, string | readonly Readonly<Record<string, string>>[] | undefined>>;
  /** Outputs; the digits written are the tolerance. */
  readonly expect: Readonly<Record<string, Quantity | undefined>>;
  /** A citation, or the working done by hand as text. Never this library's own output. */
  readonly from: Citation | { readonly byHand: string };
}

export interface Model {
  readonly id: string;
  readonly title: string;
  readonly answers: string;
  readonly inputs: Readonly<Record<string, Input>>;
  readonly outputs: Readonly<Record<string, Output>>;
  /** Pure: the same inputs give the same result, nothing is kept. */
  readonly run: (inputs: Values, watch?: Watch) => Result;
  readonly assumes: readonly string[];
  readonly source: Citation;
  readonly alsoSee?: readonly Citation[];
  readonly examples: readonly ModelExample[];
  readonly caution?: readonly string[];
  /** Physics the sweep holds it to: raising the input never lowers (+) or never raises (−) the output. */
  readonly monotone?: readonly {
    readonly input: string;
    readonly output: string;
    readonly sense: '+' | '-';
  }[];
  readonly words?: readonly string[];
}

export function defineModel(model: Model): Model {
  return model;
}
