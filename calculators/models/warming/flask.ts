import type { Input } from '../../core/model.ts';
import type { Body } from './body.ts';

/** A flask of investment: a cylinder that takes heat all round and at both ends. */
export const flaskBody = (diameter: number, height: number): Body => [
  { shape: 'cylinder', half: diameter / 2 },
  { shape: 'plate', half: height / 2 },
];

export const flaskInputs = {
  diameter: {
    kind: 'quantity',
    name: 'flask diameter, inside',
    unit: 'm',
    show: 'mm',
    range: [0.02, 0.2],
    why: 'small flasks; larger ones follow the maker alone',
    usual: 0.075,
    first: true,
  },
  height: {
    kind: 'quantity',
    name: 'flask height',
    unit: 'm',
    show: 'mm',
    range: [0.02, 0.3],
    why: 'small flasks; larger ones follow the maker alone',
    usual: 0.1,
    first: true,
  },
} as const satisfies Readonly<Record<string, Input>>;
