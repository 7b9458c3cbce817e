import { describe, expect, it } from 'vitest';
import { quantity } from '../../calculators/core/quantity.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { soughtOf, startOf } from '../../src/islands/bare-formula.ts';
import { answerOf } from '../../src/islands/solving.ts';

describe('the numbers a card opens with', () => {
  it.each(Object.values(formulas).map((formula) => [formula.id, formula] as const))(
    'have an answer and no warning: %s',
    (_, formula) => {
      const find = soughtOf(formula);
      const given = Object.fromEntries(
        Object.entries(startOf(formula)).flatMap(([symbol, text]) =>
          symbol === find ? [] : [[symbol, quantity(text)]],
        ),
      );
      const answer = answerOf(formula, given, find);
      expect(answer.value).toBeDefined();
      expect(answer.warnings).toEqual([]);
    },
  );
});
