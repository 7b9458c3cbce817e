import { indexOf, sizeOf, type Mesh, type Three } from './mesh.ts';
import { metalRegion } from './substance.ts';

/** Cells looked at around a face to tell which way the surface lies, and how the near ones count more. */
const reach = 4;
const width = 0.9;

/**
 * The same mesh for a drawing on a grid whose stairs stand for slopes and curves: what part of a stair's face
 * is surface is read off the metal around it. Sharp edges and corners come out a little rounded, so a
 * part of straight sides along the grid is better left as it is.
 */
export function smoothed(mesh: Mesh): Mesh {
  const size = sizeOf(mesh);
  const strides: Three = [1, size[0], size[0] * size[1]];
  const isMetal = (at: readonly number[]): boolean => {
    let cell = 0;
    for (const d of [0, 1, 2] as const) {
      // Beyond the mesh it goes on as at its edge: an edge is a plane of symmetry or far away.
      cell += Math.min(size[d] - 1, Math.max(0, at[d]!)) * strides[d];
    }
    return mesh.region[cell] === metalRegion;
  };
  const span = (d: 0 | 1 | 2): number[] =>
    size[d] === 1 ? [0] : Array.from({ length: 2 * reach }, (_, n) => n - reach + 1);

  function share(d: 0 | 1 | 2, cell: number): number {
    const at = indexOf(cell, size);
    const first = isMetal(at);
    // Slope of the metal blurred by a bell curve, which looks alike from all sides: it points along the normal.
    const slope = [0, 0, 0];
    let straight = true;
    for (const dx of span(0))
      for (const dy of span(1))
        for (const dz of span(2)) {
          const step = [dx, dy, dz];
          // The bell is centred on the face, half a cell along d; across d it is centred on the cell.
          const off = step.map((n, o) => (o === d ? n - 0.5 : n));
          const here = isMetal(at.map((n, o) => n + step[o]!));
          if (Math.max(...off.map(Math.abs)) <= 1 && here !== (step[d]! <= 0 ? first : !first))
            straight = false;
          if (!here) continue;
          const weight = Math.exp(-off.reduce((sum, n) => sum + n * n, 0) / (2 * width * width));
          off.forEach((n, o) => (slope[o] = slope[o]! + weight * n));
        }
    const length = Math.hypot(...slope);
    return straight || length === 0 ? 1 : Math.max(0.05, Math.abs(slope[d]!) / length);
  }
  return { ...mesh, share };
}
