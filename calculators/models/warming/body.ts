import { at, evenStart, later, underNewSurface, type Profile, type Shape } from './series.ts';

/** One direction in which heat comes in: half the thickness, or the radius. */
export interface Direction {
  readonly shape: Shape;
  /** m */
  readonly half: number;
}

/** A body that is the product of its directions: a flask is a long cylinder crossed with a plate. */
export type Body = readonly Direction[];

export interface Stuff {
  /** W/(m·K) */
  readonly k: number;
  /** m²/s */
  readonly alpha: number;
}

/** A stay in surroundings of one temperature. */
export interface Stay {
  /** K */
  readonly around: number;
  /** W/(m²·K) */
  readonly h: number;
  /** s */
  readonly time: number;
}

/** Where to look: for each direction 0 in the middle, 1 at the surface. */
export type Place = readonly number[];

/** Series are summed from here; before it the body has hardly noticed and is taken at this moment. */
const earliest = 2e-5;

/** Bi over half the thickness or the radius, kept where the series can be summed. */
export const biotOf = (h: number, half: number, { k }: Stuff): number => Math.max(1e-5, (h * half) / k);
const fourier = (time: number, half: number, { alpha }: Stuff): number =>
  Math.max(earliest, (alpha * time) / half ** 2);

const product = (profiles: readonly Profile[], place: Place): number =>
  profiles.reduce((all, profile, i) => all * at(profile, place[i] ?? 0), 1);

const even = (body: Body, stuff: Stuff, { h, time }: Stay): readonly Profile[] =>
  body.map(({ shape, half }) => {
    const Fo = fourier(time, half, stuff);
    return later(evenStart(shape, biotOf(h, half, stuff), Fo), Fo);
  });

/** Temperature (K) at a place of a body that began at `start` (K) throughout, after one stay. */
export function afterOne(body: Body, stuff: Stuff, start: number, stay: Stay, place: Place): number {
  if (stay.time <= 0) return start;
  return stay.around + (start - stay.around) * product(even(body, stuff, stay), place);
}

/**
 * Temperature (K) after a second stay that follows the first: the surroundings' change is felt as by an even
 * body, the profile left by the first stay fades as it is, and the two add up because conduction is linear.
 */
export function afterTwo(
  body: Body,
  stuff: Stuff,
  start: number,
  first: Stay,
  second: Stay,
  place: Place,
): number {
  if (second.time <= 0) return afterOne(body, stuff, start, first, place);
  if (first.time <= 0) return afterOne(body, stuff, start, second, place);
  const left = even(body, stuff, first).map((profile, i) => {
    const { half } = body[i]!;
    const Fo = fourier(second.time, half, stuff);
    return later(underNewSurface(profile, biotOf(second.h, half, stuff), Fo), Fo);
  });
  return (
    second.around +
    (first.around - second.around) * product(even(body, stuff, second), place) +
    (start - first.around) * product(left, place)
  );
}

/** Volume over surface (m). */
export function modulusOf(body: Body): number {
  return (
    1 / body.reduce((sum, { shape, half }) => sum + { plate: 1, cylinder: 2, sphere: 3 }[shape] / half, 0)
  );
}

/**
 * Seconds until the middle of an evenly tempered body comes to `target` (K); undefined when its surroundings
 * never bring it there.
 */
export function timeToReach(
  body: Body,
  stuff: Stuff,
  start: number,
  { around, h }: Omit<Stay, 'time'>,
  target: number,
): number | undefined {
  const share = (target - around) / (start - around);
  if (!(share > 0)) return undefined;
  if (share >= 1) return 0;
  const middle = body.map(() => 0);
  const reached = (time: number): number => product(even(body, stuff, { around, h, time }), middle) - share;
  const slowest = Math.max(...body.map(({ half }) => half ** 2 / stuff.alpha));
  let low = slowest * earliest;
  let high = slowest;
  while (reached(high) > 0) {
    low = high;
    high *= 4;
    if (high > slowest * 1e9) return undefined;
  }
  for (let i = 0; i < 60 && high - low > 1e-10 * high; i += 1) {
    const middleTime = (low + high) / 2;
    if (reached(middleTime) > 0) low = middleTime;
    else high = middleTime;
  }
  return (low + high) / 2;
}
