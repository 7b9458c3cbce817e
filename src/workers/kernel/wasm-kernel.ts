import {
  guardFor,
  mostRegions,
  type KernelMaker,
  type Substances,
  type VoxelKernel,
} from '../../../calculators/models/conduction/voxel-kernel.ts';

type Stage = (...numbers: number[]) => void;

const page = 65_536;

/** Bytes between arrays: where sizes are powers of two, the same cell of each would else want one place in the cache. */
const apart = 9 * 64;

/** Whether WebAssembly with four-lane arithmetic runs here. */
export function canRun(bytes: Uint8Array): boolean {
  return typeof WebAssembly === 'object' && WebAssembly.validate(bytes as Uint8Array<ArrayBuffer>);
}

/** Kernels from the compiled bytes. A kernel too large for the device throws a RangeError when it is made. */
export function wasmKernels(bytes: Uint8Array): KernelMaker {
  const module = new WebAssembly.Module(bytes as Uint8Array<ArrayBuffer>);
  return (nx, ny, nz) => wasmKernel(module, nx, ny, nz);
}

function wasmKernel(module: WebAssembly.Module, nx: number, ny: number, nz: number): VoxelKernel {
  const count = nx * ny * nz;
  const guard = guardFor(nx, ny);
  // Whole groups of four; what the last group has too much lies in the guard and is joined to nothing.
  const places = 4 * Math.ceil((count + 2 * guard) / 4);
  const groups = 4 * Math.ceil(count / 4);
  const table = 4 * mostRegions;
  const bytes = table + 7 * (4 * places + apart) + groups;
  const pages = Math.ceil(bytes / page);
  const memory = new WebAssembly.Memory({ initial: pages, maximum: pages });
  const { exports } = new WebAssembly.Instance(module, { env: { memory } });
  const run = exports['stage'] as Stage;

  const base = (array: number): number => table + array * (4 * places + apart);
  const view = (array: number): Float32Array =>
    new Float32Array(memory.buffer, base(array), count + 2 * guard);
  const first = (array: number): number => base(array) + 4 * guard;
  const heat = [view(0), view(1)] as const;
  const temperature = [view(2), view(3)] as const;
  const toNext = [view(4), view(5), view(6)] as const;
  const region = new Uint8Array(memory.buffer, base(7), count);
  const gains = new Float32Array(memory.buffer, 0, mostRegions);
  let substances: Substances = { perHeat: [], solidus: 0, full: 0, inRange: 0, inLiquid: 0 };

  return {
    name: 'simd',
    guard,
    heat,
    temperature,
    toNext,
    region,
    describe: (given) => {
      substances = given;
    },
    stage: (newest, back, seconds) => {
      const { perHeat, solidus, full, inRange, inLiquid } = substances;
      perHeat.forEach((each, n) => (gains[n] = each * seconds));
      const other = 1 - newest;
      run(
        count,
        nx,
        nx * ny,
        first(newest),
        first(other),
        first(2 + newest),
        first(2 + other),
        first(4),
        first(5),
        first(6),
        base(7),
        0,
        back,
        solidus,
        full,
        inRange,
        inLiquid,
      );
    },
    bytes: pages * page,
  };
}
