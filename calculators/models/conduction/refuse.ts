import type { Case } from './case.ts';
import { heatCurve } from './enthalpy.ts';
import { startOf } from './exact-engine.ts';
import { metalRegion, type Metal, type Stuff } from './substance.ts';

const celsius = (kelvin: number): string => `${Math.round(kelvin - 273.15)} °C`.replace('-', '−');

/** Why a casting cannot be worked out, as a sentence with the remedy; nothing when it can. */
export function refuse(given: Case): string | undefined {
  const { metal, others, mesh, outside } = given;
  const substances = refuseMetal(metal) ?? others.map(refuseStuff).find((why) => why !== undefined);
  if (substances !== undefined) return substances;
  for (const { edges } of mesh.axes)
    for (let i = 1; i < edges.length; i += 1)
      if (!(edges[i]! > edges[i - 1]!)) return 'A size is nought or less: every length must be above nought.';
  if (!mesh.region.includes(metalRegion))
    return 'No cell of the part is metal: make it larger, or ask for more cells across it.';
  if (highest(mesh.region) > others.length) return 'A cell is made of something that was not described.';
  if (outside && outside.kind !== 'insulated') {
    if (!(outside.temperature > 0)) return 'The outside is colder than absolute zero, −273.15 °C.';
    if (outside.kind === 'air' && !(outside.h >= 0 && outside.emissivity >= 0 && outside.emissivity <= 1))
      return 'The coefficient of the air must not be below nought, nor the emissivity outside 0 to 1.';
    if (given.until === undefined && outside.temperature >= metal.solidus)
      return `The outside, at ${celsius(outside.temperature)}, is as hot as the solidus: the metal would never be solid.`;
  }
  return refuseWarmth(given);
}

function refuseMetal({ k, rho, c, latent, solidus, liquidus, base }: Metal): string | undefined {
  const numbers = { conductivity: [k.solid, k.liquid], density: [rho], 'specific heat': [c.solid, c.liquid] };
  for (const [name, values] of Object.entries(numbers))
    if (!values.every((value) => value > 0 && Number.isFinite(value)))
      return `The ${name} of the metal is missing or not above nought.`;
  if (!(latent >= 0 && Number.isFinite(latent))) return 'The latent heat is missing or below nought.';
  if (!(solidus > 0)) return 'The solidus is missing or colder than absolute zero, −273.15 °C.';
  if (!(liquidus >= solidus && Number.isFinite(liquidus)))
    return `The solidus, ${celsius(solidus)}, is above the liquidus${Number.isFinite(liquidus) ? `, ${celsius(liquidus)}` : ''}: exchange them, or make them equal.`;
  if (base !== undefined && !(base > liquidus))
    return 'The lever rule needs a base metal that melts above the liquidus.';
  return undefined;
}

function refuseStuff({ name, k, rhoc, h }: Stuff): string | undefined {
  if (!(k > 0 && Number.isFinite(k)))
    return `The conductivity of the ${name} is missing or not above nought.`;
  if (!(rhoc > 0 && Number.isFinite(rhoc)))
    return `The heat capacity of the ${name} is missing or not above nought.`;
  return h > 0 ? undefined : `The interface coefficient of the ${name} is missing or not above nought.`;
}

/** Colder than absolute zero, or never solid because the surroundings cannot take up the heat. */
function refuseWarmth(given: Case): string | undefined {
  const { metal, others, mesh } = given;
  const curve = heatCurve(metal, 0);
  const [x, y, z] = mesh.axes;
  const even = typeof given.start !== 'function';
  // J/m³ that a region has to give before it is at the solidus. Where it starts alike, one of its cells speaks for all.
  const above = new Float64Array(others.length + 1).fill(Number.NaN);
  let surplus = 0;
  let cell = 0;
  for (const depth of z.size)
    for (const width of y.size)
      for (let i = 0; i < x.size.length; i += 1, cell += 1) {
        const region = mesh.region[cell]!;
        if (!even || Number.isNaN(above[region]!)) {
          const start = startOf(given, mesh, cell);
          const what = region === metalRegion ? 'metal' : others[region - 1]!.name;
          if (Number.isNaN(start)) return `The temperature of the ${what} at the start is missing.`;
          if (!(start > 0)) return `The ${what} starts colder than absolute zero, −273.15 °C.`;
          above[region] =
            region === metalRegion
              ? curve.capacity * (curve.heatOf(start) - curve.solidus)
              : others[region - 1]!.rhoc * (start - curve.solidus);
        }
        surplus += x.size[i]! * width * depth * above[region]!;
      }
  const closed = (given.outside ?? { kind: 'insulated' }).kind === 'insulated';
  if (closed && given.until === undefined && surplus >= 0)
    return 'The mould cannot take up all the heat: it is too small or too hot, and the metal would never be solid. Make the mould larger or cooler, or let heat leave its outside.';
  return undefined;
}

function highest(regions: Uint8Array): number {
  let most = 0;
  for (const region of regions) if (region > most) most = region;
  return most;
}

/** Said where making the arrays of so many cells fails. */
export const noMemory = 'This device has not the memory for so many cells: take wider ones.';
