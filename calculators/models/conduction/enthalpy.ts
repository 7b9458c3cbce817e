import type { Metal } from './substance.ts';

/**
 * Freezing at one temperature is freezing over this much just below it, K: so narrow that no answer shows it, and wide
 * enough that single precision still tells its ends apart.
 */
const narrowest = 0.01;

/**
 * Heat and temperature of a metal. Heat is counted in kelvin, as heat content over the capacity of the
 * solid: below the solidus it is the temperature itself, above it runs ahead by the latent heat.
 * Temperatures are above `zero`, so that small changes keep their digits in single precision.
 */
export interface HeatCurve {
  /** J/(m³·K) of the solid: what one kelvin of heat is worth. */
  readonly capacity: number;
  readonly solidus: number;
  readonly liquidus: number;
  /** Heat at the liquidus, K. */
  readonly full: number;
  /** Kelvin of temperature to a kelvin of heat, within the range (when even) and in the liquid. */
  readonly inRange: number;
  readonly inLiquid: number;
  /** Share solid falls evenly over the range. */
  readonly even: boolean;
  readonly temperatureOf: (heat: number) => number;
  readonly heatOf: (temperature: number) => number;
  /** Share solid, 0 to 1. */
  readonly solidOf: (heat: number) => number;
}

export function heatCurve(metal: Metal, zero: number): HeatCurve {
  const width = Math.max(narrowest, metal.liquidus - metal.solidus);
  const liquidus = metal.liquidus - zero;
  const solidus = liquidus - width;
  const between = ((metal.c.solid + metal.c.liquid) / 2 / metal.c.solid) * width;
  const latent = metal.latent / metal.c.solid;
  const full = solidus + between + latent;
  const inLiquid = metal.c.solid / metal.c.liquid;
  const inRange = width / (between + latent);
  // In widths of the range above the solidus: where the lines of the diagram meet.
  const meet = metal.base === undefined ? Infinity : (metal.base - zero - solidus) / width;
  const even = !(meet < 1e6);

  /** Place in the range, 0 at the solidus and 1 at the liquidus, from heat above the solidus. */
  function placeOf(above: number): number {
    if (even) return above / (between + latent);
    // (between·θ + latent·θ(m−1)/(m−θ) = above), the root below one, written so that nothing cancels.
    const half = (between * meet + latent * (meet - 1) + above) / 2;
    return (above * meet) / (half + Math.sqrt(half * half - between * above * meet));
  }
  const solidAt = (place: number): number => (even ? 1 - place : (meet * (1 - place)) / (meet - place));

  return {
    capacity: metal.rho * metal.c.solid,
    solidus,
    liquidus,
    full,
    inRange,
    inLiquid,
    even,
    temperatureOf: (heat) => {
      if (heat <= solidus) return heat;
      if (heat >= full) return liquidus + inLiquid * (heat - full);
      return solidus + width * placeOf(heat - solidus);
    },
    heatOf: (temperature) => {
      if (temperature <= solidus) return temperature;
      if (temperature >= liquidus) return full + (temperature - liquidus) / inLiquid;
      const place = (temperature - solidus) / width;
      return solidus + between * place + latent * (1 - solidAt(place));
    },
    solidOf: (heat) => {
      if (heat <= solidus) return 1;
      return heat >= full ? 0 : solidAt(placeOf(heat - solidus));
    },
  };
}
