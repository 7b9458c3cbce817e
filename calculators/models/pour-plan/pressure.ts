import type { Check } from '../../core/model.ts';
import { backPressure } from '../../formulas/filling/back-pressure.ts';
import { cornerRadius } from '../../formulas/filling/corner-radius.ts';
import { edgeRadius } from '../../formulas/filling/edge-radius.ts';
import { gateSpeed } from '../../formulas/filling/gate-speed.ts';
import { pourRate } from '../../formulas/filling/pour-rate.ts';
import { velocity } from '../../formulas/filling/velocity.ts';
import { steam } from '../../formulas/safety/steam.ts';
import { ambient } from '../../formulas/vacuum/ambient.ts';
import { atCavity } from '../../formulas/vacuum/at-cavity.ts';
import { gauge } from '../../formulas/vacuum/gauge.ts';
import { head as headOf } from '../../formulas/vacuum/head.ts';
import type { Charge } from './charge.ts';
import { say, unitSaid } from './say.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** What pushes the metal and what pushes back, in pascal; flows in m³/s. */
export interface Drive {
  readonly ambient: number;
  /** Ambient less cavity: what suction really does. */
  readonly suction: number;
  /** Share of the gauge that reaches the cavity. */
  readonly share: number;
  /** Metal above the gate, and above the highest or farthest place once it fills. */
  readonly head: number;
  readonly headLeft: number;
  /** Pressure of the metal at the far end: weight of the head left plus suction. */
  readonly pressure: number;
  /** Gas in the cavity above the pressure the suction leaves: air pushed out, and steam of what water is still there. */
  readonly gas: number;
  /** The same with all the water counted, as if the mould were no drier for being hot: for the safety gate. */
  readonly gasAtWorst: number;
  /** Flow to one casting, the smaller of what the gate passes and what you pour. */
  readonly flow: number;
  /** All of it through the sprue. */
  readonly pour: number;
  readonly gateSpeed: number;
}

const gravity = 9.80665;

export function workDrive(working: Working, charge: Charge, cooled: number): Drive {
  const { number, work, state } = working;
  const rho = number('metal.density.liquid');
  const barometer = number('site.barometer');
  const air = Number.isFinite(barometer)
    ? state('ambient', 'Air pressure here', barometer, 'Pa', 'From the barometer.')
    : work('ambient', 'Air pressure here', ambient, { p_0: 101_325, z: number('site.altitude') });
  const read = number('suction.gauge');
  work('gauge.absolute', 'Absolute pressure behind the gauge', gauge, { p_amb: air, p_g: read });
  const { suction, share } = workSuction(working, Math.min(read, air));

  const head = number('head');
  const fall = working.text('orientation') === 'standing' ? number('part.height') : 0;
  const headLeft = state(
    'head.left',
    'Head left at the far end',
    head - fall,
    'm',
    fall > 0 ? 'Standing: the head less the height of the part.' : 'Lying flat: the whole head.',
  );
  const pressure = workPressure(working, headLeft, suction);
  if (suction > 0) work('suction.as-head', 'The suction as a height of metal', headOf, { dp: suction, rho });

  const vGate = work('gate.speed', 'Speed at the gate with the sprue full', velocity, {
    C: number('gate.discharge'),
    h: head,
    dp: suction,
    p_cap: 0,
    rho,
  });
  const pour = work('pour.flow', 'Flow as you pour it', pourRate, {
    m: charge.mass,
    rho,
    t: number('pour.seconds'),
  });
  const each = pour / number('part.castings');
  const gateFlow = (Number.isNaN(vGate) ? 0 : vGate) * number('gate.area');
  const flow = state(
    'flow',
    'Flow into one casting',
    Math.min(each, gateFlow),
    'm³/s',
    each < gateFlow ? 'You pour slower than the gate would pass.' : 'The gate passes less than you pour.',
  );
  const gases = workGas(working, flow, cooled, air);
  return { ambient: air, suction, share, head, headLeft, pressure, ...gases, flow, pour, gateSpeed: vGate };
}

