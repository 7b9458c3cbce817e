import type { Check } from '../../core/model.ts';
import { crucibleFit } from '../../formulas/charge/crucible-fit.ts';
import { massFromPattern } from '../../formulas/charge/mass-from-pattern.ts';
import { massFromVolume } from '../../formulas/charge/mass-from-volume.ts';
import { total } from '../../formulas/charge/total.ts';
import { castingYield } from '../../formulas/charge/yield.ts';
import { modulus } from '../../formulas/freezing/modulus.ts';
import { contraction } from '../../formulas/pattern/contraction.ts';
import { say } from './say.ts';
import type { Section } from './sections.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

export interface Charge {
  /** Volume of one casting. */
  readonly volume: number;
  /** What is weighed out. */
  readonly mass: number;
}

/** Pattern size, mass of the part, charge. Liquid metal fills the cavity, but the charge is weighed as if solid: the safe side. */
export function workCharge(working: Working, sections: readonly Section[]): Charge {
  const { number, work, state } = working;
  work('pattern.length', 'Length of the pattern', contraction, {
    L: number('part.length'),
    s: number('metal.contraction.pattern'),
  });
  const castings = number('part.castings');
  const rho = number('metal.density.solid');
  const by = working.text('part.by');

  let part: number;
  let volume: number;
  if (by === 'pattern') {
    part = work('part.mass', 'Mass of one casting', massFromPattern, {
      m_p: number('pattern.mass'),
      rho_m: rho,
      rho_p: number('pattern.density.solid'),
      s: working.flag('pattern.allowance') ? number('metal.contraction.pattern') : 0,
    });
    volume = work('part.volume', 'Volume of one casting', massFromVolume, { m: part, rho }, 'V');
  } else {
    volume =
      by === 'volume'
        ? state('part.volume', 'Volume of one casting', number('part.volume'), 'm³', 'As given.')
        : state(
            'part.volume',
            'Volume of one casting',
            sections.reduce((sum, section) => sum + section.volume, 0),
            'm³',
            'The sections together, joints counted once in each.',
          );
    part = work('part.mass', 'Mass of one casting', massFromVolume, { rho, V: volume });
  }
  if (by === 'volume') {
    work('part.modulus', 'Modulus of the whole casting', modulus, { V: volume, A: number('part.area') });
  }

  const sprue = work('sprue.mass', 'Mass of sprue, cup and gates', massFromVolume, {
    rho,
    V: number('sprue.volume'),
  });
  const feeder =
    working.text('feeder') === 'none'
      ? 0
      : work('feeder.mass', 'Mass of the feeder', massFromVolume, { rho, V: number('feeder.volume') });
  const mass = work('charge', 'Charge to weigh out', total, {
    m_part: part * castings,
    m_sprue: sprue,
    m_feeder: feeder,
    m_heel: number('melt.heel'),
    w: number('metal.loss.melting'),
  });
  work('yield', 'Yield', castingYield, { m_part: part * castings, m: mass });
  return { volume, mass };
}

export function judgeCrucible(working: Working, charge: Charge): Check[] {
  const { number, work } = working;
  const holds = work('crucible.holds', 'What the crucible holds', crucibleFit, {
    rho_l: number('metal.density.liquid'),
    V: number('crucible.volume'),
    f: number('crucible.fill'),
  });
  const sizes = (): string =>
    `${say(charge.mass, 'g', 3)} of charge; ${say(holds, 'g', 3)} of metal stands at ${say(number('crucible.fill'), '%')} of the crucible`;
  return weigh(working, 'crucible', marginOf(holds, charge.mass), () => ({
    shows: 'charge',
    title: 'The crucible holds the charge',
    levers: ['crucible.volume', 'sprue.volume', 'crucible.fill', 'part.castings'],
    steps: ['part.mass', 'charge', 'crucible.holds'],
    why: {
      holds: `It fits. ${sizes()}.`,
      close: `It just fits. ${sizes()}.`,
      fails: `Take a larger crucible or melt less. ${sizes()}.`,
    },
  }));
}
