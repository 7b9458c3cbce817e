import type { Formula } from '../../../core/formula.ts';
import { readQuantity, readSpread } from '../../../core/quantity.ts';
import { constantsOf, rearrange } from '../../../core/solve.ts';
import { fromSI, unit, widthFromSI, type UnitSymbol } from '../../../core/units.ts';
import { lastPlaceOf } from '../../figures.ts';
import type { Givens, NumberExercise, Part, Variation } from '../../definition.ts';
import { valuesOf } from '../../variants.ts';
import {
  float,
  fromCoherent,
  least,
  minus,
  most,
  operator,
  over,
  power,
  product,
  said,
  sum,
  toCoherent,
  Unsayable,
  variable,
} from './expressions.ts';
import { exact, figuresOf, places } from './figures.ts';
import { element } from './xml.ts';

/** A number as the item computes it: its value in the coherent unit, and what its writing allows. */
export interface Known {
  readonly si: string;
  /** How many figures it was written with; a written nought is exact. */
  readonly figures: string;
  /** What its last written place is worth, in the coherent unit. */
  readonly place: string;
  /** Its scale does not begin at nought, so that its figures are those of its place. */
  readonly shifted: boolean;
}

/** What the templates declare and draw: an index for each varied quantity, its text and its number. */
export interface Template {
  readonly declarations: readonly string[];
  readonly processing: readonly string[];
  /** By the name of the given: the identifier of its text as printed. */
  readonly printed: Readonly<Record<string, string>>;
  readonly known: (name: string, unitOf: UnitSymbol) => Known | undefined;
}

const declare = (identifier: string, type: string): string =>
  element('qti-template-declaration', { identifier, cardinality: 'single', 'base-type': type });
const set = (identifier: string, value: string): string =>
  element('qti-set-template-value', { identifier }, value);
const pick = (
  index: string,
  type: string,
  values: readonly (string | number)[],
  written: (value: string) => string,
): string =>
  element(
    'qti-index',
    { n: index },
    element(
      'qti-ordered',
      {},
      ...values.map((value) => element('qti-base-value', { 'base-type': type }, written(String(value)))),
    ),
  );

export function templateFor(
  vary: Readonly<Record<string, Variation>>,
  shown: (text: string) => string,
): Template {
  const declarations: string[] = [];
  const processing: string[] = [];
  const printed: Record<string, string> = {};
  const texts: Record<string, readonly string[]> = {};
  for (const [name, variation] of Object.entries(vary)) {
    const values = valuesOf(variation);
    if (values.length > 400) throw new Unsayable(`${name} takes ${values.length} values`);
    texts[name] = values;
    const [index, text] = [`INDEX_${safe(name)}`, `TEXT_${safe(name)}`];
    printed[name] = text;
    declarations.push(declare(index, 'integer'), declare(text, 'string'));
    processing.push(
      set(index, element('qti-random-integer', { min: 1, max: values.length })),
      set(text, pick(index, 'string', values.map(shown), xmlText)),
    );
  }
  const known = (name: string, unitOf: UnitSymbol): Known | undefined => {
    const values = texts[name];
    if (!values) return undefined;
    const read = values.map((text) => readOf(text, unitOf, name));
    const [number, figures, place] = [`SI_${safe(name)}`, `FIGURES_${safe(name)}`, `PLACE_${safe(name)}`];
    if (!declarations.some((one) => one.includes(`"${number}"`))) {
      declarations.push(declare(number, 'float'), declare(figures, 'integer'), declare(place, 'float'));
      const index = `INDEX_${safe(name)}`;
      processing.push(
        set(
          number,
          pick(
            index,
            'float',
            read.map(({ si }) => si),
            plain,
          ),
        ),
        set(
          figures,
          pick(
            index,
            'integer',
            read.map((one) => one.figures),
            plain,
          ),
        ),
        set(
          place,
          pick(
            index,
            'float',
            read.map((one) => one.place),
            plain,
          ),
        ),
      );
    }
    const shifted = read.some((one) => one.shifted);
    return { si: variable(number), figures: variable(figures), place: variable(place), shifted };
  };
  return { declarations, processing, printed, known };
}

const plain = (value: string): string => value;
const xmlText = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
export const safe = (name: string): string => name.replace(/[^A-Za-z0-9]/g, '_');

