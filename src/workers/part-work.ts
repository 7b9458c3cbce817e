import {
  analyse,
  cellBudgets,
  fromGate,
  gridFor,
  heaviestPlace,
  valuesAt,
  type Analysis,
  type FromGate,
} from '../../calculators/meshes/analyse.ts';
import { checkMesh, type Checked } from '../../calculators/meshes/check.ts';
import { extentOf } from '../../calculators/meshes/measure.ts';
import { lengthUnits, type LengthUnit } from '../../calculators/meshes/mesh-file.ts';
import { readMesh } from '../../calculators/meshes/read.ts';
import type { PartSection } from '../../calculators/meshes/sections.ts';
import { partingOf } from '../../calculators/meshes/shadow.ts';
import { scaled, type Point, type Triangles } from '../../calculators/meshes/triangles.ts';
import { guessUnit } from '../../calculators/meshes/unit-guess.ts';
import { bandEnds } from './part-tones.ts';
import { drawCut, drawPart, type Look, type Picture, type Shade } from './part-view.ts';

/** What the tone of the drawing stands for. */
export type Shown = 'thick' | 'modulus' | 'run';

export type Request =
  | { readonly kind: 'open'; readonly bytes: ArrayBuffer; readonly name: string }
  | {
      readonly kind: 'settle';
      readonly unit: LengthUnit;
      readonly shrink: number;
      readonly fineness: keyof typeof cellBudgets;
    }
  | { readonly kind: 'gate'; readonly at: Point | 'heaviest'; readonly radius: number }
  | { readonly kind: 'view'; readonly look: Look; readonly shown: Shown; readonly name: string }
  | { readonly kind: 'pick'; readonly x: number; readonly y: number }
  | {
      readonly kind: 'cut';
      readonly axis: 0 | 1 | 2;
      readonly share: number;
      readonly shown: Shown;
      readonly dark: boolean;
      readonly widest: number;
    };

export interface Opened {
  readonly kind: 'opened';
  readonly name: string;
  readonly format: string;
  readonly faces: number;
  readonly notes: readonly string[];
  readonly faults: Checked['faults'];
  readonly sure: string;
  readonly unit: LengthUnit;
  readonly unitSays: string;
  readonly unitSure: boolean;
}

/** Numbers in SI. */
export interface Settled {
  readonly kind: 'settled';
  readonly volume: number;
  readonly volumeSpread: number;
  readonly area: number;
  readonly extent: Point;
  /** From the low corner of the box. */
  readonly balance: Point;
  readonly seen: readonly { readonly area: number; readonly undercut: number }[];
  readonly parting: 0 | 1 | 2;
  readonly cell: number;
  readonly cells: number;
  readonly bytes: number;
}

export interface Place {
  readonly at: Point;
  readonly where: string;
}

export interface Gated {
  readonly kind: 'gated';
  readonly gate: Place;
  readonly farthest: Place & { readonly run: number };
  readonly thin: readonly (Place & { readonly thick: number })[];
  readonly spots: readonly (Place & { readonly modulus: number; readonly way: number })[];
  readonly sections: readonly PartSection[];
  readonly apart: number;
  readonly scales: Readonly<Record<Shown, readonly number[]>>;
}

export interface Seen {
  readonly kind: 'view';
  readonly name: string;
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly {
    readonly name: string;
    readonly x: number;
    readonly y: number;
    readonly hidden: boolean;
  }[];
}

export type Reply =
  | Opened
  | Settled
  | Gated
  | Seen
  | { readonly kind: 'refused'; readonly why: string }
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'picked'; readonly at: Point | undefined }
  | {
      readonly kind: 'cut';
      readonly pixels: Uint8ClampedArray<ArrayBuffer>;
      readonly width: number;
      readonly height: number;
      readonly at: number;
    };

const mm = 1e-3;

