import { gas } from '../../formulas/melting/gas.ts';
import { burnoutVapour } from '../../formulas/safety/burnout-vapour.ts';
import { radiant } from '../../formulas/safety/radiant.ts';
import { spillSand } from '../../formulas/safety/spill-sand.ts';
import { steam } from '../../formulas/safety/steam.ts';
import { suctionRunOut } from '../../formulas/safety/suction-run-out.ts';
import type { Charge } from './charge.ts';
import type { Drive } from './pressure.ts';
import { isInvestment } from './warming.ts';
import type { Working } from './working.ts';

/** Hydrogen over the melt, Pa: a hundredth of an atmosphere, what a damp flame seldom passes. */
const hydrogen = 1013.25;
/** Bed of dry sand and its density: the usual values of the spill card. */
const tray = { bed: 0.05, sand: 1600 };
/** Where the hand is while it pours. */
const reach = 0.4;
/** Mass of one drop of water, kg. */
const drop = 5e-5;
/** A crack of 10 mm² open for two seconds: as the card shows it. */
const crack = { flow: 0.7, area: 1e-5, seconds: 2 };

/** Constants of Sieverts’ law of the base metal, as the gas card lists them; none for a metal it does not know. */
const sieverts: readonly (readonly [RegExp, readonly [number, number]])[] = [
  [/^aluminium-silicon|^aluminium$/, [2.72, 2700]],
  [/^(?:sterling|fine)-?silver|^silver(?!-bronze)/, [2.154, 3512]],
  [/bronze|brass|gunmetal|copper|nickel-silver/, [2.378, 2167]],
];

/** Gas in the melt and what the pour can do to people: sums to teach, beside the cautions, never a permission. */
export function workHazards(working: Working, charge: Charge, drive: Drive): void {
  const { number, text, work } = working;
  const rho = number('metal.density.liquid');
  const T = number('melt.temperature');
  const known = sieverts.find(([name]) => name.test(text('metal')));
  if (known) {
    const [A, B] = known[1];
    work('melt.hydrogen', 'Hydrogen the melt takes up in a damp flame, at most', gas, {
      m: charge.mass,
      A,
      B,
      T,
      p: hydrogen,
    });
  }
  work('spill.sand', 'Dry sand in the tray', spillSand, {
    rho: tray.sand,
    A: number('tray.area'),
    s: tray.bed,
  });
  work('radiant', 'Radiant heat on the pouring hand', radiant, {
    eps: 1,
    T,
    T_a: number('room.temperature'),
    r: Math.sqrt(number('melt.mouth') / Math.PI),
    d: reach,
  });
  work('drop', 'Steam from one drop of water under the metal', steam, { m: drop, T, p: drive.ambient });
  const dp = number('suction.gauge');
  if (dp > 0)
    work('run-out', 'Metal through a crack of 10 mm² in two seconds', suctionRunOut, {
      C: crack.flow,
      rho,
      A: crack.area,
      t: crack.seconds,
      h: drive.head,
      dp,
    });
  if (isInvestment(working) && text('pattern') === 'casting-wax')
    work('vapour', 'Wax vapour that could burn in the kiln', burnoutVapour, {
      x: 0.007,
      M: 0.17,
      p: drive.ambient,
      V: number('kiln.volume'),
      T: 473.15,
    });
}
