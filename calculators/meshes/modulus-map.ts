import type { Filled } from './cells.ts';
import type { Surface } from './surface.ts';

/**
 * The modulus at every cell, by cooling: each piece of the surface draws the same heat, as a mould does long before
 * the metal would resist, and the metal evens it out over about its own thickness. What a cell's share of surface
 * comes to after that evening out, its volume is divided by. On a plate it is half the thickness, on a long bar the
 * area over the outline, on a ball a third of the radius; where bodies meet it lies between and above.
 */
export function modulusIn(
  { grid, metal, cells }: Filled,
  thick: Float32Array,
  surface: Surface,
): Float32Array {
  const { size, spacing: h } = grid;
  const [nx, ny] = size;
  const index = new Int32Array(metal.length).fill(-1);
  const list = new Uint32Array(cells);
  let used = 0;
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1) {
      index[cell] = used;
      list[used] = cell;
      used += 1;
    }
  const holds = Float64Array.from(list, (cell) => surface.volume[cell]! / h ** 3);
  let share = Float64Array.from(list, (cell) => surface.area[cell]! / h ** 3);
  const steps = [1, nx, nx * ny];
  const next = [0, 1, 2].map((d) => Int32Array.from(list, (cell) => index[cell + steps[d]!] ?? -1));
  // Three steps of s = (0.36 thickness)² each: ripples across the thickness fall to a hundredth.
  const weight = [0, 1, 2].map((d) =>
    Float64Array.from(list, (cell, n) => {
      if (next[d]![n]! < 0) return 0;
      const wide = (0.36 * Math.min(thick[cell]!, thick[cell + steps[d]!]!)) / h;
      return wide * wide;
    }),
  );
  let density = Float64Array.from(share, (area, n) => area / holds[n]!);
  for (let round = 0; round < 3; round += 1) {
    density = evened(share, holds, density, next, weight);
    share = density.map((d, n) => d * holds[n]!);
  }
  const map = new Float32Array(metal.length);
  list.forEach((cell, n) => (map[cell] = 1 / density[n]!));
  return map;
}

/** Solves (V − ∇·s∇) a = given with no flow through the surface, by conjugate gradients. */
function evened(
  given: Float64Array,
  holds: Float64Array,
  guess: Float64Array,
  next: readonly Int32Array[],
  weight: readonly Float64Array[],
): Float64Array<ArrayBuffer> {
  const n = given.length;
  const apply = (x: Float64Array, y: Float64Array): void => {
    for (let i = 0; i < n; i += 1) y[i] = holds[i]! * x[i]!;
    for (let d = 0; d < 3; d += 1) {
      const to = next[d]!;
      const w = weight[d]!;
      for (let i = 0; i < n; i += 1) {
        const j = to[i]!;
        if (j < 0) continue;
        const flow = w[i]! * (x[i]! - x[j]!);
        y[i]! += flow;
        y[j]! -= flow;
      }
    }
  };
  // Divided by its own diagonal, so that thick and thin places settle in like many rounds.
  const diagonal = Float64Array.from(holds);
  for (let d = 0; d < 3; d += 1)
    for (let i = 0; i < n; i += 1) {
      const j = next[d]![i]!;
      if (j < 0) continue;
      diagonal[i]! += weight[d]![i]!;
      diagonal[j]! += weight[d]![i]!;
    }
  const x = Float64Array.from(guess);
  const r = new Float64Array(n);
  const q = new Float64Array(n);
  const p = new Float64Array(n);
  apply(x, q);
  let size = 0;
  let goal = 0;
  for (let i = 0; i < n; i += 1) {
    r[i] = given[i]! - q[i]!;
    p[i] = r[i]! / diagonal[i]!;
    size += r[i]! * p[i]!;
    goal += given[i]! ** 2 / diagonal[i]!;
  }
  for (let round = 0; round < 400 && size > 1e-7 * goal; round += 1) {
    apply(p, q);
    let down = 0;
    for (let i = 0; i < n; i += 1) down += p[i]! * q[i]!;
    const step = size / down;
    let then = 0;
    for (let i = 0; i < n; i += 1) {
      x[i]! += step * p[i]!;
      const left = r[i]! - step * q[i]!;
      r[i] = left;
      then += (left * left) / diagonal[i]!;
    }
    const turn = then / size;
    for (let i = 0; i < n; i += 1) p[i] = r[i]! / diagonal[i]! + turn * p[i]!;
    size = then;
  }
  return x;
}
