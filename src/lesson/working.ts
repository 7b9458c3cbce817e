import type { Formula } from '../../calculators/core/formula.ts';
import { didYouMean } from '../../calculators/core/nearest.ts';
import { printQuantity, printWritten } from '../../calculators/core/print.ts';
import { quantity, quantityFigures } from '../../calculators/core/quantity.ts';
import { constantsOf, usualOf } from '../../calculators/core/solve.ts';
import { sameDimension, unit, type Quantity, type UnitSymbol } from '../../calculators/core/units.ts';
import { answerOf } from '../islands/solving.ts';
import { symbolOf } from './lookup.ts';

export type Given = Readonly<Record<string, Quantity>>;

export interface Working {
  /** In SI. */
  readonly value: number;
  /** `0.42 s`, in the bench unit. */
  readonly answer: string;
  /** The rearranged right side with its numbers in, when there is a rearrangement. */
  readonly numbers: string | undefined;
  /** Every symbol that went in, as written or as printed. */
  readonly given: readonly {
    readonly symbol: string;
    readonly text: string;
    readonly from: 'given' | 'usual' | 'constant';
  }[];
}

/**
 * A formula worked with written quantities at build. Usual values stand in for what is not given and are
 * listed as such. Stops the build with a sentence when a quantity does not fit or there is no answer.
 */
export function workedFormula(
  formula: Formula,
  given: Given,
  find: string,
  asked: string,
  figures = 3,
): Working {
  const found = symbolOf(formula, find, asked);
  const written: Record<string, number> = {};
  for (const [symbol, text] of Object.entries(given)) {
    const spec = symbolOf(formula, symbol, asked);
    if (symbol === find) throw new Error(`${asked}: "${find}" is both given and sought`);
    const typed = unit(quantityFigures(text).unit);
    const wants = unit(spec.unit);
    if (!sameDimension(typed.dimension, wants.dimension) || typed.kind !== wants.kind)
      throw new Error(`${asked}: ${symbol} = ${text} is not a quantity in ${spec.unit}`);
    written[symbol] = quantity(text);
  }
  const usual = usualOf(formula);
  const constants = constantsOf(formula);
  const values = { ...usual, ...constants, ...written };
  const { value: solved, reason, numbers } = answerOf(formula, values, find);
  if (solved === undefined) throw new Error(`${asked}: ${reason}`);
  return {
    value: solved,
    answer: printQuantity(solved, found.show ?? found.unit, { figures }),
    numbers,
    given: Object.keys(formula.symbols).flatMap((symbol) => {
      const value = values[symbol];
      if (symbol === find || value === undefined) return [];
      const spec = symbolOf(formula, symbol, asked);
      const from =
        symbol in written
          ? ('given' as const)
          : symbol in constants
            ? ('constant' as const)
            : ('usual' as const);
      const own = given[symbol];
      const text =
        own === undefined
          ? from === 'constant'
            ? printConstant(value, spec.show ?? spec.unit)
            : printQuantity(value, spec.show ?? spec.unit, { figures: 3 })
          : printWritten(own);
      return [{ symbol, text, from }];
    }),
  };
}

/** To six figures, without the noughts at its end. */
function printConstant(value: number, unit: UnitSymbol): string {
  return printQuantity(value, unit, { figures: 6 }).replace(/\.(\d*?)0+(?!\d)/, (_, digits: string) =>
    digits === '' ? '' : `.${digits}`,
  );
}

/**
 * Refuses properties a component does not know, and the want of one it cannot do without, so that a slip in a lesson
 * stops the build.
 */
export function onlyProps(
  props: object,
  known: readonly string[],
  asked: string,
  needed: readonly string[] = [],
): void {
  for (const name of Object.keys(props)) {
    if (!known.includes(name) && !name.startsWith('data-astro') && name !== 'slot')
      throw new Error(
        `${asked}: no property "${name}"${didYouMean(name, known) || `; there are ${known.join(', ')}`}`,
      );
  }
  const missing = needed.filter((name) => !Object.hasOwn(props, name));
  if (missing.length > 0) throw new Error(`${asked}: needs ${missing.join(', ')}`);
}

/** A link and what follows it with no gap between, as HTML: the page compiler would put a space there. */
export function linkLine(address: string, title: string, after: string): string {
  const words = title.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<a href="${address}">${words}</a>${after}`;
}
