import type { Expression } from '../../../core/expression.ts';
import { isSum } from '../../figures.ts';
import { float, least, minus, most, operator, power, said, sum } from './expressions.ts';

/** More figures than any number is asked to: an exact one. */
export const exact = 99;

/** The power of ten of the first figure of a size. */
export const places = (size: string): string =>
  operator('floor', sum(operator('log', most(size, float(1e-300))), float(1e-12)));

/** How many figures, or what the last place is worth: only what is asked for is written. Undefined is exact. */
interface Weighed {
  readonly figures: () => string;
  readonly place: () => string;
}

export interface Leaf {
  readonly value: string;
  readonly figures: string;
  readonly place: string;
  readonly shifted: boolean;
}

const sizeOf = (value: string): string => operator('abs', value);
const fromPlace = (value: string, place: () => string): Weighed => ({
  place,
  figures: () => most(float(0), sum(minus(places(sizeOf(value)), places(place())), float(1))),
});
const fromFigures = (value: string, figures: () => string): Weighed => ({
  figures,
  place: () => power(float(10), sum(minus(places(sizeOf(value)), figures()), float(1))),
});

/**
 * Significant figures of an answer by the rules of marking, as an expression: a product keeps the fewest figures of
 * its factors, a sum the coarsest last place of its terms. `asked` gives a sum's value and place in the unit asked for.
 */
export function figuresOf(
  right: Expression,
  leaves: Readonly<Record<string, Leaf>>,
  names: Readonly<Record<string, string>>,
  asked: (place: string) => { readonly value: string; readonly place: string },
): string {
  const weigh = (e: Expression): Weighed | undefined => {
    if (e.kind === 'number') return undefined;
    if (e.kind === 'name') {
      const leaf = leaves[e.name];
      if (!leaf) return undefined;
      const place = (): string => leaf.place;
      return leaf.shifted ? fromPlace(leaf.value, place) : { figures: () => leaf.figures, place };
    }
    if (e.kind === 'negate') return weigh(e.operand);
    const parts = (e.kind === 'call' ? e.args : [e.left, e.right])
      .map(weigh)
      .filter((one) => one !== undefined);
    if (parts.length === 0) return undefined;
    const value = said(e, names);
    if (isSum(e) || (e.kind === 'call' && (e.fn === 'min' || e.fn === 'max')))
      return fromPlace(value, () => most(...parts.map(({ place }) => place())));
    return fromFigures(value, () => least(...parts.map(({ figures }) => figures())));
  };
  const weighed = weigh(right);
  if (!weighed) return float(exact);
  if (!isSum(right)) return weighed.figures();
  const { value, place } = asked(weighed.place());
  return fromPlace(value, () => place).figures();
}
