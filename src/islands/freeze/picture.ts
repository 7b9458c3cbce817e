import type { Meshed } from './solver.ts';

/** A cut through the mesh as it is looked at: `u` to the right, `v` up, in metres; mirrored halves included. */
export interface View {
  readonly mesh: Meshed;
  readonly v: 1 | 2;
  /** Which cell across, where the mesh has a third direction. */
  readonly cut: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The part, with mould around it as a part of its size. */
export function viewOf(mesh: Meshed, cut: number, mouldShown: number): View {
  const [nx, ny, nz] = mesh.size;
  const v = nz > 1 ? 2 : 1;
  const [xs, ys] = [mesh.edges[0], mesh.edges[v]];
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let cell = 0; cell < mesh.region.length; cell += 1) {
    if (mesh.region[cell] === 1) continue;
    const i = cell % nx;
    const j = v === 1 ? Math.floor(cell / nx) : Math.floor(cell / (nx * ny));
    left = Math.min(left, xs[i]!);
    right = Math.max(right, xs[i + 1]!);
    bottom = Math.min(bottom, ys[j]!);
    top = Math.max(top, ys[j + 1]!);
  }
  if (mesh.mirror[0]) left = -right;
  if (mesh.mirror[v]) bottom = -top;
  const around = mouldShown * Math.max(right - left, top - bottom);
  const [farX, farY] = [xs.at(-1)!, ys.at(-1)!];
  return {
    mesh,
    v,
    cut,
    left: Math.max(left - around, mesh.mirror[0] ? -farX : xs[0]!),
    right: Math.min(right + around, farX),
    bottom: Math.max(bottom - around, mesh.mirror[v] ? -farY : ys[0]!),
    top: Math.min(top + around, farY),
  };
}

function placeIn(edges: Float64Array, at: number): number {
  let low = 0;
  let high = edges.length - 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at >= edges[middle + 1]!) low = middle + 1;
    else high = middle;
  }
  return low;
}

const cellOf = ({ mesh, v, cut }: View, i: number, j: number): number => {
  const [nx, ny] = mesh.size;
  return v === 1 ? i + nx * j : i + nx * (cut + ny * j);
};

/** The cell at a place of the view, m. */
export function cellAt(view: View, x: number, y: number): number {
  const { mesh, v } = view;
  const i = placeIn(mesh.edges[0], mesh.mirror[0] ? Math.abs(x) : x);
  const j = placeIn(mesh.edges[v], mesh.mirror[v] ? Math.abs(y) : y);
  return cellOf(view, i, j);
}

/** Middle of a cell in the view, m. */
export function centreOf({ mesh, v }: View, cell: number): readonly [number, number] {
  const [nx, ny] = mesh.size;
  const i = cell % nx;
  const j = v === 1 ? Math.floor(cell / nx) : Math.floor(cell / (nx * ny));
  const middle = (edges: Float64Array, n: number): number => (edges[n]! + edges[n + 1]!) / 2;
  return [middle(mesh.edges[0], i), middle(mesh.edges[v], j)];
}

let sheet: HTMLCanvasElement | undefined;

/** Fills a canvas, one colour (as bytes of ImageData) a cell. */
export function fill(context: CanvasRenderingContext2D, view: View, colour: (cell: number) => number): void {
  const { width, height } = context.canvas;
  const { mesh, v } = view;
  const image = context.createImageData(width, height);
  const dots = new Uint32Array(image.data.buffer);
  const along = (count: number, from: number, to: number, axis: 0 | 1 | 2): Int32Array =>
    Int32Array.from({ length: count }, (_, n) => {
      const at = from + ((to - from) * (n + 0.5)) / count;
      return placeIn(mesh.edges[axis], mesh.mirror[axis] ? Math.abs(at) : at);
    });
  const columns = along(width, view.left, view.right, 0);
  const rows = along(height, view.top, view.bottom, v);
  const line = new Uint32Array(width);
  for (let y = 0; y < height; y += 1) {
    if (y === 0 || rows[y] !== rows[y - 1]) {
      let last = -1;
      for (let x = 0; x < width; x += 1) {
        line[x] = columns[x] === last ? line[x - 1]! : colour(cellOf(view, columns[x]!, rows[y]!));
        last = columns[x]!;
      }
    }
    dots.set(line, y * width);
  }
  // By way of a canvas of its own: dots put straight into the picture do not reach the printer.
  sheet ??= document.createElement('canvas');
  [sheet.width, sheet.height] = [width, height];
  sheet.getContext('2d')?.putImageData(image, 0, 0);
  context.drawImage(sheet, 0, 0);
}

/** From metres of the view to dots of the canvas. */
export const toDots = (canvas: HTMLCanvasElement, view: View) => ({
  x: (at: number): number => ((at - view.left) / (view.right - view.left)) * canvas.width,
  y: (at: number): number => ((view.top - at) / (view.top - view.bottom)) * canvas.height,
});

