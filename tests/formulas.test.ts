import { describe, expect, it } from 'vitest';
import katex from 'katex';
import { dimensionOf } from '../calculators/core/dimensions.ts';
import { parseEquation, parseExpression, symbolsOf } from '../calculators/core/expression.ts';
import type { Formula, SymbolSpec } from '../calculators/core/formula.ts';
import { quantity, quantityFigures } from '../calculators/core/quantity.ts';
import { constantsOf, rearrange, residual, solve, usualOf, warningsFor } from '../calculators/core/solve.ts';
import { equationTeX, signsOf } from '../calculators/core/typeset.ts';
import { sameDimension, toSI, unit, type Quantity } from '../calculators/core/units.ts';
import { formulas } from '../calculators/formulas/index.ts';
import { sources } from '../calculators/sources.ts';
import { createRandom } from '../calculators/core/random.ts';

const all: readonly Formula[] = Object.values(formulas);
const files = Object.keys(import.meta.glob('../calculators/formulas/*/*.ts')).map((path) =>
  path.replace('../calculators/formulas/', '').replace('.ts', ''),
);

const specsOf = (formula: Formula): [string, SymbolSpec][] => Object.entries(formula.symbols);
const variablesOf = (formula: Formula): [string, SymbolSpec][] =>
  specsOf(formula).filter(([, spec]) => spec.constant === undefined);

/** The symbol alone on the left, else the first: what the examples and the sweep seek. */
function soughtOf(formula: Formula): string {
  const { left } = parseEquation(formula.equation);
  return left.kind === 'name' ? left.name : Object.keys(formula.symbols)[0]!;
}

const given = (quantities: Partial<Record<string, Quantity>>): Record<string, number> =>
  Object.fromEntries(Object.entries(quantities).map(([symbol, text]) => [symbol, quantity(text!)]));

/** A point inside the ranges: `at` gives a number from 0 to 1 for each symbol. */
function pointOf(formula: Formula, at: (index: number) => number): Record<string, number> {
  return Object.fromEntries(
    variablesOf(formula).map(([symbol, spec], index) => {
      const [low, high] = spec.range ?? [spec.usual ?? 1, spec.usual ?? 1];
      const part = at(index);
      const wide = low > 0 && high / low > 20;
      const value = wide ? low * (high / low) ** part : low + (high - low) * part;
      return [symbol, toSI(value, spec.unit)];
    }),
  );
}

describe('the library of formulas', () => {
  it('has one file for each formula, where its id says', () => {
    expect(all.map((formula) => formula.id).sort()).toEqual(files.sort());
  });
});

