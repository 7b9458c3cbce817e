import type { Drawing } from '../../calculators/models/conduction/drawing.ts';
import type { GivenCells } from '../../calculators/models/conduction/given-cells.ts';
import { lineMesh, type Line } from '../../calculators/models/conduction/line.ts';
import type { Mesh } from '../../calculators/models/conduction/mesh.ts';
import type { Side } from '../../calculators/models/conduction/outside.ts';
import { sectionCells, sectionMesh, type Section } from '../../calculators/models/conduction/section.ts';
import type { Voxels } from '../../calculators/models/conduction/voxels.ts';

/** What a casting looks like, as plain data. */
export type Shape =
  | { readonly kind: 'line'; readonly line: Line }
  | { readonly kind: 'section'; readonly section: Section }
  | { readonly kind: 'drawing'; readonly drawing: Drawing; readonly cut: number }
  | { readonly kind: 'voxels'; readonly voxels: Voxels }
  | { readonly kind: 'cells'; readonly coarse?: GivenCells; readonly fine: GivenCells };

/** A shape that is solved on equal cubes. */
export type CubeShape = Extract<Shape, { kind: 'voxels' | 'cells' }>;
export const isInCubes = (shape: Shape): shape is CubeShape =>
  shape.kind === 'voxels' || shape.kind === 'cells';

/** First quick and coarse, then as fine as asked. */
export type Pass = 'coarse' | 'fine';

/** A mesh and what must be known of it. */
export interface Laid {
  readonly mesh: Mesh;
  readonly sides: readonly Side[];
  readonly mirror: readonly boolean[];
  /** Equal cubes, in single precision. */
  readonly cubes: boolean;
}

export function sidesOf(mirror: readonly boolean[]): Side[] {
  const sides: Side[] = [];
  (['x', 'y', 'z'] as const).slice(0, mirror.length).forEach((name, d) => {
    sides.push(`+${name}`);
    if (!mirror[d]) sides.push(`-${name}`);
  });
  return sides;
}

/** What is said of a mesh with more cells than may be. */
export const tooMany = (count: number, spacing?: number): string =>
  `This needs ${Math.round(count).toLocaleString('en-GB')} cells, more than this device should hold.${
    spacing === undefined
      ? ' Take wider cells.'
      : ` A spacing of ${Number((1000 * spacing).toPrecision(2))} mm would fit.`
  }`;

/** The mesh of a pass; a sentence when the fine one has more cells than may be. What lays a drawing out comes with the first. */
export async function layOut(
  shape: Exclude<Shape, CubeShape>,
  pass: Pass,
  most: number,
): Promise<Laid | string> {
  const wide = pass === 'coarse' ? 2 : 1;
  if (shape.kind === 'line') {
    const mirror = [true];
    return { mesh: lineMesh(shape.line), sides: ['+x'], mirror, cubes: false };
  }
  if (shape.kind === 'section') {
    const count = sectionCells(shape.section);
    if (!(count <= most)) return tooMany(count);
    const section = { ...shape.section, spacing: wide * shape.section.spacing };
    const mirror = [section.turned || section.mirror.x, section.mirror.y];
    return { mesh: sectionMesh(section), sides: sidesOf(mirror), mirror, cubes: false };
  }
  const { layDrawing } = await import('./conduction-lay-drawing.ts');
  return layDrawing(shape, pass, most);
}

/** Whether a coarse pass says anything a fine one would not say as soon. */
export function passesOf(shape: Shape): readonly Pass[] {
  if (shape.kind === 'line' || (shape.kind === 'drawing' && shape.cut < 2)) return ['fine'];
  if (shape.kind === 'cells' && !shape.coarse) return ['fine'];
  return ['coarse', 'fine'];
}

/** A length that is not above nought, in words, before a mesh is made of it. */
export function sized(shape: Shape): string | undefined {
  const lengths: readonly number[] =
    shape.kind === 'line'
      ? [shape.line.half, shape.line.outer - shape.line.half, shape.line.cells]
      : shape.kind === 'section'
        ? [
            shape.section.spacing,
            shape.section.wall,
            ...shape.section.rectangles.flatMap(({ width, height }) => [width, height]),
          ]
        : shape.kind === 'cells'
          ? [shape.fine.spacing]
          : shape.kind === 'voxels'
            ? [
                shape.voxels.spacing,
                shape.voxels.wall,
                ...shape.voxels.solids.flatMap((solid) =>
                  solid.kind === 'box'
                    ? solid.high.map((high, d) => high - solid.low[d]!)
                    : solid.kind === 'bar'
                      ? [solid.radius, solid.length]
                      : [solid.radius],
                ),
              ]
            : [shape.drawing.side, shape.drawing.wall, shape.drawing.width, shape.drawing.height, shape.cut];
  if (shape.kind === 'voxels' && shape.voxels.solids.length === 0) return 'Nothing is drawn yet.';
  if (shape.kind === 'section' && shape.section.rectangles.length === 0) return 'Nothing is drawn yet.';
  return lengths.every((length) => length > 0 && Number.isFinite(length))
    ? undefined
    : 'A size is nought or less: every length must be above nought.';
}