/** One part at a time, from its file to the rows of the plan. Meshes are kept in millimetres. */
export function startPart(post: (reply: Reply, move?: Transferable[]) => void): (request: Request) => void {
  let drawn: Triangles | undefined;
  let unitOfFile: LengthUnit = 'millimetre';
  let checked: Checked | undefined;
  let part: Analysis | undefined;
  let low: Point = [0, 0, 0];
  let extent: Point = [1, 1, 1];
  let gated: FromGate | undefined;
  let picture: Picture | undefined;
  let scales: Record<Shown, Shade> | undefined;

  function open(bytes: ArrayBuffer, name: string): void {
    [drawn, checked, part, gated, picture, scales] = [
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ];
    const read = readMesh(new Uint8Array(bytes), name);
    if (!read.ok) {
      post({ kind: 'refused', why: read.why });
      return;
    }
    checked = checkMesh(read.mesh);
    drawn = checked.mesh;
    const longest = Math.max(...extentOf(checked.measures));
    const guess = guessUnit(longest);
    unitOfFile = read.unit ?? guess.unit;
    post({
      kind: 'opened',
      name,
      format: read.format,
      faces: read.mesh.corners.length / 3,
      notes: read.notes,
      faults: checked.faults,
      sure: checked.sure,
      unit: unitOfFile,
      unitSays: read.unit === undefined ? guess.says : `The file says that its unit is the ${read.unit}.`,
      unitSure: read.unit !== undefined || guess.sure,
    });
  }

  function settle(unit: LengthUnit, shrink: number, fineness: keyof typeof cellBudgets): void {
    if (!drawn || !checked) return;
    const factor = (lengthUnits[unit] / mm) * shrink;
    const mesh = scaled(drawn, factor);
    const before = checked.measures;
    const measures = {
      volume: before.volume * factor ** 3,
      area: before.area * factor ** 2,
      low: before.low.map((x) => x * factor) as unknown as Point,
      high: before.high.map((x) => x * factor) as unknown as Point,
      centre: before.centre.map((x) => x * factor) as unknown as Point,
    };
    const now: Checked = { ...checked, mesh, measures };
    [gated, picture, scales] = [undefined, undefined, undefined];
    try {
      part = analyse(now, gridFor(now, cellBudgets[fineness]), (done) => post({ kind: 'progress', done }));
    } catch (error) {
      part = undefined;
      post({
        kind: 'refused',
        why:
          error instanceof RangeError
            ? 'This device has not enough memory for so many cells. Look at it less finely.'
            : (error as Error).message,
      });
      return;
    }
    low = measures.low;
    extent = extentOf(measures);
    const { axes, best } = partingOf(mesh);
    post({
      kind: 'settled',
      volume: part.volume * mm ** 3,
      volumeSpread:
        (checked.volumeSpread * factor ** 3 + 0.25 * (checked.measures.volume * factor ** 3 - part.volume)) *
        mm ** 3,
      area: part.area * mm ** 2,
      extent: extent.map((x) => x * mm) as unknown as Point,
      balance: measures.centre.map((x, d) => (x - low[d]!) * mm) as unknown as Point,
      seen: axes.map(({ area, undercut }) => ({ area: area * mm ** 2, undercut })),
      parting: best,
      cell: part.filled.grid.spacing * mm,
      cells: part.filled.cells,
      bytes: part.filled.metal.length * 30 + mesh.points.byteLength * 3 + mesh.corners.byteLength * 2,
    });
  }

  /** Where a place is, in words: thirds of the box along each axis. */
  function where(at: Point): string {
    const words = [
      ['left', '', 'right'],
      ['front', '', 'back'],
      ['bottom', '', 'top'],
    ] as const;
    const said = at.flatMap((x, d) => {
      const share = (x - low[d]!) / (extent[d]! || 1);
      return words[d]![share < 1 / 3 ? 0 : share > 2 / 3 ? 2 : 1];
    });
    return said.filter((word) => word !== '').join(', ') || 'middle';
  }
  const placed = (at: Point): Place => ({ at, where: where(at) });

  function gate(at: Point | 'heaviest', radius: number): void {
    if (!part) return;
    gated = fromGate(part, at === 'heaviest' ? heaviestPlace(part) : at, radius / mm);
    const { thick, modulus, filled } = part;
    const ends = (map: Float32Array): Shade => {
      const values = map.filter((value, cell) => filled.metal[cell] === 1 && value < Infinity).sort();
      const end = (share: number): number => values[Math.floor(share * (values.length - 1))] ?? 1;
      return { map, low: end(0.01), high: Math.max(end(0.995), end(0.01) * 1.02) };
    };
    const runs = ends(gated.runs);
    scales = { thick: ends(thick), modulus: ends(modulus), run: { ...runs, low: 0 } };
    const { sections, spots, farthest } = gated;
    const thin = [...sections].sort((a, b) => a.thickness - b.thickness);
    post({
      kind: 'gated',
      gate: placed(gated.gate),
      farthest: { ...placed(farthest.at), run: farthest.run * mm },
      thin: thin.map((section) => ({ ...placed(placeIn(section)), thick: section.thickness * mm })),
      spots: spots.map((spot) => ({ ...placed(spot.at), modulus: spot.modulus * mm, way: spot.way * mm })),
      sections: sections.map((one) => ({
        ...one,
        thickness: one.thickness * mm,
        width: one.width * mm,
        length: one.length * mm,
        modulus: one.modulus * mm,
        volume: one.volume * mm ** 3,
        run: one.run * mm,
        before: one.before * mm,
      })),
      apart: gated.apart,
      scales: {
        thick: bandEnds(scales.thick).map((x) => x * mm),
        modulus: bandEnds(scales.modulus).map((x) => x * mm),
        run: bandEnds(scales.run).map((x) => x * mm),
      },
    });
  }

  /** A cell of a section nearest to its middle, so that a mark stands on metal of it. */
  function placeIn({ at, thickness }: PartSection): Point {
    const { filled, thick } = part!;
    const { grid, metal } = filled;
    let best = Infinity;
    let found: Point = at;
    for (let cell = 0; cell < metal.length; cell += 1) {
      if (metal[cell] === 0 || Math.abs(thick[cell]! / thickness - 1) > 0.12) continue;
      const i = cell % grid.size[0];
      const j = Math.floor(cell / grid.size[0]) % grid.size[1];
      const k = Math.floor(cell / (grid.size[0] * grid.size[1]));
      const x = grid.from[0] + (i + 0.5) * grid.spacing;
      const y = grid.from[1] + (j + 0.5) * grid.spacing;
      const z = grid.from[2] + (k + 0.5) * grid.spacing;
      const far = (x - at[0]) ** 2 + (y - at[1]) ** 2 + (z - at[2]) ** 2;
      if (far < best) {
        best = far;
        found = [x, y, z];
      }
    }
    return found;
  }

  function view(look: Look, shown: Shown, name: string): void {
    if (!part || !gated || !scales) return;
    const made = drawPart(part.skin, part.filled, scales[shown], look);
    if (name === 'main') picture = made;
    const slack = 3 + 2 * part.filled.grid.spacing * (look.width / Math.hypot(...extent));
    const mark = (label: string, at: Point) => {
      const { x, y, depth } = made.project(at);
      const there = made.depth[Math.round(y) * made.width + Math.round(x)] ?? -Infinity;
      const thickness = valuesAt(part!, undefined, at)?.thick ?? 0;
      return {
        name: label,
        x,
        y,
        hidden: there > depth + slack + thickness * (look.width / Math.hypot(...extent)),
      };
    };
    const marks = [mark('Gate', gated.gate)];
    if (shown === 'run') marks.push(mark('Farthest', gated.farthest.at));
    if (shown === 'modulus')
      gated.spots.slice(0, 3).forEach(({ at }, n) => marks.push(mark(n === 0 ? 'Last' : `${n + 1}`, at)));
    if (shown === 'thick') {
      const [thinnest] = [...gated.sections].sort((a, b) => a.thickness - b.thickness);
      if (thinnest) marks.push(mark('Thin', placeIn(thinnest)));
    }
    post(
      { kind: 'view', name, pixels: made.pixels, width: made.width, height: made.height, marks },
      name === 'main' ? [] : [made.pixels.buffer],
    );
  }

  return (request) => {
    try {
      if (request.kind === 'open') open(request.bytes, request.name);
      else if (request.kind === 'settle') settle(request.unit, request.shrink, request.fineness);
      else if (request.kind === 'gate') gate(request.at, request.radius);
      else if (request.kind === 'view') view(request.look, request.shown, request.name);
      else if (request.kind === 'pick') post({ kind: 'picked', at: picture?.placeAt(request.x, request.y) });
      else if (part && scales) {
        const made = drawCut(part.filled, scales[request.shown], request, request.widest);
        post({ kind: 'cut', ...made, at: (made.at - low[request.axis]) * mm }, [made.pixels.buffer]);
      }
    } catch (error) {
      post({
        kind: 'refused',
        why:
          error instanceof RangeError
            ? 'This device has not enough memory for a part of this size. Save it with fewer triangles.'
            : 'The part could not be worked out. Mend the surface in the program that drew it and try again.',
      });
    }
  };
}
