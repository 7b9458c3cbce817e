import type { Result, Values } from '../../core/model.ts';
import { numberAt, textAt } from '../given.ts';
import { readSections, type Section } from '../pour-plan/sections.ts';
import { startWorking } from '../pour-plan/working.ts';
import { treeOf } from './channel.ts';
import { planTree, type PlanSection } from './plan-tree.ts';
import type { Pour } from './pour.ts';

export type PlanPour =
  | { readonly ok: true; readonly pour: Pour; readonly sections: readonly PlanSection[] }
  | { readonly ok: false; readonly why: string };

const cells = 60;

/**
 * A pour plan, and what it worked, as a pour whose fronts can be followed. Pressures, flow, temperature at the gate
 * and mould are the plan's own. The air pushed out is left to the race; only the plan's steam presses back besides.
 * `viscosity` is of the liquid metal, which a plan does not ask. A part that stands is taken to rise evenly along
 * its longest run. SI.
 */
export function pourOfPlan(given: Values, worked: Result, viscosity: number): PlanPour {
  const number = (name: string): number => numberAt(given, name);
  const sections = readSections(startWorking(given));
  if (sections.length === 0) return { ok: false, why: 'The plan has no section with sizes to follow.' };
  const { gate, flow, suction, ambient, steam } = driveOf(worked);
  if (!(flow > 0)) return { ok: false, why: 'Nothing flows through the gate with these numbers.' };
  if (!(viscosity > 0))
    return { ok: false, why: 'The viscosity of this metal is not known, and following it needs that.' };
  const longest = Math.max(...sections.map(({ run, before }) => run + before));
  const rise = textAt(given, 'orientation') === 'standing' ? number('part.height') / longest : 0;
  const { stretches, sections: placed } = planTree(sections, rise, gateLoss(given, sections));
  const tree = treeOf(stretches);
  if (!tree.ok) return tree;
  const pour: Pour = {
    channels: tree.channels,
    metal: {
      rho: number('metal.density.liquid'),
      c: number('metal.heat.liquid'),
      latent: number('metal.latent'),
      solidus: number('metal.solidus'),
      liquidus: number('metal.liquidus'),
      gamma: number('metal.surface-tension'),
      theta: number('entry.angle'),
      mu: viscosity,
      stop: Math.min(1, number('metal.critical-solid')),
      gate,
    },
    mould: {
      temperature: number('mould.temperature'),
      b: Math.sqrt(number('mould.conductivity') * number('mould.density.bulk') * number('mould.heat')),
      h: number('mould.interface'),
      permeability: number('mould.permeability'),
      thickness: Math.min(number('sand.cope'), number('sand.drag')),
    },
    drive: { head: number('head'), ambient, suction: Math.min(suction, 0.99 * ambient), gas: steam, flow },
    cells,
  };
  const why = wrong(pour);
  return why === undefined ? { ok: true, pour, sections: placed } : { ok: false, why };
}

function wrong({ metal, mould, drive }: Pour): string | undefined {
  const { permeability: _, ...rest } = mould;
  const numbers = Object.values({ ...metal, ...rest, ...drive });
  if (numbers.some(Number.isNaN)) return 'A number of the metal or the mould is missing to follow it.';
  const above = [
    metal.rho,
    metal.c,
    metal.latent,
    metal.stop,
    mould.b,
    mould.h,
    mould.thickness,
    mould.temperature,
  ];
  if (above.some((value) => value <= 0)) return 'A number of the metal or the mould is not above nought.';
  if (metal.solidus > metal.liquidus) return 'The solidus is above the liquidus.';
  if (metal.gate <= metal.liquidus - metal.stop * (metal.liquidus - metal.solidus))
    return 'The metal is too stiff to flow before it reaches the gate.';
  return undefined;
}

/** What the plan worked before: temperature and flow at the gate, pressures, and the steam among the gas. */
function driveOf({ values, steps }: Result) {
  const at = (id: string): number => values[id] ?? Number.NaN;
  const gas = steps.find(({ id }) => id === 'gas');
  const passed = gas?.given?.['Q'] ?? 0;
  const flow = at('flow');
  const steam = passed > flow ? ((gas?.value ?? 0) * (passed - flow)) / passed : 0;
  return { gate: at('chain.gate'), flow, suction: at('suction'), ambient: at('ambient'), steam };
}

/**
 * What the gate loses by the plan's discharge coefficient, 1/C² − 1 heads of the speed in the gate, told in heads
 * of the speed in the channels that leave it.
 */
function gateLoss(given: Values, sections: readonly Section[]): number {
  const C = numberAt(given, 'gate.discharge');
  const area = numberAt(given, 'gate.area');
  const open = sections
    .filter(({ through }) => through === '')
    .reduce((sum, { channel, fronts }) => sum + channel * fronts, 0);
  const loss = (1 / C ** 2 - 1) * (open / area) ** 2;
  return Number.isFinite(loss) && loss > 0 ? loss : 0;
}
