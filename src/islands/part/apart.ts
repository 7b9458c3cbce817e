import { solve } from '../../../calculators/core/solve.ts';
import { timeBoth } from '../../../calculators/formulas/freezing/time-both.ts';
import type { Part } from '../../workers/conduction-work.ts';

/** Numbers of a metal that freezing needs, SI. */
export type FreezingMetal = Part['metal'] & {
  /** K: as it fills the mould, unless said otherwise. */
  readonly pour: number;
};

/** A mould by its numbers, SI. */
export interface FreezingMould {
  readonly id: string;
  readonly name: string;
  readonly k: number;
  readonly rhoc: number;
  readonly h: number;
  /** The hottest it may be, K. */
  readonly limit: number;
}

/** What the quick rule gives for a modulus, s: flat faces, the middle of the freezing range, gap and mould in the way. */
export function ruleFor(
  modulus: number,
  metal: FreezingMetal,
  mould: FreezingMould,
  pour: number,
  cold: number,
): number | undefined {
  const found = solve(
    timeBoth,
    {
      rho: metal.rho,
      M: modulus,
      L: metal.latent,
      c: metal.c.liquid,
      dT: Math.max(0, pour - metal.liquidus),
      b: Math.sqrt(mould.k * mould.rhoc),
      h: mould.h,
      T_f: (metal.solidus + metal.liquidus) / 2,
      T_m: cold,
    },
    't',
  );
  return found.ok && Number.isFinite(found.value) ? found.value : undefined;
}

/** Why rule and solver are not the same at a place; `error` is what the cells may put it off by. */
export function whyApart(rule: number, solved: number, range: number, error: number): string {
  const part = solved / rule - 1;
  if (Math.abs(part) < Math.max(0.08, error)) return 'They agree as well as the cells can tell.';
  if (part > 0)
    return range > 40
      ? `The solver waits for the solidus and for the heat of all ${Math.round(range)} degrees of the freezing range; sand in inside corners warms from two sides.`
      : 'Sand in inside corners warms from two sides, and thick metal beside it keeps the place warm.';
  return 'Edges and round bars have more mould to give heat to than the flat face of the rule, and thin metal beside it draws heat off.';
}

/** How far heat has gone into the mould by the time all is solid, m: twice this and a little is enough mould: what comes back from farther out is less than a hundredth. */
export const soaked = ({ k, rhoc }: FreezingMould, time: number): number => Math.sqrt((k / rhoc) * time);
