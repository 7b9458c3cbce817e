import type { Check } from '../../core/model.ts';
import { energy } from '../../formulas/melting/energy.ts';
import { pourWindow } from '../../formulas/melting/pour-window.ts';
import { time } from '../../formulas/melting/time.ts';
import type { Charge } from './charge.ts';
import { celsius, say } from './say.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

const scale = 100;

export function judgeMelt(working: Working, charge: Charge): Check[] {
  const { number, work } = working;
  const pour = number('melt.temperature');
  const lowest = number('metal.pour.lowest');
  const highest = number('metal.pour.highest');
  const heat = work('melt.energy', 'Heat to melt and warm charge and crucible', energy, {
    m: charge.mass,
    c_s: number('metal.heat.solid'),
    T_m: number('metal.liquidus'),
    T_0: number('room.temperature'),
    L: number('metal.latent'),
    c_l: number('metal.heat.liquid'),
    T_p: pour,
    m_k: number('crucible.mass'),
    c_k: number('crucible.heat'),
  });
  const takes = work('melt.time', 'Time to melt', time, {
    E: heat,
    eta: number('furnace.efficiency'),
    P: number('furnace.power'),
  });
  // The crucible's own warmth is left out: it gives the safe answer for one that was only just heated.
  const window = work('melt.window', 'Seconds in hand', pourWindow, {
    m: charge.mass,
    c: number('metal.heat.liquid'),
    m_k: 0,
    c_k: number('crucible.heat'),
    T_f: pour,
    T_l: lowest,
    A: number('melt.mouth'),
    eps: number('metal.emissivity'),
    T_a: number('room.temperature'),
    h: number('melt.air'),
  });
  const carry = number('melt.carry');
  const range = (): string =>
    `The metal wants ${celsius(lowest)} to ${celsius(highest)}; it leaves the furnace at ${celsius(pour)}`;
  const low = (pour - lowest) / scale;
  const high = (highest - pour) / scale;
  const limit = number('crucible.temperature.limit');
  return [
    ...weigh(working, 'pour-temperature', Math.min(low, high), () => ({
      title: 'Pouring temperature',
      levers: ['melt.temperature'],
      steps: ['melt.energy', 'melt.time'],
      why: {
        holds: `Pour at ${celsius(pour)}. ${range()}. Melting takes about ${say(takes, 'min')}.`,
        close: `Pour at ${celsius(pour)}, near an end of the range. ${range()}.`,
        fails: low < high ? `Too cold. ${range()}.` : `Too hot: gas, fume and burnt-in sand. ${range()}.`,
      },
    })),
    ...weigh(working, 'seconds', Number.isNaN(window) ? -1 : marginOf(window, carry), () => ({
      shows: 'melt.window',
      title: 'Seconds in hand',
      levers: ['melt.carry', 'melt.temperature', 'melt.mouth'],
      steps: ['charge', 'melt.window'],
      why: {
        holds: `You have ${say(window, 's')} and take ${say(carry, 's')}. Warm the crucible through and set it beside the mould.`,
        close: `You have ${say(window, 's')} and take ${say(carry, 's')}: rehearse it cold.`,
        fails: Number.isNaN(window)
          ? `None: the metal leaves the furnace below its lowest pouring temperature, ${celsius(lowest)}.`
          : `You have ${say(window, 's')} and take ${say(carry, 's')}: bring the mould nearer, cover the melt, or pour hotter inside the range.`,
      },
    })),
    ...weigh(working, 'crucible-heat', (limit - pour) / scale, () => ({
      title: 'The crucible stands the heat',
      levers: ['melt.temperature'],
      steps: [],
      why: {
        holds: `It stands ${celsius(limit)}; the metal is at ${celsius(pour)}.`,
        fails: `Take another crucible: it stands ${celsius(limit)} and the metal is at ${celsius(pour)}.`,
      },
    })),
  ];
}
