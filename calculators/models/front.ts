import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, numberAt } from './given.ts';
import { decidingIn, entryFactor, entryMargin, marginIn, raceMargin } from './front/deciding.ts';
import { follow } from './front/follow.ts';
import { pourOf } from './front/given-pour.ts';
import { inputs } from './front/inputs.ts';
import { leastOf, leverOf, levers, whatEachDoes, type Lever } from './front/levers.ts';
import type { Pour } from './front/pour.ts';
import type { Race } from './front/race.ts';
import { storyOf } from './front/story.ts';
import { celsius, say } from './pour-plan/say.ts';
import { judge } from './pour-plan/verdict.ts';

function checkOf(pour: Pour, race: Race, c: number): Check[] {
  const front = race.fronts[c]!;
  const story = storyOf(front, pour.channels[c]!.length);
  const barely =
    raceMargin(pour, race, c) >= 0 && entryMargin(front) < 0
      ? ` So says the sum; but the metal presses with ${say(front.pressure, 'kPa')} where the mouth resists with ${say(front.resists, 'kPa')}: under ${entryFactor} times as much, a speck of skin or sand stops it.`
      : '';
  return judge({
    id: `front.${c + 1}`,
    title: `${pour.channels[c]!.name}: fills before it stops`,
    margin: front.ended === 'never' ? -5 : marginIn(pour, race, c),
    levers,
    steps: [`front.${c + 1}`],
    shows: `front.${c + 1}`,
    why: { holds: story, close: `${story} Little is to spare.`, fails: story + barely },
  });
}

const ends: Readonly<Record<Lever, (pour: Pour, given: Values) => number>> = {
  suction: ({ drive }) => 0.85 * drive.ambient,
  head: () => 0.5,
  T_mould: ({ metal }, given) => Math.min(numberAt(given, 'T_limit') || metal.solidus, metal.solidus, 1200),
  T_gate: ({ metal }) => metal.gate + 200,
};

const named: Readonly<Record<Lever, { readonly title: string; readonly unit: 'kPa' | 'mm' | '°C' }>> = {
  suction: { title: 'More suction at the cavity', unit: 'kPa' },
  head: { title: 'More head', unit: 'mm' },
  T_mould: { title: 'A warmer mould', unit: '°C' },
  T_gate: { title: 'Hotter metal', unit: '°C' },
};

/** What one change alone would have to be for every section to fill. */
function changesThatDo(pour: Pour, given: Values): Step[] {
  return levers.map((lever): Step => {
    const { title, unit } = named[lever];
    const end = ends[lever](pour, given);
    const value = leastOf(pour, lever, end);
    const id = `change.${lever}`;
    if (value === undefined)
      return { id, title: `${title} alone`, note: `Not enough, up to ${say(end, unit, 3)}.` };
    const now = say(leverOf(pour, lever), unit, 3);
    return { id, title: `${title} alone: every section fills from`, value, unit, note: `Now ${now}.` };
  });
}

const words: Readonly<Record<Lever, string>> = {
  T_mould: 'With the mould 50 °C warmer',
  suction: 'With 5 kPa more at the cavity',
  T_gate: 'With the metal 50 °C hotter',
  head: 'With more head',
};

function run(given: Values): Result {
  const read = pourOf(given);
  if (!read.ok) return noResult(read.why);
  const { pour } = read;
  if (pour.metal.gate <= pour.metal.liquidus - pour.metal.stop * (pour.metal.liquidus - pour.metal.solidus))
    return noResult(
      `At ${celsius(pour.metal.gate)} the metal is too stiff to flow before it reaches the gate: its liquidus is ${celsius(pour.metal.liquidus)}.`,
    );
  const race = follow(pour);
  const at = decidingIn(pour, race);
  const front = race.fronts[at]!;
  const channel = pour.channels[at]!;
  const wetted = pour.channels.reduce((sum, { area, alike, length }) => sum + area * alike * length, 0);
  const steps: Step[] = [];
  if (Number.isNaN(numberAt(given, 'b')))
    steps.push({
      id: 'b',
      title: 'How greedily the mould drinks heat',
      formula: 'freezing/heat-diffusivity',
      given: {
        k: numberAt(given, 'k'),
        rho: numberAt(given, 'rho_mould'),
        c: numberAt(given, 'c_mould'),
      },
      find: 'b',
      value: pour.mould.b,
      unit: 'J·s^-½/(m²·K)',
    });
  steps.push({
    id: 'resists',
    title: `${channel.name}: pressure to enter`,
    ...(channel.shape === 'bar'
      ? {
          formula: 'filling/entry-pressure',
          given: { gamma: pour.metal.gamma, theta: pour.metal.theta, a: channel.thickness, c: channel.width },
          find: 'p_cap',
        }
      : {}),
    value: front.resists,
    unit: 'kPa',
  });
  for (const [i, one] of race.fronts.entries())
    steps.push({
      id: `front.${i + 1}`,
      title: `${pour.channels[i]!.name}: the metal runs`,
      value: one.reached,
      unit: 'mm',
      note: storyOf(one, pour.channels[i]!.length),
    });
  for (const other of whatEachDoes(pour)) {
    const then = other.race.fronts[at]!;
    steps.push({
      id: `with.${other.lever}`,
      title: `${words[other.lever]}: ${channel.name}, has over needs`,
      value: Math.exp(Math.max(-5, marginIn(other.pour, other.race, at) || -5)),
      unit: '1',
      note: storyOf(then, channel.length),
    });
  }
  const fails = race.fronts.some(({ ended }) => ended === 'never') || marginIn(pour, race, at) < 0;
  if (fails) steps.push(...changesThatDo(pour, given));
  const notes: string[] = [];
  if (Number.isNaN(pour.mould.permeability))
    notes.push(
      'The mould’s permeability is not known: the air pushed out is not counted. Vent the far ends.',
    );
  const steep = pour.channels.find(({ rise, length }) => Math.abs(rise) > length * (1 + 1e-9));
  if (steep) notes.push(`${steep.name} rises or falls by more than its length: one of the two is wrong.`);
  return {
    values: known({
      reached: front.reached,
      share: front.reached / channel.length,
      time: front.time,
      temperature: front.temperature,
      solid: front.solid,
      margin: Math.exp(marginIn(pour, race, at)),
      cavity: Math.min(1, race.held / wetted),
      last: race.time,
    }),
    steps,
    checks: race.fronts.flatMap((_, c) => checkOf(pour, race, c)),
    notes,
  };
}

