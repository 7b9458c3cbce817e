import type { Case, Pace } from './case.ts';
import { faceArea } from './conductance.ts';
import { startOf } from './exact-engine.ts';
import { indexOf, metalCells, sizeOf, volumeOf } from './mesh.ts';
import { metalRegion } from './substance.ts';

/** About how long it will freeze, s: what the lengths of steps are measured by, never an answer. */
export function roughTime(given: Case): number {
  const { mesh, metal, others } = given;
  const size = sizeOf(mesh);
  const strides = [1, size[0], size[0] * size[1]];
  const cells = metalCells(mesh);
  let volume = 0;
  let area = 0;
  let hottest = -Infinity;
  let coldest = Infinity;
  // Of what touches the metal, what draws most.
  let draw = 0;
  let gap = 0;
  for (const cell of cells) {
    volume += volumeOf(mesh, cell);
    hottest = Math.max(hottest, startOf(given, mesh, cell));
    const at = indexOf(cell, size);
    for (const d of [0, 1, 2] as const)
      for (const way of [-1, 1] as const) {
        const next = cell + way * strides[d]!;
        if (at[d] + way < 0 || at[d] + way >= size[d]) continue;
        const region = mesh.region[next]!;
        if (region === metalRegion) continue;
        const low = [...at] as [number, number, number];
        if (way < 0) low[d] -= 1;
        area += faceArea(mesh, d, low);
        coldest = Math.min(coldest, startOf(given, mesh, next));
        const other = others[region - 1]!;
        draw = Math.max(draw, Math.sqrt(other.k * other.rhoc));
        gap = Math.max(gap, 1 / other.h);
      }
  }
  const middle = (metal.solidus + metal.liquidus) / 2;
  const heat =
    metal.rho *
    (metal.latent +
      metal.c.liquid * Math.max(0, hottest - metal.liquidus) +
      (metal.c.solid * (metal.liquidus - metal.solidus)) / 2);
  if (!(area > 0)) return (metal.rho * metal.c.solid * (volume || 1) ** (2 / 3)) / metal.k.solid;
  const modulus = volume / area;
  const drop = Math.max(1, middle - coldest);
  const perArea = (heat * modulus) / drop;
  return (Math.PI / 4) * (perArea / draw) ** 2 + perArea * (gap + modulus / (2 * metal.k.solid));
}

/** Steps of 2 % of the time, from a two-thousandth of the rough freezing time and never above 2 ms at first. */
export function paceOf(given: Case): Pace {
  if (given.pace) return given.pace;
  return { growth: 0.02, shortest: Math.min(0.002, roughTime(given) / 2000), longest: Infinity };
}