interface Lattice {
  readonly at: readonly number[];
  readonly index: readonly number[];
}

/** Middles of cells along an axis, the mirrored ones too. */
function lattice(edges: Float64Array, mirror: boolean, from: number, to: number): Lattice {
  const at: number[] = [];
  const index: number[] = [];
  const add = (n: number, sign: 1 | -1): void => {
    const middle = (sign * (edges[n]! + edges[n + 1]!)) / 2;
    if (middle < from || middle > to) return;
    at.push(middle);
    index.push(n);
  };
  if (mirror) for (let n = edges.length - 2; n >= 0; n -= 1) add(n, -1);
  for (let n = 0; n < edges.length - 1; n += 1) add(n, 1);
  return { at, index };
}

type Segment = readonly [number, number, number, number];

/** What a value is over the whole view, row by row: many levels are sought in it. */
export interface Field {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly values: Float64Array;
}

export function fieldOf(view: View, value: (cell: number) => number): Field {
  const { mesh, v } = view;
  const xs = lattice(mesh.edges[0], mesh.mirror[0] === true, view.left, view.right);
  const ys = lattice(mesh.edges[v], mesh.mirror[v] === true, view.bottom, view.top);
  const values = new Float64Array(xs.at.length * ys.at.length);
  ys.index.forEach((j, row) =>
    xs.index.forEach((i, column) => (values[row * xs.index.length + column] = value(cellOf(view, i, j)))),
  );
  return { xs: xs.at, ys: ys.at, values };
}

/** Where a value passes a level, as pieces of line in metres; a cell that is not a number has none. */
export function contour({ xs, ys, values }: Field, level: number): Segment[] {
  const found: Segment[] = [];
  const wide = xs.length;
  for (let j = 0; j + 1 < ys.length; j += 1)
    for (let i = 0; i + 1 < wide; i += 1) {
      const at = i + wide * j;
      const [a, b, c, d] = [
        values[at]! - level,
        values[at + 1]! - level,
        values[at + 1 + wide]! - level,
        values[at + wide]! - level,
      ];
      if ((a > 0 && b > 0 && c > 0 && d > 0) || (a <= 0 && b <= 0 && c <= 0 && d <= 0)) continue;
      if (Number.isNaN(a + b + c + d)) continue;
      const [x0, x1, y0, y1] = [xs[i]!, xs[i + 1]!, ys[j]!, ys[j + 1]!];
      const cut = (from: number, to: number, p: number, q: number): number =>
        p + ((q - p) * from) / (from - to);
      const points: [number, number][] = [];
      if (a > 0 !== b > 0) points.push([cut(a, b, x0, x1), y0]);
      if (b > 0 !== c > 0) points.push([x1, cut(b, c, y0, y1)]);
      if (c > 0 !== d > 0) points.push([cut(d, c, x0, x1), y1]);
      if (d > 0 !== a > 0) points.push([x0, cut(a, d, y0, y1)]);
      for (let n = 0; n + 1 < points.length; n += 2) found.push([...points[n]!, ...points[n + 1]!]);
    }
  return found;
}

/** Edges between metal and anything else, and between chill and mould. */
export function outline(view: View): Segment[] {
  const { mesh, v } = view;
  const found: Segment[] = [];
  const [nu, nv] = [mesh.size[0], mesh.size[v]];
  const [xs, ys] = [mesh.edges[0], mesh.edges[v]];
  const signs = (mirror: boolean | undefined): readonly (1 | -1)[] => (mirror ? [1, -1] : [1]);
  const add = (x0: number, y0: number, x1: number, y1: number): void => {
    for (const s of signs(mesh.mirror[0]))
      for (const t of signs(mesh.mirror[v])) found.push([s * x0, t * y0, s * x1, t * y1]);
  };
  for (let j = 0; j < nv; j += 1)
    for (let i = 0; i < nu; i += 1) {
      const here = mesh.region[cellOf(view, i, j)];
      if (i + 1 < nu && mesh.region[cellOf(view, i + 1, j)] !== here)
        add(xs[i + 1]!, ys[j]!, xs[i + 1]!, ys[j + 1]!);
      if (j + 1 < nv && mesh.region[cellOf(view, i, j + 1)] !== here)
        add(xs[i]!, ys[j + 1]!, xs[i + 1]!, ys[j + 1]!);
    }
  return found;
}

export function stroke(
  context: CanvasRenderingContext2D,
  view: View,
  segments: readonly Segment[],
  colour: string,
  width: number,
): void {
  const dots = toDots(context.canvas, view);
  context.beginPath();
  for (const [x0, y0, x1, y1] of segments) {
    context.moveTo(dots.x(x0), dots.y(y0));
    context.lineTo(dots.x(x1), dots.y(y1));
  }
  context.strokeStyle = colour;
  context.lineWidth = width;
  context.stroke();
}
