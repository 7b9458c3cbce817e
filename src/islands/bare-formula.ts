import type { Formula, FormulaExample } from '../../calculators/core/formula.ts';
import { parseEquation } from '../../calculators/core/expression.ts';
import { quantity } from '../../calculators/core/quantity.ts';
import { plainNumber } from '../../calculators/core/print.ts';
import { fromSI, toSI, type Quantity } from '../../calculators/core/units.ts';

/** The formula without what only a page shows: that stays in the page's text. */
export function bareFormula(formula: Formula): Formula {
  return { ...formula, answers: '', assumes: [], examples: [], alsoSee: [], caution: [], words: [] };
}

/** The symbol a card starts by finding: the one alone on the left, else the first. */
export function soughtOf(formula: Formula): string {
  const { left } = parseEquation(formula.equation);
  return left.kind === 'name' && left.name in formula.symbols ? left.name : Object.keys(formula.symbols)[0]!;
}

/** Whether every number of an example lies where the formula is meant to be used; a book’s example may not. */
function inRange(formula: Formula, { given, expect }: FormulaExample): boolean {
  return Object.entries({ ...given, ...expect }).every(([symbol, written]) => {
    const spec = formula.symbols[symbol];
    if (written === undefined || spec?.range === undefined) return true;
    const value = quantity(written);
    return value >= toSI(spec.range[0], spec.unit) && value <= toSI(spec.range[1], spec.unit);
  });
}

/**
 * The first numbers of a calculator, each as a written quantity: those given, else those of the first example
 * within its ranges, else the usual value, else the middle of the range.
 */
export function startOf(
  formula: Formula,
  given: Readonly<Partial<Record<string, Quantity>>> = {},
): Record<string, Quantity> {
  const example = formula.examples.find((one) => inRange(formula, one)) ?? formula.examples[0];
  const start: Record<string, Quantity> = {};
  for (const [symbol, spec] of Object.entries(formula.symbols)) {
    if (spec.constant !== undefined) continue;
    const written = given[symbol] ?? example?.given[symbol] ?? example?.expect[symbol];
    if (written !== undefined) {
      quantity(written);
      start[symbol] = written;
      continue;
    }
    const [low, high] = spec.range ?? [1, 1];
    const middle = low > 0 && high / low > 20 ? Math.sqrt(low * high) : (low + high) / 2;
    const home = spec.show ?? spec.unit;
    const value = Number(plainNumber(fromSI(toSI(spec.usual ?? middle, spec.unit), home), { figures: 3 }));
    start[symbol] = `${value} ${home}`;
  }
  return start;
}
