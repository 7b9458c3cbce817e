import { axis } from './axis.ts';
import { sizeOf, type Mesh } from './mesh.ts';
import { metalRegion } from './substance.ts';

/**
 * Two halves of a mesh, each solved beside the other. They part across z, along which planes of cells lie one behind
 * the other in memory. Each holds one plane more than its own, of the other half, whose numbers it is told.
 */
export interface Slab {
  /** The half before the cut, or the one behind it. */
  readonly half: 'lower' | 'upper';
  /** Planes of the whole that are its own, from the first up to but without the last. */
  readonly from: number;
  readonly to: number;
  /** K: what the whole counts heat from. */
  readonly zero: number;
}

/**
 * What halves tell one another: before the first step, in each stage, and after each step. `left` is the heat that the
 * metal of each plane has to give, J.
 */
export type Said =
  | { readonly kind: 'ready'; readonly fastest: number; readonly left: Float64Array }
  | { readonly kind: 'stage'; readonly warmth: Float32Array }
  | { readonly kind: 'step'; readonly left: Float64Array; readonly heats: Float32Array };

/** Where a half waits for what the other says. */
export const waiting = 'waiting';
export type Waiting = typeof waiting;

/** A cell of metal takes about that many times the work of any other: its conductances and its times are looked after. */
const metalWork = 6;

/** The plane before which both sides have about as much to do; undefined when there are too few planes. */
export function cutOf({ axes, region }: Pick<Mesh, 'axes' | 'region'>): number | undefined {
  const [nx, ny, nz] = sizeOf({ axes });
  if (nz < 4) return undefined;
  const plane = nx * ny;
  const work = Array.from({ length: nz }, (_, k) => {
    let sum = 0;
    for (let cell = k * plane; cell < (k + 1) * plane; cell += 1)
      sum += region[cell] === metalRegion ? 1 + metalWork : 1;
    return sum;
  });
  const whole = work.reduce((sum, one) => sum + one, 0);
  let cut = 0;
  let before = 0;
  while (before + work[cut]! / 2 < whole / 2) before += work[cut++]!;
  return Math.min(nz - 2, Math.max(2, cut));
}

/** The first plane of the whole that a half holds, the other's among them, and how many it holds. */
export const heldBy = ({ half, from, to }: Slab): { readonly first: number; readonly planes: number } => ({
  first: half === 'lower' ? from : from - 1,
  planes: to - from + 1,
});

/** The cells a half holds, as a mesh. */
export function meshOf(mesh: Mesh, slab: Slab): Mesh {
  const [nx, ny] = sizeOf(mesh);
  const { first, planes } = heldBy(slab);
  const skipped = first * nx * ny;
  const [x, y, z] = mesh.axes;
  const { share } = mesh;
  return {
    axes: [x, y, axis(z.edges.subarray(first, first + planes + 1), z.shape)],
    region: mesh.region.subarray(skipped, skipped + planes * nx * ny),
    ...(share && { share: (d: 0 | 1 | 2, cell: number) => share(d, cell + skipped) }),
  };
}
