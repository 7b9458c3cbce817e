import type { Input } from '../../core/model.ts';

/** What the mould is made of: numbers from the material chosen, until the reader writes their own. */
export const stuffInputs = (usual: string) =>
  ({
    mould: { kind: 'material', role: 'mould', name: 'mould', usual, first: true },
    k: {
      kind: 'quantity',
      name: 'conductivity',
      unit: 'W/(m·K)',
      range: [0.1, 3],
      why: 'sands, plasters and investments',
      from: { input: 'mould', property: 'conductivity' },
      usual: 0.607,
      note: 'The largest doubt: dry sand below 200 °C may be half of what it is beside metal.',
      group: 'Mould',
    },
    rho: {
      kind: 'quantity',
      name: 'density as it stands, dry',
      sign: 'ρ',
      unit: 'kg/m³',
      range: [500, 2500],
      why: 'sands, plasters and investments',
      from: { input: 'mould', property: 'density.bulk' },
      usual: 1500,
      group: 'Mould',
    },
    c: {
      kind: 'quantity',
      name: 'specific heat',
      unit: 'J/(kg·K)',
      range: [500, 1600],
      why: 'sands, plasters and investments',
      from: { input: 'mould', property: 'heat' },
      usual: 1130,
      group: 'Mould',
    },
  }) as const satisfies Readonly<Record<string, Input>>;
