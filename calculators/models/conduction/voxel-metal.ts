import type { Case } from './case.ts';
import type { HeatCurve } from './enthalpy.ts';
import { sizeOf, type Mesh } from './mesh.ts';
import { metalRegion } from './substance.ts';
import type { VoxelKernel } from './voxel-kernel.ts';

/** The conductances that follow how much of the metal is solid. */
export interface Following {
  /** Brings them up to date from the newest heats. */
  readonly follow: (newest: 0 | 1) => void;
  readonly bytes: number;
}

/**
 * Faces of metal in equal cubes. For each cell of metal a bit says along which axes the next is metal too; its
 * faces to anything else are kept by axis and side, with what the rest of the way resists, K/W.
 */
export function followMetal(
  given: Pick<Case, 'metal' | 'others'>,
  mesh: Mesh,
  metal: Int32Array,
  places: Int32Array,
  kernel: VoxelKernel,
  { solidus, full }: HeatCurve,
): Following {
  const { k } = given.metal;
  if (k.solid === k.liquid) return { follow: () => undefined, bytes: 0 };
  const { guard, heat, temperature, toNext } = kernel;
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const spacing = mesh.axes[0].size[0]!;
  const within = new Uint8Array(metal.length);
  const sides = ([0, 1, 2] as const).flatMap((d) => [sideOf(d, 1), sideOf(d, -1)]);

  /** Faces across an axis at that side of the metal. */
  function sideOf(d: 0 | 1 | 2, way: 1 | -1) {
    const stride = strides[d];
    const end = way > 0 ? size[d] - 1 : 0;
    const isFace = (cell: number): boolean =>
      Math.floor(cell / stride) % size[d] !== end && mesh.region[cell + way * stride] !== metalRegion;
    let count = 0;
    for (let m = 0; m < metal.length; m += 1) {
      const cell = metal[m]!;
      if (Math.floor(cell / stride) % size[d] === end) continue;
      if (mesh.region[cell + way * stride] !== metalRegion) count += 1;
      else if (way > 0) within[m]! |= 1 << d;
    }
    const at = new Int32Array(count);
    const rest = new Float32Array(count);
    let n = 0;
    for (const cell of metal) {
      if (!isFace(cell)) continue;
      const other = given.others[mesh.region[cell + way * stride]! - 1]!;
      const before = way > 0 ? cell : cell - stride;
      const share = mesh.share?.(d, before) ?? 1;
      at[n] = before + guard;
      rest[n] = 0.5 / spacing / other.k + 1 / (other.h * share * spacing * spacing);
      n += 1;
    }
    return { along: toNext[d], at, rest, back: way > 0 ? 0 : stride };
  }

  function follow(newest: 0 | 1): void {
    // Between steps the older temperatures of metal are of no more use: meanwhile they hold conductivities.
    const now = heat[newest];
    const own = temperature[newest === 0 ? 1 : 0];
    const more = (k.liquid - k.solid) / (full - solidus);
    for (let m = 0; m < metal.length; m += 1) {
      const e = now[places[m]!]!;
      own[metal[m]! + guard] = e <= solidus ? k.solid : e >= full ? k.liquid : k.solid + more * (e - solidus);
    }
    const [east, north, up] = toNext;
    const [, row, plane] = strides;
    const twice = 2 * spacing;
    for (let m = 0; m < metal.length; m += 1) {
      const at = metal[m]! + guard;
      const bits = within[m]!;
      const one = own[at]!;
      if (bits & 1) east[at] = (twice * one * own[at + 1]!) / (one + own[at + 1]!);
      if (bits & 2) north[at] = (twice * one * own[at + row]!) / (one + own[at + row]!);
      if (bits & 4) up[at] = (twice * one * own[at + plane]!) / (one + own[at + plane]!);
    }
    const half = 0.5 / spacing;
    for (const { along, at, rest, back } of sides)
      for (let n = 0; n < at.length; n += 1) {
        const place = at[n]!;
        along[place] = 1 / (half / own[place + back]! + rest[n]!);
      }
  }
  const faces = sides.reduce((sum, { at }) => sum + at.length, 0);
  return { follow, bytes: within.byteLength + 8 * faces };
}
