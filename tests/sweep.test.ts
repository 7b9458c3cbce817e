import { describe, expect, it } from 'vitest';
import type { Formula } from '../calculators/core/formula.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { models } from '../calculators/models/index.ts';
import { facts, modelFacts } from './long/monotone.ts';
import { keepsTo, modelKeepsTo, sweepFormula, sweepModel } from './long/sweep.ts';

/** `npm run -s sweep` goes to a hundred thousand points each. */
const points = 1000;

describe.each((Object.values(formulas) as Formula[]).map((formula) => [formula.id, formula] as const))(
  '%s, in and around its ranges',
  (id, formula) => {
    it('answers with what satisfies it, or refuses in words', () => {
      const { answered, wrong } = sweepFormula(formula, points);
      expect(wrong).toBeUndefined();
      expect(answered).toBeGreaterThan(0);
    }, 120_000);

    it('has a fact that physics says of it beforehand', () => {
      expect(facts[id]?.length ?? 0, `facts of ${id} in tests/long/monotone.ts`).toBeGreaterThan(0);
    });

    it.each((facts[id] ?? []).map((fact) => [fact[2], fact] as const))(
      'keeps to this: %s',
      (_why, fact) => {
        const { answered, wrong } = keepsTo(formula, fact, points / 5);
        expect(wrong).toBeUndefined();
        expect(answered).toBeGreaterThan(0);
      },
      120_000,
    );
  },
);

describe.each(Object.values(models).map((model) => [model.id, model] as const))(
  '%s, in and around its ranges',
  (id, model) => {
    it('is finite or refuses in words', () => {
      const { answered, wrong } = sweepModel(model, points, 2);
      expect(wrong).toBeUndefined();
      expect(answered).toBeGreaterThan(0);
    }, 120_000);

    it.each(modelFacts.filter(({ model: of }) => of === id).map((fact) => [fact.why, fact] as const))(
      'keeps to this: %s',
      (_why, fact) => {
        const { answered, wrong } = modelKeepsTo(model, fact, 100, 2);
        expect(wrong).toBeUndefined();
        expect(answered).toBeGreaterThan(0);
      },
      120_000,
    );
  },
);
