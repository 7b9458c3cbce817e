import type { Place } from './mesh.ts';
import { metalRegion } from './substance.ts';

/** A body made of one substance. Metres. */
export type Solid =
  | { readonly kind: 'box'; readonly region: number; readonly low: Place; readonly high: Place }
  | { readonly kind: 'ball'; readonly region: number; readonly centre: Place; readonly radius: number }
  | {
      readonly kind: 'bar';
      readonly region: number;
      /** Middle of the bar, which lies along this axis. */
      readonly centre: Place;
      readonly along: 0 | 1 | 2;
      readonly radius: number;
      readonly length: number;
    };

/**
 * How far a place is outside a body, m; below nought inside. At a box and at the ends of a bar it is the
 * farthest of the sides, so that the nearest face decides and edges are sharp.
 */
export function distanceTo(solid: Solid, place: Place): number {
  const sides = [0, 1, 2] as const;
  if (solid.kind === 'box')
    return Math.max(...sides.map((d) => Math.max(solid.low[d] - place[d], place[d] - solid.high[d])));
  const away = sides.map((d) => place[d] - solid.centre[d]);
  if (solid.kind === 'ball') return Math.hypot(...away) - solid.radius;
  const beside = Math.hypot(...away.filter((_, d) => d !== solid.along)) - solid.radius;
  return Math.max(beside, Math.abs(away[solid.along]!) - solid.length / 2);
}

export function boundsOf(solid: Solid): readonly [Place, Place] {
  if (solid.kind === 'box') return [solid.low, solid.high];
  const reach = (d: 0 | 1 | 2): number =>
    solid.kind === 'bar' && d === solid.along ? solid.length / 2 : solid.radius;
  const { centre } = solid;
  return [
    [centre[0] - reach(0), centre[1] - reach(1), centre[2] - reach(2)],
    [centre[0] + reach(0), centre[1] + reach(1), centre[2] + reach(2)],
  ];
}

/** How far a place is outside the metal, with what lies over it cut away, m. */
export function distanceToMetal(solids: readonly Solid[], place: Place): number {
  let distance = Infinity;
  for (const solid of solids) {
    const here = distanceTo(solid, place);
    distance = solid.region === metalRegion ? Math.min(distance, here) : Math.max(distance, -here);
  }
  return distance;
}
