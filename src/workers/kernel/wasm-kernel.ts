import {
  guardFor,
  metalFours,
  mostRegions,
  type KernelMaker,
  type Substances,
  type VoxelKernel,
} from '../../../calculators/models/conduction/voxel-kernel.ts';
import { metalRegion } from '../../../calculators/models/conduction/substance.ts';

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
  return (nx, ny, nz, region) => wasmKernel(module, nx, ny, nz, region);
}

function wasmKernel(
  module: WebAssembly.Module,
  nx: number,
  ny: number,
  nz: number,
  given: Uint8Array,
): VoxelKernel {
  const count = nx * ny * nz;
  const guard = guardFor(nx, ny);
  // The arrays share their guards. Before the first conductance lie noughts, and those along x, y, z end with
  // as many noughts as the one that follows needs before it; of the others any number will do. The last
  // group of four may write a little past the end, into what keeps arrays apart.
  const length = 4 * Math.ceil(count / 4) * 4 + apart;
  // Gains by region, then conductances between alike cells.
  const table = 8 * mostRegions;
  const fours = Math.ceil(count / 4);
  const heats = table + 5 * length + 2 * 4 * guard;
  const hot = 16 * metalFours(given) + apart;
  const regions = heats + 2 * hot;
  const bytes = regions + 5 * fours;
  const pages = Math.ceil(bytes / page);
  const memory = new WebAssembly.Memory({ initial: pages, maximum: pages });
  const { exports } = new WebAssembly.Instance(module, { env: { memory } });
  const run = exports['stage'] as Stage;

  const first = (array: number): number => table + 4 * guard + array * length;
  const view = (array: number): Float32Array =>
    new Float32Array(memory.buffer, first(array) - 4 * guard, count + 2 * guard);
  const [up, north, east, warm] = [0, 1, 2, 3];
  const ofMetal = (n: number): Float32Array =>
    new Float32Array(memory.buffer, heats + n * hot, (hot - apart) / 4);
  const heat = [ofMetal(0), ofMetal(1)] as const;
  const temperature = [view(warm), view(warm + 1)] as const;
  const toNext = [view(east), view(north), view(up)] as const;
  const region = new Uint8Array(memory.buffer, regions, count);
  // What is no cell any more, up to a whole four, must not pass for metal.
  new Uint8Array(memory.buffer, regions, 4 * fours).fill(mostRegions - 1);
  region.set(given);
  const gains = new Float32Array(memory.buffer, 0, mostRegions);
  const between = new Float32Array(memory.buffer, 4 * mostRegions, mostRegions);
  const plains = regions + 4 * fours;
  const plain = new Uint8Array(memory.buffer, plains, fours);
  /** Where the heats begin of the cells from one on: asked for the same few cells at every stage. */
  const begins = new Map<number, number>();
  const beginOf = (cell: number): number => {
    const begin = begins.get(cell) ?? 16 * metalFours(region, cell);
    begins.set(cell, begin);
    return begin;
  };
  let substances: Substances = { perHeat: [], solidus: 0, full: 0, inRange: 0, inLiquid: 0 };

  /** The region of four cells that with all they touch are of one stuff other than metal; else nought. */
  function plainFour(cell: number): number {
    const what = region[cell]!;
    if (what === metalRegion || cell + 4 > count) return 0;
    const g = between[what]!;
    const [eastward, northward, upward] = toNext;
    for (let at = cell + guard; at < cell + guard + 4; at += 1) {
      if (region[at - guard] !== what) return 0;
      const same =
        eastward[at - 1] === g &&
        eastward[at] === g &&
        northward[at - nx] === g &&
        northward[at] === g &&
        upward[at - nx * ny] === g &&
        upward[at] === g;
      if (!same) return 0;
    }
    return what;
  }

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
    settle: (alike) => {
      between.set(alike);
      for (let four = 0; four < fours; four += 1) plain[four] = plainFour(4 * four);
    },
    stage: (newest, back, seconds, from = 0, to = count) => {
      const { perHeat, solidus, full, inRange, inLiquid } = substances;
      perHeat.forEach((each, n) => (gains[n] = each * seconds));
      const other = 1 - newest;
      run(
        from,
        to,
        nx,
        nx * ny,
        heats + newest * hot + beginOf(from),
        heats + other * hot + beginOf(from),
        first(warm + newest),
        first(warm + other),
        first(east),
        first(north),
        first(up),
        regions,
        plains,
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