/**
 * The race of the fronts through a tree of sections: what moves the metal, what it loses on the way, and where and
 * why each front ends. `follow` in `front/follow.ts` gives the whole history for figures. SI throughout.
 */
export const front = defineModel({
  id: 'filling/front',
  title: 'The race of the fronts',
  answers: 'Does the metal reach the end of every section, and if not, what stops it where?',
  inputs,
  outputs: {
    reached: { name: 'run of the metal in the section that decides', unit: 'm', show: 'mm' },
    share: { name: 'of its length', unit: '1', show: '%' },
    time: { name: 'when its front came to its end', sign: 't', unit: 's' },
    temperature: { name: 'head of its stream then', unit: 'K', show: '°C' },
    solid: { name: 'share solid in it then', unit: '1', show: '%' },
    margin: { name: 'what it has over what it needs', unit: '1' },
    cavity: { name: 'of the whole cavity filled', unit: '1', show: '%' },
    last: { name: 'when the last front ended', unit: 's' },
  },
  run,
  assumes: [
    'one stream wide: every channel runs full behind its front, and the sprue is full from the first moment',
    'the metal travels as a plug: hotter metal from behind does not overtake the head of the stream, which is mixed over one thickness',
    'smooth walls; a front that surges past what the pressure holds falls back; metal does not run back otherwise',
    'the wall takes heat by how long each place has been covered, through the interface coefficient and a mould thick enough that its outside stays cool',
    'flow stops when a fixed share of the metal at the head is solid; until then it is as thin as liquid',
    'measured lengths rise faster with superheat than this says, 1.4 times and more from 650 to 730 °C where this says 1.3, most of all where a shell grows on a chilling wall; both rise evenly',
    'from 5 to 30 kPa of suction the run grows to 1.55 (steel) and 1.72 times (quartz) in the one test that was read, to 2.45 by the rule that leaves friction out, here to 2.1 to 2.2: within the two, above the test. Entry, thickness of the liquid and tension do not explain it, more of them widens it; the roughest wall would leave 1.8, and 100 mm of head besides the suction 1.9. The metal there must cool the faster the faster it runs, and no source says by how much: so count on less than this from more suction. The page of evidence sets these trends beside each other',
    'sections share one flow: what helps one may starve another',
    'air is pushed out through the sand at one temperature; steam and smoke are given, not worked',
  ],
  source: {
    key: 'flemings',
    at: 'ch. 7, fluidity; with the unsteady Bernoulli equation along each way',
    how: 'memory',
  },
  alsoSee: [
    { key: 'carslaw-jaeger', at: '§2.7, half-space behind a surface coefficient', how: 'memory' },
    { key: 'campbell', at: 'ch. 3, fluidity and surface tension', how: 'memory' },
    { key: 'poirier-geiger', at: 'friction in pipes; flow through porous media', how: 'memory' },
  ],
  examples: [
    {
      title: 'Web of the lamp shield fed at half a metre a second, a metal that freezes at one temperature',
      given: {
        sections: [{ name: 'Web', from: 'gate', length: '1 m', width: '2.2 mm', thickness: '1.4 mm' }],
        T_gate: '915 °C',
        solidus: '914.99 °C',
        liquidus: '915 °C',
        rho: '7520 kg/m³',
        c: '520 J/(kg·K)',
        L: '150 kJ/kg',
        f_stop: '30 %',
        T_mould: '150 °C',
        h_interface: '1000 W/(m²·K)',
        b: '40000 J·s^-½/(m²·K)',
        flow: '1.54 cm³/s',
        suction: '15 kPa',
      },
      expect: { reached: '95 mm', solid: '30 %' },
      from: {
        byHand:
          'A mould that stays cold at its face, so the coefficient alone decides. 1.4 × 2.2 = 3.08 mm², rim 7.2 mm, M = 0.4278 mm; 1.54 cm³/s is 0.5 m/s, less than the pressure would give. Heat to lose 7520 × 0.0004278 × 0.3 × 150 000 = 144 760 J/m², at 1000 × 765 = 765 000 W/m²: 0.1892 s, × 0.5 m/s = 94.6 mm.',
      },
    },
  ],
  caution: [
    'Suction pulls metal through any crack. Use a dry catch pot, keep nobody over the flask, and be able to let the air back in at once.',
    'Gas that presses harder than the metal blows it back up the sprue: dry and vent the mould, and keep your face away from the sprue.',
  ],
  words: ['fluidity', 'misrun', 'cold shut', 'race', 'web', 'flow length', 'does it fill'],
});
