import { solve } from 'yalps';

export interface Stock {
  readonly name: string;
  /** Shares by mass of the elements. */
  readonly shares: Readonly<Record<string, number>>;
  /** The share that is none of them. */
  readonly rest: number;
  readonly price: number;
  /** kg */
  readonly least: number;
  /** kg */
  readonly most: number;
}

export interface Bound {
  readonly element: string;
  readonly least: number;
  readonly most: number;
}

export interface Short {
  /** An element, or `mass` when the whole cannot be made up. */
  readonly element: string;
  readonly side: 'under' | 'over';
  /** A share of the melt; kg for `mass`. */
  readonly by: number;
  readonly reached: number;
  readonly bound: number;
}

export type Charge =
  | { readonly ok: true; readonly masses: readonly number[] }
  | { readonly ok: false; readonly short: readonly Short[] };

/** Slacks of a missing mass weigh more than those of an element, so that the melt is first of all there. */
const massWeight = 10;

/**
 * Masses (kg) of least cost that give `batch` kg of melt within the bounds, each element keeping its share of
 * `kept` through melting. When there are none: the bounds that are missed when they are missed by as little
 * as can be, all together. Solved by the simplex method in shares of the batch.
 */
export function bestCharge(
  stock: readonly Stock[],
  bounds: readonly Bound[],
  kept: ReadonlyMap<string, number>,
  batch: number,
): Charge {
  const first = programme(stock, bounds, kept, batch, false);
  if (first.status === 'optimal') return { ok: true, masses: massesOf(first.variables, stock, batch) };
  const nearest = programme(stock, bounds, kept, batch, true);
  const slack = new Map(nearest.variables);
  const short: Short[] = [];
  for (const [name, amount] of slack) {
    const [kind, side, element] = name.split(':');
    if (kind !== 'slack' || amount < 1e-7 || element === undefined) continue;
    const under = side === 'under';
    if (element === 'mass') {
      short.push({ element, side: under ? 'under' : 'over', by: amount * batch, reached: 0, bound: batch });
      continue;
    }
    const bound = bounds[Number(element)]!;
    const limit = under ? bound.least : bound.most;
    short.push({
      element: bound.element,
      side: under ? 'under' : 'over',
      by: amount,
      reached: under ? limit - amount : limit + amount,
      bound: limit,
    });
  }
  return { ok: false, short };
}

function massesOf(variables: readonly [string, number][], stock: readonly Stock[], batch: number): number[] {
  const found = new Map(variables);
  return stock.map((_, i) => (found.get(`stock:${i}`) ?? 0) * batch);
}

function programme(
  stock: readonly Stock[],
  bounds: readonly Bound[],
  kept: ReadonlyMap<string, number>,
  batch: number,
  elastic: boolean,
) {
  const left = (one: Stock, element: string): number => (one.shares[element] ?? 0) * (kept.get(element) ?? 1);
  const yieldOf = (one: Stock): number =>
    one.rest + Object.keys(one.shares).reduce((sum, element) => sum + left(one, element), 0);

  const constraints = new Map<string, { equal?: number; min?: number; max?: number }>([
    ['mass', { equal: 1 }],
  ]);
  bounds.forEach(({ least, most }, i) => {
    constraints.set(`least:${i}`, { min: least });
    constraints.set(`most:${i}`, { max: most });
  });
  const variables = new Map<string, [string, number][]>();
  const dearest = Math.max(1e-9, ...stock.map(({ price }) => price));
  stock.forEach((one, i) => {
    const coefficients: [string, number][] = [
      ['mass', yieldOf(one)],
      ['cost', elastic ? 0 : one.price / dearest],
    ];
    bounds.forEach(({ element }, k) => {
      coefficients.push([`least:${k}`, left(one, element)], [`most:${k}`, left(one, element)]);
    });
    if (Number.isFinite(one.most)) {
      constraints.set(`have:${i}`, { max: one.most / batch });
      coefficients.push([`have:${i}`, 1]);
    }
    if (one.least > 0) {
      constraints.set(`use:${i}`, { min: one.least / batch });
      coefficients.push([`use:${i}`, 1]);
    }
    variables.set(`stock:${i}`, coefficients);
  });
  if (elastic) {
    bounds.forEach((_, k) => {
      variables.set(`slack:under:${k}`, [
        [`least:${k}`, 1],
        ['cost', 1],
      ]);
      variables.set(`slack:over:${k}`, [
        [`most:${k}`, -1],
        ['cost', 1],
      ]);
    });
    variables.set('slack:under:mass', [
      ['mass', 1],
      ['cost', massWeight],
    ]);
    variables.set('slack:over:mass', [
      ['mass', -1],
      ['cost', massWeight],
    ]);
  }
  return solve({ direction: 'minimize', objective: 'cost', constraints, variables }, { precision: 1e-10 });
}
