import type { Check } from '../../core/model.ts';
import { demand } from '../../formulas/feeding/demand.ts';
import { modulusChain } from '../../formulas/feeding/modulus-chain.ts';
import { none } from '../../formulas/feeding/none.ts';
import { volumeRule } from '../../formulas/feeding/volume-rule.ts';
import type { Charge } from './charge.ts';
import { say } from './say.ts';
import { heaviestOf, type Section } from './sections.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

const chainStep = 1.2;

export function judgeFeeding(
  working: Working,
  charge: Charge,
  sections: readonly Section[],
  gate: number,
): Check[] {
  const { number, work } = working;
  const beta = number('metal.shrinkage.freezing');
  const lost = work('shrinkage', 'Volume lost, one casting', demand, {
    V: charge.volume,
    beta,
    a: number('metal.contraction.liquid') / 100,
    dT: Math.max(0, gate - number('metal.liquidus')),
  });
  const heaviest = heaviestOf(sections);
  if (!heaviest) return [];
  if (!(beta > 0)) {
    working.note('This metal does not shrink on freezing: feeding is not worked.');
    return [];
  }
  if (working.text('feeder') === 'none') return judgeNone(working, heaviest, lost, beta);
  const wanted = work('feeder.modulus-needed', 'Modulus the feeder needs', modulusChain, {
    M_1: heaviest.modulus,
    k: chainStep,
  });
  const volume = work('feeder.volume-needed', 'Volume the feeder needs', volumeRule, {
    V: charge.volume,
    beta,
    e: number('feeder.gives'),
  });
  const byModulus = marginOf(number('feeder.modulus'), wanted);
  const byVolume = Number.isNaN(volume) ? -5 : marginOf(number('feeder.volume'), volume);
  const sizes = (): string =>
    `The heaviest place, ${heaviest.name.toLowerCase()}, wants a feeder of modulus ${say(wanted, 'mm')} and you have ${say(number('feeder.modulus'), 'mm')}; the casting wants ${say(volume, 'cm³')} and you have ${say(number('feeder.volume'), 'cm³')}`;
  return weigh(working, 'feeding', Math.min(byModulus, byVolume), () => ({
    shows: byVolume < byModulus ? 'feeder.volume-needed' : 'feeder.modulus-needed',
    title: 'The feeder feeds',
    levers: byVolume < byModulus ? ['feeder.volume', 'feeder.gives'] : ['feeder.modulus'],
    steps: ['shrinkage', 'feeder.modulus-needed', 'feeder.volume-needed'],
    why: { holds: `It feeds. ${sizes()}.`, fails: `It does not feed. ${sizes()}.` },
  }));
}

function judgeNone(working: Working, heaviest: Section, lost: number, beta: number): Check[] {
  const { number, work } = working;
  const pore = work('pore', `Hole left in each piece of ${heaviest.name.toLowerCase()}`, none, {
    f: beta,
    V: heaviest.piece,
  });
  const allowed = number('pore.allowed');
  const sizes = (): string =>
    `${say(lost, 'mm³')} of the part is lost. Last to freeze: ${heaviest.name.toLowerCase()}; each piece may hide one hole of ${say(pore, 'mm')}, or the same spread out, or a sink on top`;
  return weigh(working, 'feeding', marginOf(allowed, pore), () => ({
    shows: 'pore',
    title: 'What shrinks with no feeder',
    levers: ['pore.allowed'],
    steps: ['shrinkage', 'pore'],
    why: {
      holds: `You accept it. ${sizes()}.`,
      fails: `More than the ${say(allowed, 'mm')} you accept: feed the heavy places, thin them, or gate into one. ${sizes()}.`,
    },
  }));
}
