import { faceArea } from './conductance.ts';
import { indexOf, sizeOf, type Mesh } from './mesh.ts';

/** What the outside of the mesh meets. Temperatures K, coefficient W/(m²·K). */
export type Outside =
  | { readonly kind: 'insulated' }
  | { readonly kind: 'held'; readonly temperature: number }
  | {
      readonly kind: 'air';
      readonly temperature: number;
      readonly h: number;
      /** Of the outside, 0 to 1; nought leaves radiation out. */
      readonly emissivity: number;
    };

export const side = ['-x', '+x', '-y', '+y', '-z', '+z'] as const;
export type Side = (typeof side)[number];

/** Stefan and Boltzmann's constant, W/(m²·K⁴) (CODATA 2018, exact). */
export const stefanBoltzmann = 5.670374419e-8;

/** Faces of the mesh that let heat out. */
export interface Skin {
  readonly cells: Int32Array;
  readonly area: Float64Array;
  /** From the middle of the cell to its face, m²·K/W. */
  readonly resistance: Float64Array;
  /** W/K now; radiation changes it as the cells cool. */
  readonly conductance: Float64Array;
}

const none = new Float64Array(0);
export const noSkin: Skin = { cells: new Int32Array(0), area: none, resistance: none, conductance: none };

/** The faces of those sides, cell by cell. `kOf` is the conductivity of a cell. */
export function skinOf(mesh: Mesh, sides: readonly Side[], kOf: (cell: number) => number): Skin {
  const size = sizeOf(mesh);
  const cells: number[] = [];
  const area: number[] = [];
  const resistance: number[] = [];
  for (let cell = 0; cell < mesh.region.length; cell += 1) {
    const at = indexOf(cell, size);
    for (const d of [0, 1, 2] as const) {
      for (const end of [0, 1] as const) {
        if (at[d] !== (end === 0 ? 0 : size[d] - 1) || !sides.includes(side[2 * d + end]!)) continue;
        const axis = mesh.axes[d];
        const before = [...at] as [number, number, number];
        if (end === 0) before[d] -= 1;
        cells.push(cell);
        area.push(faceArea(mesh, d, before));
        resistance.push(Math.abs(axis.edges[at[d] + end]! - axis.centres[at[d]]!) / kOf(cell));
      }
    }
  }
  return {
    cells: Int32Array.from(cells),
    area: Float64Array.from(area),
    resistance: Float64Array.from(resistance),
    conductance: new Float64Array(cells.length),
  };
}

/** Sets the conductances for cells at these temperatures, K. */
export function openSkin(skin: Skin, outside: Outside, temperature: (cell: number) => number): void {
  if (outside.kind === 'insulated') return;
  for (let n = 0; n < skin.cells.length; n += 1) {
    let film = 0;
    if (outside.kind === 'air') {
      const here = temperature(skin.cells[n]!);
      const there = outside.temperature;
      const radiant = outside.emissivity * stefanBoltzmann * (here * here + there * there) * (here + there);
      film = 1 / Math.max(1e-9, outside.h + radiant);
    }
    skin.conductance[n] = skin.area[n]! / (skin.resistance[n]! + film);
  }
}

/** Heat that leaves through those faces each second, W, for cells at these temperatures, outside at `out`. */
export function outflowOf(skin: Skin, temperature: ArrayLike<number>, guard: number, out: number): number {
  let sum = 0;
  for (let n = 0; n < skin.cells.length; n += 1)
    sum += skin.conductance[n]! * (temperature[skin.cells[n]! + guard]! - out);
  return sum;
}
