import type { Row, Values } from '../../../calculators/core/model.ts';
import { lineMesh } from '../../../calculators/models/conduction/line.ts';
import { roughTime } from '../../../calculators/models/conduction/pace.ts';
import { numberAt, rowsAt, textAt } from '../../../calculators/models/given.ts';
import type { Shape } from '../../workers/conduction-shape.ts';
import type { Part } from '../../workers/conduction-work.ts';
import type { Books } from '../form-entries.ts';
import { soaked } from '../beside-rule.ts';

/** A section of the plan as the solver takes it: `id` is that of the plan's own numbers. */
export interface SectionPart {
  readonly id: string;
  readonly name: string;
  readonly part: Part;
}

/** Kelvin between solidus and liquidus. */
export const rangeOf = (values: Values): number =>
  numberAt(values, 'metal.liquidus') - numberAt(values, 'metal.solidus');

/** The sections that have sizes, with the metal and mould of the plan. What a plan does not ask comes from the material. */
export function sectionParts(values: Values, books: Books): readonly SectionPart[] {
  const book = books[textAt(values, 'metal')] as Readonly<Record<string, { value: number }>> | undefined;
  const at = (name: string, property: string): number => {
    const own = numberAt(values, name);
    return Number.isNaN(own) ? (book?.[property]?.value ?? Number.NaN) : own;
  };
  const either = (one: number, other: number): number => (Number.isNaN(one) ? other : one);
  const k = at('metal.conductivity.solid', 'conductivity.solid');
  const kLiquid = at('metal.conductivity.liquid', 'conductivity.liquid');
  const c = at('metal.heat.solid', 'heat.solid');
  const cLiquid = at('metal.heat.liquid', 'heat.liquid');
  const metal: Part['metal'] = {
    k: { solid: either(k, kLiquid), liquid: either(kLiquid, k) },
    rho: at('metal.density.liquid', 'density.liquid'),
    c: { solid: either(c, cLiquid), liquid: either(cLiquid, c) },
    latent: at('metal.latent', 'latent'),
    solidus: numberAt(values, 'metal.solidus'),
    liquidus: numberAt(values, 'metal.liquidus'),
  };
  const mould = {
    name: 'mould',
    k: numberAt(values, 'mould.conductivity'),
    rhoc: numberAt(values, 'mould.density.bulk') * numberAt(values, 'mould.heat'),
    h: numberAt(values, 'mould.interface'),
  };
  const start = [numberAt(values, 'melt.temperature'), numberAt(values, 'mould.temperature')];
  const deep = (half: number): number => {
    const mesh = lineMesh({ shape: 'straight', half, outer: 2 * half, cells: 1, first: half, ratio: 2 });
    return soaked(mould, roughTime({ metal, others: [mould], mesh, start }));
  };
  return rowsAt(values, 'sections').flatMap((row, index): SectionPart[] => {
    const shape = shapeOf(row, deep);
    if (!shape) return [];
    const name = textAt(row, 'name').trim() || `Section ${index + 1}`;
    const part = { shape, metal, others: [mould], start, most: 100_000 };
    return [{ id: `sections.${index + 1}`, name, part }];
  });
}

function shapeOf(row: Row, deep: (half: number) => number): Shape | undefined {
  const [t, w, l] = [numberAt(row, 'thickness'), numberAt(row, 'width'), numberAt(row, 'length')];
  const kind = textAt(row, 'shape') || 'bar';
  const line = (shape: 'straight' | 'round'): Shape => ({
    kind: 'line',
    line: {
      shape,
      half: t / 2,
      outer: t / 2 + Math.min(0.5, Math.max(t / 2, 5 * deep(shape === 'round' ? t / 4 : t / 2))),
      cells: 8,
      first: t / 64,
      ratio: 1.1,
    },
  });
  if (!(t > 0)) return undefined;
  if (kind === 'plate') return line('straight');
  if (kind === 'rod') return line('round');
  if (!(w > 0)) return undefined;
  const flat: Shape = {
    kind: 'section',
    section: {
      turned: false,
      rectangles: [{ x: 0, y: 0, width: w / 2, height: t / 2, region: 0 }],
      spacing: Math.min(t, w) / 10,
      wall: Math.min(0.1, 4 * deep((t * w) / (2 * (t + w)))),
      ratio: 1.2,
      mirror: { x: true, y: true },
    },
  };
  if (kind !== 'block' || !(l > 0)) return flat;
  return {
    kind: 'voxels',
    voxels: {
      solids: [{ kind: 'box', region: 0, low: [-w / 2, -l / 2, -t / 2], high: [w / 2, l / 2, t / 2] }],
      spacing: Math.min(t, w, l) / 10,
      wall: Math.min(0.05, 3 * deep(1 / (2 / t + 2 / w + 2 / l))),
      mirror: [true, true, true],
    },
  };
}
