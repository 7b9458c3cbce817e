import { boundsOf, extentOf, measure, type Measures } from './measure.ts';
import { flatFaces, neighboursOf, none } from './neighbours.ts';
import { shellsOf, type Shell } from './shells.ts';
import { pointCount, type Triangles } from './triangles.ts';
import { weldWithin } from './weld.ts';

export interface Fault {
  readonly id:
    | 'cracks'
    | 'holes'
    | 'turned'
    | 'one-sided'
    | 'crowded'
    | 'flat'
    | 'twice'
    | 'shells'
    | 'hollows'
    | 'overlap';
  /** What is wrong and what is assumed. */
  readonly says: string;
  /** Nothing to mend, only to know. */
  readonly harmless: boolean;
}

/** A mesh looked over: the faults in sentences, and the mesh put right as far as can be assumed. */
export interface Checked {
  /** Without faces that have no area, every face with metal behind it, holes closed flat. */
  readonly mesh: Triangles;
  readonly measures: Measures;
  readonly faults: readonly Fault[];
  readonly shells: readonly Shell[];
  /** Bodies may run through one another: the volume must then come from counting cells. */
  readonly overlapping: boolean;
  /** Half-width of the volume's 95 % interval from holes and unclear sides; nought when the surface is closed. */
  readonly volumeSpread: number;
  /** How sure the volume is, as a sentence. */
  readonly sure: string;
}

/** Points this close for the size of the part are one point written twice. */
const crack = 2e-6;
/** More points than this are not looked over for cracks, more open edges than that not closed: memory. */
const mostWelded = 2_000_000;
const mostClosed = 200_000;

const number = (n: number): string => n.toLocaleString('en-GB');
const plural = (n: number, one: string, more: string): string => `${number(n)} ${n === 1 ? one : more}`;

export function checkMesh(given: Triangles): Checked {
  const faults: Fault[] = [];
  const add = (id: Fault['id'], says: string, harmless = false): void => {
    faults.push({ id, says, harmless });
  };
  let mesh = given;
  let flat = flatFaces(mesh);
  let around = neighboursOf(mesh, flat);
  if (around.open > 0 && pointCount(mesh) <= mostWelded) {
    const [low, high] = boundsOf(mesh.points);
    const size = Math.hypot(...extentOf({ low, high }));
    const welded = weldWithin(mesh, crack * size);
    if (welded.joined > 0) {
      const flatThen = flatFaces(welded.mesh);
      const then = neighboursOf(welded.mesh, flatThen);
      if (then.open < around.open) {
        add(
          'cracks',
          `${plural(welded.joined, 'point lies', 'points lie')} a hair beside another: taken as one, which closes ${number(around.open - then.open)} open edges.`,
          true,
        );
        [mesh, flat, around] = [welded.mesh, flatThen, then];
      }
    }
  }
  // A face drawn twice puts three or four faces at each of its edges, so only then is it looked for.
  const twice = around.crowded > 0 ? withoutTwins(mesh, flat) : 0;
  if (twice > 0) {
    add(
      'twice',
      `${plural(twice, 'triangle is', 'triangles are')} in the file twice; the second is left out.`,
    );
    around = neighboursOf(mesh, flat);
  }
  const flats = flat.reduce((sum, one) => sum + one, 0) - twice;
  if (flats > 0)
    add(
      'flat',
      `${plural(flats, 'triangle has', 'triangles have')} no area. They are left out and change nothing.`,
      true,
    );
  const { shells, turn, turned, oneSided } = shellsOf(mesh, around, flat);
  const tidy = tidied(mesh, flat, turn);
  sayTurned(shells, turned, add);
  if (oneSided)
    add(
      'one-sided',
      'The surface has only one side somewhere, like a twisted band: inside cannot be told from outside there.',
    );
  if (around.crowded > 0)
    add(
      'crowded',
      `At ${plural(around.crowded, 'edge', 'edges')} more than two triangles meet. What touches there is taken as joined.`,
    );
  const loose = around.open > mostClosed;
  const closed =
    around.open > 0 && !loose ? withHolesClosed(tidy) : { mesh: tidy, holes: 0, area: 0, bulge: 0 };
  if (loose)
    add(
      'holes',
      `The surface is open nearly everywhere: ${number(around.open)} edges with a face on one side only. It is no closed part; save it again as one solid.`,
    );
  else if (around.open > 0)
    add(
      'holes',
      `The surface has ${plural(closed.holes, 'hole', 'holes')} (${plural(around.open, 'open edge', 'open edges')}). ${closed.holes === 1 ? 'It is' : 'They are'} closed flat for the sums; mend the drawing before you trust them.`,
    );
  const hollows = shells.filter(({ depth }) => depth % 2 === 1).length;
  const bodies = shells.length - hollows;
  if (hollows > 0)
    add(
      'hollows',
      `${plural(hollows, 'closed surface lies', 'closed surfaces lie')} wholly inside the part: taken as ${hollows === 1 ? 'a hollow that' : 'hollows that'} no metal reaches.`,
    );
  const overlapping = bodies > 1 && anyTouch(shells.filter(({ depth }) => depth % 2 === 0));
  if (bodies > 1)
    add(
      overlapping ? 'overlap' : 'shells',
      overlapping
        ? `The file holds ${number(bodies)} bodies, and some may run into one another. What they share is counted once, by filling the part with cells.`
        : `The file holds ${number(bodies)} separate bodies. They are taken together as one casting.`,
      overlapping,
    );
  const measures = measure(closed.mesh);
  const volumeSpread =
    (loose ? Math.abs(measures.volume) : closed.bulge) + (oneSided ? Math.abs(measures.volume) * 0.2 : 0);
  return {
    mesh: closed.mesh,
    measures,
    faults,
    shells,
    overlapping,
    volumeSpread,
    sure: sureness(measures.volume, volumeSpread, overlapping, oneSided),
  };
}

