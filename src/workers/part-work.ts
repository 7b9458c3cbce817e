import {
  analyse,
  cellBudgets,
  fromGate,
  gridFor,
  heaviestPlace,
  mostCells,
  valuesAt,
  type Analysis,
  type FromGate,
} from '../../calculators/meshes/analyse.ts';
import { centreOfCell, gridRound, spacingFor, type Filled } from '../../calculators/meshes/cells.ts';
import { checkMesh, type Checked } from '../../calculators/meshes/check.ts';
import {
  bodyAt,
  gateBodies,
  gateVolumes,
  poseOf,
  withGate,
  type GateMetal,
  type GatePose,
} from '../../calculators/meshes/gate-metal.ts';
import { hotSpotsIn, type HotSpot } from '../../calculators/meshes/hot-spots.ts';
import { extentOf, measure } from '../../calculators/meshes/measure.ts';
import { lengthUnits, type LengthUnit } from '../../calculators/meshes/mesh-file.ts';
import { nearestMetal, runsFrom } from '../../calculators/meshes/reach.ts';
import type { ReadMesh } from '../../calculators/meshes/mesh-file.ts';
import { readMesh, readMeshInPieces } from '../../calculators/meshes/read.ts';
import type { PartSection } from '../../calculators/meshes/sections.ts';
import { partingOf } from '../../calculators/meshes/shadow.ts';
import { solverCells, spacingWithin, type SolverCells } from '../../calculators/meshes/solver-cells.ts';
import { scaled, type Point, type Triangles } from '../../calculators/meshes/triangles.ts';
import { guessUnit } from '../../calculators/meshes/unit-guess.ts';
import { bandEnds } from './part-tones.ts';
import { drawCut, drawPart, type Look, type Picture, type Shade } from './part-view.ts';

/** What the tone of the drawing stands for. */
export type Shown = 'thick' | 'modulus' | 'run' | 'froze';
/** The tones that need no solver. */
export type Measured = Exclude<Shown, 'froze'>;

export type Request =
  | { readonly kind: 'open'; readonly bytes: ArrayBuffer; readonly name: string }
  /** Read in helpings: the file is never held whole. */
  | { readonly kind: 'open-file'; readonly file: Blob; readonly name: string }
  | {
      readonly kind: 'settle';
      readonly unit: LengthUnit;
      readonly shrink: number;
      readonly fineness: keyof typeof cellBudgets;
    }
  | {
      readonly kind: 'gate';
      readonly at: Point | 'heaviest';
      readonly radius: number;
      /** Metal beside the part, m; undefined: the part alone. */
      readonly metal: GateMetal | undefined;
    }
  /** Cells for the solver with so much mould round them, m, and about so many of them. */
  | { readonly kind: 'cells'; readonly wall: number; readonly most: number }
  /** When each metal cell of the last pass was solid, s. */
  | {
      readonly kind: 'times';
      readonly pass: 'coarse' | 'fine';
      readonly cells: Int32Array;
      readonly solid: Float32Array;
    }
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
  readonly spots: readonly (Place & {
    readonly body: Body;
    readonly modulus: number;
    readonly way: number;
  })[];
  readonly sections: readonly PartSection[];
  readonly apart: number;
  /** What gate and button add. */
  readonly added: Added | undefined;
  readonly scales: Readonly<Record<Measured, readonly number[]>>;
}

export type Body = 'part' | 'gate' | 'button';

export interface Added {
  readonly metal: GateMetal;
  /** Outside the part. */
  readonly stub: number;
  readonly button: number;
  /** Part, gate and button together, what they share counted once. */
  readonly volume: number;
  readonly area: number;
  /** Share of gate and button that runs into the part. */
  readonly clash: number;
}

/** The part as the solver takes it: lengths in metres. */
export interface Celled {
  readonly kind: 'cells';
  readonly coarse: SolverCells;
  readonly fine: SolverCells;
  /** Metal in the part over metal in the cells, by pass. */
  readonly weigh: number;
  /** Cells across the thinnest section. */
  readonly across: number;
}

