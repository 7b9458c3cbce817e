import type { Body, Stuff } from './body.ts';

/** Heat that turns water to steam at 100 °C, J/kg (steam tables, 2256.7 kJ/kg). */
export const steamHeat = 2.2567e6;
/** K */
export const boiling = 373.15;

const directions = { plate: 1, cylinder: 2, sphere: 3 } as const;

/**
 * Seconds that drying adds: the surface of boiling water draws inwards and every gram takes its heat through
 * the dry shell, t = ρwLa²(1 + 2/Bi)/(2nkΔT), the quasi-steady front of Stefan for n = 1 plate, 2 cylinder,
 * 3 ball. Directions of one body work side by side. An estimate: vapour also moves and condenses inside.
 * `share` is the mass of water over that of dry mould.
 */
export function dryingTime(
  body: Body,
  { k }: Stuff,
  density: number,
  share: number,
  around: number,
  h: number,
): number {
  if (share <= 0) return 0;
  return dryingDose(body, { k }, density, share, h) / (around - boiling);
}

/**
 * The same when the kiln climbs: the water is gone when the kelvins above boiling, summed over the seconds,
 * have come to this many K·s. Where the front stands goes by that sum alone, as long as `h` stays the same.
 */
export function dryingDose(
  body: Body,
  { k }: Pick<Stuff, 'k'>,
  density: number,
  share: number,
  h: number,
): number {
  if (share <= 0) return 0;
  const paces = body.map(({ shape, half }) => {
    const slow = 1 + (2 * k) / (h * half);
    const heat = density * share * steamHeat * half ** 2;
    return (2 * directions[shape] * k) / (heat * slow);
  });
  return 1 / paces.reduce((sum, pace) => sum + pace, 0);
}
