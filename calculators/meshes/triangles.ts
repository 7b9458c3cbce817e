/** A surface as triangles: the points once each, and three numbers of points for every face. */
export interface Triangles {
  /** x, y, z of each point, one after the other. */
  readonly points: Float64Array;
  /** Three points of each face, anticlockwise seen from outside. */
  readonly corners: Uint32Array;
}

export type Point = readonly [x: number, y: number, z: number];

export const faceCount = ({ corners }: Triangles): number => corners.length / 3;
export const pointCount = ({ points }: Triangles): number => points.length / 3;

/** More faces than this are refused: past it a phone runs out of memory. */
export const mostFaces = 6_000_000;
/** Larger files are refused before they are read, bytes. */
export const mostBytes = 600_000_000;

/** A mesh being read: points that are the same are kept once, faces that cannot be are counted and left out. */
export interface Builder {
  /** The number of the point with these coordinates. */
  readonly point: (x: number, y: number, z: number) => number;
  /** A face; one with a corner that is no place is left out. */
  readonly face: (a: number, b: number, c: number) => void;
  readonly faces: () => number;
  /** Faces left out because a corner is not a number or is farther off than any part. */
  readonly lost: () => number;
  readonly done: () => Triangles;
}

/** What `point` answers when a coordinate is no number. */
export const nowhere = 0xffffffff;
/** No coordinate of a part is larger, whatever its unit. */
const farthest = 1e9;

/** Points met last, by their hash; a power of two. */
const lately = 16_384;

/** Starts a mesh of about so many faces; it grows as needed up to the most that may be. */
export function startMesh(expected = 1024): Builder {
  let points = new Float64Array(3 * Math.max(64, Math.ceil(expected / 2) + 16));
  let corners = new Uint32Array(3 * Math.max(64, expected));
  let count = 0;
  let used = 0;
  let lost = 0;
  let slots = 256;
  while (slots < expected) slots *= 2;
  let table = new Uint32Array(slots);
  const recent = new Uint32Array(lately);
  const words = new Float32Array(3);
  const bits = new Uint32Array(words.buffer);

  // Points that differ past single precision share a slot and are told apart when compared.
  const hash = (x: number, y: number, z: number): number => {
    words[0] = x;
    words[1] = y;
    words[2] = z;
    let h = Math.imul(bits[0]!, 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 15) ^ bits[1]!, 0xc2b2ae35);
    h = Math.imul(h ^ (h >>> 13) ^ bits[2]!, 0x27d4eb2f);
    return (h ^ (h >>> 16)) >>> 0;
  };

  function grow(): void {
    slots *= 2;
    table = new Uint32Array(slots);
    for (let p = 0; p < count; p += 1) {
      let at = hash(points[3 * p]!, points[3 * p + 1]!, points[3 * p + 2]!) & (slots - 1);
      while (table[at] !== 0) at = (at + 1) & (slots - 1);
      table[at] = p + 1;
    }
  }

  return {
    point: (px, py, pz) => {
      // Minus nought is nought, or the same corner would be two.
      const x = px + 0;
      const y = py + 0;
      const z = pz + 0;
      if (!(Math.abs(x) < farthest && Math.abs(y) < farthest && Math.abs(z) < farthest)) return nowhere;
      const h = hash(x, y, z);
      // Faces that follow one another share points: most are found here, without a reach into far memory.
      const near = recent[h & (lately - 1)]!;
      if (near !== 0) {
        const p = 3 * (near - 1);
        if (points[p] === x && points[p + 1] === y && points[p + 2] === z) return near - 1;
      }
      let at = h & (slots - 1);
      for (;;) {
        const kept = table[at]!;
        if (kept === 0) break;
        const p = 3 * (kept - 1);
        if (points[p] === x && points[p + 1] === y && points[p + 2] === z) {
          recent[h & (lately - 1)] = kept;
          return kept - 1;
        }
        at = (at + 1) & (slots - 1);
      }
      if (3 * count + 3 > points.length) {
        const more = new Float64Array(points.length * 2);
        more.set(points);
        points = more;
      }
      points[3 * count] = x;
      points[3 * count + 1] = y;
      points[3 * count + 2] = z;
      count += 1;
      table[at] = count;
      recent[h & (lately - 1)] = count;
      if (2 * count > slots) grow();
      return count - 1;
    },
    face: (a, b, c) => {
      if (a === nowhere || b === nowhere || c === nowhere) {
        lost += 1;
        return;
      }
      if (used + 3 > corners.length) {
        const more = new Uint32Array(corners.length * 2);
        more.set(corners);
        corners = more;
      }
      corners[used] = a;
      corners[used + 1] = b;
      corners[used + 2] = c;
      used += 3;
    },
    faces: () => used / 3,
    lost: () => lost,
    done: () => {
      table = new Uint32Array(0);
      return { points: fitted(points, 3 * count), corners: fitted(corners, used) };
    },
  };
}

/** The used part of a list: copied only where much of it would stay behind. */
function fitted<Kind extends Float64Array | Uint32Array>(list: Kind, used: number): Kind {
  return (used > 0.8 * list.length ? list.subarray(0, used) : list.slice(0, used)) as Kind;
}

/** The mesh with every length multiplied: from the file's unit to metres. */
export function scaled({ points, corners }: Triangles, by: number): Triangles {
  return { points: points.map((x) => x * by), corners };
}

/** Several meshes as one; their points are not joined. */
export function together(meshes: readonly Triangles[]): Triangles {
  const points = new Float64Array(meshes.reduce((sum, mesh) => sum + mesh.points.length, 0));
  const corners = new Uint32Array(meshes.reduce((sum, mesh) => sum + mesh.corners.length, 0));
  let from = 0;
  let at = 0;
  for (const mesh of meshes) {
    points.set(mesh.points, 3 * from);
    mesh.corners.forEach((corner, i) => (corners[at + i] = corner + from));
    from += pointCount(mesh);
    at += mesh.corners.length;
  }
  return { points, corners };
}
