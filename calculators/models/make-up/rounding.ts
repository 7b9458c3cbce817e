import type { Bound, Stock } from './programme.ts';

export interface Melt {
  /** kg */
  readonly mass: number;
  readonly shares: Readonly<Record<string, number>>;
}

/** What a charge (kg of each stock) leaves after the losses. */
export function meltOf(
  stock: readonly Stock[],
  masses: readonly number[],
  kept: ReadonlyMap<string, number>,
): Melt {
  const amounts: Record<string, number> = {};
  let mass = 0;
  stock.forEach(({ shares, rest }, i) => {
    const weighed = masses[i] ?? 0;
    mass += weighed * rest;
    for (const [element, share] of Object.entries(shares)) {
      const left = weighed * share * (kept.get(element) ?? 1);
      amounts[element] = (amounts[element] ?? 0) + left;
      mass += left;
    }
  });
  const shares = Object.fromEntries(Object.entries(amounts).map(([name, amount]) => [name, amount / mass]));
  return { mass, shares };
}

/** How far the worst element is outside its limits, as a share; nought when all are inside. */
export function outside({ shares }: Melt, bounds: readonly Bound[]): number {
  return Math.max(
    0,
    ...bounds.map(({ element, least, most }) => {
      const share = shares[element] ?? 0;
      return Math.max(least - share, share - most);
    }),
  );
}

/** Beyond this many metals every one is rounded to the nearest; 2 to this power charges are tried otherwise. */
const mostTried = 10;

/**
 * The masses a scale can show. A limit that is just met is lost by rounding the wrong way, so each metal is
 * tried rounded up and down: the charge nearest its limits is taken, and of those the nearest in mass.
 */
export function roundedToScale(
  stock: readonly Stock[],
  masses: readonly number[],
  bounds: readonly Bound[],
  kept: ReadonlyMap<string, number>,
  scale: number,
  batch: number,
): readonly number[] {
  const nearest = masses.map((mass) => Math.round(mass / scale) * scale);
  const free = masses.flatMap((mass, i) => (Math.abs(mass - nearest[i]!) > 1e-6 * scale ? [i] : []));
  if (free.length > mostTried) return nearest;
  let best = nearest;
  let bestScore = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let code = 0; code < 1 << free.length; code += 1) {
    const tried = [...nearest];
    free.forEach((i, bit) => {
      tried[i] = (Math.floor(masses[i]! / scale) + ((code >> bit) & 1)) * scale;
    });
    if (tried.some((mass, i) => mass > stock[i]!.most + 1e-12 || mass < stock[i]!.least - 1e-12)) continue;
    const melt = meltOf(stock, tried, kept);
    if (!(melt.mass > 0)) continue;
    const off = outside(melt, bounds);
    const score = [off < 1e-9 ? 0 : off, Math.abs(melt.mass - batch)];
    if (score[0]! < bestScore[0]! || (score[0] === bestScore[0] && score[1]! < bestScore[1]!)) {
      best = tried;
      bestScore = score;
    }
  }
  return best;
}