/** Weight of the head left plus the suction at the cavity, in pascal. */
export function workPressure({ number, state }: Working, headLeft: number, suction: number): number {
  return state(
    'pressure',
    'Pressure of the metal at the far end',
    number('metal.density.liquid') * gravity * headLeft + suction,
    'Pa',
    'ρ·g·h for the head left, plus the suction at the cavity.',
  );
}

function workSuction(working: Working, read: number): { suction: number; share: number } {
  const { number, work, state } = working;
  const K = number('mould.permeability');
  const where = working.text('suction.where');
  if (read <= 0) return { suction: state('suction', 'Suction at the cavity', 0, 'Pa', 'None.'), share: 1 };
  if (where === 'sealed') {
    const share = number('suction.seal');
    return {
      suction: state(
        'suction',
        'Suction at the cavity',
        read * share,
        'Pa',
        'What the seal keeps of the gauge reading.',
      ),
      share,
    };
  }
  if (!(K > 0)) {
    working.note('Suction does nothing through a mould that lets no air through: it is counted as none.');
    return {
      suction: state('suction', 'Suction at the cavity', 0, 'Pa', 'The mould lets no air through.'),
      share: 0,
    };
  }
  if (where === 'perforated') {
    working.note(
      'A perforated flask is worked as sand between suction and air of equal area. Its side is larger than its top, so more suction may reach the cavity than the sum says, and more force act on the mould.',
    );
  }
  const suction = work('suction', 'Suction at the cavity', atCavity, {
    dp_g: read,
    L_c: number('sand.cope'),
    K_d: K,
    L_d: number('sand.drag'),
    K_c: K,
  });
  return { suction, share: suction / read };
}

/** Free water leaves between these, when the mould is held there until its mass stops falling. */
const drying = [373.15, 383.15] as const;

function freeWater(working: Working): number {
  const mould = working.number('mould.temperature');
  if (working.text('mould.dried') !== 'held') return 1;
  return Math.min(1, Math.max(0, (drying[1] - mould) / (drying[1] - drying[0])));
}

/** Gas to be pressed out through the sand: the air the metal displaces and the steam of what water is left. */
function workGas(
  working: Working,
  flow: number,
  cooled: number,
  air: number,
): { gas: number; gasAtWorst: number } {
  const { number, work, state } = working;
  const K = number('mould.permeability');
  if (!(K > 0)) {
    const gas = state(
      'gas',
      'Gas pressing back',
      0,
      'Pa',
      'Not worked: the mould’s permeability is not known.',
    );
    working.note(
      'Whether gas gets out is not worked, for the mould’s permeability is not known: vent the far ends.',
    );
    return { gas, gasAtWorst: Number.NaN };
  }
  const known = number('mould.moisture');
  const water = state(
    'steam.water',
    'Water in the sand heated past boiling',
    cooled * number('steam.layer') * number('mould.density.bulk') * (Number.isNaN(known) ? 0 : known),
    'kg',
    'Surface × layer × density × share of water, one casting.',
  );
  const made =
    water > 0
      ? work('steam.volume', 'Steam it would make, at 100 °C', steam, { m: water, T: 373.15, p: air })
      : 0;
  const steaming = made / number('steam.seconds');
  const way = { mu: 1.8e-5, l: Math.min(number('sand.cope'), number('sand.drag')), K, A: cooled };
  return {
    gas: work('gas', 'Gas pressing back', backPressure, { Q: flow + steaming * freeWater(working), ...way }),
    gasAtWorst: work('gas.worst', 'Gas pressing back, all the water counted', backPressure, {
      Q: flow + steaming,
      ...way,
    }),
  };
}

