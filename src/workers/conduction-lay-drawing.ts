import { drawingMesh } from '../../calculators/models/conduction/drawing.ts';
import { sidesOf, tooMany, type Laid, type Pass, type Shape } from './conduction-shape.ts';

/** The mesh of a pass over a drawing; a sentence when the fine one has more cells than may be. */
export function layDrawing(
  { drawing, cut }: Extract<Shape, { kind: 'drawing' }>,
  pass: Pass,
  most: number,
): Laid | string {
  const finer = pass === 'coarse' ? Math.max(1, Math.floor(cut / 2)) : cut;
  const count = drawing.width * drawing.height * cut * cut;
  if (!(count <= most)) return tooMany(count);
  const mirror = [drawing.turned || drawing.mirror.x, drawing.mirror.y];
  return { mesh: drawingMesh(drawing, finer), sides: sidesOf(mirror), mirror, cubes: false };
}