function readOf(text: string, unitOf: UnitSymbol, name: string) {
  const read = readQuantity(text, { unit: unitOf });
  if (!read.ok) throw new Unsayable(`${name} is not a number`);
  const figures = read.written === 0 ? exact : read.figures;
  return { si: read.value, figures, place: lastPlaceOf(read), shifted: unit(read.unit).offset !== 0 };
}

export interface Asked {
  readonly answer: string;
  readonly figures: string;
  readonly answerUnit: UnitSymbol;
}

/** What a question comes to in the unit asked for, and to how many figures, as expressions. */
export function askedIn(
  asked: NumberExercise | Part,
  formula: Formula,
  givenOf: (name: string, text: string, unitOf: UnitSymbol) => Known,
  given: Givens,
): Asked {
  const { find } = asked;
  const sought = formula.symbols[find];
  const isolated = rearrange(formula, find);
  if (!sought || !isolated) throw new Unsayable(`${formula.title} has to be solved by trial for ${find}`);
  const answerUnit = (asked.answerUnit ?? sought.show ?? sought.unit) as UnitSymbol;
  const known = Object.entries(given).map(
    ([name, text]) => [name, givenOf(name, text, formula.symbols[name]!.unit)] as const,
  );
  const inside = (si: string, name: string): string =>
    formula.empirical ? fromCoherent(si, formula.symbols[name]!.unit) : si;
  const constants = Object.entries(constantsOf(formula)).map(([name, si]) => [
    name,
    float(formula.empirical ? fromSI(si, formula.symbols[name]!.unit) : si),
  ]);
  const names = Object.fromEntries([
    ...constants,
    ...known.map(([name, { si }]) => [name, inside(si, name)]),
  ]) as Record<string, string>;
  const inEquation = said(isolated.right, names);
  const si = formula.empirical ? toCoherent(inEquation, sought.unit) : inEquation;
  const answer = fromCoherent(si, answerUnit);
  const leaves = Object.fromEntries(
    known.map(([name, one]) => {
      const width = formula.empirical ? unit(formula.symbols[name]!.unit).factor : 1;
      return [name, { ...one, value: names[name]!, place: over(one.place, float(width)) }];
    }),
  );
  const width = unit(answerUnit).factor / (formula.empirical ? unit(sought.unit).factor : 1);
  const allowed = figuresOf(isolated.right, leaves, names, (place) => ({
    value: answer,
    place: over(place, float(width)),
  }));
  return { answer, figures: most(float(2), least(float(4), allowed)), answerUnit };
}

/** An answer that a later part carries on with, by the name of its variable, as it is shown. */
export function carriedOn(name: string, { answerUnit, figures }: Asked): Known {
  const shown = figuresShown(answerUnit, operator('abs', variable(name)), figures);
  const last = power(float(10), sum(minus(places(operator('abs', variable(name))), shown), float(1)));
  const { factor, offset } = unit(answerUnit);
  return {
    si: toCoherent(variable(name), answerUnit),
    figures: shown,
    place: product(last, float(factor)),
    shifted: offset !== 0,
  };
}

/** Whole places of a temperature are kept. */
const figuresShown = (answerUnit: UnitSymbol, size: string, figures: string): string =>
  unit(answerUnit).kind === 'temperature'
    ? most(figures, sum(places(most(float(1), size)), float(1)))
    : figures;

/** The larger of the tolerance and half a unit of the last figure the givens allow; `answer` and `figures` by name. */
export function allowanceOf(
  tolerance: string,
  answerUnit: UnitSymbol,
  answer: string,
  figures: string,
): string {
  const size = operator('abs', answer);
  const share = /^\s*([\d.]+)\s*%\s*$/.exec(tolerance)?.[1];
  const wide =
    share === undefined
      ? float(widthFromSI(readSpread(tolerance, 1, answerUnit), answerUnit))
      : product(float(Number(share) / 100), size);
  const shown = figuresShown(answerUnit, size, figures);
  const lastPlace = power(float(10), sum(minus(places(size), shown), float(1)));
  return product(most(wide, product(float(0.5), lastPlace)), float(1 + 1e-9));
}

/** A given that is the same for everybody. */
export const fixed = (text: string, unitOf: UnitSymbol, name: string): Known => {
  const { si, figures, place, shifted } = readOf(text, unitOf, name);
  return { si: float(si), figures: float(figures), place: float(place), shifted };
};
