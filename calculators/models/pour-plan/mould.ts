import type { Check } from '../../core/model.ts';
import { flowTimeInterface } from '../../formulas/filling/flow-time-interface.ts';
import type { Cooling } from './freezing.ts';
import { raceFactor, type Race } from './race.ts';
import { celsius } from './say.ts';
import { weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** Kelvin under a limit that count as one unit of margin. */
const scale = 100;
const boiling = 373.15;

/**
 * What the tightest section would need by filling alone, with the metal arriving as it does now. Kept as a
 * line only where it asks for warmth; a very cold answer only means that filling does not need any.
 */
function workNeeded(working: Working, races: readonly Race[], cooling: Cooling): number | undefined {
  const { number, work } = working;
  const [tightest] = races.filter((race) => race.speed > 0).sort((a, b) => a.margin - b.margin);
  if (!tightest) return undefined;
  const given = {
    t: raceFactor * tightest.fills,
    rho: number('metal.density.liquid'),
    M: tightest.section.modulus,
    f: Math.min(1, number('metal.critical-solid')),
    L: number('metal.latent'),
    c: number('metal.heat.liquid'),
    dT: tightest.arrives - number('metal.liquidus'),
    h: number('mould.interface'),
    T_f: cooling.freezing,
  };
  const needed = working.solverOf(flowTimeInterface, 'T_m')(given);
  if (!(needed > number('room.temperature'))) return needed;
  const title = `Mould temperature ${tightest.section.name.toLowerCase()} would need`;
  return work('mould.needed', title, flowTimeInterface, given, 'T_m');
}

/** Needed, chosen, tolerated. A mould past its limit fails whatever it would do for the metal. */
export function judgeMould(working: Working, races: readonly Race[], cooling: Cooling): Check[] {
  const { number } = working;
  const chosen = number('mould.temperature');
  const limit = number('mould.temperature.limit');
  const needed = workNeeded(working, races, cooling);
  const room = number('room.temperature');
  const need = (): string =>
    needed === undefined
      ? 'No warmth fills a section the pressure does not enter'
      : !(needed > room)
        ? 'Filling needs no warmth: warm it to be dry'
        : needed > limit
          ? `To fill by heat alone it would want ${celsius(needed)}, more than it stands: use pressure or thicker sections`
          : `Filling wants ${celsius(needed)}`;
  const neverBaked = limit < boiling && working.text('mould.dried') === 'held';
  const hottest = neverBaked ? Math.max(chosen, boiling) : chosen;
  const checks = weigh(working, 'mould', (limit - hottest) / scale, () => ({
    shows: 'mould.needed',
    title: 'Mould temperature',
    levers: ['mould.temperature'],
    steps: ['freezing', 'mould.diffusivity', ...(working.kept.has('mould.needed') ? ['mould.needed'] : [])],
    why: {
      holds: `Pour at ${celsius(chosen)}; it stands ${celsius(limit)}. ${need()}.`,
      close: `Pour at ${celsius(chosen)}, close to the ${celsius(limit)} it stands. ${need()}.`,
      fails: neverBaked
        ? `Never bake this sand: it stands ${celsius(limit)}, and above that its binder smokes, runs and can catch fire. Keep it dry instead of drying it.`
        : `Too hot: the mould is at ${celsius(chosen)} and its binder stands ${celsius(limit)}. ${need()}.`,
    },
  }));
  const metal = number('melt.temperature');
  const takes = number('mould.temperature.metal');
  return [
    ...checks,
    ...weigh(working, 'mould-metal', (takes - metal) / scale, () => ({
      title: 'The mould takes metal this hot',
      levers: ['melt.temperature'],
      steps: [],
      why: {
        holds: `It takes metal up to ${celsius(takes)}; this leaves the furnace at ${celsius(metal)}.`,
        fails: `Choose another mould: this one takes metal up to ${celsius(takes)} and yours is ${celsius(metal)}.`,
      },
    })),
  ];
}