function sayTurned(
  shells: readonly Shell[],
  turned: number,
  add: (id: Fault['id'], says: string) => void,
): void {
  if (turned === 0) return;
  const whole = shells.filter(({ insideOut }) => insideOut);
  const inThose = whole.reduce((sum, { faces }) => sum + faces, 0);
  if (whole.length > 0)
    add(
      'turned',
      whole.length === shells.length
        ? 'Every face looks inwards: the part is inside out in the file. It is turned the right way round.'
        : `${plural(whole.length, 'body is', 'bodies are')} inside out in the file and turned the right way round.`,
    );
  if (turned > inThose)
    add(
      'turned',
      `${plural(turned - inThose, 'triangle looks', 'triangles look')} the wrong way beside the ones around ${turned - inThose === 1 ? 'it' : 'them'}: turned round.`,
    );
}

function sureness(volume: number, spread: number, overlapping: boolean, oneSided: boolean): string {
  if (!(volume > 0)) return 'The surface encloses nothing, so there is no volume to go by.';
  if (oneSided) return 'The volume is a guess: part of the surface has no inside.';
  if (spread >= volume) return 'The surface is not closed, so the volume means nothing.';
  if (spread > 0) {
    const share = (100 * spread) / volume;
    return `The surface is not closed. If what is missing bulged by half its own width, the volume would be off by ${share < 0.1 ? 'less than 0.1' : share.toPrecision(2)} %.`;
  }
  if (overlapping) return 'The surfaces are closed; what the bodies share is known as finely as the cells.';
  return 'The surface is closed and every face looks outwards: the volume is as exact as the triangles.';
}

/** Marks the second of two faces with the same three corners; how many. */
function withoutTwins({ corners }: Triangles, flat: Uint8Array): number {
  const faces = corners.length / 3;
  let slots = 256;
  while (slots < 2 * faces) slots *= 2;
  const table = new Uint32Array(slots);
  let found = 0;
  for (let face = 0; face < faces; face += 1) {
    if (flat[face] === 1) continue;
    const [a, b, c] = sortedCorners(corners, face);
    let at = (Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35)) >>> 0;
    for (at = (at ^ (at >>> 15)) & (slots - 1); table[at] !== 0; at = (at + 1) & (slots - 1)) {
      const [x, y, z] = sortedCorners(corners, table[at]! - 1);
      if (x === a && y === b && z === c) break;
    }
    if (table[at] === 0) table[at] = face + 1;
    else {
      flat[face] = 1;
      found += 1;
    }
  }
  return found;
}

