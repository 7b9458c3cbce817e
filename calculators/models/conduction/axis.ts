/** How cells along an axis grow with distance: straight, round about a line, or all round a point. */
export type AxisShape = 'straight' | 'round' | 'ball';

/**
 * Cells along one axis. The size of a cell of a mesh is the product of `size` over its axes, and a face
 * across an axis has the `face` of that axis times the `size` of the others. Metres.
 */
export interface Axis {
  readonly shape: AxisShape;
  readonly edges: Float64Array;
  readonly centres: Float64Array;
  readonly size: Float64Array;
  /** One more than there are cells. */
  readonly face: Float64Array;
}

export function axis(edges: ArrayLike<number>, shape: AxisShape = 'straight'): Axis {
  const at = Float64Array.from(edges);
  const inner = at.subarray(0, -1);
  return {
    shape,
    edges: at,
    centres: inner.map((edge, i) => (edge + at[i + 1]!) / 2),
    size: inner.map((edge, i) => measure(shape, at[i + 1]!) - measure(shape, edge)),
    face: at.map((edge) => slope(shape, edge)),
  };
}

/** An axis along which nothing changes: one cell of a metre. */
export const flat: Axis = axis([0, 1]);

function measure(shape: AxisShape, x: number): number {
  if (shape === 'straight') return x;
  return shape === 'round' ? Math.PI * x * x : (4 / 3) * Math.PI * x * x * x;
}

function slope(shape: AxisShape, x: number): number {
  if (shape === 'straight') return 1;
  return shape === 'round' ? 2 * Math.PI * x : 4 * Math.PI * x * x;
}

/** Edges of `count` equal cells. */
export function even(from: number, to: number, count: number): number[] {
  return Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from + ((to - from) * i) / count));
}

/** Edges of cells that begin about `first` wide and grow by the same ratio; outward or inward. */
export function graded(from: number, to: number, first: number, ratio: number): number[] {
  const length = Math.abs(to - from);
  const widths: number[] = [];
  for (let sum = 0, width = first; sum < length * (1 - 1e-9); width *= ratio) {
    widths.push(width);
    sum += width;
  }
  const scale = (to - from) / widths.reduce((sum, width) => sum + width, 0);
  let at = from;
  const edges = [from, ...widths.map((width) => (at += width * scale))];
  edges[edges.length - 1] = to;
  return edges;
}
