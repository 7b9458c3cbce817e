import { axis, even, flat, type Axis, type AxisShape } from '../../../calculators/models/conduction/axis.ts';
import type { Case } from '../../../calculators/models/conduction/case.ts';
import { freeze, type Freezing } from '../../../calculators/models/conduction/freeze.ts';
import type { Side } from '../../../calculators/models/conduction/outside.ts';

/** A body with no mould and nothing to freeze, cooling from 1 K above its surroundings: k 50, ρc 4 MJ/(m³·K). */
export const body = { k: 50, rho: 8000, c: 500, half: 0.01, alpha: 50 / 4e6 };
const around = 1000;

/** Temperature above the surroundings at the middle of each cell, and the axes, at a time. */
export function cool(
  shapes: readonly AxisShape[],
  cells: number,
  h: number,
  time: number,
  growth: number,
): { theta: Float64Array; axes: readonly Axis[]; result: Freezing } {
  const axes = shapes.map((shape) => axis(even(0, body.half, cells), shape));
  const [x = flat, y = flat, z = flat] = axes;
  const count = axes.reduce((product, { centres }) => product * centres.length, 1);
  const of = (value: number) => ({ solid: value, liquid: value });
  const input: Case = {
    // Liquid at all times: what there is of latent heat stays in it.
    metal: { k: of(body.k), rho: body.rho, c: of(body.c), latent: 1, solidus: 500, liquidus: 500 },
    others: [],
    mesh: { axes: [x, y, z], region: new Uint8Array(count) },
    start: [around + 1],
    outside: { kind: 'air', temperature: around, h, emissivity: 0 },
    sides: (['+x', '+y', '+z'] as Side[]).slice(0, shapes.length),
    until: time,
    pace: { growth, shortest: 1e-4 * time, longest: Infinity },
    probes: [[0, 0, 0]],
  };
  const result = freeze(input);
  if (!result.ok) throw new Error(result.why);
  // The probe keeps what single precision would lose of a difference of 1 K at 1000 K.
  const [trace] = result.traces;
  const theta = Float64Array.from(result.temperature, (t) => t - around);
  theta[0] = trace!.temperature.at(-1)! - around;
  return { theta, axes, result };
}
