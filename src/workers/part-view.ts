import { cellOf, type Filled } from '../../calculators/meshes/cells.ts';
import { measure } from '../../calculators/meshes/measure.ts';
import type { Point, Triangles } from '../../calculators/meshes/triangles.ts';
import { bandOf, plainTone, tones, type Ends } from './part-tones.ts';

/** From where the part is seen: turned round the upright, and from above; degrees. */
export interface Look {
  readonly yaw: number;
  readonly pitch: number;
  readonly width: number;
  readonly height: number;
  readonly dark: boolean;
}

/** A map over the cells and the ends of its scale; undefined shows plain metal. */
export interface Shade extends Ends {
  readonly map: Float32Array;
}

export interface Picture {
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  readonly width: number;
  readonly height: number;
  /** Face seen at each pixel, −1 for none; with `placeAt` it is what the pointer picks. */
  readonly faces: Int32Array;
  readonly depth: Float32Array;
  readonly project: (at: Point) => { readonly x: number; readonly y: number; readonly depth: number };
  readonly placeAt: (x: number, y: number) => Point | undefined;
}

/** Draws the part in parallel rays: tone by the map behind the surface, ink along edges and outlines. */
export function drawPart(
  mesh: Triangles,
  filled: Filled | undefined,
  shade: Shade | undefined,
  look: Look,
): Picture {
  const { points, corners } = mesh;
  const { width, height } = look;
  const [psi, theta] = [(look.yaw * Math.PI) / 180, (look.pitch * Math.PI) / 180];
  const d: Point = [Math.cos(theta) * Math.sin(psi), -Math.cos(theta) * Math.cos(psi), Math.sin(theta)];
  const r: Point = [Math.cos(psi), Math.sin(psi), 0];
  const u: Point = [d[1] * r[2] - d[2] * r[1], d[2] * r[0] - d[0] * r[2], d[0] * r[1] - d[1] * r[0]];
  const { low, high } = measure(mesh);
  const mid = [0, 1, 2].map((k) => (low[k]! + high[k]!) / 2) as unknown as Point;
  // The same scale from every side, so that turning does not zoom.
  const scale =
    (0.92 * Math.min(width, height * 1.35)) /
    Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
  const flat = new Float32Array(points.length);
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i]! - mid[0];
    const y = points[i + 1]! - mid[1];
    const z = points[i + 2]! - mid[2];
    flat[i] = width / 2 + scale * (x * r[0] + y * r[1] + z * r[2]);
    flat[i + 1] = height / 2 - scale * (x * u[0] + y * u[1] + z * u[2]);
    flat[i + 2] = scale * (x * d[0] + y * d[1] + z * d[2]);
  }
  const faces = new Int32Array(width * height).fill(-1);
  const depth = new Float32Array(width * height).fill(-Infinity);
  for (let f = 0; f < corners.length / 3; f += 1) {
    const a = 3 * corners[3 * f]!;
    const b = 3 * corners[3 * f + 1]!;
    const c = 3 * corners[3 * f + 2]!;
    const ax = flat[a]!;
    const ay = flat[a + 1]!;
    const bx = flat[b]! - ax;
    const by = flat[b + 1]! - ay;
    const cx = flat[c]! - ax;
    const cy = flat[c + 1]! - ay;
    // Screens count downwards, so a face towards the viewer turns clockwise.
    const double = cx * by - bx * cy;
    if (!(double > 0)) continue;
    const x1 = Math.min(width - 1, Math.floor(ax + Math.max(0, bx, cx)));
    const y1 = Math.min(height - 1, Math.floor(ay + Math.max(0, by, cy)));
    const x0 = Math.max(0, Math.ceil(ax + Math.min(0, bx, cx)));
    const za = flat[a + 2]!;
    const zb = flat[b + 2]! - za;
    const zc = flat[c + 2]! - za;
    for (let y = Math.max(0, Math.ceil(ay + Math.min(0, by, cy))); y <= y1; y += 1)
      for (let x = x0; x <= x1; x += 1) {
        const s = (cx * (y - ay) - (x - ax) * cy) / double;
        const t = ((x - ax) * by - bx * (y - ay)) / double;
        if (s < 0 || t < 0 || s + t > 1) continue;
        const z = za + s * zb + t * zc;
        const pixel = y * width + x;
        if (z > depth[pixel]!) {
          depth[pixel] = z;
          faces[pixel] = f;
        }
      }
  }
  const placeAt = (x: number, y: number): Point | undefined => {
    const z = depth[Math.round(y) * width + Math.round(x)];
    if (z === undefined || z === -Infinity) return undefined;
    const [p, q, w] = [(x - width / 2) / scale, (height / 2 - y) / scale, z / scale];
    return [0, 1, 2].map((k) => mid[k]! + p * r[k]! + q * u[k]! + w * d[k]!) as unknown as Point;
  };
  const project = (at: Point) => {
    const [x, y, z] = [at[0] - mid[0], at[1] - mid[1], at[2] - mid[2]];
    return {
      x: width / 2 + scale * (x * r[0] + y * r[1] + z * r[2]),
      y: height / 2 - scale * (x * u[0] + y * u[1] + z * u[2]),
      depth: scale * (x * d[0] + y * d[1] + z * d[2]),
    };
  };
  const pixels = new Uint8ClampedArray(4 * width * height);
  const normals = new Map<number, Point>();
  const normalOf = (f: number): Point => {
    const known = normals.get(f);
    if (known) return known;
    const [a, b, c] = [3 * corners[3 * f]!, 3 * corners[3 * f + 1]!, 3 * corners[3 * f + 2]!];
    const p: Point = [
      points[b]! - points[a]!,
      points[b + 1]! - points[a + 1]!,
      points[b + 2]! - points[a + 2]!,
    ];
    const q: Point = [
      points[c]! - points[a]!,
      points[c + 1]! - points[a + 1]!,
      points[c + 2]! - points[a + 2]!,
    ];
    const m = [p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]];
    const long = Math.hypot(m[0]!, m[1]!, m[2]!) || 1;
    const n: Point = [m[0]! / long, m[1]! / long, m[2]! / long];
    normals.set(f, n);
    return n;
  };
  const ink = look.dark ? [236, 231, 223] : [29, 27, 25];
  const h = filled?.grid.spacing ?? 0;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const pixel = y * width + x;
      const face = faces[pixel]!;
      const right = x + 1 < width ? faces[pixel + 1]! : -1;
      const below = y + 1 < height ? faces[pixel + width]! : -1;
      let tone: readonly number[] | undefined;
      if (edgeBetween(face, right, pixel, pixel + 1) || edgeBetween(face, below, pixel, pixel + width))
        tone = ink;
      else if (face >= 0) {
        tone = plainTone;
        const n = normalOf(face);
        if (shade && filled) {
          const at = placeAt(x, y)!;
          const value = behind(at, n, filled, shade.map, h);
          if (value > 0) tone = tones[bandOf(value, shade)]!;
        }
        // A little light from above the viewer's left, so that the shape shows in the tone.
        const light =
          0.9 +
          0.1 *
            (0.5 * u[0] * n[0] +
              0.5 * u[1] * n[1] +
              0.5 * u[2] * n[2] +
              0.5 * (n[0] * d[0] + n[1] * d[1] + n[2] * d[2]));
        tone = tone.map((part) => part * light);
      }
      if (!tone) continue;
      pixels[4 * pixel] = tone[0]!;
      pixels[4 * pixel + 1] = tone[1]!;
      pixels[4 * pixel + 2] = tone[2]!;
      pixels[4 * pixel + 3] = 255;
    }
  function edgeBetween(one: number, other: number, p: number, q: number): boolean {
    if (one === other) return false;
    if (one < 0 || other < 0) return true;
    const [a, b] = [normalOf(one), normalOf(other)];
    if (a[0] * b[0] + a[1] * b[1] + a[2] * b[2] < 0.82) return true;
    // A step in depth that the slope of the faces does not explain.
    const facing = Math.min(dotOf(a, d), dotOf(b, d));
    return Math.abs(depth[p]! - depth[q]!) > 2 + 2 / Math.max(0.05, facing);
  }
  return { pixels, width, height, faces, depth, project, placeAt };
}