describe.each(all.map((formula) => [formula.id, formula] as const))('%s', (_id, formula) => {
  const equation = parseEquation(formula.equation);

  it('declares every symbol it uses and uses every symbol it declares', () => {
    const tests = (formula.where ?? []).flatMap(({ test }) => test.split(/>=|<=|>|</).map(parseExpression));
    expect(symbolsOf(equation.left, equation.right).sort(), 'in the equation, against symbols').toEqual(
      Object.keys(formula.symbols).sort(),
    );
    for (const symbol of symbolsOf(...tests)) expect(Object.keys(formula.symbols)).toContain(symbol);
  });

  it.skipIf(formula.empirical)('has the same dimension on both sides', () => {
    const dimensions = Object.fromEntries(
      specsOf(formula).map(([symbol, spec]) => [symbol, unit(spec.unit).dimension]),
    );
    const left = dimensionOf(equation.left, dimensions);
    const right = dimensionOf(equation.right, dimensions);
    expect(sameDimension(left, right), `${left.join()} is not ${right.join()}`).toBe(true);
  });

  it('shows each symbol in a unit of its kind', () => {
    for (const [symbol, spec] of specsOf(formula)) {
      const shown = unit(spec.show ?? spec.unit);
      expect(sameDimension(shown.dimension, unit(spec.unit).dimension), symbol).toBe(true);
      expect(shown.kind, symbol).toBe(unit(spec.unit).kind);
    }
  });

  it('has a range with its reason, and a usual value inside it, for every symbol but constants', () => {
    for (const [symbol, spec] of variablesOf(formula)) {
      expect(spec.range, `${symbol} needs a range`).toBeDefined();
      expect(spec.why, `${symbol} needs the reason its range ends (why)`).toBeTruthy();
      expect(spec.range![0]).toBeLessThan(spec.range![1]);
      if (spec.usual !== undefined)
        expect(warningsFor(spec, symbol, toSI(spec.usual, spec.unit)), symbol).toEqual([]);
    }
    const sought = soughtOf(formula);
    const others = variablesOf(formula).filter(([symbol]) => symbol !== sought);
    for (const [symbol, spec] of others) expect(spec.usual, `${symbol} needs a usual value`).toBeDefined();
  });

  it('gives an answer for its usual values', () => {
    const sought = soughtOf(formula);
    const solved = solve(formula, usualOf(formula), sought);
    expect(solved, JSON.stringify(solved)).toMatchObject({ ok: true });
  });

  it.each(formula.examples.map((example) => [example.title, example] as const))(
    'agrees with %s',
    (_title, example) => {
      const [find, text] = Object.entries(example.expect)[0] as [string, Quantity];
      expect(Object.keys(example.expect), "one symbol: expect: { t: '0.50 s' }").toHaveLength(1);
      expect(Object.keys(formula.symbols), 'the symbol of expect').toContain(find);
      const solved = solve(formula, { ...given(example.given) }, find);
      if (!solved.ok) throw new Error(solved.reason);
      const { value, halfDigit } = quantityFigures(text);
      expect(Math.abs(solved.value - value)).toBeLessThanOrEqual(halfDigit * (1 + 1e-9));
    },
  );

  it('has an example, assumptions, what it answers and a full source', () => {
    expect(formula.examples.length).toBeGreaterThan(0);
    expect(formula.assumes.length).toBeGreaterThan(0);
    expect(formula.answers).toMatch(/[.?]$/);
    for (const citation of [formula.source, ...(formula.alsoSee ?? [])]) {
      expect(sources[citation.key]).toBeDefined();
      expect(citation.at.length).toBeGreaterThan(2);
    }
  });

  it('recovers every symbol it offers to solve for', () => {
    const sought = soughtOf(formula);
    const at = usualOf(formula);
    const solved = solve(formula, at, sought);
    if (!solved.ok) throw new Error(solved.reason);
    const full = { ...at, [sought]: solved.value };
    for (const [symbol] of variablesOf(formula)) {
      if (symbol === sought || formula.noSolve?.[symbol] !== undefined) continue;
      const back = solve(formula, full, symbol);
      if (!back.ok) throw new Error(`${symbol}: ${back.reason}`);
      const closest = Math.min(...back.roots.map((root) => Math.abs(root - full[symbol]!)));
      const scale = Math.max(Math.abs(full[symbol]!), 1e-9);
      expect(closest / scale, `${symbol}: ${back.value} for ${full[symbol]}`).toBeLessThan(1e-6);
    }
  });

  it('is finite or refused in words all over its ranges, and its answers satisfy it', () => {
    const random = createRandom(`sweep ${formula.id}`);
    const sought = soughtOf(formula);
    let answered = 0;
    for (let i = 0; i < 120; i += 1) {
      const corner = (index: number): number => ((i >> index) & 1 ? 1 : 0);
      const point = pointOf(formula, i < 32 ? corner : () => random.uniform());
      delete point[sought];
      const solved = solve(formula, point, sought);
      if (!solved.ok) {
        expect(solved.reason.length).toBeGreaterThan(10);
        continue;
      }
      answered += 1;
      expect(Number.isFinite(solved.value)).toBe(true);
      expect(Math.abs(residual(formula, { ...point, [sought]: solved.value }))).toBeLessThan(1e-6);
    }
    expect(answered).toBeGreaterThan(0);
  });

  it.skipIf(formula.empirical)('does not change when the base units are rescaled', () => {
    const sought = soughtOf(formula);
    const solved = solve(formula, usualOf(formula), sought);
    if (!solved.ok) throw new Error(solved.reason);
    const scales = [1.7, 0.31, 2.9, 1.3, 0.77];
    const scaled: Record<string, number> = {};
    for (const [symbol, value] of Object.entries({
      ...constantsOf(formula),
      ...usualOf(formula),
      [sought]: solved.value,
    })) {
      const { dimension } = unit(formula.symbols[symbol]!.unit);
      scaled[symbol] = dimension.reduce<number>(
        (product, exponent, i) => product * scales[i]! ** exponent,
        value,
      );
    }
    expect(Math.abs(residual(formula, scaled))).toBeLessThan(1e-6);
  });

  it('typesets, as stated and rearranged', () => {
    const sign = signsOf(formula);
    const equations = [
      equation,
      ...Object.keys(formula.symbols).flatMap((symbol) => rearrange(formula, symbol) ?? []),
    ];
    for (const each of equations) {
      expect(() =>
        katex.renderToString(equationTeX(each, sign), { throwOnError: true, strict: 'error' }),
      ).not.toThrow();
    }
  });
});
