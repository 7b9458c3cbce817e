import type { Row, Values } from '../../core/model.ts';
import { acrossThinnest, type Across } from '../conduction/across.ts';
import type { Case } from '../conduction/case.ts';
import { lineMesh } from '../conduction/line.ts';
import type { Mesh } from '../conduction/mesh.ts';
import type { Outside, Side } from '../conduction/outside.ts';
import { roughTime } from '../conduction/pace.ts';
import { sectionCells, sectionMesh, type Section } from '../conduction/section.ts';
import type { Solid } from '../conduction/solids.ts';
import { metalRegion } from '../conduction/substance.ts';
import { spacingThatFits, voxelMesh, voxelSize, type Voxels } from '../conduction/voxels.ts';
import { numberAt, rowsAt, textAt } from '../given.ts';
import { say } from '../pour-plan/say.ts';
import { metalOf, open, othersOf } from './substances.ts';

/** What the inputs describe, laid out in cells; or the sentence that says why not. */
export type Layout =
  | { readonly ok: true; readonly case: Case; readonly across: Across; readonly solid: boolean }
  | { readonly ok: false; readonly why: string };

const regions: Readonly<Record<string, number>> = {
  metal: metalRegion,
  mould: 1,
  chill: 2,
  flask: 3,
  gap: 4,
};

/** Of the rough depth that heat soaks in: beyond it the mould is as it was. */
const soaked = { line: 5, section: 4, voxels: 3 } as const;

function outsideOf(given: Values): Outside {
  const kind = textAt(given, 'outside');
  const temperature = numberAt(given, 'outside.temperature');
  if (kind === 'held') return { kind, temperature };
  if (kind !== 'air') return { kind: 'insulated' };
  return {
    kind,
    temperature,
    h: numberAt(given, 'outside.h'),
    emissivity: numberAt(given, 'outside.emissivity'),
  };
}

/** The case the inputs describe. Sizes not above nought and too many cells are refused here, the rest later. */
export function layOut(given: Values): Layout {
  const geometry = textAt(given, 'geometry') || 'plate';
  const cells = Math.round(numberAt(given, 'cells'));
  const most = numberAt(given, 'most');
  if (!(cells >= 1)) return refused('Ask for at least one cell across.');
  if (!(most >= 1)) return refused('Allow at least some hundreds of cells in all.');
  const mould = numberAt(given, 'mould.initial');
  const others = othersOf(given);
  const until = numberAt(given, 'until');
  const partOf = (mesh: Mesh, sides: readonly Side[]): Case => ({
    metal: metalOf(given),
    others,
    mesh,
    start: [numberAt(given, 'metal.initial'), mould, numberAt(given, 'chill.initial'), mould, mould],
    outside: outsideOf(given),
    sides,
    ...(!Number.isNaN(until) && { until }),
  });
  /** How far heat soaks into the mould while a plate of that half-thickness freezes; equal cubes are too dear for all of it. */
  const depth = (half: number): number => {
    const { k, rhoc } = others[0]!;
    const mesh = lineMesh({ shape: 'straight', half, outer: 2 * half, cells: 1, first: half, ratio: 2 });
    return Math.sqrt((k / rhoc) * roughTime(partOf(mesh, []), geometry === 'voxels' ? 'half' : 'solid'));
  };
  const setting = { given, cells, most, partOf, depth };
  if (geometry === 'section') return section(setting);
  return geometry === 'voxels' ? voxels(setting) : line(setting, geometry);
}

interface Setting {
  readonly given: Values;
  readonly cells: number;
  readonly most: number;
  readonly partOf: (mesh: Mesh, sides: readonly Side[]) => Case;
  readonly depth: (half: number) => number;
}

const refused = (why: string): Layout => ({ ok: false, why });
const sized = (value: number): boolean => value > 0 && Number.isFinite(value);

function tooMany(count: number, most: number, spacing: number, thinnest: number): Layout {
  const across = thinnest / spacing;
  const then = across >= 1 ? `, ${say(across, '1')} cells across the thinnest section` : '';
  return refused(
    `This needs ${Math.round(count).toLocaleString('en-GB')} cells, more than the ${Math.round(most).toLocaleString('en-GB')} allowed. A spacing of ${say(spacing, 'mm')} would fit${then}: ask for fewer cells across, or allow more.`,
  );
}

function line({ given, cells, most, partOf, depth }: Setting, geometry: string): Layout {
  const half = numberAt(given, geometry === 'plate' ? 'half-thickness' : 'radius');
  if (!sized(half))
    return refused(
      `${geometry === 'plate' ? 'Half the thickness' : 'The radius'} is missing or not above nought.`,
    );
  if (cells > most) return tooMany(cells, most, half / most, 2 * half);
  const outer = open(given, 'mould.radius', half + Math.min(0.5, Math.max(half, soaked.line * depth(half))));
  if (!(outer > half))
    return refused('The outside of the mould lies inside the metal: make the mould larger.');
  const mesh = lineMesh({
    shape: geometry === 'plate' ? 'straight' : geometry === 'cylinder' ? 'round' : 'ball',
    half,
    outer,
    cells,
    first: Math.min(half / cells, half / 32, (outer - half) / 4),
    ratio: 1.1,
  });
  return {
    ok: true,
    case: partOf(mesh, ['+x']),
    across: { cells: 2 * cells, thickness: 2 * half },
    solid: false,
  };
}

/**
 * The largest modulus of one metal row by itself, m: what the depth of the mould is measured by. A face at a
 * plane of symmetry lets no heat out.
 */
