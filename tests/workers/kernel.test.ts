import { beforeAll, describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { freeze } from '../../calculators/models/conduction/freeze.ts';
import { voxelEngine } from '../../calculators/models/conduction/voxel-engine.ts';
import {
  plainKernel,
  type KernelMaker,
  type VoxelKernel,
} from '../../calculators/models/conduction/voxel-kernel.ts';
import { compileKernel } from '../../src/workers/kernel/compile.ts';
import { canRun, wasmKernels } from '../../src/workers/kernel/wasm-kernel.ts';
import { bossOf, partOf } from '../models/conduction/ways.ts';

let compiled: KernelMaker;
beforeAll(async () => {
  const bytes = await compileKernel();
  expect(canRun(bytes)).toBe(true);
  compiled = wasmKernels(bytes);
});

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
  for (let cell = 0; cell < nx * ny * nz; cell += 1) {
    const at = cell + kernel.guard;
    kernel.region[cell] = Math.floor(6 * random.uniform());
    const heat = 1600 * random.uniform();
    kernel.heat[0][at] = heat;
    kernel.heat[1][at] = heat + random.uniform();
    kernel.temperature[0][at] = kernel.region[cell] === 0 ? Math.min(heat, 800) : heat;
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
    [8, 4, 4],
    [5, 3, 7],
    [9, 1, 2],
    [1, 1, 6],
  ] as const)(
    'does one stage of %i × %i × %i cells as the plain one, to the rounding of single precision',
    (nx, ny, nz) => {
      const size = [nx, ny, nz] as const;
      const kernels = [plainKernel(nx, ny, nz), compiled(nx, ny, nz)] as const;
      for (const kernel of kernels) {
        fill(kernel, size);
        kernel.stage(0, -0.6, 0.02);
        kernel.stage(1, -0.7, 0.02);
      }
      const [plain, simd] = kernels;
      for (let at = plain.guard; at < plain.guard + size[0] * size[1] * size[2]; at += 1)
        for (const n of [0, 1] as const) {
          // Some six roundings of 6e-8 on numbers up to some thousands, twice over.
          expect(Math.abs(plain.heat[n][at]! - simd.heat[n][at]!)).toBeLessThan(5e-3);
          expect(Math.abs(plain.temperature[n][at]! - simd.temperature[n][at]!)).toBeLessThan(5e-3);
        }
      expect(simd.heat[0].some((heat, at) => heat !== 0 && heat === plain.heat[0][at])).toBe(true);
    },
  );

  it('takes what is alike all around from its table, and gives the plain one’s numbers to rounding', () => {
    const size = [12, 6, 5] as const;
    const [plain, simd] = [plainKernel(...size), compiled(...size)].map((kernel) => {
      fill(kernel, size);
      kernel.temperature[1].fill(400);
      // A block of metal in the middle of one stuff, with skins of their own; alike elsewhere, closed at the ends.
      const alike = [0, 0.125];
      for (let cell = 0; cell < 360; cell += 1) {
        const places = [cell % 12, Math.floor(cell / 12) % 6, Math.floor(cell / 72)] as const;
        const metal = places[0] >= 9 && places[1] >= 4;
        kernel.region[cell] = metal ? 0 : 1;
        const at = cell + kernel.guard;
        const heat = 400 + ((cell * 37) % 101);
        for (const n of [0, 1] as const) kernel.heat[n][at] = kernel.temperature[n][at] = heat + n;
        kernel.toNext.forEach((along, d) => {
          const next = places.map((place, axis) => place + (axis === d ? 1 : 0)) as [number, number, number];
          const skin = metal !== (next[0] >= 9 && next[1] >= 4);
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
        if (simd!.region[cell] === 0)
          expect(Math.abs(simd!.heat[n][at]! - plain!.heat[n][at]!)).toBeLessThan(5e-4);
      }
    }
    // It does leave some of the heats alone, or nothing was tested.
    const { guard } = simd!;
    const inside = guard + 4 + 12 * 2 + 72 * 2;
    expect(simd!.heat[0][inside]).not.toBe(simd!.temperature[0][inside]);
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

  it('asks for no more than 32 bytes a cell where metal is a small part of many cells', () => {
    expect(compiled(100, 88, 32).bytes / (100 * 88 * 32)).toBeLessThan(32);
  });
});
