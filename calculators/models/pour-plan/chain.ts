import { metalLoss } from '../../formulas/filling/metal-loss.ts';
import { runLoss } from '../../formulas/filling/run-loss.ts';
import type { Charge } from './charge.ts';
import type { Drive } from './pressure.ts';
import type { Working } from './working.ts';

/** The temperature of the metal from the furnace to the gate, in kelvin. */
export function workChain(
  working: Working,
  charge: Pick<Charge, 'mass'>,
  drive: Pick<Drive, 'pour'>,
): number {
  const { number, work, state } = working;
  const start = number('melt.temperature');
  const carried = work('chain.carry', 'Lost on the way to the mould', metalLoss, {
    T: start,
    T_a: number('room.temperature'),
    epsilon: number('metal.emissivity'),
    h: number('melt.air'),
    A: number('melt.mouth'),
    t: number('melt.carry'),
    m: charge.mass,
    c: number('metal.heat.liquid'),
  });
  const cup = state(
    'chain.cup',
    'Temperature in the cup',
    start - carried - number('melt.cup'),
    'K',
    'Less the way, less the stream and the cup.',
  );
  const d = number('sprue.diameter');
  return alongRun(working, 'chain.gate', 'Temperature at the gate, after the sprue', {
    from: cup,
    length: number('sprue.length'),
    modulus: d / 4,
    speed: drive.pour / ((Math.PI / 4) * d * d),
  });
}

/** What is left of a temperature after a run through a channel; unchanged where the metal is no hotter than the mould. */
export function alongRun(
  working: Working,
  id: string,
  title: string,
  run: { readonly from: number; readonly length: number; readonly modulus: number; readonly speed: number },
): number {
  const { number, work } = working;
  const mould = number('mould.temperature');
  if (!(run.length > 0) || run.from <= mould) return run.from;
  if (!(run.speed > 0)) return mould;
  return work(id, title, runLoss, {
    T_1: run.from,
    T_m: mould,
    h: number('mould.interface'),
    l: run.length,
    rho: number('metal.density.liquid'),
    c: number('metal.heat.liquid'),
    M: run.modulus,
    v: run.speed,
  });
}
