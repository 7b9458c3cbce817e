import type { Formula } from './formula.ts';
import { unit, unitsLike, type UnitSymbol } from './units.ts';

/** A way to count: how large the unit of length and of mass are in metres and kilograms. */
interface Scale {
  readonly length: number;
  readonly mass: number;
}

const coherent: Scale = { length: 1, mass: 1 };
/** Sizes alone go in as millimetres; what hangs in the air goes in as milligrams. */
const millimetres: Scale = { length: 1e-3, mass: 1 };
const milligrams: Scale = { length: 1, mass: 1e-6 };
const sizes: readonly UnitSymbol[] = ['mm', 'mm²', 'mm³', 'cm³', 'cm²'];

const chosen = new WeakMap<Formula, Scale>();

/**
 * The unit a number has inside the equation when the line with the numbers in is written out: its own where
 * the formula is empirical, else the coherent one. A formula of nothing but sizes has them in millimetres, and one
 * with milligrams in a volume has masses in milligrams, if every symbol allows it: an equation holds whatever its
 * lengths and masses are counted in, as long as it is one thing throughout.
 */
export function equationUnit(formula: Formula, symbol: string): UnitSymbol {
  const own = formula.symbols[symbol]?.unit ?? '1';
  return formula.empirical ? own : (inScale(own, scaleOf(formula)) ?? own);
}

function scaleOf(formula: Formula): Scale {
  const known = chosen.get(formula);
  if (known) return known;
  const specs = Object.values(formula.symbols);
  const shows = (asked: readonly UnitSymbol[]): boolean =>
    specs.some(({ unit: own, show = own }) => asked.includes(show));
  const onlySizes = specs.every(({ unit: own }) =>
    unit(own).dimension.every((power, at) => at === 0 || power === 0),
  );
  const wanted = shows(['mg/m³']) ? milligrams : onlySizes && shows(sizes) ? millimetres : coherent;
  const found = specs.every(({ unit: own }) => inScale(own, wanted) !== undefined) ? wanted : coherent;
  chosen.set(formula, found);
  return found;
}

/** The unit like this one that counts so; undefined when the table has none. */
function inScale(own: UnitSymbol, { length, mass }: Scale): UnitSymbol | undefined {
  const [metres, kilograms] = unit(own).dimension;
  const wanted = length ** metres * mass ** kilograms;
  return unitsLike(own).find(({ factor, offset }) => Math.abs(factor / wanted - 1) < 1e-9 && offset === 0)
    ?.symbol;
}
