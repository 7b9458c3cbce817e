import type { Across } from './across.ts';
import type { Case } from './case.ts';
import { indexOf, sizeOf } from './mesh.ts';
import { eachFace, roughTime } from './pace.ts';

/**
 * The error of a freezing time that the mesh brings, as a part of it: by cells across the thinnest section, and
 * by how wide the cells of the mould beside the metal are against the depth that heat soaks in, as far as the
 * mould and not the gap holds heat back. It is what was seen against meshes up to eight times finer for
 * plates, bars, balls and blocks of bronze, silver and aluminium in sand and in metal moulds, with the worst
 * of them inside. Half of it or less is usual.
 */
export function statedError(given: Case, { cells }: Across, rough?: number): number {
  const { mesh, others } = given;
  const size = sizeOf(mesh);
  const time = rough ?? roughTime(given);
  let worst = 0;
  eachFace(mesh, (cell, _, d) => {
    const { k, rhoc, h } = others[mesh.region[cell]! - 1]!;
    const { edges } = mesh.axes[d];
    const i = indexOf(cell, size)[d];
    const depth = Math.sqrt((k / rhoc) * time);
    const held = depth / k / (depth / k + 1 / h);
    worst = Math.max(worst, held * ((edges[i + 1]! - edges[i]!) / depth) ** 2);
  });
  return 0.015 + 0.9 / cells ** 2 + 0.35 * worst;
}
