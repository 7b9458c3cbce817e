import type { Metal } from './pour.ts';

/** Heat above the liquidus, J/kg: below nought some of the metal is solid, in proportion to the heat given up. */
export interface Stuff {
  readonly temperature: (heat: number) => number;
  /** Share solid. */
  readonly solid: (heat: number) => number;
  /** Heat of the metal at the gate, and of metal just too stiff to flow. */
  readonly gate: number;
  readonly stop: number;
}

/**
 * Heat, temperature and share solid of a metal with a freezing range: the share solid grows evenly from
 * liquidus to solidus, latent heat is given up with it, and the same specific heat serves throughout.
 */
export function stuffOf({ c, latent, solidus, liquidus, stop, gate }: Metal): Stuff {
  const range = liquidus - solidus;
  const whole = latent + c * range;
  const solid = (heat: number): number => Math.min(1, Math.max(0, -heat / whole));
  const temperature = (heat: number): number => {
    if (heat >= 0) return liquidus + heat / c;
    return heat >= -whole ? liquidus + (range * heat) / whole : solidus + (heat + whole) / c;
  };
  const heatAt = (kelvin: number): number => {
    if (kelvin >= liquidus) return c * (kelvin - liquidus);
    if (kelvin < solidus) return -whole + c * (kelvin - solidus);
    return range > 0 ? (whole * (kelvin - liquidus)) / range : 0;
  };
  return { temperature, solid, gate: heatAt(gate), stop: -stop * whole };
}
