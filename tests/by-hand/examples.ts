import { Decimal } from 'decimal.js';
import { quantityFigures } from '../../calculators/core/quantity.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { models } from '../../calculators/models/index.ts';
import { claimsIn, meet, type Claim } from './working.ts';

/** An example worked by hand, worked again from its own text. */
export interface Reworked {
  readonly of: string;
  readonly title: string;
  readonly claims: readonly Claim[];
  readonly wrong: readonly Claim[];
  /** One of the sums that hold comes to the answer the example states. */
  readonly concluded: boolean;
}

interface Example {
  readonly title: string;
  readonly expect: Readonly<Record<string, string | undefined>>;
  readonly from: object;
}

/** The stated answers, each as the interval of what rounds to it. */
const answersOf = ({ expect }: Example) =>
  Object.values(expect).flatMap((text) => {
    if (text === undefined) return [];
    const { halfDigit, unit } = quantityFigures(text);
    const [number = '0'] = text.split(' ');
    // Half of the last place as it is written, whatever the unit.
    const decimals = (number.split('.')[1] ?? '').length;
    const half = new Decimal(10).pow(-decimals).div(2);
    return halfDigit > 0 && unit
      ? [{ low: new Decimal(number).minus(half), high: new Decimal(number).plus(half) }]
      : [];
  });

export function reworked(): Reworked[] {
  return [...Object.values(formulas), ...Object.values(models)].flatMap(({ id, examples }) =>
    (examples as readonly Example[]).flatMap((example) => {
      const byHand = 'byHand' in example.from ? example.from.byHand : undefined;
      if (typeof byHand !== 'string') return [];
      const claims = claimsIn(byHand);
      const sound = claims.filter(({ holds }) => holds);
      const results = sound.flatMap(({ worked, written }) => [worked, written]);
      return [
        {
          of: id,
          title: example.title,
          claims,
          wrong: claims.filter(({ holds }) => !holds),
          concluded: answersOf(example).every((answer) => results.some((result) => meet(result, answer))),
        },
      ];
    }),
  );
}