const dotOf = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The map in the first metal cell behind a place of the surface. */
function behind(at: Point, n: Point, { grid, metal }: Filled, map: Float32Array, h: number): number {
  for (const back of [0.6, 0.2, 1.1, 1.6]) {
    const cell = cellOf(grid, [at[0] - back * h * n[0], at[1] - back * h * n[1], at[2] - back * h * n[2]]);
    if (cell >= 0 && metal[cell] === 1) return map[cell]!;
  }
  return 0;
}

export interface Cut {
  readonly axis: 0 | 1 | 2;
  /** How far along the axis, 0 to 1. */
  readonly share: number;
  readonly dark: boolean;
}

/** One layer of cells across an axis, a few pixels a cell; x to the right or y, z upwards. */
export function drawCut(
  filled: Filled,
  shade: Shade,
  { axis, share, dark }: Cut,
  widest: number,
): Pick<Picture, 'pixels' | 'width' | 'height'> & { readonly at: number } {
  const { size, from, spacing } = filled.grid;
  const { low, high } = metalWithin(filled);
  const [across, up] = axis === 0 ? [1, 2] : axis === 1 ? [0, 2] : [0, 1];
  const strides = [1, size[0], size[0] * size[1]];
  const layer = low[axis]! + Math.round(share * (high[axis]! - low[axis]!));
  // The metal with a layer of cells round it.
  const [nu, nv] = [high[across]! - low[across]! + 3, high[up]! - low[up]! + 3];
  const zoom = Math.max(1, Math.floor(widest / nu));
  const [width, height] = [nu * zoom, nv * zoom];
  const pixels = new Uint8ClampedArray(4 * width * height);
  const ink = dark ? [236, 231, 223] : [29, 27, 25];
  const cellAt = (x: number, y: number): number => {
    const i = low[across]! - 1 + Math.floor(x / zoom);
    const j = high[up]! + 1 - Math.floor(y / zoom);
    return i < 0 || j < 0 || i >= size[across]! || j >= size[up]!
      ? -1
      : layer * strides[axis]! + i * strides[across]! + j * strides[up]!;
  };
  const isMetal = (x: number, y: number): boolean => filled.metal[cellAt(x, y)] === 1;
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const own = isMetal(x, y);
      const outline = own !== isMetal(x + 1, y) || own !== isMetal(x, y + 1);
      if (!own && !outline) continue;
      const tone = outline ? ink : tones[bandOf(shade.map[cellAt(x, y)]!, shade)]!;
      const p = 4 * (y * width + x);
      pixels[p] = tone[0]!;
      pixels[p + 1] = tone[1]!;
      pixels[p + 2] = tone[2]!;
      pixels[p + 3] = 255;
    }
  return { pixels, width, height, at: from[axis] + (layer + 0.5) * spacing };
}

const bounds = new WeakMap<Filled, { readonly low: readonly number[]; readonly high: readonly number[] }>();

/** First and last layer along each axis that holds metal. */
function metalWithin(filled: Filled): { readonly low: readonly number[]; readonly high: readonly number[] } {
  const known = bounds.get(filled);
  if (known) return known;
  const [nx, ny, nz] = filled.grid.size;
  const low = [nx, ny, nz];
  const high = [0, 0, 0];
  for (let k = 0, cell = 0; k < nz; k += 1)
    for (let j = 0; j < ny; j += 1)
      for (let i = 0; i < nx; i += 1, cell += 1) {
        if (filled.metal[cell] === 0) continue;
        if (i < low[0]!) low[0] = i;
        if (i > high[0]!) high[0] = i;
        if (j < low[1]!) low[1] = j;
        if (j > high[1]!) high[1] = j;
        if (k < low[2]!) low[2] = k;
        if (k > high[2]!) high[2] = k;
      }
  const found = { low, high };
  bounds.set(filled, found);
  return found;
}
