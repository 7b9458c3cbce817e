import { describe, expect, it } from 'vitest';
import { quantity, quantityFigures, readSpread } from '../calculators/core/quantity.ts';
import { solve } from '../calculators/core/solve.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { sources } from '../calculators/sources.ts';
import { allChecks } from './published/index.ts';

describe('the published checks', () => {
  it('each have a name of their own', () => {
    const ids = allChecks.map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });

  it('each name a formula of the library', () => {
    expect(
      allChecks.filter(({ formula }) => !formulas[formula]).map(({ id, formula }) => `${id}: ${formula}`),
    ).toEqual([]);
  });

  it('say where the figure stands and whether it was read or recalled', () => {
    for (const { id, source } of allChecks) {
      expect(sources[source.key], id).toBeDefined();
      expect(source.at.length, id).toBeGreaterThan(2);
      expect(['read', 'memory'], id).toContain(source.how);
    }
  });

  it('do not ask for what they were given', () => {
    expect(allChecks.filter(({ given, find }) => find in given).map(({ id }) => id)).toEqual([]);
  });
});

describe.each(allChecks.map((check) => [check.id, check.title, check] as const))(
  '%s %s',
  (_id, _title, check) => {
    it(`comes out as printed, within ${check.tolerance}`, () => {
      const formula = formulas[check.formula];
      if (!formula) throw new Error(`no formula "${check.formula}"`);
      const given = Object.fromEntries(
        Object.entries(check.given).map(([symbol, text]) => [symbol, quantity(text)]),
      );
      const solved = solve(formula, given, check.find);
      if (!solved.ok) throw new Error(solved.reason);
      const { value, unit } = quantityFigures(check.expect);
      const nearest = Math.min(...solved.roots.map((root) => Math.abs(root - value)));
      expect(nearest, `${solved.value} for ${value} in SI`).toBeLessThanOrEqual(
        readSpread(check.tolerance, value, unit) * (1 + 1e-9),
      );
    });
  },
);
