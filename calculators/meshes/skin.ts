import { cellOf, type Filled } from './cells.ts';
import { neighboursOf } from './neighbours.ts';
import { oddCrossings, shellsOf, slant } from './shells.ts';
import { startMesh, type Point, type Triangles } from './triangles.ts';

type Corners = readonly [Point, Point, Point];

/** Bodies of more faces than this are asked through the cells instead of exactly. */
const mostExact = 40_000;

/**
 * The surface that meets the mould: where bodies run into one another, what of their faces lies inside another body
 * is left out, to a quarter of a cell. A mesh of one body comes back as it is.
 */
export function skinOf(mesh: Triangles, filled: Filled): Triangles {
  if (filled.shared.size === 0) return mesh;
  const { points, corners } = mesh;
  const h = filled.grid.spacing;
  const { hidden, mayHide } = corners.length / 3 > mostExact ? askCells(filled) : askBodies(mesh);
  const close = nearShared(filled);
  const builder = startMesh(corners.length / 3);
  const put = ([a, b, c]: Corners): void =>
    builder.face(builder.point(...a), builder.point(...b), builder.point(...c));
  for (let face = 0; face < corners.length / 3; face += 1) {
    const three = [0, 1, 2].map((i) => {
      const p = 3 * corners[3 * face + i]!;
      return [points[p]!, points[p + 1]!, points[p + 2]!] as Point;
    }) as unknown as Corners;
    if (!mayHide(face, three)) {
      put(three);
      continue;
    }
    const n = normalOf(three);
    const visit = (piece: Corners): readonly Corners[] | 'seen' => {
      const size = longestOf(piece);
      if (size <= 2 * h && !close(piece)) return 'seen';
      const inside = size > 2 * h ? undefined : hidden(face, middleOf(piece), n);
      if (inside !== undefined && (size < h / 4 || piece.every((at) => hidden(face, at, n) === inside)))
        return inside ? [] : 'seen';
      const [one, other] = halved(piece);
      const [left, right] = [visit(one), visit(other)];
      if (left === 'seen' && right === 'seen') return 'seen';
      return [...(left === 'seen' ? [one] : left), ...(right === 'seen' ? [other] : right)];
    };
    const found = visit(three);
    if (found === 'seen') put(three);
    else found.forEach(put);
  }
  return builder.done();
}

/** Whether a small piece lies near a cell that bodies share; where none does, nothing hides it. */
function nearShared({ grid, shared }: Filled): (piece: Corners) => boolean {
  const [nx, ny, nz] = grid.size;
  const near = new Uint8Array(nx * ny * nz);
  for (const cell of shared.keys())
    for (let c = -2; c <= 2; c += 1)
      for (let b = -2; b <= 2; b += 1) {
        const row = cell + (c * ny + b) * nx;
        near.fill(1, Math.max(0, row - 2), Math.max(0, row + 3));
      }
  return (piece) =>
    near[cellOf(grid, middleOf(piece))] === 1 || piece.some((at) => near[cellOf(grid, at)] === 1);
}

interface Asked {
  readonly hidden: (face: number, at: Point, normal: Point) => boolean;
  /** False where the whole face can only be seen. */
  readonly mayHide: (face: number, corners: Corners) => boolean;
}

/** Exactly: whether a place lies inside a body other than its own. */
function askBodies(mesh: Triangles): Asked {
  const flat = new Uint8Array(mesh.corners.length / 3);
  const { shells, shellOf } = shellsOf(mesh, neighboursOf(mesh, flat), flat);
  const rays = shells.map((_, shell) => raysThrough(mesh, (face) => shellOf[face] === shell));
  return {
    hidden: (face, at) =>
      shells.some(
        ({ low, high }, shell) =>
          shell !== shellOf[face] && at.every((x, d) => x > low[d]! && x < high[d]!) && rays[shell]!(at),
      ),
    mayHide: (face, three) =>
      shells.some(
        ({ low, high }, shell) =>
          shell !== shellOf[face] &&
          [0, 1, 2].every(
            (d) =>
              Math.min(three[0][d]!, three[1][d]!, three[2][d]!) < high[d]! &&
              Math.max(three[0][d]!, three[1][d]!, three[2][d]!) > low[d]!,
          ),
      ),
  };
}

/**
 * Whether a place lies inside a body, by a ray along a slant that no drawing has. Seen along that slant the faces
 * lie in a table of squares, so that a ray asks a handful of them and not all.
 */
