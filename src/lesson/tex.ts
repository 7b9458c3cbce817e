import katex from 'katex';
import { parseEquation, symbolsOf, type Equation } from '../../calculators/core/expression.ts';
import type { Formula } from '../../calculators/core/formula.ts';
import { rearrange } from '../../calculators/core/solve.ts';
import { equationTeX, signsOf } from '../../calculators/core/typeset.ts';

/** TeX to HTML with hidden MathML for screen readers. Stops the build on anything KaTeX doubts. */
export function typeset(tex: string, display = true): string {
  return katex.renderToString(tex, {
    displayMode: display,
    output: 'htmlAndMathml',
    throwOnError: true,
    strict: 'error',
  });
}

/** An equation of this formula's symbols as HTML. */
export function typesetEquation(formula: Formula, equation: Equation, display = true): string {
  return typeset(equationTeX(equation, signsOf(formula)), display);
}

/** The equation as stated under '', and each rearrangement that differs from it under its symbol. */
export function typesetAll(formula: Formula): Record<string, string> {
  const all: Record<string, string> = { '': typesetEquation(formula, parseEquation(formula.equation)) };
  for (const symbol of Object.keys(formula.symbols)) {
    const equation = rearrange(formula, symbol);
    const fixed = formula.symbols[symbol]?.constant !== undefined || formula.noSolve?.[symbol] !== undefined;
    if (!equation || fixed) continue;
    const html = typesetEquation(formula, equation);
    if (html !== all['']) all[symbol] = html;
  }
  return all;
}

/** Every name in the two sides of an equation. */
export function namesIn({ left, right }: Equation): string[] {
  return [...new Set([...symbolsOf(left), ...symbolsOf(right)])];
}