function sortedCorners(corners: Uint32Array, face: number): [number, number, number] {
  const a = corners[3 * face]!;
  const b = corners[3 * face + 1]!;
  const c = corners[3 * face + 2]!;
  const low = Math.min(a, b, c);
  const high = Math.max(a, b, c);
  return [low, a + b + c - low - high, high];
}

function tidied(mesh: Triangles, flat: Uint8Array, turn: Uint8Array): Triangles {
  // A sound mesh is taken as it is, not a second time.
  if (!flat.includes(1) && !turn.includes(1)) return mesh;
  const { points, corners } = mesh;
  const kept = new Uint32Array(corners.length);
  let used = 0;
  for (let face = 0; face < flat.length; face += 1) {
    if (flat[face] === 1) continue;
    kept[used] = corners[3 * face]!;
    kept[used + 1] = corners[3 * face + (turn[face] === 1 ? 2 : 1)]!;
    kept[used + 2] = corners[3 * face + (turn[face] === 1 ? 1 : 2)]!;
    used += 3;
  }
  return { points, corners: kept.slice(0, used) };
}

/** Closes each ring of open edges with a fan to its middle. `bulge` is the volume if the fans were domes instead. */
function withHolesClosed(mesh: Triangles): { mesh: Triangles; holes: number; area: number; bulge: number } {
  const { points, corners } = mesh;
  const { across } = neighboursOf(mesh, new Uint8Array(corners.length / 3));
  const leaving = new Map<number, number[]>();
  for (let half = 0; half < across.length; half += 1) {
    if (across[half] !== none) continue;
    const from = corners[half]!;
    const list = leaving.get(from);
    if (list) list.push(half);
    else leaving.set(from, [half]);
  }
  const end = (half: number): number => corners[half % 3 === 2 ? half - 2 : half + 1]!;
  const rings: number[][] = [];
  for (const [from, list] of leaving) {
    while (list.length > 0) {
      const ring = [from];
      let half = list.pop()!;
      while (end(half) !== from) {
        ring.push(end(half));
        const onward = leaving.get(end(half))?.pop();
        if (onward === undefined) break;
        half = onward;
      }
      rings.push(ring);
    }
  }
  const more: number[] = [];
  const caps: number[] = [];
  let area = 0;
  let bulge = 0;
  for (const ring of rings) {
    const centre = [0, 1, 2].map((d) => ring.reduce((sum, p) => sum + points[3 * p + d]!, 0) / ring.length);
    const middle = pointCount(mesh) + more.length / 3;
    more.push(...centre);
    let own = 0;
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      caps.push(q, p, middle);
      const u = [0, 1, 2].map((d) => points[3 * p + d]! - centre[d]!) as [number, number, number];
      const v = [0, 1, 2].map((d) => points[3 * q + d]! - centre[d]!) as [number, number, number];
      own += Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
    });
    area += own;
    // A dome half its own radius high holds about a quarter of radius times area.
    bulge += (own * Math.sqrt(own / Math.PI)) / 4;
  }
  const allPoints = new Float64Array(points.length + more.length);
  allPoints.set(points);
  allPoints.set(more, points.length);
  const allCorners = new Uint32Array(corners.length + caps.length);
  allCorners.set(corners);
  allCorners.set(caps, corners.length);
  return { mesh: { points: allPoints, corners: allCorners }, holes: rings.length, area, bulge };
}

/** Whether the boxes of any two bodies meet. */
function anyTouch(shells: readonly Shell[]): boolean {
  if (shells.length > 2000) return true;
  return shells.some((one, i) =>
    shells.some(
      (other, j) => j > i && one.low.every((x, d) => x <= other.high[d]! && one.high[d]! >= other.low[d]!),
    ),
  );
}