function raysThrough(
  { points, corners }: Triangles,
  chosen: (face: number) => boolean,
): (at: Point) => boolean {
  const faces: number[] = [];
  for (let face = 0; face < corners.length / 3; face += 1) if (chosen(face)) faces.push(face);
  const [u, v] = slantAxes;
  const flat = (x: number, y: number, z: number): readonly [number, number] => [
    u[0] * x + u[1] * y + u[2] * z,
    v[0] * x + v[1] * y + v[2] * z,
  ];
  const boxes = new Float64Array(4 * faces.length);
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  faces.forEach((face, n) => {
    const box = [Infinity, Infinity, -Infinity, -Infinity];
    for (let i = 0; i < 3; i += 1) {
      const p = 3 * corners[3 * face + i]!;
      const [a, b] = flat(points[p]!, points[p + 1]!, points[p + 2]!);
      box[0] = Math.min(box[0]!, a);
      box[1] = Math.min(box[1]!, b);
      box[2] = Math.max(box[2]!, a);
      box[3] = Math.max(box[3]!, b);
    }
    boxes.set(box, 4 * n);
    for (const d of [0, 1] as const) {
      low[d] = Math.min(low[d]!, box[d]!);
      high[d] = Math.max(high[d]!, box[d + 2]!);
    }
  });
  const across = Math.max(1, Math.min(256, Math.ceil(Math.sqrt(faces.length))));
  const side = Math.max(high[0]! - low[0]!, high[1]! - low[1]!) / across || 1;
  const table: number[][] = Array.from({ length: (across + 1) ** 2 }, () => []);
  faces.forEach((face, n) => {
    const [i0, j0, i1, j1] = [0, 1, 2, 3].map((k) =>
      Math.floor((boxes[4 * n + k]! - low[k % 2]!) / side),
    ) as [number, number, number, number];
    for (let j = j0; j <= j1; j += 1)
      for (let i = i0; i <= i1; i += 1) table[j * (across + 1) + i]?.push(face);
  });
  const lists = table.map((list) =>
    Uint32Array.from(list.flatMap((f) => [corners[3 * f]!, corners[3 * f + 1]!, corners[3 * f + 2]!])),
  );
  return (at) => {
    const [a, b] = flat(...at);
    const [i, j] = [Math.floor((a - low[0]!) / side), Math.floor((b - low[1]!) / side)];
    const list = i < 0 || i > across ? undefined : lists[j * (across + 1) + i];
    return list !== undefined && oddCrossings(points, list, at, all);
  };
}

const all = (): boolean => true;

/** Two directions square to the slant of the rays and to one another. */
const slantAxes: readonly [Point, Point] = (() => {
  const [a, b, c] = slant;
  const long = Math.hypot(a, b, c);
  const aside = Math.hypot(a, b);
  const u: Point = [-b / aside, a / aside, 0];
  return [u, [(-c * u[1]) / long, (c * u[0]) / long, (a * u[1] - b * u[0]) / long]];
})();

/** By the cells: metal on both sides, and behind it more than one body. */
function askCells({ grid, metal, shared }: Filled): Asked {
  const h = grid.spacing;
  return {
    hidden: (_, [x, y, z], [a, b, c]) => {
      const behind = cellOf(grid, [x - 0.5 * h * a, y - 0.5 * h * b, z - 0.5 * h * c]);
      if ((shared.get(behind) ?? 1) < 2) return false;
      const ahead = cellOf(grid, [x + 0.5 * h * a, y + 0.5 * h * b, z + 0.5 * h * c]);
      return ahead >= 0 && metal[ahead] === 1;
    },
    mayHide: () => true,
  };
}

const middleOf = ([a, b, c]: Corners): Point => [
  (a[0] + b[0] + c[0]) / 3,
  (a[1] + b[1] + c[1]) / 3,
  (a[2] + b[2] + c[2]) / 3,
];

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

const longestOf = ([a, b, c]: Corners): number => Math.max(apart(a, b), apart(b, c), apart(c, a));

function normalOf([a, b, c]: Corners): Point {
  const u = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
  const v = [c[0] - a[0], c[1] - a[1], c[2] - a[2]] as const;
  const m = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
  const long = Math.hypot(...m) || 1;
  return [m[0] / long, m[1] / long, m[2] / long];
}

/** A triangle cut in two across its longest side. */
function halved([a, b, c]: Corners): readonly [Corners, Corners] {
  const [ab, bc, ca] = [apart(a, b), apart(b, c), apart(c, a)];
  const [p, q, r] = ab >= bc && ab >= ca ? [a, b, c] : bc >= ca ? [b, c, a] : [c, a, b];
  const m: Point = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2];
  return [
    [p, m, r],
    [m, q, r],
  ];
}
