import type { Entry, Material, Property, Resolved, ResolvedMaterial } from '../core/material.ts';
import { quantityFigures, readSpread } from '../core/quantity.ts';

/** One entry in SI: its value and the half-width of its 95 % interval. Throws on a text it cannot read. */
export function resolveEntry(entry: Entry): Resolved {
  const { value, unit } = quantityFigures(entry.value);
  return { value, spread: readSpread(entry.spread, value, unit) };
}

/** Every property of a material in SI, each by its first entry. */
export function resolveMaterial(material: Material): ResolvedMaterial {
  const resolved: Partial<Record<Property, Resolved>> = {};
  for (const [property, entries] of Object.entries(material.properties)) {
    const first = entries?.[0];
    if (first) resolved[property as Property] = resolveEntry(first);
  }
  return resolved;
}

/** The same for a record of materials, with its keys kept: `resolvedMaterials(materials)['tin']`. */
export function resolvedMaterials<Id extends string>(
  materials: Readonly<Record<Id, Material>>,
): Readonly<Record<Id, ResolvedMaterial>> {
  const entries = Object.entries<Material>(materials).map(([id, material]) => [
    id,
    resolveMaterial(material),
  ]);
  return Object.fromEntries(entries) as Record<Id, ResolvedMaterial>;
}

/** The temperature an entry holds at, in kelvin, when its `at` says nothing else: `'20 °C'`. */
export function entryTemperature(entry: Entry): number | undefined {
  return /^-?[\d.]+ °C$/.test(entry.at) ? quantityFigures(entry.at).value : undefined;
}

/**
 * A property by temperature, in SI, on straight lines between the entries that hold at one temperature each.
 * `kelvin` is absolute. Undefined outside the table, or when fewer than two entries make one: a table is not
 * stretched.
 */
export function propertyAt(material: Material, property: Property, kelvin: number): Resolved | undefined {
  const table = (material.properties[property] ?? [])
    .flatMap((entry) => {
      const at = entryTemperature(entry);
      return at === undefined ? [] : [{ at, ...resolveEntry(entry) }];
    })
    .sort((a, b) => a.at - b.at);
  const upper = table.findIndex((row) => row.at >= kelvin);
  const high = table[upper];
  if (!high || table.length < 2) return undefined;
  const low = table[upper - 1];
  if (!low) return high.at === kelvin ? { value: high.value, spread: high.spread } : undefined;
  const part = (kelvin - low.at) / (high.at - low.at);
  return {
    value: low.value + part * (high.value - low.value),
    spread: Math.max(low.spread, high.spread),
  };
}
