import { type Expression } from '../core/expression.ts';
import { compile } from '../core/program.ts';
import type { Formula } from '../core/formula.ts';
import { constantsOf, rearrange } from '../core/solve.ts';
import { fromSI, toSI, unit, widthFromSI, widthToSI, type UnitSymbol } from '../core/units.ts';

/** A number with what its writing allows: how many figures, and what one of its last place is worth. */
export interface Written {
  readonly written: number;
  readonly unit: UnitSymbol;
  readonly figures: number;
}

/** In the unit of the equation. Exact numbers have no end of figures and a last place of nought. */
interface Weighed {
  readonly value: number;
  readonly figures: number;
  readonly place: number;
}

/** What the last written place of a number is worth, in SI. */
export function lastPlaceOf({ written, unit: symbol, figures }: Written): number {
  if (written === 0) return 0;
  return widthToSI(10 ** (power(written) - figures + 1), symbol);
}

const power = (value: number): number => Math.floor(Math.log10(Math.abs(value)) + 1e-12);

/**
 * Significant figures of a formula's answer, in the unit it is asked in, by the two rules of the bench: a product
 * keeps the fewest figures of its factors, a sum the coarsest last place of its terms. Constants are exact, and
 * so is a written nought. Undefined where the equation cannot be rearranged.
 */
export function figuresOfAnswer(
  formula: Formula,
  find: string,
  si: Readonly<Record<string, number>>,
  written: Readonly<Record<string, Written>>,
  answerUnit: UnitSymbol,
): number | undefined {
  const equation = rearrange(formula, find);
  if (!equation) return undefined;
  const unitOf = (name: string): UnitSymbol | undefined =>
    formula.empirical ? formula.symbols[name]?.unit : undefined;
  const values: Record<string, number> = {};
  for (const [name, value] of Object.entries({ ...constantsOf(formula), ...si })) {
    const own = unitOf(name);
    values[name] = own === undefined ? value : fromSI(value, own);
  }
  const leaf = (name: string): Weighed => {
    const value = values[name] ?? Number.NaN;
    const given = written[name];
    if (!given) return { value, figures: Infinity, place: 0 };
    const own = unitOf(name);
    const place = lastPlaceOf(given);
    const weighed = fromPlace(value, own === undefined ? place : widthFromSI(place, own));
    // The figures as written, except on a scale that does not begin at nought.
    return place === 0 || unit(given.unit).offset !== 0 ? weighed : { ...weighed, figures: given.figures };
  };
  const weighed = weigh(equation.right, leaf, values);
  if (!(Math.abs(weighed.value) > 0) || !Number.isFinite(weighed.value)) return undefined;
  if (!isSum(equation.right)) return weighed.figures;
  const own = unitOf(find);
  const inSI = own === undefined ? weighed.value : toSI(weighed.value, own);
  const place = own === undefined ? weighed.place : widthToSI(weighed.place, own);
  return fromPlace(fromSI(inSI, answerUnit), widthFromSI(place, answerUnit)).figures;
}

/** Whether terms are added or taken away last of all. */
export function isSum(e: Expression): boolean {
  return e.kind === 'negate' ? isSum(e.operand) : e.kind === 'binary' && (e.op === '+' || e.op === '-');
}

const fromPlace = (value: number, place: number): Weighed => ({
  value,
  place,
  figures: place === 0 ? Infinity : Math.max(0, power(value) - power(place) + 1),
});

const fromFigures = (value: number, figures: number): Weighed => ({
  value,
  figures,
  place: Number.isFinite(figures) && value !== 0 ? 10 ** (power(value) - figures + 1) : 0,
});

function weigh(
  e: Expression,
  leaf: (name: string) => Weighed,
  values: Readonly<Record<string, number>>,
): Weighed {
  const inner = (child: Expression): Weighed => weigh(child, leaf, values);
  if (e.kind === 'number') return { value: e.value, figures: Infinity, place: 0 };
  if (e.kind === 'name')
    return e.name === 'pi' ? { value: Math.PI, figures: Infinity, place: 0 } : leaf(e.name);
  const value = compile(e)(values);
  if (e.kind === 'negate') return { ...inner(e.operand), value };
  const parts = (e.kind === 'call' ? e.args : [e.left, e.right]).map(inner);
  if (isSum(e) || (e.kind === 'call' && (e.fn === 'min' || e.fn === 'max')))
    return fromPlace(value, Math.max(...parts.map(({ place }) => place)));
  return fromFigures(value, Math.min(...parts.map(({ figures }) => figures)));
}
