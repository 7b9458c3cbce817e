import { parseEquation, parseExpression, type Environment, type Equation } from './expression.ts';
import type { Formula, SymbolSpec } from './formula.ts';
import { isolate } from './isolate.ts';
import { programOf, valueOf, type Program } from './program.ts';
import { fromSI, toSI } from './units.ts';

/** A formula made ready to be evaluated: once for each formula, for as long as it is in use. */
export interface Compiled {
  readonly equation: Equation;
  readonly symbols: readonly (readonly [string, SymbolSpec])[];
  /** In SI. */
  readonly constants: Readonly<Record<string, number>>;
  /** The symbols in their order, in the equation's own units: what the programs below read. */
  readonly places: Float64Array;
  readonly left: Program;
  readonly right: Program;
  readonly rearranged: Map<string, Rearranged | undefined>;
  readonly where: readonly Condition[];
}

export interface Rearranged {
  readonly equation: Equation;
  readonly value: Program;
  /** The equation as it is stated: its answer needs no putting back. */
  readonly asStated: boolean;
}

type Comparison = '>' | '>=' | '<' | '<=';

interface Condition {
  readonly left: Program;
  readonly sign: Comparison;
  readonly right: Program;
  readonly why: string;
}

const compiled = new WeakMap<Formula, Compiled>();

export function compiledFor(formula: Formula): Compiled {
  const known = compiled.get(formula);
  if (known) return known;
  const equation = parseEquation(formula.equation);
  const symbols = Object.entries(formula.symbols) as [string, SymbolSpec][];
  const place = placeIn(symbols);
  const fresh: Compiled = {
    equation,
    symbols,
    constants: Object.fromEntries(
      symbols.flatMap(([symbol, spec]) =>
        spec.constant === undefined ? [] : [[symbol, toSI(spec.constant, spec.unit)]],
      ),
    ),
    places: new Float64Array(symbols.length),
    left: programOf(equation.left, place),
    right: programOf(equation.right, place),
    rearranged: new Map(),
    where: (formula.where ?? []).map(({ test, why }) => ({ ...comparison(test, place), why })),
  };
  compiled.set(formula, fresh);
  return fresh;
}

type Place = (symbol: string) => number | undefined;

const placeIn =
  (symbols: Compiled['symbols']): Place =>
  (symbol) => {
    const at = symbols.findIndex(([known]) => known === symbol);
    return at < 0 ? undefined : at;
  };

export function rearrangedFor(formula: Formula, find: string): Rearranged | undefined {
  const { equation, rearranged, symbols } = compiledFor(formula);
  if (!rearranged.has(find)) {
    const isolated = isolate(equation, find);
    rearranged.set(
      find,
      isolated && {
        equation: isolated,
        value: programOf(isolated.right, placeIn(symbols)),
        asStated: isolated.right === equation.right,
      },
    );
  }
  return rearranged.get(find);
}

/** Reads `p1 > p2`, with `>`, `>=`, `<` or `<=`. */
function comparison(text: string, place: Place): Omit<Condition, 'why'> {
  const match = /^(.*?)(>=|<=|>|<)(.*)$/.exec(text);
  if (!match) throw new Error(`"${text}" is not a comparison of two expressions`);
  return {
    left: programOf(parseExpression(match[1]!), place),
    sign: match[2] as Comparison,
    right: programOf(parseExpression(match[3]!), place),
  };
}

/** Whether it holds with the symbols as they stand; not where a side is no number. */
export function holds({ left, sign, right }: Condition, places: Float64Array): boolean {
  const a = valueOf(left, places);
  const b = valueOf(right, places);
  if (sign === '>') return a > b;
  if (sign === '>=') return a >= b;
  return sign === '<' ? a < b : a <= b;
}

/** The symbol usually sought. */
export const firstSymbol = (formula: Formula): string => compiledFor(formula).symbols[0]![0];

/** Left less right, with the symbols as they stand. */
export const gapOf = ({ left, right }: Compiled, places: Float64Array): number =>
  valueOf(left, places) - valueOf(right, places);

/** How large the two sides are together. */
export const sizeOf = ({ left, right }: Compiled, places: Float64Array): number =>
  Math.abs(valueOf(left, places)) + Math.abs(valueOf(right, places));

/** An empirical equation is written in its own units; any other is evaluated in SI. */
export const toOwn = (formula: Formula, spec: SymbolSpec, si: number): number =>
  formula.empirical ? fromSI(si, spec.unit) : si;
export const fromOwn = (formula: Formula, spec: SymbolSpec, own: number): number =>
  formula.empirical ? toSI(own, spec.unit) : own;

/** The places filled from numbers in SI, constants included; what is not given is NaN. */
export function placed(formula: Formula, si: Environment): Float64Array {
  const { symbols, constants, places } = compiledFor(formula);
  symbols.forEach(([symbol, spec], at) => {
    places[at] = toOwn(formula, spec, si[symbol] ?? constants[symbol] ?? Number.NaN);
  });
  return places;
}
