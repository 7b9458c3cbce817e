import { didYouMean } from '../../core/nearest.ts';

/** A stretch of the cavity as the reader writes it, in SI. `from` is the name of the stretch before it, or `gate`. */
export interface Stretch {
  readonly name: string;
  readonly from: string;
  readonly shape: 'bar' | 'round';
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Height of its far end above its near end. */
  readonly rise: number;
  /** How many like it leave the same place at once. */
  readonly alike: number;
  /** Entry and bends, in heads of the speed in it. */
  readonly loss: number;
  /** Diameter of a vent at its far end; nought is none. */
  readonly vent: number;
}

/** A stretch with what the flow and the heat need of it. Areas and rims are of one channel. */
export interface Channel extends Stretch {
  /** Index of the channel before; −1 is the gate. */
  readonly parent: number;
  readonly children: readonly number[];
  /** Channels from the gate to this one, itself included. */
  readonly path: readonly number[];
  readonly area: number;
  readonly rim: number;
  /** Hydraulic diameter, 4·area/rim. */
  readonly diameter: number;
  /** The shorter side: the length of the well-mixed head of the stream. */
  readonly side: number;
  /** Friction factor times Reynolds number when the flow is laminar. */
  readonly laminar: number;
  /** Height of its near end above the gate. */
  readonly foot: number;
  /** Way from the gate to its near end. */
  readonly before: number;
}

export type Tree =
  { readonly ok: true; readonly channels: readonly Channel[] } | { readonly ok: false; readonly why: string };

/**
 * Friction factor times Reynolds number of laminar flow: 64 in a round pipe; in a rectangle the fit of Shah &
 * London, Laminar Flow Forced Convection in Ducts (1978), within 0.05 % from the square to the slit.
 */
export function laminarConstant(shape: Stretch['shape'], a: number, c: number): number {
  if (shape === 'round') return 64;
  const r = Math.min(a, c) / Math.max(a, c);
  return 96 * (1 - r * (1.3553 - r * (1.9467 - r * (1.7012 - r * (0.9564 - r * 0.2537)))));
}

const gateNames = new Set(['', 'gate']);
const nameOf = (text: string): string => text.trim().toLowerCase();

function wrongSize(stretch: Stretch): string | undefined {
  const { name, length, width, thickness, alike, loss, vent, shape } = stretch;
  if (!(length > 0)) return `${name}: the length must be above nought.`;
  if (!(thickness > 0)) return `${name}: the thickness must be above nought.`;
  if (shape === 'bar' && !(width > 0)) return `${name}: the width must be above nought.`;
  if (!(alike >= 1)) return `${name}: at least one channel of it is needed.`;
  if (!(loss >= 0)) return `${name}: a loss cannot be below nought.`;
  return vent >= 0 ? undefined : `${name}: a vent cannot be narrower than nought.`;
}

/** The stretches joined into a tree from the gate, or one sentence saying what is wrong with them. */
export function treeOf(stretches: readonly Stretch[]): Tree {
  const no = (why: string): Tree => ({ ok: false, why });
  if (stretches.length === 0) return no('There is no section to fill: add one that leaves the gate.');
  const index = new Map<string, number>();
  for (const [i, stretch] of stretches.entries()) {
    const name = nameOf(stretch.name);
    if (gateNames.has(name)) return no(`Section ${i + 1} needs a name of its own.`);
    if (index.has(name)) return no(`Two sections are called “${stretch.name}”: give each its own name.`);
    index.set(name, i);
    const wrong = wrongSize(stretch);
    if (wrong) return no(wrong);
  }
  const parents: number[] = [];
  for (const { name, from } of stretches) {
    const parent = gateNames.has(nameOf(from)) ? -1 : index.get(nameOf(from));
    if (parent === undefined)
      return no(
        `${name} leaves from “${from}”, which is no section here${didYouMean(from, [...index.keys()])}.`,
      );
    parents.push(parent);
  }
  const paths: number[][] = [];
  for (const [i, { name }] of stretches.entries()) {
    const path = [i];
    for (let at = parents[i]!; at >= 0; at = parents[at]!) {
      if (path.length > stretches.length)
        return no(`${name} never comes from the gate: the sections go round in a loop.`);
      path.unshift(at);
    }
    paths.push(path);
  }
  const sum = (path: readonly number[], of: 'length' | 'rise'): number =>
    path.slice(0, -1).reduce((total, at) => total + stretches[at]![of], 0);
  const channels = stretches.map((stretch, i): Channel => {
    const { shape, thickness } = stretch;
    const width = shape === 'round' ? thickness : stretch.width;
    const round = shape === 'round' ? Math.PI / 4 : 1;
    const area = round * thickness * width;
    const rim = round * 2 * (thickness + width);
    return {
      ...stretch,
      width,
      parent: parents[i]!,
      children: parents.flatMap((parent, child) => (parent === i ? [child] : [])),
      path: paths[i]!,
      area,
      rim,
      diameter: (4 * area) / rim,
      side: Math.min(thickness, width),
      laminar: laminarConstant(shape, thickness, width),
      foot: sum(paths[i]!, 'rise'),
      before: sum(paths[i]!, 'length'),
    };
  });
  return { ok: true, channels };
}
