import type { Engine, Reals } from './engine.ts';
import { cellAt, indexOf, sizeOf, type Mesh } from './mesh.ts';
import { metalRegion } from './substance.ts';

/** What one place showed: times s, temperatures K, share solid 0 to 1 (NaN where there is no metal). */
export interface Trace {
  readonly cell: number;
  readonly times: number[];
  readonly temperature: number[];
  readonly solid: number[];
}

/** What the freezing left behind, by metal cell in the order of `Engine.metal`; NaN: not reached. */
export interface Frozen {
  readonly liquidus: Float32Array;
  readonly solidus: Float32Array;
  /** Gradient over root of cooling rate, (K·s)^½/m, as the last tenth freezes: small is badly fed. */
  readonly feeding: Float32Array;
}

/** Notes for each metal cell when its heat passes the liquidus and the solidus, and how it was fed. */
export interface FreezeRecord extends Frozen {
  readonly traces: readonly Trace[];
  /** Hottest each region has been, K. */
  readonly hottest: Float64Array;
  /** Latest time at the solidus, exact, and its cell. */
  readonly last: () => { readonly cell: number; readonly time: number };
  readonly keep: (newest: 0 | 1, from: number, to: number) => void;
  /** Nothing more comes: what was noted on the way to results that did not come is taken out. */
  readonly close: () => void;
  readonly bytes: number;
}

/** Share of the range in which cooling is timed: the last part to freeze. */
const tail = 0.1;

export function startRecord(engine: Engine, probes: readonly (readonly number[])[]): FreezeRecord {
  const { metal, curve, guard, heat, places, temperature, mesh, zero } = engine;
  const fill = (): Float32Array => new Float32Array(metal.length).fill(Number.NaN);
  const liquidus = fill();
  const solidus = fill();
  const feeding = fill();
  // Until a cell is solid, `solidus` holds the time at which its last tenth began, less than nought by one more,
  // and `feeding` the gradient at that time.
  const begun = (time: number): number => -1 - time;
  const before = Float32Array.from(places, (place) => heat[0][place]!);
  const tailTemperature = curve.solidus + tail * (curve.liquidus - curve.solidus);
  const tailHeat = curve.heatOf(tailTemperature);
  const timed = curve.liquidus - curve.solidus > 0.5;
  const hottest = new Float64Array(256).fill(-Infinity);
  const traces = probes.map((place): Trace => {
    return { cell: cellAt(mesh, place), times: [], temperature: [], solid: [] };
  });
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]] as const;
  const rim = rimOf(mesh);
  let last = { cell: -1, time: -Infinity };

  /** Slope of temperature at a cell, K/m, from its metal neighbours. */
  function slopeAt(t: Reals, cell: number): number {
    const at = indexOf(cell, size);
    let square = 0;
    for (const d of [0, 1, 2] as const) {
      const { centres } = mesh.axes[d];
      const low = at[d] > 0 && mesh.region[cell - strides[d]] === metalRegion ? 1 : 0;
      const high = at[d] < size[d] - 1 && mesh.region[cell + strides[d]] === metalRegion ? 1 : 0;
      if (low + high === 0) continue;
      const rise = t[cell + guard + high * strides[d]]! - t[cell + guard - low * strides[d]]!;
      square += (rise / (centres[at[d] + high]! - centres[at[d] - low]!)) ** 2;
    }
    return Math.sqrt(square);
  }

  /** When heat that falls evenly from `was` to `now` passes a level. */
  const passing = (from: number, to: number, was: number, now: number, level: number): number =>
    from + ((to - from) * (was - level)) / (was - now);

  function keep(newest: 0 | 1, from: number, to: number): void {
    const e = heat[newest];
    const t = temperature[newest];
    const { full, solidus: solid } = curve;
    for (let m = 0; m < metal.length; m += 1) {
      const was = before[m]!;
      const now = e[places[m]!]!;
      if (now === was) continue;
      if (was > full && now <= full) liquidus[m] = passing(from, to, was, now, full);
      if (was > tailHeat && now <= tailHeat) {
        solidus[m] = begun(passing(from, to, was, now, tailHeat));
        feeding[m] = slopeAt(t, metal[m]!);
      }
      if (was > solid && now <= solid) {
        const time = passing(from, to, was, now, solid);
        // Melted once more and not past its last tenth: what it was fed at stays as it was.
        if (!(solidus[m]! >= 0)) {
          const cooling = (tailTemperature - curve.solidus) / Math.max(1e-9, time - begun(solidus[m]!));
          feeding[m] = timed ? feeding[m]! / Math.sqrt(cooling) : Number.NaN;
        }
        solidus[m] = time;
        if (time > last.time) last = { cell: metal[m]!, time };
      }
      before[m] = now;
    }
    for (const trace of traces) {
      trace.times.push(to);
      trace.temperature.push(t[trace.cell + guard]! + zero);
      const metallic = mesh.region[trace.cell] === metalRegion;
      trace.solid.push(metallic ? curve.solidOf(e[trace.cell + guard]!) : Number.NaN);
    }
    hotter(t);
  }

  /** Inside a region nothing is hotter than at its rim, so after the start the rim is enough. */
  function hotter(t: Reals): void {
    for (const cell of rim) {
      const region = mesh.region[cell]!;
      if (t[cell + guard]! > hottest[region]!) hottest[region] = t[cell + guard]!;
    }
  }
  const atStart = temperature[0];
  for (let cell = 0; cell < mesh.region.length; cell += 1)
    if (atStart[cell + guard]! > hottest[mesh.region[cell]!]!)
      hottest[mesh.region[cell]!] = atStart[cell + guard]!;

  // Poured no hotter than the liquidus, or already solid: passed at once.
  for (let m = 0; m < metal.length; m += 1) {
    if (before[m]! <= curve.full) liquidus[m] = 0;
    if (before[m]! <= tailHeat) solidus[m] = begun(0);
    if (before[m]! > curve.solidus) continue;
    solidus[m] = 0;
    if (last.time < 0) last = { cell: metal[m]!, time: 0 };
  }
  return {
    liquidus,
    solidus,
    feeding,
    traces,
    hottest,
    last: () => last,
    keep,
    close: () => {
      for (let m = 0; m < metal.length; m += 1) if (solidus[m]! < 0) solidus[m] = feeding[m] = Number.NaN;
    },
    bytes: 4 * 4 * metal.length + 4 * rim.length,
  };
}

/** Cells beside the metal that are not metal, and those of any other region beside one of a different one. */
function rimOf(mesh: Mesh): Int32Array {
  const size = sizeOf(mesh);
  const { region } = mesh;
  const isRim = new Uint8Array(region.length);
  let count = 0;
  const add = (cell: number): void => {
    if (region[cell] === metalRegion || isRim[cell] === 1) return;
    isRim[cell] = 1;
    count += 1;
  };
  let stride = 1;
  for (const length of size) {
    const run = stride * length;
    for (let start = 0; start < region.length; start += run)
      for (let cell = start; cell < start + run - stride; cell += 1)
        if (region[cell + stride] !== region[cell]) {
          add(cell);
          add(cell + stride);
        }
    stride = run;
  }
  const rim = new Int32Array(count);
  for (let cell = 0, n = 0; n < count; cell += 1) if (isRim[cell] === 1) rim[n++] = cell;
  return rim;
}
