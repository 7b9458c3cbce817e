import { describe, expect, it } from 'vitest';
import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { plainNumber, printQuantity } from '../../calculators/core/print.ts';
import { quantity } from '../../calculators/core/quantity.ts';
import { solve } from '../../calculators/core/solve.ts';
import { fromSI, unitSymbols } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { soughtOf, startOf } from '../../src/islands/bare-formula.ts';
import { entryOf, inUnit, readEntry, type Entry } from '../../src/islands/entries.ts';
import { habitFaults, habits, habitUnit, type Habit } from '../../src/islands/habit.ts';

const all = Object.values(formulas) as Formula[];

/** What the card of a formula answers in a habit, printed in the unit at home. */
function answered(formula: Formula, habit: Habit, typed: (entry: Entry) => Entry): string {
  const find = soughtOf(formula);
  const given: Record<string, number> = {};
  for (const [symbol, text] of Object.entries(startOf(formula))) {
    if (symbol === find) continue;
    const spec: SymbolSpec = formula.symbols[symbol]!;
    const home = entryOf(text);
    const entry = typed(inUnit(home, spec, habitUnit(home.unit, habit)));
    const reading = readEntry(entry, spec);
    if (!reading.ok) return reading.message;
    given[symbol] = reading.value;
  }
  const solved = solve(formula, given, find);
  const spec: SymbolSpec = formula.symbols[find]!;
  // A tie between two last digits (287.5 mm) is left to neither side by the twelfth figure.
  return solved.ok
    ? printQuantity(Number(solved.value.toPrecision(10)), spec.show ?? spec.unit)
    : solved.reason;
}

describe('a habit of units', () => {
  it('swaps a unit only for one that measures the same', () => {
    expect(habitFaults()).toEqual([]);
    for (const habit of Object.keys(habits) as Habit[])
      for (const symbol of unitSymbols) expect(habitUnit(habitUnit(symbol, 'metric'), habit)).toBeTruthy();
  });

  it('is what each shop says', () => {
    expect(habitUnit('kPa', 'us')).toBe('inHg');
    expect(habitUnit('g', 'jeweller')).toBe('dwt');
    expect(habitUnit('°C', 'us')).toBe('°F');
    expect(habitUnit('kPa', 'metric')).toBe('kPa');
    // One pennyweight is 24 grains of 64.79891 mg: NIST Special Publication 811, Appendix B.8.
    expect(quantity('1 dwt')).toBeCloseTo(1.55517384e-3, 12);
  });

  it.each(all.map((formula) => [formula.id, formula] as const))(
    '%s gives the same answer in all three, to the last printed digit',
    (_, formula) => {
      const kept = (entry: Entry): Entry => entry;
      const metric = answered(formula, 'metric', kept);
      expect(metric).toMatch(/\d/);
      for (const habit of ['us', 'jeweller'] as const) expect(answered(formula, habit, kept)).toBe(metric);
    },
  );

  it.each(all.map((formula) => [formula.id, formula] as const))(
    '%s gives it also when the numbers are typed in those units',
    (_, formula) => {
      // Twelve figures, as copied from a table of conversions: the entry no longer knows where it came from.
      const typed = ({ text, unit, spread, exact }: Entry): Entry =>
        exact === undefined
          ? { text, unit, spread }
          : { text: plainNumber(fromSI(exact, unit), { figures: 12 }), unit, spread };
      const metric = answered(formula, 'metric', typed);
      for (const habit of ['us', 'jeweller'] as const) expect(answered(formula, habit, typed)).toBe(metric);
    },
  );
});
