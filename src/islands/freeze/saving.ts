import { celsius, percent, seconds } from './answer.ts';
import type { Solved } from './solver.ts';

/** All that came out, a line a cell of metal, after lines that say what it is. */
export function csvOf({ mesh, frozen }: Solved, link: string): string {
  const { result } = frozen;
  const [nx, ny] = mesh.size;
  const head = [
    `# Freeze a section,${link}`,
    `# all solid after,${seconds(result.last?.time ?? result.time)}`,
    `# cells across the thinnest section,${mesh.across}`,
    `# error of the mesh at most,${percent(mesh.error)}`,
    `# hottest the mould has been,${celsius(result.hottest[1] ?? Number.NaN)}`,
    'x mm,y mm,z mm,begins to freeze s,solid s,gradient over root of cooling rate (K s)^0.5/mm',
  ];
  const middle = (axis: 0 | 1 | 2, n: number): string => {
    const edges = mesh.edges[axis];
    return mesh.size[axis] === 1 ? '' : (500 * (edges[n]! + edges[n + 1]!)).toFixed(3);
  };
  const text = (value: number | undefined, places: number, factor = 1): string =>
    value === undefined || Number.isNaN(value) ? '' : (value * factor).toPrecision(places);
  const lines = [...result.metal].map((cell, m) =>
    [
      middle(0, cell % nx),
      middle(1, Math.floor(cell / nx) % ny),
      middle(2, Math.floor(cell / (nx * ny))),
      text(result.liquidus[m], 5),
      text(result.solidus[m], 5),
      text(result.feeding[m], 4, 1e-3),
    ].join(','),
  );
  return [...head, ...lines, ''].join('\r\n');
}

export function download(name: string, blob: Blob): void {
  const url = URL.createObjectURL(blob);
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** The picture in that box as it stands. */
export function savePicture(id: string, name: string): void {
  const canvas = document.getElementById(id)?.querySelector('canvas');
  canvas?.toBlob((blob) => blob && download(name, blob));
}
