import type { Citation } from './formula.ts';
import type { Quantity, UnitSymbol } from './units.ts';

export type Role = 'metal' | 'mould' | 'pattern' | 'crucible' | 'fluid';

/** One number of a material: where it applies, how far it may be off, who says so. */
export interface Entry {
  /** Temperature or state it holds at, as text: `'20 °C'`, `'liquid at 1100 °C'`. */
  readonly at: string;
  readonly value: Quantity;
  /** Half-width of the 95 % interval: `'2 %'` or a quantity in the value's unit. */
  readonly spread: string;
  readonly source: Citation;
  readonly note?: string;
}

/** Properties a calculation may ask for, with the coherent unit they are compared in. */
export const propertyUnits = {
  'density.solid': 'kg/m³',
  'density.liquid': 'kg/m³',
  'density.gas': 'kg/m³',
  'density.bulk': 'kg/m³',
  'heat.solid': 'J/(kg·K)',
  'heat.liquid': 'J/(kg·K)',
  heat: 'J/(kg·K)',
  latent: 'J/kg',
  'latent.vapour': 'J/kg',
  solidus: '°C',
  liquidus: '°C',
  boils: '°C',
  conductivity: 'W/(m·K)',
  'conductivity.solid': 'W/(m·K)',
  'conductivity.liquid': 'W/(m·K)',
  viscosity: 'Pa·s',
  'surface-tension': 'N/m',
  'contact-angle': 'deg',
  'shrinkage.freezing': '%',
  /** Of volume, for each 100 K the liquid cools. */
  'contraction.liquid': '%',
  /** Of length, unrestrained, from the solidus to 20 °C: the most a pattern allowance can be for. */
  'contraction.free': '%',
  'contraction.pattern': '%',
  'pour.lowest': '°C',
  'pour.highest': '°C',
  emissivity: '1',
  'loss.melting': '%',
  'critical-solid': '1',
  permeability: 'AFS',
  'grain-size': 'mm',
  moisture: '%',
  'strength.tensile': 'kPa',
  'strength.shear': 'kPa',
  /** The hottest the whole mould or crucible may become, in an oven or in use. */
  'temperature.limit': '°C',
  /** The hottest metal a mould takes. */
  'temperature.metal': '°C',
  interface: 'W/(m²·K)',
  porosity: '1',
} as const satisfies Record<string, UnitSymbol>;

export type Property = keyof typeof propertyUnits;

export interface Material {
  readonly id: string;
  readonly role: Role;
  readonly name: string;
  /** Other names the trade uses. */
  readonly words?: readonly string[];
  readonly composition?: string;
  readonly description: string;
  /** The first entry of a property is the one calculations use; the others are shown beside it. */
  readonly properties: Readonly<Partial<Record<Property, readonly Entry[]>>>;
  readonly cautions?: readonly string[];
}

export function defineMaterial(material: Material): Material {
  return material;
}

/** What a calculation needs of a property: one number in SI and the half-width of its 95 % interval. */
export interface Resolved {
  readonly value: number;
  readonly spread: number;
}

export type ResolvedMaterial = Readonly<Partial<Record<Property, Resolved>>>;
