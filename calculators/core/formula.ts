import type { SourceKey } from '../sources.ts';
import type { Quantity, UnitSymbol } from './units.ts';

/** How a number or statement is known; shown beside it wherever it is used. */
export type How = 'read' | 'memory' | 'common practice' | 'estimate';

export interface Citation {
  /** A key of the bibliography in `calculators/sources.ts`. */
  readonly key: SourceKey;
  /** Where in the work: section, equation, table, page. */
  readonly at: string;
  readonly how: How;
}

export interface SymbolSpec {
  readonly name: string;
  /** How the symbol is written, when it is not its key: `Δp`, `ρ_l`, `T_pour`. */
  readonly sign?: string;
  /** The unit the equation is written in. */
  readonly unit: UnitSymbol;
  /** The unit of the bench, when another. */
  readonly show?: UnitSymbol;
  /** Where the formula holds for this symbol, in `unit`. Outside it the reader is warned, never stopped. */
  readonly range?: readonly [number, number];
  /** Why the range ends there, as a sentence for the reader. */
  readonly why?: string;
  /** A sensible start, in `unit`. */
  readonly usual?: number;
  /** A number that is not the reader's to choose, in `unit`. */
  readonly constant?: number;
  /** Refused outside, with the reason: a material or a vessel would fail. In `unit`. */
  readonly limit?: { readonly above?: number; readonly below?: number; readonly why: string };
  /** One line of help under the field. */
  readonly note?: string;
  /** A stress in a solid, which a US shop says in psi where it reads suction in inches of mercury. */
  readonly stress?: true;
}

export interface FormulaExample<Name extends string = string> {
  readonly title: string;
  readonly given: Partial<Record<Name, Quantity>>;
  /** Exactly one symbol; the digits written are the tolerance. */
  readonly expect: Partial<Record<Name, Quantity>>;
  /** A citation, or the working done by hand as text. Never this library's own output. */
  readonly from: Citation | { readonly byHand: string };
}

export interface Formula<Name extends string = string> {
  /** `chapter/name`, which is also its path and its address. */
  readonly id: string;
  readonly title: string;
  /** What question it answers, one sentence for an apprentice. */
  readonly answers: string;
  readonly equation: string;
  /** In reading order; the first symbol is the one usually sought. */
  readonly symbols: Readonly<Record<Name, SymbolSpec>>;
  readonly assumes: readonly string[];
  readonly source: Citation;
  readonly alsoSee?: readonly Citation[];
  readonly examples: readonly FormulaExample<Name>[];
  readonly caution?: readonly string[];
  /** Joint domain, as comparisons of expressions: outside it there is no answer. */
  readonly where?: readonly { readonly test: string; readonly why: string }[];
  /** The equation holds in the units of `unit` only, so dimensions are not checked. */
  readonly empirical?: boolean;
  /** Symbols that cannot be solved for, each with the reason. */
  readonly noSolve?: Partial<Record<Name, string>>;
  /** Extra words a reader may search for. */
  readonly words?: readonly string[];
}

/**
 * A formula as plain data: the equation is stated once, as text, and the form, the exercise, the card,
 * the command line and the tests derive from it. The definition is checked by `tests/formulas.test.ts`.
 */
export function defineFormula<const Name extends string>(formula: Formula<Name>): Formula<Name> {
  return formula;
}
