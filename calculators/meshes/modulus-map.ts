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
  progress: (done: number) => void = () => undefined,
): Float32Array {
  const { size, spacing: h } = grid;
  const steps = [1, size[0], size[0] * size[1]] as const;
  const index = new Int32Array(metal.length).fill(-1);
  const list = new Uint32Array(cells);
  let used = 0;
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1) {
      index[cell] = used;
      list[used] = cell;
      used += 1;
    }
  const n = used;
  const holds = new Float64Array(n);
  const share = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    holds[i] = surface.volume[list[i]!]! / h ** 3;
    share[i] = surface.area[list[i]!]! / h ** 3;
  }
  // Three steps of s = (0.36 thickness)² each: ripples across the thickness fall to a hundredth.
  const joined = steps.map((step) => {
    // Where there is no neighbour it is place n, which holds nothing: so no cell has to be asked.
    const after = new Int32Array(n + 1).fill(n);
    const before = new Int32Array(n + 1).fill(n);
    const weight = new Float64Array(n + 1);
    for (let i = 0; i < n; i += 1) {
      const cell = list[i]!;
      const j = index[cell + step] ?? -1;
      if (j < 0) continue;
      const wide = (0.36 * Math.min(thick[cell]!, thick[cell + step]!)) / h;
      after[i] = j;
      before[j] = i;
      weight[i] = wide * wide;
    }
    return { after, before, weight };
  });
  const evened = evener(holds, joined as [Joined, Joined, Joined]);
  const density = new Float64Array(n);
  for (let i = 0; i < n; i += 1) density[i] = share[i]! / holds[i]!;
  for (let round = 0; round < 3; round += 1) {
    evened(share, density);
    progress((round + 1) / 3);
    for (let i = 0; i < n; i += 1) share[i] = density[i]! * holds[i]!;
  }
  const map = new Float32Array(metal.length);
  for (let i = 0; i < n; i += 1) map[list[i]!] = 1 / density[i]!;
  return map;
}

/** Neighbours along an axis, by place in the list, and how strongly they are joined. */
interface Joined {
  readonly after: Int32Array;
  readonly before: Int32Array;
  readonly weight: Float64Array;
}

/**
 * Solves (V − ∇·s∇) a = given with no flow through the surface, from a guess in place: conjugate gradients after
 * an incomplete factorisation (Meijerink, J. A.; van der Vorst, H. A., Math. Comp. 31, 1977), which settles across
 * a thick place in a third of the rounds that dividing by the diagonal takes.
 */
function evener(
  holds: Float64Array,
  [x1, y1, z1]: readonly [Joined, Joined, Joined],
): (given: Float64Array, x: Float64Array) => void {
  const n = holds.length;
  const diagonal = new Float64Array(n);
  const pivot = new Float64Array(n);
  const { after: ax, before: bx, weight: wx } = x1;
  const { after: ay, before: by, weight: wy } = y1;
  const { after: az, before: bz, weight: wz } = z1;
  // One over the pivots: multiplying is quicker.
  for (let i = 0; i < n; i += 1) {
    const [p, q, r] = [bx[i]!, by[i]!, bz[i]!];
    const below = wx[p]! + wy[q]! + wz[r]!;
    diagonal[i] = holds[i]! + wx[i]! + wy[i]! + wz[i]! + below;
    const less =
      wx[p]! ** 2 * (pivot[p] ?? 0) + wy[q]! ** 2 * (pivot[q] ?? 0) + wz[r]! ** 2 * (pivot[r] ?? 0);
    pivot[i] = 1 / (diagonal[i]! - less);
  }
  const [r, q, p, z] = [0, 1, 2, 3].map(() => new Float64Array(n + 1)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const apply = (from: Float64Array, to: Float64Array): void => {
    for (let i = 0; i < n; i += 1) {
      const [i0, i1, i2] = [bx[i]!, by[i]!, bz[i]!];
      to[i] =
        diagonal[i]! * from[i]! -
        wx[i]! * from[ax[i]!]! -
        wy[i]! * from[ay[i]!]! -
        wz[i]! * from[az[i]!]! -
        wx[i0]! * from[i0]! -
        wy[i1]! * from[i1]! -
        wz[i2]! * from[i2]!;
    }
  };
  const settle = (): void => {
    for (let i = 0; i < n; i += 1) {
      const [i0, i1, i2] = [bx[i]!, by[i]!, bz[i]!];
      z[i] = (r[i]! + wx[i0]! * z[i0]! + wy[i1]! * z[i1]! + wz[i2]! * z[i2]!) * pivot[i]!;
    }
    for (let i = n - 1; i >= 0; i -= 1)
      z[i]! += (wx[i]! * z[ax[i]!]! + wy[i]! * z[ay[i]!]! + wz[i]! * z[az[i]!]!) * pivot[i]!;
  };
  return (given, x) => {
    q.set(x);
    q[n] = 0;
    p.set(q);
    apply(p, q);
    let goal = 0;
    for (let i = 0; i < n; i += 1) {
      r[i] = given[i]! - q[i]!;
      goal += given[i]! ** 2 / diagonal[i]!;
    }
    settle();
    let size = 0;
    for (let i = 0; i < n; i += 1) {
      p[i] = z[i]!;
      size += r[i]! * z[i]!;
    }
    for (let round = 0; round < 400 && size > 1e-6 * goal; round += 1) {
      apply(p, q);
      let down = 0;
      for (let i = 0; i < n; i += 1) down += p[i]! * q[i]!;
      const step = size / down;
      for (let i = 0; i < n; i += 1) {
        x[i]! += step * p[i]!;
        r[i]! -= step * q[i]!;
      }
      settle();
      let then = 0;
      for (let i = 0; i < n; i += 1) then += r[i]! * z[i]!;
      const turn = then / size;
      for (let i = 0; i < n; i += 1) p[i] = z[i]! + turn * p[i]!;
      size = then;
    }
  };
}
