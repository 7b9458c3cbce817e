import { coolingAfter } from '../../formulas/freezing/cooling-after.ts';
import { heatBalance } from '../../formulas/freezing/heat-balance.ts';
import { density } from '../../formulas/inspection/density.ts';
import type { Charge } from './charge.ts';
import { workFreezing, type Cooling } from './freezing.ts';
import type { Race } from './race.ts';
import { celsius, say } from './say.ts';
import { heaviestOf, type Section } from './sections.ts';
import type { Working } from './working.ts';

/** Steel of the flask, as if all of it were at the end as warm as the sand. */
const steel = { density: 7850, heat: 490 };
/** Modulus of a square bar over its side. */
const gateShape = 4;
/** Handled in gloves below this; a flask and a casting look the same at any heat below red. */
const handled = 323.15;
const knockedOut = 573.15;

/** When to let go of the suction, when to knock out, how warm it all stays, what it should weigh in water. */
export function workAfter(
  working: Working,
  charge: Charge,
  sections: readonly Section[],
  races: readonly Race[],
  cooling: Cooling,
): void {
  const { number, work, state, note } = working;
  const gate = Math.sqrt(number('gate.area')) / gateShape;
  const gateFreezes = workFreezing(
    working,
    { id: 'gate', name: 'Gate', modulus: gate, shapeNumber: 1 },
    cooling,
  );
  const thin = races.filter((race) => race.section.modulus <= gate);
  const hold = state(
    'release',
    'Hold the suction for',
    Math.max(...[gateFreezes, ...thin.map((race) => race.freezes)].filter(Number.isFinite)),
    's',
    'Until the gate and every section no thicker than it are solid; then off, so that metal is not drawn into the sand.',
  );
  const heaviest = heaviestOf(sections);
  const last = heaviest && races.find((race) => race.section === heaviest);
  if (last) {
    state(
      'last',
      `${heaviest.name}: the last to freeze, after`,
      last.freezes,
      's',
      'Do not move the flask before.',
    );
  }
  const d = number('flask.diameter');
  const sand = number('mould.density.bulk') * (Math.PI / 4) * d * d * number('flask.height');
  const wall = steel.density * Math.PI * d * number('flask.wall') * number('flask.height');
  const asSand = (wall * steel.heat) / number('mould.heat');
  const end = work('end.temperature', 'Metal and mould, if no heat were lost', heatBalance, {
    m: charge.mass - number('melt.heel'),
    m_m: sand + asSand,
    T_p: number('melt.temperature'),
    T_f: cooling.freezing,
    T_m: number('mould.temperature'),
    L: number('metal.latent'),
    c_l: number('metal.heat.liquid'),
    c_s: number('metal.heat.solid'),
    c_m: number('mould.heat'),
  });
  if (heaviest) {
    work('cool', `${heaviest.name}: out at 300 °C, to be handled after`, coolingAfter, {
      rho: number('metal.density.solid'),
      c: number('metal.heat.solid'),
      M: heaviest.modulus,
      h: 30,
      T_1: knockedOut,
      T_2: handled,
      T_a: number('room.temperature'),
    });
  }
  const part = working.kept.get('part.mass') ?? Number.NaN;
  work(
    'weigh.water',
    'One sound casting weighs in water',
    density,
    { rho: number('metal.density.solid'), rho_w: 998.2, m_a: part },
    'm_w',
  );
  if (number('suction.gauge') > 0) {
    note(
      () =>
        `Suction on before the pour, held ${say(hold, 's')} from a full mould, then off. A dry catch pot stands between flask and pump, never a water trap; nobody leans over the flask.`,
    );
  }
  if (Number.isFinite(end))
    note(
      () =>
        `Flask and sand stay near ${celsius(end)} for long after: gloves, and a marked place to set it down.`,
    );
}