function modulusOf(
  rows: readonly Row[],
  ways: readonly (readonly [from: string, extent: string, mirror: boolean])[],
): number {
  const moduli = rows
    .filter((row) => textAt(row, 'what') === 'metal')
    .map((row) => {
      const perLength = ways.map(
        ([from, extent, mirror]) => (mirror && numberAt(row, from) <= 0 ? 1 : 2) / numberAt(row, extent),
      );
      return 1 / perLength.reduce((sum, one) => sum + one, 0);
    });
  return Math.max(...moduli);
}

/** Thinnest extent of the metal rows; one that begins at a plane of symmetry counts twice. */
function thinnestOf(
  rows: readonly Row[],
  ways: readonly (readonly [from: string, extent: string, mirror: boolean])[],
) {
  const extents = rows
    .filter((row) => textAt(row, 'what') === 'metal')
    .flatMap((row) =>
      ways.map(
        ([from, extent, mirror]) => numberAt(row, extent) * (mirror && numberAt(row, from) <= 0 ? 2 : 1),
      ),
    );
  return Math.min(...extents);
}

function section({ given, cells, most, partOf, depth }: Setting): Layout {
  const rows = rowsAt(given, 'rectangles');
  const turned = given['turned'] === true;
  const mirror = { x: turned || given['mirror.x'] === true, y: given['mirror.y'] === true };
  if (!rows.every((row) => sized(numberAt(row, 'width')) && sized(numberAt(row, 'height'))))
    return refused('A rectangle has a width or height that is missing or not above nought.');
  if (turned && rows.some((row) => numberAt(row, 'x') < 0))
    return refused('A section that is turned lies wholly at x above nought.');
  const ways = [
    ['x', 'width', mirror.x],
    ['y', 'height', mirror.y],
  ] as const;
  const thinnest = thinnestOf(rows, ways);
  if (!Number.isFinite(thinnest)) return refused('No rectangle is metal: there is nothing to freeze.');
  const wall = open(given, 'mould.wall', Math.min(0.2, soaked.section * depth(modulusOf(rows, ways))));
  if (!sized(wall)) return refused('The mould around the part is not above nought.');
  const drawing: Section = {
    turned,
    rectangles: rows.map((row) => ({
      x: open(row as Values, 'x', 0),
      y: open(row as Values, 'y', 0),
      width: numberAt(row, 'width'),
      height: numberAt(row, 'height'),
      region: regions[textAt(row, 'what')] ?? metalRegion,
    })),
    spacing: thinnest / cells,
    wall,
    ratio: 1.2,
    mirror,
  };
  const count = sectionCells(drawing);
  if (count > most) return tooMany(count, most, spacingOfSection(drawing, most), thinnest);
  const mesh = sectionMesh(drawing);
  const sides: Side[] = ['+x', '+y'];
  if (!mirror.x) sides.push('-x');
  if (!mirror.y) sides.push('-y');
  return {
    ok: true,
    case: partOf(mesh, sides),
    across: acrossThinnest(mesh, [mirror.x, mirror.y, false]),
    solid: false,
  };
}

function spacingOfSection(drawing: Section, most: number): number {
  let { spacing } = drawing;
  for (let n = 0; n < 60 && sectionCells({ ...drawing, spacing }) > most; n += 1) spacing *= 1.25;
  return spacing;
}

function voxels({ given, cells, most, partOf, depth }: Setting): Layout {
  const rows = rowsAt(given, 'boxes');
  const extents = ['width', 'depth', 'height'] as const;
  const from = ['x', 'y', 'z'] as const;
  const mirror = from.map((d) => given[`mirror.${d}`] === true) as [boolean, boolean, boolean];
  if (!rows.every((row) => extents.every((extent) => sized(numberAt(row, extent)))))
    return refused('A box has a width, depth or height that is missing or not above nought.');
  const ways = extents.map((extent, d) => [from[d]!, extent, mirror[d]!] as const);
  const thinnest = thinnestOf(rows, ways);
  if (!Number.isFinite(thinnest)) return refused('No box is metal: there is nothing to freeze.');
  const wall = open(given, 'mould.wall', Math.min(0.1, soaked.voxels * depth(modulusOf(rows, ways))));
  if (!sized(wall)) return refused('The mould around the part is not above nought.');
  const body: Voxels = {
    solids: rows.map((row): Solid => {
      const low = from.map((d) => open(row as Values, d, 0)) as [number, number, number];
      const high = extents.map((extent, d) => low[d]! + numberAt(row, extent)) as [number, number, number];
      return { kind: 'box', region: regions[textAt(row, 'what')] ?? metalRegion, low, high };
    }),
    spacing: thinnest / cells,
    wall,
    mirror,
  };
  const { size } = voxelSize(body);
  if (!size.every((n) => n >= 1))
    return refused(
      'The part lies wholly beyond its plane of symmetry: put it on the other side, or halve nothing.',
    );
  const count = size.reduce((product, n) => product * n, 1);
  if (!(count <= most)) return tooMany(count, most, spacingThatFits(body, most), thinnest);
  const mesh = voxelMesh(body);
  const sides: Side[] = ['+x', '+y', '+z'];
  (['-x', '-y', '-z'] as const).forEach((side, d) => {
    if (!mirror[d]) sides.push(side);
  });
  return { ok: true, case: partOf(mesh, sides), across: acrossThinnest(mesh, mirror), solid: true };
}
