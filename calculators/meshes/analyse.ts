import {
  cellOf,
  centreOfCell,
  fillWithCells,
  gridRound,
  spacingFor,
  type Filled,
  type Grid,
} from './cells.ts';
import type { Checked } from './check.ts';
import { distancesIn } from './distance.ts';
import { hotSpotsIn, type HotSpot } from './hot-spots.ts';
import { modulusIn } from './modulus-map.ts';
import { nearestMetal, runsFrom } from './reach.ts';
import { sectionsOf, type PartSection } from './sections.ts';
import { skinOf } from './skin.ts';
import { shareSurface, type Surface } from './surface.ts';
import { thicknessIn } from './thickness.ts';
import type { Point, Triangles } from './triangles.ts';

/** Everything about a part that needs its inside, by cells. Lengths in the unit of the mesh. */
export interface Analysis {
  readonly mesh: Triangles;
  readonly filled: Filled;
  readonly skin: Triangles;
  readonly surface: Surface;
  readonly thick: Float32Array;
  readonly modulus: Float32Array;
  /** Volume of the metal, what bodies share counted once; from the faces where they enclose it exactly. */
  readonly volume: number;
  readonly area: number;
}

/** What follows from where the metal enters. */
export interface FromGate {
  readonly gate: Point;
  readonly runs: Float32Array;
  /** The place the metal has farthest to run to. */
  readonly farthest: { readonly run: number; readonly at: Point };
  /** Metal no run reaches, as a part of all. */
  readonly apart: number;
  readonly spots: readonly HotSpot[];
  readonly sections: readonly PartSection[];
}

/** Cells of metal by how finely it is to be looked at. */
export const cellBudgets = { quick: 30_000, usual: 130_000, fine: 500_000 } as const;
/** Cells of the whole box, metal or not. */
export const mostCells = 8_000_000;

export function gridFor({ mesh, measures }: Pick<Checked, 'mesh' | 'measures'>, cells: number): Grid {
  const volume = Math.abs(measures.volume);
  const wanted = volume > 0 ? (volume / cells) ** (1 / 3) : 0;
  return gridRound(mesh, Math.max(wanted, spacingFor(mesh, mostCells)));
}

/** Throws a sentence when there is no inside. */
export function analyse(
  checked: Pick<Checked, 'mesh' | 'measures'>,
  grid: Grid,
  progress: (done: number) => void = () => undefined,
): Analysis {
  if (loadOf(checked.mesh, grid) > mostLoad)
    throw new Error(
      'Its triangles cover one another far more often than those of a part do. Save it again as one solid.',
    );
  const filled = fillWithCells(checked.mesh, grid);
  if (filled.cells < 20)
    throw new Error(
      filled.cells === 0
        ? 'The surface encloses no metal, so nothing can be said of its inside.'
        : 'The part is thinner than the cells nearly everywhere. Look at it more finely.',
    );
  progress(0.1);
  const skin = skinOf(checked.mesh, filled);
  const distances = distancesIn(skin, filled);
  progress(0.3);
  const { thick } = thicknessIn(filled, distances);
  progress(0.5);
  const surface = shareSurface(skin, filled);
  const modulus = modulusIn(filled, thick, surface);
  progress(0.95);
  let shared = 0;
  for (const bodies of filled.shared.values()) shared += bodies - 1;
  const volume = checked.measures.volume - shared * grid.spacing ** 3;
  const area = filled.shared.size > 0 ? surface.areaOfAll : checked.measures.area;
  return { mesh: checked.mesh, filled, skin, surface, thick, modulus, volume, area };
}

/** Rays that may have to be tried: a million triangles of a part come to a hundredth of it. */
const mostLoad = 1.5e9;

/** How many rays the boxes of all triangles cover, over the three directions. */
function loadOf({ points, corners }: Triangles, { spacing }: Grid): number {
  let sum = 0;
  for (let f = 0; f < corners.length; f += 3) {
    const [a, b, c] = [3 * corners[f]!, 3 * corners[f + 1]!, 3 * corners[f + 2]!];
    const wide = (d: number): number =>
      1 +
      (Math.max(points[a + d]!, points[b + d]!, points[c + d]!) -
        Math.min(points[a + d]!, points[b + d]!, points[c + d]!)) /
        spacing;
    const [x, y, z] = [wide(0), wide(1), wide(2)];
    sum += x * y + y * z + z * x;
  }
  return sum;
}

/** The heaviest place: where a gate feeds best when nothing else speaks. */
export function heaviestPlace({ filled, modulus }: Analysis): Point {
  let best = 0;
  for (let cell = 0; cell < modulus.length; cell += 1) if (modulus[cell]! > modulus[best]!) best = cell;
  return centreOfCell(filled.grid, best);
}

export function fromGate(analysis: Analysis, gate: Point, radius: number): FromGate {
  const { filled, thick, modulus, surface } = analysis;
  const { grid, metal } = filled;
  const runs = runsFrom(filled, gate, radius);
  let far = -1;
  let unreached = 0;
  for (let cell = 0; cell < metal.length; cell += 1) {
    if (metal[cell] === 0) continue;
    if (runs[cell] === Infinity) unreached += 1;
    else if (far < 0 || runs[cell]! > runs[far]!) far = cell;
  }
  // The gate's own metal keeps the heaviest cell near it open as long as the gate is.
  let gateCell = nearestMetal(grid, metal, gate);
  for (let cell = 0; cell < metal.length; cell += 1)
    if (metal[cell] === 1 && runs[cell]! <= grid.spacing && modulus[cell]! > modulus[gateCell]!)
      gateCell = cell;
  return {
    gate,
    runs,
    farthest: { run: far < 0 ? 0 : runs[far]!, at: centreOfCell(grid, Math.max(0, far)) },
    apart: unreached / filled.cells,
    spots: hotSpotsIn(filled, modulus, gateCell),
    sections: sectionsOf(filled, thick, surface, runs),
  };
}

/** What the maps say at a place; undefined outside the metal. */
export function valuesAt(
  { filled, thick, modulus }: Analysis,
  runs: Float32Array | undefined,
  at: Point,
): { readonly thick: number; readonly modulus: number; readonly run: number } | undefined {
  const near = cellOf(filled.grid, at);
  const cell = near >= 0 && filled.metal[near] === 1 ? near : nearestMetal(filled.grid, filled.metal, at);
  return cell < 0
    ? undefined
    : { thick: thick[cell]!, modulus: modulus[cell]!, run: runs?.[cell] ?? Number.NaN };
}
