import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { printNumber } from '../../calculators/core/print.ts';
import { rearrange, solve, warningsFor, type Warning } from '../../calculators/core/solve.ts';
import { equationUnit } from '../../calculators/core/sum-units.ts';
import { substituted } from '../../calculators/core/typeset.ts';
import { fromSI, toSI, unit, type UnitSymbol } from '../../calculators/core/units.ts';

export { formulaSpreadInSteps } from '../../calculators/core/spread.ts';

/** What a calculator shows of one solution; plain data, so the first one is made at build. */
export interface Answer {
  /** In SI; absent when there is no answer. */
  readonly value?: number;
  /** Other answers, in SI. */
  readonly others: readonly number[];
  /** Why there is no answer. */
  readonly reason?: string;
  readonly warnings: readonly Warning[];
  /** The right side of the rearranged equation with its numbers in, powers as `^2`; absent when it cannot be rearranged. */
  readonly numbers?: string;
}

/**
 * Solves for `find` and writes out the line with the numbers in. `given` is in SI; a range is told in the unit its
 * symbol is shown in.
 */
export function answerOf(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  find: string,
  shown: Readonly<Record<string, UnitSymbol>> = {},
): Answer {
  const specs = formula.symbols as Readonly<Record<string, SymbolSpec>>;
  const solved = solve(formula, given, find);
  const equation = rearrange(formula, find);
  const number = (symbol: string): string => {
    const spec = specs[symbol]!;
    const value = spec.constant === undefined ? given[symbol] : toSI(spec.constant, spec.unit);
    if (value === undefined) return spec.sign ?? symbol;
    const own = equationUnit(formula, symbol);
    // A constant stands whole, and 100 °C is 373.15 K.
    const figures = spec.constant !== undefined ? 6 : unit(own).kind === 'temperature' ? 5 : 4;
    const text = printNumber(fromSI(value, own), { figures }).replace(
      /\.?0+(?= |$)/,
      (zeros, at: number, whole: string) => (whole.slice(0, at + 1).includes('.') ? '' : zeros),
    );
    return text.startsWith('−') || text.includes('×') ? `(${text})` : text;
  };
  const inUnits = (warning: Warning): readonly Warning[] => {
    const { symbol } = warning;
    const [show, si] = [shown[symbol], symbol === find && solved.ok ? solved.value : given[symbol]];
    return show === undefined || si === undefined
      ? [warning]
      : warningsFor({ ...specs[symbol]!, show }, symbol, si);
  };
  return {
    warnings: solved.warnings.flatMap(inUnits),
    others: solved.ok ? solved.roots.filter((root) => root !== solved.value) : [],
    ...(solved.ok ? { value: solved.value } : { reason: solved.reason }),
    ...(equation && { numbers: substituted(equation.right, number) }),
  };
}
