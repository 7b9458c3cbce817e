import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { bronze, done, lineOf, partOf, sand } from './ways.ts';

interface Solver {
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve: (
    f: (x: number, y: number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
    step?: (n: number, before: number, x: number, y: number[]) => boolean | undefined,
  ) => unknown;
}
// Its TypeScript sources are not written to this project's settings, so only its compiled file is asked for.
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (n: number) => Solver };

/**
 * When the middle is solid, by the method of lines: shells of equal thickness in the metal and growing ones in
 * the mould, resistances of whole shells between their middle radii (exact for steady flow), heat of each
 * shell carried on by Hairer and Wanner's ODEX to a tolerance of its own. Nothing of it is shared with the
 * solver. Times s.
 */
function solidAfter(power: 1 | 2, half: number, cells: number): number {
  const edges = Array.from({ length: cells + 1 }, (_, n) => (half * n) / cells);
  for (let width = half / cells / 2; edges.at(-1)! < half + 0.025; width *= 1.1)
    edges.push(edges.at(-1)! + width);
  const count = edges.length - 1;
  const metal = (n: number): boolean => n < cells;
  const area = (r: number): number => (power === 1 ? 2 * Math.PI * r : 4 * Math.PI * r * r);
  const content = (r: number): number => (area(r) * r) / (power + 1);
  const shell = (from: number, to: number, k: number): number =>
    power === 1 ? Math.log(to / from) / (2 * Math.PI * k) : (1 / from - 1 / to) / (4 * Math.PI * k);
  const middle = (n: number): number => (edges[n]! + edges[n + 1]!) / 2;
  const volume = (n: number): number => content(edges[n + 1]!) - content(edges[n]!);
  const [k, c] = [bronze.k.solid, bronze.c.solid];
  const resistance = Array.from({ length: count - 1 }, (_, n) => {
    const [own, next] = [metal(n) ? k : sand.k, metal(n + 1) ? k : sand.k];
    const face = edges[n + 1]!;
    const gap = metal(n) && !metal(n + 1) ? 1 / (sand.h * area(face)) : 0;
    // Near the middle a shell is no thin one: there the slope at the face counts.
    const inner = n < 2 ? (middle(n + 1) - middle(n)) / (k * area(face)) : 0;
    return n < 2 ? inner : shell(middle(n), face, own) + shell(face, middle(n + 1), next) + gap;
  });
  const { solidus, liquidus, latent, rho } = bronze;
  const range = liquidus - solidus;
  /** Heat in J/kg above the solidus. */
  const temperature = (n: number, heat: number): number => {
    if (!metal(n)) return heat;
    if (heat < 0) return solidus + heat / c;
    const full = latent + c * range;
    return heat > full ? liquidus + (heat - full) / c : solidus + (range * heat) / full;
  };
  const worth = (n: number): number => volume(n) * (metal(n) ? rho : sand.rhoc);
  const start = Array.from({ length: count }, (_, n) =>
    metal(n) ? latent + c * range + c * (1373.15 - liquidus) : 293.15,
  );
  const rate = (_: number, heat: number[]): number[] => {
    const slope = new Array<number>(count).fill(0);
    for (let n = 0; n + 1 < count; n += 1) {
      const flow = (temperature(n, heat[n]!) - temperature(n + 1, heat[n + 1]!)) / resistance[n]!;
      slope[n] = slope[n]! - flow / worth(n);
      slope[n + 1] = slope[n + 1]! + flow / worth(n + 1);
    }
    return slope;
  };
  const solver = new Solver(count);
  solver.absoluteTolerance = 1e-2;
  solver.relativeTolerance = 1e-5;
  solver.maxSteps = 200_000;
  let before = start[0]!;
  let time = Number.NaN;
  solver.solve(rate, 0, start, 40, (_n, from, to, heat) => {
    const now = heat[0]!;
    if (before > 0 && now <= 0) {
      time = from + ((to - from) * before) / (before - now);
      return false;
    }
    before = now;
    return undefined;
  });
  return time;
}

describe('an independent integrator', () => {
  it.each([
    ['round', 1],
    ['ball', 2],
  ] as const)('freezes a %s body at the same time', (shape, power) => {
    const metal = { ...bronze, k: { solid: 55, liquid: 55 }, c: { solid: 435, liquid: 435 } };
    const found = done(partOf(lineOf(shape, 20), { metal, others: [sand] }));
    const wanted = solidAfter(power, 0.003, 20);
    expect(Math.abs(found.last!.time / wanted - 1), `${found.last!.time} for ${wanted}`).toBeLessThan(0.006);
  });
});
