import type { Formula } from '../../calculators/core/formula.ts';
import { solve } from '../../calculators/core/solve.ts';
import type { Metal, Stuff } from '../../calculators/models/conduction/substance.ts';

/**
 * What the quick rule, `freezing/time-both`, gives for a modulus, s: flat faces, the middle of the freezing range, gap
 * and mould in the way. Temperatures at the start K; undefined where it gives nothing.
 */
export function ruleTime(
  rule: Formula,
  modulus: number,
  metal: Metal,
  mould: Pick<Stuff, 'k' | 'rhoc' | 'h'>,
  pour: number,
  cold: number,
): number | undefined {
  if (!Number.isFinite(modulus)) return undefined;
  const found = solve(
    rule,
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

/** The same reasons for a whole, by its mean modulus, and for a place of it, by its own. */
const reasons = {
  whole: {
    later: 'The rule takes one modulus for the whole, and the heavy place outlasts the mean.',
    sooner: 'Edges and corners have more mould to give heat to than the flat faces of the rule.',
  },
  place: {
    later: 'Sand in inside corners warms from two sides, and thick metal beside the place keeps it warm.',
    sooner:
      'Edges and round bars have more mould to give heat to than the flat face of the rule, and thin metal beside the place draws heat off.',
  },
} as const;

/** Why rule and solver differ; `range` is the freezing range, K, and `error` what the cells may put the solver off by. */
export function whyApart(
  of: keyof typeof reasons,
  rule: number,
  solved: number,
  { range, error }: { readonly range: number; readonly error: number },
): string {
  const part = solved / rule - 1;
  if (Math.abs(part) < Math.max(0.08, error))
    return 'They agree as well as the cells and the numbers of metal and mould can tell.';
  const { later, sooner } = reasons[of];
  if (part < 0) return sooner;
  return range > 40
    ? `${later} The solver also waits for the solidus and the heat of all ${Math.round(range)} degrees of the freezing range.`
    : later;
}

/** How far heat has gone into a mould after a time, m. */
export const soaked = ({ k, rhoc }: Pick<Stuff, 'k' | 'rhoc'>, time: number): number =>
  Math.sqrt((k / rhoc) * time);
