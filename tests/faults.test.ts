import { describe, expect, it } from 'vitest';
import { dimensionOf } from '../calculators/core/dimensions.ts';
import { parseEquation } from '../calculators/core/expression.ts';
import type { Formula } from '../calculators/core/formula.ts';
import { quantity, quantityFigures, readSpread } from '../calculators/core/quantity.ts';
import { solve } from '../calculators/core/solve.ts';
import { sameDimension, unit, type Quantity, type UnitSymbol } from '../calculators/core/units.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { faultsOf } from './faults/plant.ts';
import { survivors } from './faults/survivors.ts';
import { allChecks } from './published/index.ts';

const inSI = (quantities: object): Record<string, number> =>
  Object.fromEntries(
    Object.entries(quantities).map(([symbol, text]) => [symbol, quantity(text as Quantity)]),
  );

function fitsDimensions(formula: Formula): boolean {
  if (formula.empirical) return true;
  const dimensions = Object.fromEntries(
    Object.entries(formula.symbols).map(([symbol, spec]) => [symbol, unit(spec.unit).dimension]),
  );
  try {
    const { left, right } = parseEquation(formula.equation);
    return sameDimension(dimensionOf(left, dimensions), dimensionOf(right, dimensions));
  } catch {
    return false;
  }
}

function agrees(formula: Formula, given: object, find: string, expected: number, tolerance: number): boolean {
  const solved = solve(formula, inSI(given), find);
  return solved.ok && Math.abs(solved.value - expected) <= tolerance * (1 + 1e-9);
}

/** Whether every check this project has for the formula still passes. */
function passes(formula: Formula): boolean {
  if (!fitsDimensions(formula)) return false;
  const examples = formula.examples.every(({ given, expect: expected }) => {
    const [find, text] = Object.entries(expected)[0] as [string, Quantity];
    const { value, halfDigit } = quantityFigures(text);
    return agrees(formula, given, find, value, halfDigit);
  });
  if (!examples) return false;
  return allChecks
    .filter((check) => check.formula === formula.id)
    .every(({ given, find, expect: text, tolerance }) => {
      const { value } = quantityFigures(text);
      const unitOf = text.slice(text.indexOf(' ') + 1) as UnitSymbol;
      return agrees(formula, given, find, value, readSpread(tolerance, value, unitOf));
    });
}

describe.each(Object.values(formulas).map((formula: Formula) => [formula.id, formula] as const))(
  'a fault planted in %s',
  (id, formula) => {
    const alive = faultsOf(formula)
      .filter((fault) => passes(fault.formula))
      .map((fault) => fault.what);

    it('has the sound formula passing first', () => {
      expect(passes(formula)).toBe(true);
    });

    it('is caught, or listed with the reason it is not', () => {
      expect(alive.sort()).toEqual(Object.keys(survivors[id] ?? {}).sort());
    });
  },
);
