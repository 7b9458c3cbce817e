import { mixHead, noParcels, pop, push, type Parcels } from './parcels.ts';
import type { Pour } from './pour.ts';
import { heatTaken } from './wall.ts';
import type { Stuff } from './stuff.ts';

/** `waiting` for the channel before to fill; a `front` in it; `full`; or `stopped` for good. */
export type Phase = 'waiting' | 'front' | 'full' | 'stopped';

/** One channel, and all alike with it, while the race is run. */
export interface Flow {
  phase: Phase;
  /** Length filled. */
  x: number;
  /** Flow through it, m³/s. */
  Q: number;
  /** Pressure of the gas ahead of its front, absolute. */
  gas: number;
  readonly metal: Parcels;
  /** When the front passed each cell's near edge. */
  readonly passed: number[];
  readonly cell: number;
}

/** Cells of about one length everywhere, three at least in the shortest channel. */
export function startFlows({ channels, cells, drive }: Pour): Flow[] {
  const longest = Math.max(...channels.map(({ before, length }) => before + length));
  return channels.map(({ length, parent }) => ({
    phase: parent < 0 ? 'front' : 'waiting',
    x: 0,
    Q: 0,
    gas: drive.ambient - drive.suction,
    metal: noParcels(),
    passed: parent < 0 ? [0] : [],
    cell: length / Math.max(3, Math.round((cells * length) / longest)),
  }));
}

/** Parents before children. */
export const inOrder = ({ channels }: Pour): number[] =>
  channels.map((_, i) => i).sort((a, b) => channels[a]!.path.length - channels[b]!.path.length);

/** Carries metal on for `dt` at the flows as they stand: in at the gate, through junctions in the shares of the flow, fronts ahead. */
export function carry(
  pour: Pour,
  flows: readonly Flow[],
  order: readonly number[],
  t: number,
  dt: number,
  gate: number,
): void {
  for (const c of order) {
    const { area, alike, side, parent, children, length } = pour.channels[c]!;
    const flow = flows[c]!;
    if (!(flow.Q > 0)) continue;
    const whole = area * alike;
    const cell = flow.cell * whole;
    const volume = flow.Q * dt;
    if (parent < 0) push(flow.metal, volume, gate, cell);
    if (flow.phase === 'front') {
      const from = flow.x;
      flow.x = Math.min(length, from + volume / whole);
      for (let edge = flow.passed.length; edge * flow.cell <= flow.x * (1 + 1e-12); edge += 1)
        flow.passed.push(t + (dt * Math.max(0, edge * flow.cell - from)) / Math.max(flow.x - from, 1e-300));
      mixHead(flow.metal, side * whole);
    } else if (flow.phase === 'full') {
      pop(flow.metal, volume, (piece, heat) => {
        for (const child of children) {
          const next = flows[child]!;
          const { area: a, alike: n } = pour.channels[child]!;
          if (next.Q > 0) push(next.metal, (piece * next.Q) / flow.Q, heat, next.cell * a * n);
        }
      });
    }
  }
}

/** How long the wall at `at` has been covered, at time `t`; below nought before the front came. */
function covered({ passed, cell, x }: Flow, at: number, t: number): number {
  const k = Math.min(Math.floor(at / cell), passed.length - 1);
  const start = passed[k]!;
  const end = passed[k + 1] ?? t;
  const width = passed[k + 1] === undefined ? x - k * cell : cell;
  return t - (width > 0 ? start + ((end - start) * (at - k * cell)) / width : start);
}

/**
 * Lets every parcel give heat to the wall it passes from `t` to `t + dt`, and returns all of it in joules. What a
 * wall takes depends on how long it has been covered: a parcel lies, while the step lasts, on walls covered
 * between `least` and `most` seconds, and gives the mean over that span. That is exact for metal standing still
 * and for the head of a stream that runs on evenly.
 */
export function cooler(pour: Pour, stuff: Stuff): (flows: readonly Flow[], t: number, dt: number) => number {
  const { rho, c } = pour.metal;
  const { b, h, temperature } = pour.mould;
  const taken = heatTaken(b, h);
  return (flows, t, dt) => {
    const end = t + dt;
    const narrow = 0.005 * dt;
    let given = 0;
    for (const [i, flow] of flows.entries()) {
      const { area, alike, rim } = pour.channels[i]!;
      const { volumes, heats } = flow.metal;
      if (volumes.length === 0) continue;
      const moved = (flow.Q * dt) / (area * alike);
      const thirst = (rim * dt) / (rho * c * area);
      let edge = flow.x;
      let now = covered(flow, edge, end);
      let then = Math.max(0, covered(flow, Math.max(0, edge - moved), t));
      for (let k = 0; k < volumes.length; k += 1) {
        edge = Math.max(0, edge - volumes[k]! / (area * alike));
        const nowBehind = covered(flow, edge, end);
        const thenBehind = Math.max(0, covered(flow, Math.max(0, edge - moved), t));
        let least = Math.min(now, then, nowBehind, thenBehind);
        let most = Math.max(now, then, nowBehind, thenBehind);
        if (most - least < 2 * narrow) {
          least = Math.max(0, (least + most) / 2 - narrow);
          most = least + 2 * narrow;
        }
        // Share of its heat above the mould that it gives: never more than all of it.
        const part = Math.min(1, (thirst * (taken(most) - taken(least))) / (most - least));
        const loss = part * c * (stuff.temperature(heats[k]!) - temperature);
        heats[k] = heats[k]! - loss;
        given += loss * rho * volumes[k]!;
        now = nowBehind;
        then = thenBehind;
      }
    }
    return given;
  };
}
