import { axis, even, flat, graded } from './axis.ts';
import { smoothed } from './drawn.ts';
import type { Mesh } from './mesh.ts';

/** A section drawn on squared paper. Metres. */
export interface Drawing {
  readonly turned: boolean;
  /** Squares along x and y, row by row from below; what each is made of. */
  readonly width: number;
  readonly height: number;
  readonly squares: Uint8Array;
  /** Side of a square. */
  readonly side: number;
  /** Mould beyond the paper; its cells grow outwards by `ratio`. */
  readonly wall: number;
  readonly ratio: number;
  readonly mirror: { readonly x: boolean; readonly y: boolean };
  /** Its stairs stand for slopes and curves. */
  readonly smooth: boolean;
}

/** Each square cut into so many by so many cells. */
export function drawingMesh(drawing: Drawing, cut: number): Mesh {
  const { width, height, side, wall, ratio, turned, mirror, squares } = drawing;
  const mirrorX = turned || mirror.x;
  const edges = (count: number, closed: boolean): { at: number[]; before: number } => {
    const inside = even(0, count * side, count * cut);
    const after = graded(count * side, count * side + wall, side / cut, ratio).slice(1);
    const ahead = closed
      ? []
      : graded(0, -wall, side / cut, ratio)
          .slice(1)
          .reverse();
    return { at: [...ahead, ...inside, ...after], before: ahead.length };
  };
  const x = edges(width, mirrorX);
  const y = edges(height, mirror.y);
  const along = [axis(x.at, turned ? 'round' : 'straight'), axis(y.at)] as const;
  const [nx, ny] = [along[0].centres.length, along[1].centres.length];
  const region = new Uint8Array(nx * ny).fill(1);
  for (let j = 0; j < height * cut; j += 1)
    for (let i = 0; i < width * cut; i += 1)
      region[i + x.before + nx * (j + y.before)] =
        squares[Math.floor(i / cut) + width * Math.floor(j / cut)]!;
  const mesh: Mesh = { axes: [along[0], along[1], flat], region };
  return drawing.smooth ? smoothed(mesh) : mesh;
}
