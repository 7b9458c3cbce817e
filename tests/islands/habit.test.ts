import { describe, expect, it } from 'vitest';
import type { Formula, SymbolSpec } from '../../calculators/core/formula.ts';
import { plainNumber, printQuantity } from '../../calculators/core/print.ts';
import { quantity } from '../../calculators/core/quantity.ts';
import { habits, habitUnit, type Habit } from '../../calculators/core/shop-units.ts';
import { solve } from '../../calculators/core/solve.ts';
import { fromSI, sameDimension, unit, unitSymbols, type UnitSymbol } from '../../calculators/core/units.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { models } from '../../calculators/models/index.ts';
import { soughtOf, startOf } from '../../src/islands/bare-formula.ts';
import { entryOf, inUnit, readEntry, type Entry } from '../../src/islands/entries.ts';

const all = Object.values(formulas) as Formula[];

/** What the card of a formula answers in a habit, printed in the unit at home. */
function answered(formula: Formula, habit: Habit, typed: (entry: Entry) => Entry): string {
  const find = soughtOf(formula);
  const given: Record<string, number> = {};
  for (const [symbol, text] of Object.entries(startOf(formula))) {
    if (symbol === find) continue;
    const spec: SymbolSpec = formula.symbols[symbol]!;
    const home = entryOf(text);
    const entry = typed(inUnit(home, spec, habitUnit(home.unit, habit, spec)));
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
    for (const habit of Object.keys(habits) as Habit[])
      for (const home of unitSymbols)
        for (const role of [{}, { stress: true }] as const) {
          const [from, to] = [unit(home), unit(habitUnit(home, habit, role))];
          expect(sameDimension(from.dimension, to.dimension), `${home} in ${habit}`).toBe(true);
          expect(to.kind, `${home} in ${habit}`).toBe(from.kind);
        }
  });

  it('says a stress in psi in a US shop, and what a gauge shows in inches of mercury', () => {
    const isPressure = (symbol: UnitSymbol): boolean =>
      sameDimension(unit(symbol).dimension, unit('Pa').dimension);
    type Spec = { readonly unit: UnitSymbol; readonly show?: UnitSymbol; readonly stress?: true };
    const said: Record<string, UnitSymbol> = {};
    const put = (of: string, specs: Readonly<Record<string, unknown>>): void => {
      for (const [name, one] of Object.entries(specs)) {
        const spec = one as Spec;
        if (spec.unit !== undefined && isPressure(spec.unit))
          said[`${of} ${name}`] = habitUnit(spec.show ?? spec.unit, 'us', spec);
      }
    };
    for (const { id, symbols } of all) put(id, symbols);
    for (const { id, inputs, outputs } of Object.values(models)) {
      put(id, inputs);
      put(id, outputs);
    }
    const stresses = [
      'sand/cake-bending sigma',
      'sand/cake-shear tau',
      'pour-plan mould.strength.tensile',
      'pour-plan mould.strength.shear',
      'pour-plan sand.bending',
      'pour-plan sand.shear',
    ];
    // The test of sand by its permeability is read in centimetres of water everywhere.
    const water = ['sand/permeability p'];
    expect(Object.keys(said).filter((name) => said[name] === 'psi')).toEqual(stresses);
    const gauges = Object.keys(said).filter((name) => ![...stresses, ...water].includes(name));
    expect(gauges.length).toBeGreaterThan(60);
    expect(new Set(gauges.map((name) => said[name]))).toEqual(new Set(['inHg']));
    expect(habitUnit('kPa', 'jeweller', { stress: true })).toBe('kPa');
    // No solid's stress goes by another name than these words.
    for (const formula of all)
      for (const [symbol, spec] of Object.entries(formula.symbols))
        if (isPressure(spec.unit) && /stress|strength|modulus of/.test(spec.name))
          expect(spec.stress, `${formula.id} ${symbol}`).toBe(true);
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
