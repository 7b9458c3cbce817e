import type { Check } from '../../core/model.ts';
import { cakeBending } from '../../formulas/sand/cake-bending.ts';
import { cakeShear } from '../../formulas/sand/cake-shear.ts';
import { lift } from '../../formulas/sand/lift.ts';
import { weight } from '../../formulas/sand/weight.ts';
import { force } from '../../formulas/vacuum/force.ts';
import { penetration } from '../../formulas/vacuum/penetration.ts';
import type { Drive } from './pressure.ts';
import { say, stress } from './say.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** Sand strength is a wide guess, so the stress is kept to a third of it: common practice, no source. */
export const sandFactor = 3;
/** For the surge when the cup fills. */
const liftFactor = 1.5;
/** Plate numbers of a round span; see the note of the bending formula. */
const resting = 0.31;
const clamped = 0.19;
/** Gap between grains over grain size; an estimate, as the penetration formula says. */
const gapOfGrain = 0.2;

export function judgeSand(working: Working): Check[] {
  const { number, work } = working;
  const dp = number('suction.gauge');
  if (!(dp > 0)) return [];
  const span = number('sand.span');
  const thick = number('sand.cake');
  work('suction.force', 'Force of the suction on the flask', force, { dp, d: number('flask.diameter') });
  const bending = work('sand.bending', 'Bending stress in the sand', cakeBending, {
    K: working.text('sand.held') === 'clamped' ? clamped : resting,
    dp,
    s: span,
    d: thick,
  });
  const shear = work('sand.shear', 'Shear stress at the rim', cakeShear, {
    dp,
    A: (Math.PI / 4) * span * span,
    P: Math.PI * span,
    d: thick,
  });
  if (thick > span / 5) {
    working.note(
      'The sand is thick for its span: the plate rule for bending holds to a fifth of the span, and gives the high side here.',
    );
  }
  const tensile = number('mould.strength.tensile');
  const shearing = number('mould.strength.shear');
  const byBending = marginOf(tensile, sandFactor * bending);
  const byShear = Number.isNaN(shearing) ? Number.POSITIVE_INFINITY : marginOf(shearing, sandFactor * shear);
  const bends = byBending <= byShear;
  const sizes = (): string =>
    bends
      ? `It bends with ${say(bending, 'kPa', 2, stress)} over a span of ${say(span, 'mm')} and breaks near ${say(tensile, 'kPa', 2, stress)}`
      : `It shears with ${say(shear, 'kPa', 2, stress)} at the rim and breaks near ${say(shearing, 'kPa', 2, stress)}`;
  return weigh(working, 'sand', Math.min(byBending, byShear), () => ({
    shows: 'sand.bending',
    title: 'The sand stands the suction',
    levers: ['suction.gauge', 'sand.span', 'sand.cake'],
    steps: ['suction.force', 'sand.bending', 'sand.shear'],
    why: {
      holds: `The sand holds. ${sizes()}.`,
      close: `The sand holds, just. ${sizes()}.`,
      fails: `Less suction, or a closer grid under the sand: it should stand ${sandFactor} times the load, because its strength is a guess. ${sizes()}.`,
    },
  }));
}

export function judgeLift(working: Working, drive: Drive): Check[] {
  const { number, work, state } = working;
  const lifted = work('lift', 'Lift on the cope', lift, {
    rho: number('metal.density.liquid'),
    h: drive.head,
    A: number('part.shadow'),
  });
  const d = number('flask.diameter');
  const cope = state(
    'cope.mass',
    'Sand of the cope',
    number('mould.density.bulk') * (Math.PI / 4) * d * d * number('sand.cope'),
    'kg',
    'Density × area of the flask × sand above the cavity. Suction helps to hold it and is not counted.',
  );
  const more = work('cope.needed', 'Weight to lay on', weight, {
    F: lifted,
    F_c: 0,
    k: liftFactor,
    m_c: cope,
  });
  const laid = number('cope.weight');
  const sizes = (): string =>
    `The metal lifts with ${say(lifted, 'N')}; the sand weighs ${say(cope, 'g')} and you lay on ${say(laid, 'kg')}`;
  return weigh(working, 'lift', marginOf(laid + cope, more + cope), () => ({
    shows: 'lift',
    title: 'The cope stays down',
    levers: ['cope.weight', 'head'],
    steps: ['lift', 'cope.mass', 'cope.needed'],
    why: {
      holds: `It stays down. ${sizes()}.`,
      fails: `Lay on ${say(Math.max(0, more), 'kg')} or clamp it: metal runs out at the joint otherwise. ${sizes()}.`,
    },
  }));
}

export function judgePenetration(working: Working, drive: Drive): Check[] {
  const { number, work, state } = working;
  const enters = work('penetration', 'Pressure that drives metal into the sand', penetration, {
    gamma: number('metal.surface-tension'),
    theta: number('metal.contact-angle'),
    r: gapOfGrain * number('mould.grain-size'),
  });
  const rho = number('metal.density.liquid');
  const suction = Math.max(0, number('suction.gauge'));
  const has = state(
    'penetration.has',
    'Pressure of the metal over the gas in the sand',
    rho * 9.80665 * drive.head + suction,
    'Pa',
    'The head and the whole of the suction: in the sand near the plate the gas is at what the gauge reads.',
  );
  const sizes = (): string =>
    `It takes ${say(enters, 'kPa')} to drive metal between the grains; the metal has up to ${say(has, 'kPa')}`;
  return weigh(working, 'penetration', marginOf(enters, has), () => ({
    shows: 'penetration',
    title: 'Metal stays out of the sand',
    levers: ['suction.gauge', 'mould.grain-size', 'head'],
    steps: ['penetration', 'penetration.has'],
    why: {
      holds: `It stays out. ${sizes()}. Release the suction once the thin sections and the gate are solid.`,
      close: `It only just stays out. ${sizes()}. Release the suction the moment the thin sections and the gate are solid.`,
      fails: `The skin comes out as sandpaper: less suction, finer sand or a wash. ${sizes()}.`,
    },
  }));
}
