import { curvature } from '../../formulas/freezing/curvature.ts';
import { heatDiffusivity } from '../../formulas/freezing/heat-diffusivity.ts';
import { mouldConstant } from '../../formulas/freezing/mould-constant.ts';
import { timeBoth } from '../../formulas/freezing/time-both.ts';
import { timeBothCurved } from '../../formulas/freezing/time-both-curved.ts';
import { timeCurved } from '../../formulas/freezing/time-curved.ts';
import { timeRule } from '../../formulas/freezing/time-rule.ts';
import { timeSand } from '../../formulas/freezing/time-sand.ts';
import { lineOf } from './ledger.ts';
import { say } from './say.ts';
import type { Section } from './sections.ts';
import type { Working } from './working.ts';

/** The middle of the freezing range, and how hard the mould pulls heat. */
export interface Cooling {
  readonly freezing: number;
  readonly diffusivity: number;
}

export function workCooling(working: Working): Cooling {
  const { number, work, state, note } = working;
  const cooling = {
    freezing: state(
      'freezing',
      'Freezing temperature',
      (number('metal.solidus') + number('metal.liquidus')) / 2,
      'K',
      'The middle of the freezing range; the range itself is the spread.',
    ),
    diffusivity: work('mould.diffusivity', 'Heat diffusivity of the mould', heatDiffusivity, {
      k: number('mould.conductivity'),
      rho: number('mould.density.bulk'),
      c: number('mould.heat'),
    }),
  };
  const own = number('own.constant');
  if (own > 0) {
    const book = work('mould.constant', 'Mould constant by the book', mouldConstant, {
      rho: number('metal.density.liquid'),
      L: number('metal.latent'),
      c: number('metal.heat.liquid'),
      dT: Math.max(0, number('melt.temperature') - number('metal.liquidus')),
      b: cooling.diffusivity,
      T_f: cooling.freezing,
      T_m: number('mould.temperature'),
    });
    note(
      () =>
        `Times to freeze follow your own mould constant, ${say(own, 's/mm²')}; by the book it would be ${say(book, 's/mm²')}. Yours holds for the metal, mould and warmth it was timed with.`,
    );
  }
  return cooling;
}

/**
 * Time to freeze right through, from the superheat on leaving the furnace: the lead with interface and
 * curvature, the soonest with perfect contact and curvature, the latest with interface and a flat face.
 * Where the reader has a mould constant of their own, that leads and the book's time stays beside it.
 */
export function workFreezing(
  working: Working,
  section: Pick<Section, 'id' | 'name' | 'modulus' | 'shapeNumber'>,
  cooling: Cooling,
): number {
  const { number, work } = working;
  const { id, name, modulus, shapeNumber } = section;
  const metal = {
    rho: number('metal.density.liquid'),
    M: modulus,
    L: number('metal.latent'),
    c: number('metal.heat.liquid'),
    dT: Math.max(0, number('melt.temperature') - number('metal.liquidus')),
    T_f: cooling.freezing,
    T_m: number('mould.temperature'),
  };
  const b = cooling.diffusivity;
  const h = number('mould.interface');
  const k = number('mould.conductivity');
  const R = modulus * (shapeNumber === 0 ? 1 : shapeNumber + 1);
  const sand = work(lineOf(id, 'freeze.sand'), `${name}: flat sand, perfect contact`, timeSand, {
    ...metal,
    b,
  });
  work(
    lineOf(id, 'freeze.soonest'),
    `${name}: freezes at the soonest`,
    timeCurved,
    { ...metal, b, k, n: shapeNumber, R },
    't',
    sand,
  );
  const latest = work(
    lineOf(id, 'freeze.latest'),
    `${name}: freezes at the latest`,
    timeBoth,
    { ...metal, b, h },
    't',
    2 * sand,
  );
  const h_R = work(lineOf(id, 'curvature'), `${name}: curvature of the mould round it`, curvature, {
    n: shapeNumber,
    k,
    R,
  });
  const own = number('own.constant');
  const both = { ...metal, b, h, h_R };
  if (!(own > 0))
    return work(lineOf(id, 'freeze'), `${name}: time to freeze`, timeBothCurved, both, 't', latest);
  work(lineOf(id, 'freeze.book'), `${name}: time to freeze by the book`, timeBothCurved, both, 't', latest);
  return work(lineOf(id, 'freeze'), `${name}: time to freeze, by your own mould constant`, timeRule, {
    B: own,
    M: modulus,
    n: 2,
  });
}
