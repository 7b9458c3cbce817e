import type { Channel } from './channel.ts';

/** Reynolds numbers below which the flow is laminar and above which it is turbulent; between them a mixture. */
const [smooth, eddying] = [2300, 4000] as const;

/** Darcy's friction factor, and how it changes with the Reynolds number. */
export function frictionFactor(Re: number, laminar: number): readonly [f: number, slope: number] {
  if (Re <= smooth) return [laminar / Re, -laminar / (Re * Re)];
  // Blasius, smooth walls, as in filling/losses.
  const blasius = 0.3164 * Math.max(Re, eddying) ** -0.25;
  if (Re >= eddying) return [blasius, (-0.25 * blasius) / Re];
  const slope = (blasius - laminar / smooth) / (eddying - smooth);
  return [laminar / smooth + slope * (Re - smooth), slope];
}

/**
 * Pressure lost to friction along `x` of a channel and to its entry and bends, at speed `v`, and its slope in
 * the speed. `heads` counts further heads of that speed. In pascal and Pa·s/m; it always rises with the speed.
 */
export function lossAt(
  channel: Channel,
  rho: number,
  mu: number,
  x: number,
  v: number,
  heads: number,
): readonly [loss: number, slope: number] {
  const { diameter, laminar } = channel;
  const dynamic = rho * v * (channel.loss + heads);
  if (mu <= 0) return [(dynamic * v) / 2, dynamic];
  const along = x / diameter;
  const Re = (rho * v * diameter) / mu;
  if (Re <= smooth) {
    const k = (laminar * mu * along) / (2 * diameter);
    return [(dynamic * v) / 2 + k * v, dynamic + k];
  }
  const [f, slope] = frictionFactor(Re, laminar);
  return [
    (dynamic * v) / 2 + f * along * 0.5 * rho * v * v,
    dynamic + along * rho * v * (f + 0.5 * slope * Re),
  ];
}
