import { rootBetween } from '../../core/bracket.ts';
import { besselJ } from './bessel.ts';

/**
 * Warmth soaking into a plate, a long cylinder or a ball from its surface, as a series of the shapes that
 * fade each at its own rate. Lengths are shares of the half thickness or radius `a`, time is the Fourier
 * number αt/a², and the surface takes heat by Bi = ha/k. Carslaw & Jaeger, Conduction of Heat in Solids, 2nd
 * ed. (1959), §3.11, §7.7 and §9.4; Incropera & DeWitt, §5.5 and §5.6.
 */
export type Shape = 'plate' | 'cylinder' | 'sphere';

/** Directions in which heat comes in, less one, is the power of the radius in the volume. */
const directions: Readonly<Record<Shape, number>> = { plate: 1, cylinder: 2, sphere: 3 };

/** One fading shape: its rate is `root` squared. */
interface Mode {
  readonly root: number;
  /** Height of the shape at the surface, where it is 1 in the middle. */
  readonly edge: number;
}

/** The shape of a mode at `x` from 0 in the middle to 1 at the surface. */
function shapeAt(shape: Shape, root: number, x: number): number {
  const y = root * x;
  if (shape === 'plate') return Math.cos(y);
  if (shape === 'cylinder') return besselJ(0, y);
  return y === 0 ? 1 : Math.sin(y) / y;
}

/** Zero where the shape's slope at the surface is what the surface coefficient asks for. */
function atSurface(shape: Shape, Bi: number): (root: number) => number {
  if (shape === 'plate') return (y) => y * Math.sin(y) - Bi * Math.cos(y);
  if (shape === 'cylinder') return (y) => y * besselJ(1, y) - Bi * besselJ(0, y);
  return (y) => ((1 - Bi) * Math.sin(y)) / y - Math.cos(y);
}

/** Where the root number `n` (from 1) lies, and no other. */
function between(shape: Shape, n: number): readonly [number, number] {
  if (shape === 'plate') return [(n - 1) * Math.PI, (n - 0.5) * Math.PI];
  if (shape === 'sphere') return [Math.max(1e-9, (n - 1) * Math.PI), n * Math.PI];
  return [n === 1 ? 1e-9 : (n - 0.75) * Math.PI - 0.12, (n - 0.25) * Math.PI + 0.06];
}

/** The `n`th root of the surface condition, from 1. */
export function rootOf(shape: Shape, Bi: number, n: number): number {
  const [low, high] = between(shape, n);
  return rootBetween(atSurface(shape, Bi), low, high);
}

/** The factor of the first mode for a body that starts at one temperature: A₁ of the tables. */
export function firstFactor(shape: Shape, Bi: number): number {
  const root = rootOf(shape, Bi, 1);
  return evenFactor(shape, Bi, { root, edge: shapeAt(shape, root, 1) });
}

/** ∫φ²w over the body, by the surface condition: w is x to the power of the directions less one. */
function norm(shape: Shape, Bi: number, { root, edge }: Mode): number {
  return (edge ** 2 * (root ** 2 + Bi ** 2 - (directions[shape] - 2) * Bi)) / (2 * root ** 2);
}

function evenFactor(shape: Shape, Bi: number, mode: Mode): number {
  return (Bi * mode.edge) / (mode.root ** 2 * norm(shape, Bi, mode));
}

/** Modes with a rate worth keeping after `Fo`; never more than 400, which serves from Fo = 2e-5. */
const countFor = (Fo: number): number => Math.min(400, Math.ceil(2 + 6.2 / (Math.PI * Math.sqrt(Fo))));

/** A temperature profile above the surroundings, as shares of the start, and what becomes of it. */
export interface Profile {
  readonly shape: Shape;
  readonly Bi: number;
  readonly modes: readonly (Mode & { readonly factor: number })[];
}

const cache = new Map<string, Mode[]>();

/** The first `count` modes. Kept for the last surface seen, since a search asks for them again and again. */
function modesOf(shape: Shape, Bi: number, count: number): readonly Mode[] {
  const key = `${shape} ${Bi}`;
  let found = cache.get(key);
  if (!found) {
    if (cache.size > 12) cache.clear();
    found = [];
    cache.set(key, found);
  }
  for (let n = found.length + 1; n <= count; n += 1) {
    const root = rootOf(shape, Bi, n);
    found.push({ root, edge: shapeAt(shape, root, 1) });
  }
  return found.slice(0, count);
}

/** A body at one temperature, 1 above its new surroundings, to be looked at after `Fo` or later. */
export function evenStart(shape: Shape, Bi: number, Fo: number): Profile {
  const modes = modesOf(shape, Bi, countFor(Fo));
  return { shape, Bi, modes: modes.map((mode) => ({ ...mode, factor: evenFactor(shape, Bi, mode) })) };
}

/** The profile after `Fo` more. */
export function later(profile: Profile, Fo: number): Profile {
  const modes = profile.modes.map((mode) => ({
    ...mode,
    factor: mode.factor * Math.exp(-(mode.root ** 2) * Fo),
  }));
  return { ...profile, modes: modes.filter(({ factor }) => Math.abs(factor) > 1e-16) };
}

/** The height of the profile at `x`. */
export function at({ shape, modes }: Profile, x: number): number {
  let sum = 0;
  for (const { root, factor } of modes) sum += factor * shapeAt(shape, root, x);
  return sum;
}

/** The profile's mean over the body. */
export function mean({ shape, Bi, modes }: Profile): number {
  let sum = 0;
  for (const { root, edge, factor } of modes) sum += (factor * directions[shape] * Bi * edge) / root ** 2;
  return sum;
}

/**
 * The same profile told in the shapes of another surface coefficient, to be looked at after `Fo` or later.
 * The shapes of one body under two coefficients overlap by a closed form: (λ² − μ²)∫φψw = (Bi₁ − Bi₂)φ(1)ψ(1).
 */
export function underNewSurface(profile: Profile, Bi: number, Fo: number): Profile {
  const { shape } = profile;
  if (Math.abs(Bi - profile.Bi) < 1e-9 * Bi) return profile;
  const modes = modesOf(shape, Bi, countFor(Fo)).map((mode) => {
    let overlap = 0;
    for (const old of profile.modes) {
      overlap += (old.factor * old.edge) / (old.root ** 2 - mode.root ** 2);
    }
    return { ...mode, factor: ((profile.Bi - Bi) * mode.edge * overlap) / norm(shape, Bi, mode) };
  });
  return { shape, Bi, modes };
}
