import type { Citation } from '../../calculators/core/formula.ts';
import type { Quantity } from '../../calculators/core/units.ts';

/** A published figure for a body put together from simple solids, checked against `pattern/primitives`. */
export interface SolidCheck {
  readonly id: string;
  readonly model: 'pattern/primitives';
  readonly title: string;
  readonly rows: readonly {
    readonly shape: string;
    readonly a: Quantity;
    readonly b?: Quantity;
    readonly c?: Quantity;
  }[];
  readonly find: 'volume' | 'surface' | 'cooled' | 'modulus';
  readonly expect: Quantity;
  readonly tolerance: Quantity;
  readonly source: Citation;
}

const model = 'pattern/primitives';
const sameModulus = {
  key: 'groover',
  at: 'ch. 10 problems, sphere, cylinder and cube of 10 cm',
  how: 'memory',
} as const;

export const solidChecks: readonly SolidCheck[] = [
  {
    id: 'L01',
    model,
    title: 'Core of a pipe, 10 cm across and 180 cm long',
    rows: [{ shape: 'rod', a: '10 cm', b: '180 cm' }],
    find: 'volume',
    expect: '14137.2 cm³',
    tolerance: '0.01 %',
    source: { key: 'rao-manufacturing', at: 'pipe example, read in a copy', how: 'read' },
  },
  {
    id: 'C03',
    model,
    title: 'Riser 4.7 cm across and high',
    rows: [{ shape: 'rod', a: '4.7 cm', b: '4.7 cm' }],
    find: 'volume',
    expect: '81.5 cm³',
    tolerance: '0.3 %',
    source: { key: 'groover', at: 'ch. 10, riser design example, read in a copy', how: 'read' },
  },
  {
    id: 'R03',
    model,
    title: 'Side riser 15 cm across and high',
    rows: [{ shape: 'rod', a: '15 cm', b: '15 cm' }],
    find: 'volume',
    expect: '2650 cm³',
    tolerance: '0.1 %',
    source: { key: 'ghosh-mallik', at: 'example 2.9, read in an open textbook companion', how: 'read' },
  },
  {
    id: 'R05',
    model,
    title: 'Top riser 18 cm across and 9 cm high',
    rows: [{ shape: 'rod', a: '18 cm', b: '9 cm' }],
    find: 'volume',
    expect: '2290 cm³',
    tolerance: '0.1 %',
    source: { key: 'ghosh-mallik', at: 'example 2.9, read in an open textbook companion', how: 'read' },
  },
  {
    id: 'C07-sphere',
    model,
    title: 'Modulus of a ball of 10 cm',
    rows: [{ shape: 'sphere', a: '10 cm' }],
    find: 'modulus',
    expect: '1.667 cm',
    tolerance: '0.05 %',
    source: sameModulus,
  },
  {
    id: 'C07-cylinder',
    model,
    title: 'Modulus of a cylinder of 10 cm',
    rows: [{ shape: 'rod', a: '10 cm', b: '10 cm' }],
    find: 'modulus',
    expect: '1.667 cm',
    tolerance: '0.05 %',
    source: sameModulus,
  },
  {
    id: 'C07-cube',
    model,
    title: 'Modulus of a cube of 10 cm',
    rows: [{ shape: 'plate', a: '10 cm', b: '10 cm', c: '10 cm' }],
    find: 'modulus',
    expect: '1.667 cm',
    tolerance: '0.05 %',
    source: sameModulus,
  },
];
