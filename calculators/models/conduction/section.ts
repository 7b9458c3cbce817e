import { axis, flat, graded } from './axis.ts';
import type { Mesh } from './mesh.ts';

/** A rectangle of one substance; x is the radius where the section is turned about an axis. Metres. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly region: number;
}

export interface Section {
  /** Turned about x = 0, or going on for ever across the paper. */
  readonly turned: boolean;
  /** A later one lies over an earlier one; the rest is region 1. */
  readonly rectangles: readonly Rectangle[];
  /** Widest cell where rectangles are, m. */
  readonly spacing: number;
  /** Mould beyond the outermost rectangle, m; its cells grow outwards by `ratio`. */
  readonly wall: number;
  readonly ratio: number;
  /** x = 0 or y = 0 is a plane of symmetry; a turned section always ends at x = 0. */
  readonly mirror: { readonly x: boolean; readonly y: boolean };
}

/** Cells whose edges lie on the edges of all rectangles, so that no face is a stair. */
export function sectionMesh(section: Section): Mesh {
  const { rectangles, turned, mirror } = section;
  const x = edgesOf(section, turned || mirror.x, (r) => [r.x, r.x + r.width]);
  const y = edgesOf(section, mirror.y, (r) => [r.y, r.y + r.height]);
  const along = [axis(x, turned ? 'round' : 'straight'), axis(y)] as const;
  const [nx, ny] = [along[0].centres.length, along[1].centres.length];
  const region = new Uint8Array(nx * ny).fill(1);
  for (const r of rectangles)
    for (let j = 0; j < ny; j += 1)
      for (let i = 0; i < nx; i += 1) {
        const [u, v] = [along[0].centres[i]! - r.x, along[1].centres[j]! - r.y];
        if (u > 0 && u < r.width && v > 0 && v < r.height) region[i + nx * j] = r.region;
      }
  return { axes: [along[0], along[1], flat], region };
}

/** Cells a section would have, without making them. */
export function sectionCells(section: Section): number {
  const x = edgesOf(section, section.turned || section.mirror.x, (r) => [r.x, r.x + r.width], true);
  const y = edgesOf(section, section.mirror.y, (r) => [r.y, r.y + r.height], true);
  return x.length * y.length;
}

/** Edges along one axis; when only counting, as many nothings where they would be too many to hold. */
function edgesOf(
  { rectangles, spacing, wall, ratio }: Section,
  mirror: boolean,
  ends: (rectangle: Rectangle) => readonly [number, number],
  counting = false,
): ArrayLike<number> {
  const marks = rectangles.flatMap(ends).filter((at) => !mirror || at > 0);
  if (mirror) marks.push(0);
  marks.sort((a, b) => a - b);
  const lines = marks.filter((at, n) => n === 0 || at - marks[n - 1]! > 1e-6 * spacing);
  const spans = lines.slice(1).map((to, n) => {
    const from = lines[n]!;
    return { from, to, count: Math.max(1, Math.ceil((to - from) / spacing - 1e-6)) };
  });
  const total = spans.reduce((sum, { count }) => sum + count, 0);
  if (counting && total > 1e6) return { length: total };
  const inside = spans.flatMap(({ from, to, count }) =>
    Array.from({ length: count }, (_, n) => from + ((to - from) * n) / count),
  );
  const low = lines[0] ?? 0;
  const high = lines.at(-1) ?? 0;
  const after = graded(high, high + wall, spacing, ratio);
  const before = mirror
    ? []
    : graded(low, low - wall, spacing, ratio)
        .slice(1)
        .reverse();
  return [...before, ...inside, ...after];
}
