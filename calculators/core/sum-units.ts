import type { Formula } from './formula.ts';
import { unit, unitsLike, type UnitSymbol } from './units.ts';

const chosen = new WeakMap<Formula, boolean>();

/**
 * The unit a number has inside the equation when the line with the numbers in is written out: its own where
 * the formula is empirical, else the coherent one. Where the bench has milligrams in a volume, mass goes in
 * as milligrams throughout, if every symbol allows it: an equation holds whatever mass is counted in.
 */
export function equationUnit(formula: Formula, symbol: string): UnitSymbol {
  const own = formula.symbols[symbol]?.unit ?? '1';
  if (formula.empirical) return own;
  return (inMilligrams(formula) ? milligrams(own) : undefined) ?? coherent(own);
}

const coherent = (own: UnitSymbol): UnitSymbol => withFactor(own, 1) ?? own;

/** The unit like this one in which a kilogram counts as a million; undefined when the table has none. */
function milligrams(own: UnitSymbol): UnitSymbol | undefined {
  const [, mass] = unit(own).dimension;
  return mass === 0 ? coherent(own) : withFactor(own, 1e-6 ** mass);
}

function withFactor(own: UnitSymbol, wanted: number): UnitSymbol | undefined {
  return unitsLike(own).find(({ factor, offset }) => Math.abs(factor / wanted - 1) < 1e-9 && offset === 0)
    ?.symbol;
}

function inMilligrams(formula: Formula): boolean {
  const known = chosen.get(formula);
  if (known !== undefined) return known;
  const specs = Object.values(formula.symbols);
  const asked = specs.some(({ unit: own, show = own }) => show === 'mg/m³');
  const found = asked && specs.every(({ unit: own }) => milligrams(own) !== undefined);
  chosen.set(formula, found);
  return found;
}
