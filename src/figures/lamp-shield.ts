import type { ResolvedMaterial } from '../../calculators/core/material.ts';
import { evaluate } from '../../calculators/core/solve.ts';
import { toSI } from '../../calculators/core/units.ts';
import { heatDiffusivity } from '../../calculators/formulas/freezing/heat-diffusivity.ts';
import { modulus } from '../../calculators/formulas/freezing/modulus.ts';
import { clayBondedSand } from '../../calculators/materials/clay-bonded-sand.ts';
import { gypsumInvestment } from '../../calculators/materials/gypsum-investment.ts';
import { resolveMaterial } from '../../calculators/materials/resolve.ts';
import { siliconBronze } from '../../calculators/materials/silicon-bronze.ts';

/** The part the figures draw, and its metal and moulds in SI, from the materials as they stand. Build only. */

type Name = keyof ResolvedMaterial;

function numbers<const N extends Name>(material: ResolvedMaterial, ...names: N[]): Record<N, number> {
  return Object.fromEntries(
    names.map((name) => {
      const found = material[name];
      if (!found) throw new Error(`a figure needs ${name}, which the material does not have`);
      return [name, found.value];
    }),
  ) as Record<N, number>;
}

const metal = numbers(
  resolveMaterial(siliconBronze),
  'density.liquid',
  'heat.liquid',
  'heat.solid',
  'latent',
  'solidus',
  'liquidus',
  'conductivity.liquid',
  'surface-tension',
  'critical-solid',
);

/** Freezing temperature: the middle of the freezing range. */
export const bronze = { ...metal, freezing: (metal.solidus + metal.liquidus) / 2 };

export const pouring = toSI(1100, '°C');

function mould(material: ResolvedMaterial) {
  const {
    'density.bulk': rho,
    heat,
    conductivity,
    interface: h,
    'temperature.limit': limit,
  } = numbers(material, 'density.bulk', 'heat', 'conductivity', 'interface', 'temperature.limit');
  return { heat, h, limit, diffusivity: evaluate(heatDiffusivity, { k: conductivity, rho, c: heat }) };
}

export const sand = mould(resolveMaterial(clayBondedSand));
export const investment = mould(resolveMaterial(gypsumInvestment));

/** Modulus of a long bar cooled on its four sides, and of a block cooled on all six. */
const barModulus = (a: number, c: number): number => evaluate(modulus, { V: a * c, A: 2 * (a + c) });
const blockModulus = (a: number, c: number, e: number): number =>
  evaluate(modulus, { V: a * c * e, A: 2 * (a * c + c * e + a * e) });

/** Sections in metres: thickness, width, modulus, the run from the gate to the far end, and how many share the flow. */
export const sections = [
  { name: 'web', a: 0.0014, c: 0.0022, M: barModulus(0.0014, 0.0022), run: 0.075, sharing: 2 },
  { name: 'frame', a: 0.0045, c: 0.0045, M: barModulus(0.0045, 0.0045), run: 0.096, sharing: 2 },
  { name: 'lug', a: 0.007, c: 0.008, M: blockModulus(0.012, 0.008, 0.007), run: 0.04, sharing: 2 },
] as const;
