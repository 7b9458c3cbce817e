import { beforeAll, describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { freeze } from '../../calculators/models/conduction/freeze.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import { metalCells } from '../../calculators/models/conduction/mesh.ts';
import {
  heatPlaces,
  plainKernel,
  type KernelMaker,
  type VoxelKernel,
} from '../../calculators/models/conduction/voxel-kernel.ts';
import { compileKernel } from '../../src/workers/kernel/compile.ts';
import { canRun, wasmKernels } from '../../src/workers/kernel/wasm-kernel.ts';
import { bossOf, partOf } from '../models/conduction/ways.ts';

/** Of the block in the second test. */
const heatOf = (cell: number): number => 400 + ((cell * 37) % 101);

let compiled: KernelMaker;
beforeAll(async () => {
  const bytes = await compileKernel();
  expect(canRun(bytes)).toBe(true);
  compiled = wasmKernels(bytes);
});

/** Cells of six stuffs by chance; where there is little metal, whole fours without. */
function regionsOf(count: number, metal: number): Uint8Array {
  const random = createRandom('regions');
  return Uint8Array.from({ length: count }, () =>
    random.uniform() < metal ? 0 : 1 + Math.floor(5 * random.uniform()),
  );
}

/** Fills a kernel with the same chance numbers whichever it is; no heat leaves the ends. */
function fill(kernel: VoxelKernel, [nx, ny, nz]: readonly [number, number, number]): void {
  const random = createRandom('kernel');
  kernel.describe({
    perHeat: [1, 2, 0.5, 0.25, 1.5, 0.75],
    solidus: 800,
    full: 1300,
    inRange: 0.25,
    inLiquid: 0.9,
  });
  const metal = metalCells(kernel);
  const places = heatPlaces(metal);
  const placeOf = new Map(Array.from(metal, (cell, m) => [cell, places[m]!]));
  for (let cell = 0; cell < nx * ny * nz; cell += 1) {
    const at = cell + kernel.guard;
    const heat = 1600 * random.uniform();
    const older = heat + random.uniform();
    const place = placeOf.get(cell);
    if (place !== undefined) {
      kernel.heat[0][place] = heat;
      kernel.heat[1][place] = older;
    }
    kernel.temperature[0][at] = place === undefined ? heat : Math.min(heat, 800);
    kernel.temperature[1][at] = older;
    const ends = [nx - 1, ny - 1, nz - 1];
    const places = [cell % nx, Math.floor(cell / nx) % ny, Math.floor(cell / (nx * ny))];
    kernel.toNext.forEach((along, d) => {
      along[at] = places[d] === ends[d] ? 0 : random.uniform();
    });
  }
}

describe('the compiled kernel', () => {
  // Sizes that are and are not whole groups of four.
  it.each([
    [8, 4, 4, 0.2],
    [5, 3, 7, 0.2],
    [5, 3, 7, 1],
    [9, 1, 2, 0.1],
    [1, 1, 6, 0.2],
    [8, 4, 4, 0.03],
  ] as const)(
    'does one stage of %i × %i × %i cells as the plain one, to the rounding of single precision, where %d is metal',
    (nx, ny, nz, share) => {
      const size = [nx, ny, nz] as const;
      const regions = regionsOf(nx * ny * nz, share);
      const kernels = [plainKernel(nx, ny, nz, regions), compiled(nx, ny, nz, regions)] as const;
      for (const kernel of kernels) {
        fill(kernel, size);
        kernel.stage(0, -0.6, 0.02);
        kernel.stage(1, -0.7, 0.02);
      }
      const [plain, simd] = kernels;
      for (let at = plain.guard; at < plain.guard + size[0] * size[1] * size[2]; at += 1)
        for (const n of [0, 1] as const)
          // Some six roundings of 6e-8 on numbers up to some thousands, twice over.
          expect(Math.abs(plain.temperature[n][at]! - simd.temperature[n][at]!)).toBeLessThan(5e-3);
      expect(simd.heat[0]).toHaveLength(plain.heat[0].length);
      for (const place of heatPlaces(metalCells(plain)))
        for (const n of [0, 1] as const)
          expect(Math.abs(plain.heat[n][place]! - simd.heat[n][place]!)).toBeLessThan(5e-3);
      const same = (t: number, at: number): boolean => t !== 0 && t === plain.temperature[0][at];
      expect(simd.temperature[0].some(same)).toBe(true);
    },
  );

  it('takes what is alike all around from its table, and gives the plain one’s numbers to rounding', () => {
    const size = [12, 6, 5] as const;
    const isMetal = (i: number, j: number): boolean => i >= 9 && j >= 4;
    const placesOf = (cell: number) =>
      [cell % 12, Math.floor(cell / 12) % 6, Math.floor(cell / 72)] as [number, number, number];
    const regions = Uint8Array.from({ length: 360 }, (_, cell) => {
      const [i, j] = placesOf(cell);
      return isMetal(i, j) ? 0 : 1;
    });
    const metal = metalCells({ region: regions });
    const [plain, simd] = [plainKernel(...size, regions), compiled(...size, regions)].map((kernel) => {
      fill(kernel, size);
      // A block of metal in the middle of one stuff, with skins of their own; alike elsewhere, closed at the ends.
      const alike = [0, 0.125];
      const places = heatPlaces(metal);
      for (const n of [0, 1] as const)
        metal.forEach((cell, m) => (kernel.heat[n][places[m]!] = heatOf(cell) + n));
      for (let cell = 0; cell < 360; cell += 1) {
        const places = placesOf(cell);
        const metal = regions[cell] === 0;
        const at = cell + kernel.guard;
        for (const n of [0, 1] as const) kernel.temperature[n][at] = heatOf(cell) + n;
        kernel.toNext.forEach((along, d) => {
          const skin = metal !== isMetal(places[0] + (d === 0 ? 1 : 0), places[1] + (d === 1 ? 1 : 0));
          along[at] = places[d] === size[d]! - 1 ? 0 : skin || metal ? 0.3 : 0.125;
        });
      }
      kernel.settle(alike);
      for (const stage of [0, 1, 0, 1] as const) kernel.stage(stage, -0.6, 0.02);
      return kernel;
    });
    for (let cell = 0; cell < 360; cell += 1) {
      const at = cell + plain!.guard;
      for (const n of [0, 1] as const) {
        // Four stages of some six roundings of 3e-5 on numbers near 450, at most.
        expect(Math.abs(simd!.temperature[n][at]! - plain!.temperature[n][at]!)).toBeLessThan(5e-4);
      }
    }
    for (const place of heatPlaces(metal))
      for (const n of [0, 1] as const)
        expect(Math.abs(simd!.heat[n][place]! - plain!.heat[n][place]!)).toBeLessThan(5e-4);
    // It does take some from the table, or nothing was tested: without conductances those stay as they are.
    const inside = simd!.guard + 4 + 12 * 2 + 72 * 2;
    for (const along of simd!.toNext) along.fill(0);
    const before = simd!.temperature[1][inside];
    simd!.stage(0, 0, 0.02);
    expect(simd!.temperature[1][inside]).not.toBe(simd!.temperature[0][inside]);
    expect(simd!.temperature[1][inside]).not.toBe(before);
  });

  it('freezes a part at the same times as the plain one, and keeps its heat', () => {
    const given = partOf(bossOf(0.001));
    const [plain, simd] = [plainKernel, compiled].map((maker) =>
      freeze(given, {}, (it) => voxelEngine(it, maker)),
    );
    if (!plain?.ok || !simd?.ok) throw new Error('refused');
    plain.solidus.forEach((time, m) => {
      expect(Math.abs(simd.solidus[m]! / time - 1)).toBeLessThan(1e-4);
    });
    expect(simd.drift).toBeLessThan(1e-3);
    expect(simd.last!.time).toBeCloseTo(plain.last!.time, 3);
  });

  it('agrees with double precision on any mesh to a part in a thousand', () => {
    const given = partOf(bossOf(0.001));
    const [exact, simd] = [freeze(given), freeze(given, {}, (it) => voxelEngine(it, compiled))];
    if (!exact.ok || !simd.ok) throw new Error('refused');
    expect(Math.abs(simd.last!.time / exact.last!.time - 1)).toBeLessThan(1e-3);
  });

  it('keeps heats of metal only: 22 bytes a cell where a twentieth is metal', () => {
    const count = 100 * 88 * 32;
    const regions = Uint8Array.from({ length: count }, (_, cell) => (cell % 2000 < 100 ? 0 : 1));
    expect(compiled(100, 88, 32, regions).bytes / count).toBeLessThan(22.2);
  });
});
