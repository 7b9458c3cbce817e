import type { Input, QuantityInput } from '../../../calculators/core/model.ts';
import type { Inputs } from '../form-entries.ts';
import type { ShapeName } from './shapes.ts';
import { emptyTee, writeSquares } from './squares.ts';

const size = (name: string, usual: number, more: Partial<QuantityInput> = {}): QuantityInput => ({
  kind: 'quantity',
  name,
  unit: 'm',
  show: 'mm',
  range: [0.0005, 0.06],
  why: 'small castings',
  usual,
  first: true,
  ...more,
});

const names: Readonly<Record<ShapeName, string>> = {
  plate: 'plate, seen from its edge',
  bar: 'round bar, cut along its middle',
  corner: 'corner: two webs in an L',
  tee: 'junction: a web standing on a web, T',
  boss: 'round boss on a round plate',
  block: 'block, solved in all three directions',
  'square-boss': 'square boss on a square plate, in all three directions',
  drawn: 'drawn on squared paper',
};

const own: Inputs = {
  shape: {
    kind: 'choice',
    name: 'Shape',
    options: names,
    usual: 'tee',
    first: true,
  },
  thickness: size('Thickness', 0.004),
  second: size('Thickness of the other web', 0.004),
  arm: size('Length of each arm', 0.014, { note: 'From the face of the other web.' }),
  diameter: size('Diameter', 0.008),
  length: size('Length', 0.016),
  width: size('Width', 0.024),
  depth: size('Depth', 0.016),
  'boss.width': size('Width of the boss', 0.008),
  'boss.height': size('Height of the boss above the plate', 0.006),
  side: size('Side of a square', 0.001, { range: [0.0002, 0.01] }),
  turned: {
    kind: 'flag',
    name: 'Turned about the left edge',
    note: 'A round part. Otherwise it goes on for ever across the paper.',
    usual: false,
    first: true,
  },
  smooth: {
    kind: 'flag',
    name: 'Stairs stand for slopes',
    note: 'Only the true surface of a slope then lets heat out.',
    usual: false,
    first: true,
  },
  squares: { kind: 'text', name: 'Squares', usual: writeSquares(emptyTee()), first: true },
  chill: {
    kind: 'choice',
    name: 'Chill',
    options: { none: 'none', under: 'one under the heavy place' },
    usual: 'none',
    first: true,
  },
  'chill.depth': size('Depth of the chill', 0.006),
  fine: {
    kind: 'choice',
    name: 'How fine',
    options: { '4': '4 cells across: quick', '8': '8 cells across', '16': '16 cells across: slow' },
    usual: '8',
    first: true,
    note: 'Across the thinnest section.',
  },
};

const borrowed: Readonly<Record<string, boolean>> = {
  metal: true,
  'metal.initial': true,
  mould: true,
  'mould.initial': true,
  'metal.k': false,
  'metal.rho': false,
  'metal.c': false,
  'metal.L': false,
  'metal.solidus': false,
  'metal.liquidus': false,
  'mould.k': false,
  'mould.rho': false,
  'mould.c': false,
  h_interface: false,
  'chill.k': false,
  'chill.rhoc': false,
  'chill.h': false,
  'chill.initial': false,
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** All that the page asks: the shape its own, metal and mould as `freezing/transient` describes them. */
export function askedOf(transient: Inputs): Inputs {
  const rest = Object.entries(borrowed).map(([name, first]): [string, Input] => {
    const { first: _, ...input } = transient[name]!;
    const said = { ...input, name: capital(input.name) } as Input;
    return [
      name,
      name.startsWith('chill.') ? { ...said, group: 'Chill' } : first ? { ...said, first } : said,
    ];
  });
  return Object.fromEntries([...Object.entries(own), ...rest]);
}
