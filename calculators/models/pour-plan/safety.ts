import type { Check } from '../../core/model.ts';
import { celsius, say } from './say.ts';
import { marginOf, weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** Half a per cent of water under a part of this size already makes more steam than a low head presses against. */
const driest = 0.005;
/** Zinc fume begins to matter with a few per cent; any lead does. Common practice: ask for the metal's safety sheet. */
const zincFrom = 0.03;

export function judgeDryness(working: Working): Check[] {
  const { number } = working;
  const dried = working.text('mould.dried');
  const known = number('mould.moisture');
  const moisture = Number.isNaN(known) ? 0 : known;
  const wet = (): string => `${say(moisture, '%')} of water`;
  if (dried === 'warmed') {
    return weigh(working, 'dryness', -Math.log(2), () => ({
      title: 'The mould is dry',
      levers: [],
      steps: [],
      why: {
        holds: '',
        fails: `Weigh it: hold it at ${celsius(383.15)} or more until its mass stops falling. Warm to the hand says nothing about the middle. A torch passed over a cold mould wets it.`,
      },
    }));
  }
  return weigh(working, 'dryness', marginOf(driest, moisture), () => ({
    title: 'The mould is dry',
    levers: ['mould.moisture'],
    steps: ['steam.water'],
    why: {
      holds:
        dried === 'held'
          ? `Dry: its mass stopped falling, ${wet()} left. Pour the same day.`
          : `Dry enough as it is: ${wet()}.`,
      fails: `Not dry: ${wet()}, and ${say(driest, '%')} is the most under a small part. Dry and weigh it, or pour a heavier part with vents.`,
    },
  }));
}

/** What the name of a metal gives away when its zinc and lead are not told. */
const namesZinc = /zinc|brass|gunmetal|nickel-silver/;
const namesLead = /lead/;

export function judgeFume(working: Working): Check[] {
  const { number } = working;
  const metal = working.text('metal');
  const zinc = number('metal.zinc');
  const lead = number('metal.lead');
  const hasZinc = Number.isNaN(zinc) ? namesZinc.test(metal) : zinc > zincFrom;
  const hasLead = Number.isNaN(lead) ? namesLead.test(metal) : lead > 0;
  const margin = hasLead ? -0.5 : hasZinc ? 0 : 1;
  return weigh(working, 'fume', margin, () => ({
    title: 'Zinc and lead',
    levers: [],
    steps: [],
    why: {
      holds: 'No zinc and no lead by its name. Extract all the same: copper and flux fume harm lungs too.',
      close:
        'Zinc fumes when it is poured: extract at the crucible and the mould, stand upwind, keep the heat low. Fever hours later is zinc.',
      fails:
        'It holds lead: not in a teaching shop. Extraction, gloves, washing, no food near, and your local law on lead before anything else.',
    },
  }));
}