/** Of one place, the modulus there and when the solver had it solid. */
export interface TimedPlace extends Place {
  readonly name: string;
  readonly body: Body;
  readonly modulus: number;
  readonly solid: number;
}

export interface Timed {
  readonly kind: 'timed';
  readonly pass: 'coarse' | 'fine';
  readonly last: Place & { readonly body: Body; readonly solid: number; readonly modulus: number };
  readonly places: readonly TimedPlace[];
  readonly scale: readonly number[];
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
  | Celled
  | Timed
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
/** Cells wanted across the thinnest section that is to be frozen. */
const across = 4;

/** One part at a time, from its file to the rows of the plan. Meshes are kept in millimetres. */
export function startPart(post: (reply: Reply, move?: Transferable[]) => void): (request: Request) => void {
  let drawn: Triangles | undefined;
  let unitOfFile: LengthUnit = 'millimetre';
  let checked: Checked | undefined;
  let part: Analysis | undefined;
  let low: Point = [0, 0, 0];
  let extent: Point = [1, 1, 1];
  let gated: FromGate | undefined;
  /** The part with gate and button, or the part again; what is drawn and frozen. */
  let whole: Analysis | undefined;
  let bodies: Triangles | undefined;
  let pose: GatePose | undefined;
  let stands: GateMetal | undefined;
  let picture: Picture | undefined;
  let scales: Record<Measured, Shade> | undefined;
  let solving: Record<'coarse' | 'fine', Filled> | undefined;
  let lastAt: Point | undefined;
  let spotsNow: readonly HotSpot[] = [];
  let frozen: { readonly filled: Filled; readonly shade: Shade } | undefined;

  function forget(): void {
    [gated, whole, bodies, pose] = [undefined, undefined, undefined, undefined];
    [picture, scales, solving, frozen] = [undefined, undefined, undefined, undefined];
    [stands, lastAt, spotsNow] = [undefined, undefined, []];
  }

  function opened(read: ReadMesh, name: string): void {
    [drawn, checked, part] = [undefined, undefined, undefined];
    forget();
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
    forget();
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

  const inMm = (metal: GateMetal): GateMetal => ({
    button: metal.button,
    width: metal.width / mm,
    length: metal.length / mm,
    diameter: metal.diameter / mm,
    height: metal.height / mm,
  });

  function gate(at: Point | 'heaviest', radius: number, metal: GateMetal | undefined): void {
    if (!part) return;
    const place = at === 'heaviest' ? heaviestPlace(part) : at;
    gated = fromGate(part, place, radius / mm);
    [solving, frozen, lastAt] = [undefined, undefined, undefined];
    [pose, stands] = [undefined, undefined];
    whole = part;
    bodies = part.mesh;
    let spots = gated.spots;
    let runs = gated.runs;
    let added: Added | undefined;
    if (metal) {
      stands = inMm(metal);
      pose = poseOf(part.skin, part.filled, place, stands);
      const thick = valuesAt(part, undefined, place)?.thick ?? stands.width;
      const more = gateBodies(pose, stands, Math.min(thick, stands.width) / 2);
      bodies = withGate(part.mesh, more);
      whole = analyse(
        { mesh: bodies, measures: measure(bodies) },
        gridRound(bodies, Math.max(part.filled.grid.spacing, spacingFor(bodies, mostCells))),
        (done) => post({ kind: 'progress', done }),
      );
      const source = [0, 1, 2].map(
        (d) => pose!.foot[d]! + (stands!.length + (metal.button ? stands!.height / 2 : 0)) * pose!.out[d]!,
      ) as unknown as Point;
      spots = hotSpotsIn(
        whole.filled,
        whole.modulus,
        nearestMetal(whole.filled.grid, whole.filled.metal, source),
      );
      runs = runsFrom(whole.filled, place, radius / mm);
      const outside = gateVolumes(metal);
      added = {
        metal,
        ...outside,
        volume: whole.volume * mm ** 3,
        area: whole.area * mm ** 2,
        clash: pose.clash,
      };
    }
    const { thick, modulus, filled } = whole;
    const ends = (map: Float32Array): Shade => {
      const values = map.filter((value, cell) => filled.metal[cell] === 1 && value < Infinity).sort();
      const end = (share: number): number => values[Math.floor(share * (values.length - 1))] ?? 1;
      return { map, low: end(0.01), high: Math.max(end(0.995), end(0.01) * 1.02) };
    };
    scales = { thick: ends(thick), modulus: ends(modulus), run: { ...ends(runs), low: 0 } };
    const { sections, farthest } = gated;
    spotsNow = spots;
    const thin = [...sections].sort((a, b) => a.thickness - b.thickness);
    post({
      kind: 'gated',
      gate: placed(gated.gate),
      farthest: { ...placed(farthest.at), run: farthest.run * mm },
      thin: thin.map((section) => ({ ...placed(placeIn(section)), thick: section.thickness * mm })),
      spots: spots.map((spot) => ({
        ...placed(spot.at),
        body: bodyOf(spot.at),
        modulus: spot.modulus * mm,
        way: spot.way * mm,
      })),
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
      added,
      scales: {
        thick: bandEnds(scales.thick).map((x) => x * mm),
        modulus: bandEnds(scales.modulus).map((x) => x * mm),
        run: bandEnds(scales.run).map((x) => x * mm),
      },
    });
  }

  const bodyOf = (at: Point): Body =>
    pose && stands ? bodyAt(pose, stands, at, 0.6 * whole!.filled.grid.spacing) : 'part';

  function cells(wall: number, most: number): void {
    if (!whole || !bodies || !gated) return;
    const { filled, thick, skin } = whole;
    const values = thick.filter((_, cell) => filled.metal[cell] === 1).sort();
    const thinnest = values[Math.floor(0.05 * values.length)] ?? filled.grid.spacing;
    const around = wall / mm;
    const spacing = spacingWithin(bodies, thinnest / across, around, most);
    const fine = solverCells(bodies, skin, spacing, around);
    const coarse = solverCells(bodies, skin, 2 * spacing, around);
    solving = { coarse: coarse.filled, fine: fine.filled };
    frozen = undefined;
    const metres = (one: SolverCells): SolverCells => ({
      ...one,
      from: one.from.map((x) => x * mm) as unknown as SolverCells['from'],
      spacing: one.spacing * mm,
    });
    const [near, far] = [metres(coarse.cells), metres(fine.cells)];
    post(
      {
        kind: 'cells',
        coarse: near,
        fine: far,
        weigh: whole.volume / (fine.filled.cells * spacing ** 3),
        across: thinnest / spacing,
      },
      [near.region.buffer, near.share.buffer, far.region.buffer, far.share.buffer],
    );
  }

  function times(pass: 'coarse' | 'fine', list: Int32Array, solid: Float32Array): void {
    const filled = solving?.[pass];
    if (!filled || !whole || !gated || list.length === 0) return;
    const map = new Float32Array(filled.metal.length);
    let last = list[0]!;
    for (let n = 0; n < list.length; n += 1) {
      map[list[n]!] = solid[n]!;
      if (solid[n]! > map[last]!) last = list[n]!;
    }
    const ordered = solid.filter((time) => time > 0).sort();
    const first = ordered[Math.floor(0.005 * ordered.length)] ?? 0;
    frozen = { filled, shade: { map, low: first, high: Math.max(map[last]!, 1.02 * first) } };
    const timed = (name: string, at: Point): TimedPlace | undefined => {
      const cell = nearestMetal(filled.grid, filled.metal, at);
      const here = valuesAt(whole!, undefined, at);
      return cell < 0 || !here
        ? undefined
        : { name, ...placed(at), body: bodyOf(at), modulus: here.modulus * mm, solid: map[cell]! };
    };
    const names = gated.sections.map(({ thickness }) => `${Number(thickness.toPrecision(2))} mm thick`);
    // Joints of a grid are all alike: one stands for them.
    const heavy = spotsNow.filter(
      ({ modulus }, n) => !spotsNow.slice(0, n).some((other) => other.modulus < 1.04 * modulus),
    );
    const places = [
      ...gated.sections.map((section, n) => timed(names[n]!, placeIn(section))),
      ...heavy.map((spot) => timed('Heavy place', spot.at)),
    ].flatMap((one) => (one ? [one] : []));
    const at = centreOfCell(filled.grid, last);
    lastAt = at;
    post({
      kind: 'timed',
      pass,
      last: {
        ...placed(at),
        body: bodyOf(at),
        solid: map[last]!,
        modulus: (valuesAt(whole, undefined, at)?.modulus ?? Number.NaN) * mm,
      },
      places,
      scale: bandEnds(frozen.shade),
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

  /** What is shaded, and by what. */
  function shadeOf(shown: Shown): { readonly filled: Filled; readonly shade: Shade } {
    if (shown === 'froze' && frozen) return frozen;
    return { filled: whole!.filled, shade: scales![shown === 'froze' ? 'modulus' : shown] };
  }

  function view(look: Look, shown: Shown, name: string): void {
    if (!part || !whole || !gated || !scales) return;
    const { filled, shade } = shadeOf(shown);
    const made = drawPart(whole.skin, filled, shade, look);
    if (name === 'main') picture = made;
    const slack = 3 + 2 * part.filled.grid.spacing * (look.width / Math.hypot(...extent));
    const mark = (label: string, at: Point) => {
      const { x, y, depth } = made.project(at);
      const there = made.depth[Math.round(y) * made.width + Math.round(x)] ?? -Infinity;
      const thickness = valuesAt(whole!, undefined, at)?.thick ?? 0;
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
      spotsNow.slice(0, 3).forEach(({ at }, n) => marks.push(mark(n === 0 ? 'Last' : `${n + 1}`, at)));
    if (shown === 'froze' && lastAt) marks.push(mark('Last', lastAt));
    if (shown === 'thick') {
      const [thinnest] = [...gated.sections].sort((a, b) => a.thickness - b.thickness);
      if (thinnest) marks.push(mark('Thin', placeIn(thinnest)));
    }
    post(
      { kind: 'view', name, pixels: made.pixels, width: made.width, height: made.height, marks },
      name === 'main' ? [] : [made.pixels.buffer],
    );
  }

  function pick(x: number, y: number): void {
    const at = picture?.placeAt(x, y);
    post({ kind: 'picked', at: at && bodyOf(at) === 'part' ? at : undefined });
  }

  const failed = (error: unknown): void =>
    post({
      kind: 'refused',
      why:
        error instanceof RangeError
          ? 'This device has not enough memory for a part of this size. Save it with fewer triangles.'
          : 'The part could not be worked out. Mend the surface in the program that drew it and try again.',
    });

  async function openFile(file: Blob, name: string): Promise<void> {
    const slice = async (from: number, to: number): Promise<Uint8Array> => {
      post({ kind: 'progress', done: from / file.size });
      return new Uint8Array(await file.slice(from, to).arrayBuffer());
    };
    let read: ReadMesh;
    try {
      read = await readMeshInPieces(file.size, name, slice);
    } catch (error) {
      if (error instanceof RangeError) failed(error);
      else post({ kind: 'refused', why: 'The file could not be read from this device.' });
      return;
    }
    try {
      opened(read, name);
    } catch (error) {
      failed(error);
    }
  }

  return (request) => {
    if (request.kind === 'open-file') {
      void openFile(request.file, request.name);
      return;
    }
    try {
      if (request.kind === 'open')
        opened(readMesh(new Uint8Array(request.bytes), request.name), request.name);
      else if (request.kind === 'settle') settle(request.unit, request.shrink, request.fineness);
      else if (request.kind === 'gate') gate(request.at, request.radius, request.metal);
      else if (request.kind === 'cells') cells(request.wall, request.most);
      else if (request.kind === 'times') times(request.pass, request.cells, request.solid);
      else if (request.kind === 'view') view(request.look, request.shown, request.name);
      else if (request.kind === 'pick') pick(request.x, request.y);
      else if (whole && scales) {
        const { filled, shade } = shadeOf(request.shown);
        const made = drawCut(filled, shade, request, request.widest);
        post({ kind: 'cut', ...made, at: (made.at - low[request.axis]) * mm }, [made.pixels.buffer]);
      }
    } catch (error) {
      failed(error);
    }
  };
}
