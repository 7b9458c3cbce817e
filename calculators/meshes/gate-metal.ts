import { cellOf, type Filled } from './cells.ts';
import { squareToFace } from './distance.ts';
import { swept } from './forms.ts';
import { together, type Point, type Triangles } from './triangles.ts';

/** Metal that is not the part: a square gate stub standing on it, and a round button on the stub. Unit of the mesh. */
export interface GateMetal {
  readonly button: boolean;
  /** Side of the square stub, and how far it stands out. */
  readonly width: number;
  readonly length: number;
  /** Of the button. */
  readonly diameter: number;
  readonly height: number;
}

/** Where the stub stands on the surface, and which way it points. */
export interface GatePose {
  readonly foot: Point;
  readonly out: Point;
  /** Share of the stub and button that would run into the part. */
  readonly clash: number;
}

const steps = 48;

/**
 * Nearest place on the surface to stand a gate on. Where several faces are about as near, the one whose gate and
 * button clear the part, then the one that looks most upwards: metal comes from above.
 */
export function poseOf(
  { points, corners }: Triangles,
  filled: Filled,
  at: Point,
  metal: GateMetal,
): GatePose {
  const foot = new Float64Array(3);
  const faces = corners.length / 3;
  const squares = new Float32Array(faces);
  let least = Infinity;
  for (let f = 0; f < faces; f += 1) {
    const square = squareToFace(points, corners, f, at[0], at[1], at[2], foot);
    squares[f] = square;
    if (square < least) least = square;
  }
  const reach = (2.5 * Math.sqrt(least) + 0.3 * filled.grid.spacing) ** 2;
  const found: GatePose[] = [];
  const order = [...squares.keys()].filter((f) => squares[f]! <= reach);
  order.sort((a, b) => squares[a]! - squares[b]!);
  for (const f of order) {
    if (found.length >= 26) break;
    const out = outOf(points, corners, f);
    if (!out || found.some((pose) => dot(pose.out, out) > 0.95)) continue;
    squareToFace(points, corners, f, at[0], at[1], at[2], foot);
    const pose = { foot: [foot[0]!, foot[1]!, foot[2]!] as const, out };
    found.push({ ...pose, clash: clashOf(filled, pose, metal) });
  }
  found.sort((a, b) => Math.round(50 * (a.clash - b.clash)) || b.out[2] - a.out[2]);
  return found[0] ?? { foot: at, out: [0, 0, 1], clash: 0 };
}

function outOf(points: Float64Array, corners: Uint32Array, f: number): Point | undefined {
  const [a, b, c] = [3 * corners[3 * f]!, 3 * corners[3 * f + 1]!, 3 * corners[3 * f + 2]!];
  const u = [0, 1, 2].map((d) => points[b + d]! - points[a + d]!) as unknown as Point;
  const v = [0, 1, 2].map((d) => points[c + d]! - points[a + d]!) as unknown as Point;
  const n = cross(u, v);
  const long = Math.hypot(...n);
  return long > 0 ? [n[0] / long, n[1] / long, n[2] / long] : undefined;
}

/** Of places spread through stub and button, the share that is metal of the part already. */
function clashOf({ grid, metal }: Filled, pose: Pick<GatePose, 'foot' | 'out'>, gate: GateMetal): number {
  const [across, up] = acrossOf(pose.out);
  const bodies = [
    { from: 1.5 * grid.spacing, to: gate.length, half: gate.width / 2 },
    ...(gate.button ? [{ from: gate.length, to: gate.length + gate.height, half: gate.diameter / 2 }] : []),
  ];
  let asked = 0;
  let inside = 0;
  for (const { from, to, half } of bodies)
    for (let n = 0; n <= 8; n += 1)
      for (let a = -1; a <= 1.001; a += 0.25)
        for (let b = -1; b <= 1.001; b += 0.25) {
          if (a * a + b * b > 1) continue;
          const s = from + ((to - from) * n) / 8;
          const cell = cellOf(
            grid,
            [0, 1, 2].map(
              (d) => pose.foot[d]! + s * pose.out[d]! + half * (a * across[d]! + b * up[d]!),
            ) as unknown as Point,
          );
          asked += 1;
          if (cell >= 0 && metal[cell] === 1) inside += 1;
        }
  return inside / asked;
}

/**
 * Stub and button as closed bodies. The stub begins `sunk` below the surface and ends a little inside the button, so
 * that no gap is left on a curved face; what they share with one another and with the part is counted once.
 */
export function gateBodies({ foot, out }: GatePose, metal: GateMetal, sunk: number): readonly Triangles[] {
  const [across, up] = acrossOf(out);
  const at = (s: number) => ({
    at: [foot[0] + s * out[0], foot[1] + s * out[1], foot[2] + s * out[2]] as const,
    across,
    up,
  });
  const half = metal.width / 2;
  const square = [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ] as const;
  const into = metal.button ? Math.min(metal.height, metal.width) / 4 : 0;
  const stub = swept(square, [at(-sunk), at(metal.length + into)]);
  if (!metal.button) return [stub];
  const round = Array.from({ length: steps }, (_, i) => {
    const angle = (2 * Math.PI * i) / steps;
    return [(metal.diameter / 2) * Math.cos(angle), (metal.diameter / 2) * Math.sin(angle)] as const;
  });
  return [stub, swept(round, [at(metal.length), at(metal.length + metal.height)])];
}

export const withGate = (part: Triangles, bodies: readonly Triangles[]): Triangles =>
  together([part, ...bodies]);

/** What stands outside the part, m³ or the mesh's unit cubed: the stub from the surface on, and the button. */
export function gateVolumes({ button, width, length, diameter, height }: GateMetal): {
  readonly stub: number;
  readonly button: number;
} {
  return { stub: width * width * length, button: button ? (Math.PI / 4) * diameter * diameter * height : 0 };
}

/** Which body a place of the metal belongs to; within a stub's reach beside its axis. */
export function bodyAt(
  { foot, out }: GatePose,
  { button, width, length, diameter, height }: GateMetal,
  at: Point,
  slack: number,
): 'part' | 'gate' | 'button' {
  const from: Point = [at[0] - foot[0], at[1] - foot[1], at[2] - foot[2]];
  const s = dot(from, out);
  const aside = Math.hypot(from[0] - s * out[0], from[1] - s * out[1], from[2] - s * out[2]);
  if (s > slack && s <= length && aside < 0.71 * width + slack) return 'gate';
  return button && s > length && s < length + height + slack && aside < diameter / 2 + slack
    ? 'button'
    : 'part';
}

function acrossOf(out: Point): readonly [Point, Point] {
  const helper: Point = Math.abs(out[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const n = cross(helper, out);
  const long = Math.hypot(...n);
  const across: Point = [n[0] / long, n[1] / long, n[2] / long];
  return [across, cross(out, across)];
}

const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
