import type { Formula } from '../../../calculators/core/formula.ts';
import type { Values } from '../../../calculators/core/model.ts';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import { solve } from '../../../calculators/core/solve.ts';
import { numberAt } from '../../../calculators/models/given.ts';
import { metalOf, othersOf } from '../../../calculators/models/transient/substances.ts';
import type { Solved } from './solver.ts';

export const seconds = (value: number): string => printQuantity(value, 's', { figures: 3 });
export const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`.replace('-', '−');
export const percent = (part: number): string => `${printNumber(100 * part, { figures: 2 })} %`;
export const millimetres = (metres: number): string =>
  `${(Math.round(metres * 1e4) / 10).toFixed(1)}`.replace('-', '−');

/** What the quick rule, `freezing/time-both`, gives for the same volume, surface and numbers, s; undefined where it gives nothing. */
export function ruleTime(values: Values, modulus: number, rule: Formula): number | undefined {
  const metal = metalOf(values);
  const [mould] = othersOf(values);
  if (!mould || !Number.isFinite(modulus)) return undefined;
  const found = solve(
    rule,
    {
      rho: metal.rho,
      M: modulus,
      L: metal.latent,
      c: metal.c.liquid,
      dT: Math.max(0, numberAt(values, 'metal.initial') - metal.liquidus),
      b: Math.sqrt(mould.k * mould.rhoc),
      h: mould.h,
      T_f: (metal.solidus + metal.liquidus) / 2,
      T_m: numberAt(values, 'mould.initial'),
    },
    't',
  );
  return found.ok && Number.isFinite(found.value) ? found.value : undefined;
}

/** Why rule and solver differ, for this one. */
export function whyApart(values: Values, rule: number, solved: number): string {
  const metal = metalOf(values);
  const range = metal.liquidus - metal.solidus;
  const part = solved / rule - 1;
  if (Math.abs(part) < 0.08) return 'They agree as well as the numbers of metal and mould are known.';
  if (part > 0)
    return range > 40
      ? 'The rule takes one modulus for the whole and one freezing temperature. The heavy place outlasts the mean, and the heat of the freezing range comes on top.'
      : 'The rule takes one modulus for the whole. The heavy place outlasts the mean.';
  return 'The rule takes flat faces. Round edges and corners give more mould to heat, so the solver is sooner.';
}

/** Metal cells by place in the mesh. */
export const placesOf = ({ frozen }: Solved): Int32Array => {
  const places = new Int32Array(frozen.result.cells).fill(-1);
  frozen.result.metal.forEach((cell, m) => (places[cell] = m));
  return places;
};

/** The least-fed: by rank among the metal, 0 the least. NaN where the criterion says nothing. */
export function ranksOf(feeding: Float32Array): Float32Array {
  const order = [...feeding.keys()]
    .filter((m) => Number.isFinite(feeding[m]))
    .sort((a, b) => feeding[a]! - feeding[b]!);
  const ranks = new Float32Array(feeding.length).fill(Number.NaN);
  order.forEach((m, n) => (ranks[m] = n / Math.max(1, order.length - 1)));
  return ranks;
}
