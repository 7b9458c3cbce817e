import { centreOfCell, type Filled } from './cells.ts';
import type { Point } from './triangles.ts';

/** A place that freezes after everything round it. */
export interface HotSpot {
  readonly at: Point;
  readonly cell: number;
  /** Its modulus. */
  readonly modulus: number;
  /** The least modulus on the best way from here to the gate; itself when the gate is nowhere narrower. */
  readonly way: number;
}

/** Less than this above what surrounds it is no hot spot: the map is no finer. */
const stands = 1.06;

/**
 * Peaks of the modulus. Cells are taken from the heaviest down and joined to neighbours taken before; a peak ends
 * where its body joins a heavier one, and counts when it stood above that place. The same joining finds the way to
 * the gate that keeps heaviest.
 */
export function hotSpotsIn(
  { grid, metal }: Filled,
  modulus: Float32Array,
  gateCell: number,
  most = 8,
): HotSpot[] {
  const [nx, ny] = grid.size;
  const cells: number[] = [];
  for (let cell = 0; cell < metal.length; cell += 1) if (metal[cell] === 1) cells.push(cell);
  const order = Uint32Array.from(cells).sort((a, b) => modulus[b]! - modulus[a]!);
  const parent = new Int32Array(metal.length).fill(-1);
  const find = (cell: number): number => {
    let root = cell;
    while (parent[root] !== root) {
      parent[root] = parent[parent[root]!]!;
      root = parent[root]!;
    }
    return root;
  };
  /** By root: its highest cell, and the peaks in it worth following. */
  const bodies = new Map<number, { top: number; peaks: number[] }>();
  const way = new Map<number, number>();
  let gateRoot = -1;
  const steps = [1, -1, nx, -nx, nx * ny, -nx * ny];
  const kept: number[] = [];
  for (const cell of order) {
    let own = -1;
    for (const step of steps) {
      if ((parent[cell + step] ?? -1) < 0) continue;
      const other = find(cell + step);
      if (own < 0) {
        own = other;
        parent[cell] = own;
      } else if (other !== own) own = join(own, other, cell);
    }
    if (own < 0) {
      own = cell;
      parent[cell] = cell;
      bodies.set(cell, { top: cell, peaks: [cell] });
    }
    if (cell === gateCell) {
      gateRoot = own;
      for (const peak of bodies.get(own)!.peaks) way.set(peak, modulus[cell]!);
    }
  }
  function join(one: number, other: number, cell: number): number {
    const higher = modulus[bodies.get(one)!.top]! >= modulus[bodies.get(other)!.top]!;
    const [a, b] = higher ? [one, other] : [other, one];
    const here = modulus[cell]!;
    const [strong, weak] = [bodies.get(a)!, bodies.get(b)!];
    if (modulus[weak.top]! > stands * here) kept.push(weak.top);
    const joined = gateRoot === a ? weak : gateRoot === b ? strong : undefined;
    for (const peak of joined?.peaks ?? []) if (!way.has(peak)) way.set(peak, here);
    strong.peaks.push(...weak.peaks.filter((peak) => modulus[peak]! > stands * here));
    bodies.delete(b);
    parent[b] = a;
    if (gateRoot === b) gateRoot = a;
    return a;
  }
  const roots = [...bodies.values()].map(({ top }) => top);
  return [...new Set([...roots, ...kept])]
    .sort((a, b) => modulus[b]! - modulus[a]!)
    .slice(0, most)
    .map((cell) => ({
      at: centreOfCell(grid, cell),
      cell,
      modulus: modulus[cell]!,
      way: Math.min(modulus[cell]!, way.get(cell) ?? modulus[cell]!),
    }));
}