export function judgeGateSpeed(working: Working, drive: Drive): Check[] {
  const { number, work } = working;
  const critical = work('gate.critical', 'Critical speed', gateSpeed, {
    gamma: number('metal.surface-tension'),
    rho: number('metal.density.liquid'),
  });
  const speeds = (): string =>
    `The metal enters at ${say(drive.gateSpeed, 'm/s')}; above ${say(critical, 'm/s')} it folds its own skin in`;
  return weigh(working, 'gate-speed', marginOf(critical, drive.gateSpeed), () => ({
    shows: 'gate.speed',
    title: 'Quiet at the gate',
    levers: ['suction.gauge', 'head', 'gate.discharge'],
    steps: ['suction', 'gate.speed', 'gate.critical'],
    why: {
      holds: `It enters quietly. ${speeds()}.`,
      close: `It only just enters quietly. ${speeds()}.`,
      fails: `Expect folded skin. ${speeds()}. Thin sections need the pressure: keep as little as fills them, and let the sprue fill before the suction opens.`,
    },
  }));
}

export function judgeEdge(working: Working, drive: Drive): Check[] {
  const { number, work } = working;
  const given = {
    gamma: number('metal.surface-tension'),
    rho: number('metal.density.liquid'),
    h: drive.headLeft,
    dp: drive.suction,
    p_gas: 0,
  };
  const edge = work('edge', 'Sharpest edge', edgeRadius, given);
  work('corner', 'Sharpest corner of three faces', cornerRadius, given);
  const wanted = number('edge.wanted');
  const margin = Number.isNaN(edge) ? marginOf(drive.pressure, 1) : marginOf(wanted, edge);
  const sizes = (): string =>
    `${say(drive.pressure, 'kPa')} fills an edge of ${say(edge, 'mm')}; you want ${say(wanted, 'mm')}`;
  return weigh(working, 'edge', margin, () => ({
    shows: 'edge',
    title: 'Edges as sharp as wanted',
    levers: ['suction.gauge', 'head', 'edge.wanted'],
    steps: ['pressure', 'edge', 'corner'],
    why: {
      holds: `The edges fill. ${sizes()}.`,
      fails: Number.isNaN(edge)
        ? 'No pressure is left at the far end, so no edge fills there.'
        : `Round the edge or add pressure: a warmer mould does nothing for it. ${sizes()}.`,
    },
  }));
}

export function judgeGauge(working: Working, drive: Drive): Check[] {
  const { number, state } = working;
  const read = number('suction.gauge');
  if (!(read > 0)) return [];
  const best = state(
    'gauge.best',
    'Best reading the pump reaches here',
    drive.ambient * number('suction.best'),
    'Pa',
    'Its share of the air pressure here.',
  );
  state('gauge.reading', 'What the gauge must read', read, 'Pa', 'As chosen, below the air here.');
  const sizes = (): string =>
    `The gauge must read ${unitSaid('kPa') === 'inHg' ? say(read, 'inHg', 3) : `${say(read, 'kPa')}, that is ${say(read, 'inHg')}`}; here the pump reaches ${say(best, 'kPa')}`;
  return weigh(working, 'gauge', marginOf(best, read), () => ({
    shows: 'gauge.reading',
    title: 'The pump reaches it here',
    levers: ['suction.gauge', 'suction.best', 'site.altitude'],
    steps: ['ambient', 'gauge.absolute', 'gauge.best'],
    why: { holds: `It can. ${sizes()}.`, fails: `No pump here pulls that. ${sizes()}.` },
  }));
}

export function judgeBlowBack(working: Working, drive: Drive): Check[] {
  const steamed = (working.kept.get('steam.volume') ?? 0) > 0;
  const sizes = (): string =>
    `Gas may press back with ${say(drive.gasAtWorst, 'kPa')} and the metal presses in with ${say(drive.pressure, 'kPa')}`;
  return weigh(working, 'blow-back', marginOf(drive.pressure, drive.gasAtWorst), () => ({
    shows: 'gas.worst',
    title: 'No blow-back',
    levers: ['mould.moisture', 'suction.gauge', 'head', 'mould.permeability'],
    steps: ['steam.water', ...(steamed ? ['steam.volume'] : []), 'gas.worst', 'pressure'],
    why: {
      holds: `The gas leaves through the sand. ${sizes()}.`,
      fails: `The mould can spit metal back up the sprue: dry it, vent the far ends, and keep your face off the sprue. ${sizes()}.`,
    },
  }));
}
