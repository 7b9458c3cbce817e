/**
 * Volume and surface of the solids a small casting is built from, and of the joints, holes and crossings
 * between them. Elementary geometry; lengths in metres, results in m³ and m².
 */
export interface Solid {
  readonly name: string;
  /** What the sizes a, b and c are, in this order; as many as the solid has. */
  readonly sizes: readonly string[];
  readonly volume: (a: number, b: number, c: number) => number;
  /** What it adds to the outer surface of the casting; joints and openings take away. */
  readonly surface: (a: number, b: number, c: number) => number;
  /** What it takes from the cooled part of that surface, beyond `surface`. */
  readonly uncooled?: (a: number, b: number) => number;
  /** Refuses sizes that make no body, with the reason. */
  readonly refuse?: (a: number, b: number, c: number) => string | undefined;
}

const { PI, sqrt } = Math;
const disc = (d: number): number => (PI / 4) * d * d;
const none = (): number => 0;
const box = (a: number, b: number, c: number): number => 2 * (a * b + b * c + c * a);

export const solids = {
  plate: {
    name: 'plate, bar or block',
    sizes: ['length', 'width', 'thickness'],
    volume: (a, b, c) => a * b * c,
    surface: box,
  },
  triangle: {
    name: 'triangular plate, two sides alike',
    sizes: ['base', 'height', 'thickness'],
    volume: (a, b, c) => (a * b * c) / 2,
    surface: (a, b, c) => a * b + c * (a + 2 * sqrt((a / 2) ** 2 + b * b)),
  },
  rod: {
    name: 'rod or disc',
    sizes: ['diameter', 'length'],
    volume: (a, b) => disc(a) * b,
    surface: (a, b) => 2 * disc(a) + PI * a * b,
  },
  tube: {
    name: 'tube',
    sizes: ['outer diameter', 'inner diameter', 'length'],
    volume: (a, b, c) => (disc(a) - disc(b)) * c,
    surface: (a, b, c) => 2 * (disc(a) - disc(b)) + PI * (a + b) * c,
    refuse: (a, b) => (b < a ? undefined : 'the inner diameter of a tube must be smaller than the outer'),
  },
  ring: {
    name: 'ring of round section',
    sizes: ['mean diameter', 'diameter of the section'],
    volume: (a, b) => PI * a * disc(b),
    surface: (a, b) => PI * a * PI * b,
    refuse: (a, b) => (b <= a ? undefined : 'the section of a ring must be thinner than its mean diameter'),
  },
  sphere: { name: 'ball', sizes: ['diameter'], volume: (a) => (PI / 6) * a ** 3, surface: (a) => PI * a * a },
  dome: {
    name: 'half ball with its flat',
    sizes: ['diameter'],
    volume: (a) => (PI / 12) * a ** 3,
    surface: (a) => (PI / 2) * a * a + disc(a),
  },
  cone: {
    name: 'cone',
    sizes: ['diameter', 'height'],
    volume: (a, b) => (disc(a) * b) / 3,
    surface: (a, b) => disc(a) + (PI / 2) * a * sqrt((a / 2) ** 2 + b * b),
  },
  frustum: {
    name: 'cone with its tip cut off',
    sizes: ['diameter below', 'diameter above', 'height'],
    volume: (a, b, c) => (PI / 12) * c * (a * a + a * b + b * b),
    surface: (a, b, c) => disc(a) + disc(b) + (PI / 2) * (a + b) * sqrt(((a - b) / 2) ** 2 + c * c),
  },
  fillet: {
    name: 'fillet along an inside corner',
    sizes: ['radius', 'length'],
    volume: (a, b) => (1 - PI / 4) * a * a * b,
    surface: (a, b) => (PI / 2 - 2) * a * b,
  },
  hole: {
    name: 'round hole right through',
    sizes: ['diameter', 'depth'],
    volume: (a, b) => -disc(a) * b,
    surface: (a, b) => PI * a * b - 2 * disc(a),
  },
  'blind-hole': {
    name: 'round hole with a flat bottom',
    sizes: ['diameter', 'depth'],
    volume: (a, b) => -disc(a) * b,
    surface: (a, b) => PI * a * b,
  },
  window: {
    name: 'rectangular opening right through',
    sizes: ['length', 'width', 'depth'],
    volume: (a, b, c) => -a * b * c,
    surface: (a, b, c) => 2 * (a + b) * c - 2 * a * b,
  },
  crossing: {
    name: 'block that two crossing bars share',
    sizes: ['width of one', 'width of the other', 'depth of both'],
    volume: (a, b, c) => -a * b * c,
    // Its top and bottom were counted with both bars, and its four sides lie inside.
    surface: (a, b, c) => -box(a, b, c),
  },
  joint: {
    name: 'rectangular face where two solids meet',
    sizes: ['length', 'width'],
    volume: none,
    surface: (a, b) => -2 * a * b,
  },
  'round-joint': {
    name: 'round face where two solids meet',
    sizes: ['diameter'],
    volume: none,
    surface: (a) => -2 * disc(a),
  },
  gate: {
    name: 'rectangular face on the gate or feeder',
    sizes: ['length', 'width'],
    volume: none,
    surface: none,
    uncooled: (a, b) => a * b,
  },
  'round-gate': {
    name: 'round face on the gate or feeder',
    sizes: ['diameter'],
    volume: none,
    surface: none,
    uncooled: (a) => disc(a),
  },
} as const satisfies Record<string, Solid>;

export type Shape = keyof typeof solids;

/** The solid of this name, or undefined. */
export function findSolid(shape: string): Solid | undefined {
  return Object.hasOwn(solids, shape) ? solids[shape as Shape] : undefined;
}
