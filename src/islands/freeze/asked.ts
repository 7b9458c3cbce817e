import type { Input, QuantityInput } from '../../../calculators/core/model.ts';
import type { Inputs } from '../form-entries.ts';
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

/** What a section is put together from, and the fields each asks for. */
export const shapes = {
  plate: { name: 'plate, seen from its edge', asks: ['thickness', 'width'] },
  bar: { name: 'round bar, cut along its middle', asks: ['diameter', 'length'] },
  corner: { name: 'corner: two webs in an L', asks: ['thickness', 'second', 'arm', 'chill'] },
  tee: { name: 'junction: a web standing on a web, T', asks: ['thickness', 'second', 'arm', 'chill'] },
  boss: {
    name: 'round boss on a round plate',
    asks: ['thickness', 'width', 'boss.width', 'boss.height', 'chill'],
  },
  block: { name: 'block, solved in all three directions', asks: ['thickness', 'width', 'depth'] },
  'square-boss': {
    name: 'square boss on a square plate, in all three directions',
    asks: ['thickness', 'width', 'boss.width', 'boss.height', 'chill'],
  },
  drawn: { name: 'drawn on squared paper', asks: ['side', 'turned', 'smooth', 'squares'] },
} as const;

export type ShapeName = keyof typeof shapes;

const own: Inputs = {
  shape: {
    kind: 'choice',
    name: 'Shape',
    options: Object.fromEntries(Object.entries(shapes).map(([key, { name }]) => [key, name])),
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

/** Those that count for the shape chosen: the rest are not shown. */
export function shown(inputs: Inputs, shape: ShapeName, chilled: boolean): Inputs {
  const { asks }: { readonly asks: readonly string[] } = shapes[shape];
  const metalChill = chilled && (asks.includes('chill') || shape === 'drawn');
  return Object.fromEntries(
    Object.entries(inputs).filter(([name]) => {
      if (name === 'squares') return false;
      if (name === 'chill.depth') return metalChill && asks.includes('chill');
      if (name.startsWith('chill.')) return metalChill;
      return !(name in own) || name === 'shape' || name === 'fine' || asks.includes(name);
    }),
  );
}
