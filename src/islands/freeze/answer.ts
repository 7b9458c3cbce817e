import type { Formula } from '../../../calculators/core/formula.ts';
import type { Values } from '../../../calculators/core/model.ts';
import { printNumber, printQuantity } from '../../../calculators/core/print.ts';
import { numberAt } from '../../../calculators/models/given.ts';
import { metalOf, othersOf } from '../../../calculators/models/transient/substances.ts';
import { ruleTime } from '../beside-rule.ts';
import type { Solved } from './solver.ts';

export const seconds = (value: number): string => printQuantity(value, 's', { figures: 3 });
export const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`.replace('-', '−');
export const percent = (part: number): string => `${printNumber(100 * part, { figures: 2 })} %`;
export const millimetres = (metres: number): string =>
  `${(Math.round(metres * 1e4) / 10).toFixed(1)}`.replace('-', '−');

/** What the quick rule gives for the same volume, surface and numbers, s; undefined where it gives nothing. */
export function ruleOf(values: Values, modulus: number, rule: Formula): number | undefined {
  const [mould] = othersOf(values);
  if (!mould) return undefined;
  const [pour, cold] = [numberAt(values, 'metal.initial'), numberAt(values, 'mould.initial')];
  return ruleTime(rule, modulus, metalOf(values), mould, pour, cold);
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
