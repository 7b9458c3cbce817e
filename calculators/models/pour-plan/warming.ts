import type { Check, Result } from '../../core/model.ts';
import { flaskTemperature } from '../flask-temperature.ts';
import { schedule } from '../schedule.ts';
import { warmThrough } from '../warm-through.ts';
import { celsius, say } from './say.ts';
import { weigh } from './verdict.ts';
import type { Working } from './working.ts';

/** Closer to the room than this a mould is not warmed, only kept in it. */
const warmed = 20;
/** Kelvin the middle may fall short of what the rest of the plan counts on. */
const ovenSlack = 15;
const flaskSlack = 30;
const scale = 100;
/** Surface coefficients, W/(m²·K): out of the oven, in the kiln, out of a kiln. Estimates of the models they come from. */
const air = { mould: 12, kiln: 50, flask: 35 };

/** How the schedule speaks of a pattern; woods are natural. */
const burnsAs: Readonly<Record<string, string>> = {
  'casting-wax': 'wax',
  'castable-resin': 'resin',
  pla: 'resin',
};

export const isInvestment = (working: Working): boolean => /investment/.test(working.text('mould'));

/** How long in the oven or the kiln, and what is left of it when the metal comes. Nothing for a mould at room temperature. */
export function judgeWarming(working: Working): Check[] {
  const { number } = working;
  if (!(number('mould.temperature') > number('room.temperature') + warmed)) return [];
  return isInvestment(working) ? judgeKiln(working) : judgeOven(working);
}

const mouldOf = ({ number }: Working) => ({
  height: number('flask.height'),
  k: number('mould.conductivity'),
  rho: number('mould.density.bulk'),
  c: number('mould.heat'),
  T_air: number('room.temperature'),
  t_air: number('mould.out'),
});

/** A line from a model of its own: what it gives, or the sentence it refuses with. */
function line(
  working: Working,
  id: string,
  title: string,
  from: string,
  unit: 's' | 'K',
  value?: number,
): number {
  return working.state(id, title, value ?? Number.NaN, unit, from);
}

function judgeOven(working: Working): Check[] {
  const { number, note } = working;
  const want = number('mould.temperature');
  const oven = number('oven.temperature');
  const { values, notes }: Result = warmThrough.run({
    ...mouldOf(working),
    shape: 'flask',
    thickness: number('flask.diameter'),
    moisture: 0,
    T_start: number('room.temperature'),
    T_oven: oven,
    h_oven: number('oven.air'),
    T_want: want,
    h_air: air.mould,
  });
  const from = 'The card “Warming a mould through”, dry, as a cylinder of the flask’s size.';
  const time = line(
    working,
    'oven.time',
    `In the oven until the middle is at ${celsius(want)}`,
    from,
    's',
    values['time'],
  );
  const face = line(working, 'oven.face', 'Outside as it leaves the oven', from, 'K', values['face']);
  const middle = line(
    working,
    'oven.middle',
    'Middle when the metal comes',
    from,
    'K',
    values['centre_after'],
  );
  if (!Number.isFinite(time)) {
    for (const sentence of notes) note(sentence);
  } else if (working.text('mould.dried') !== 'none')
    note(
      'The oven time is for a dry mould. Water still in it about doubles the time: the balance decides, not the clock.',
    );
  const reaches = Number.isFinite(time) ? (middle - (want - ovenSlack)) / ovenSlack : -1;
  const stands = (number('mould.temperature.limit') - oven) / scale;
  const out = (): string => say(number('mould.out'), 's');
  return weigh(working, 'warming', Math.min(reaches, stands), () => ({
    shows: 'oven.time',
    title: 'Warm right through, and still warm',
    levers: stands < reaches ? ['oven.temperature'] : ['mould.out', 'oven.temperature'],
    steps: ['oven.time', 'oven.face', 'oven.middle'],
    why: {
      holds: `Leave it ${say(time, 'min')} in an oven at ${celsius(oven)}: the middle is then at ${celsius(want)} and the outside at ${celsius(face)}. After ${out()} in the air the middle is at ${celsius(middle)}.`,
      fails:
        stands < reaches
          ? `The oven is too hot for this mould: it stands ${celsius(number('mould.temperature.limit'))} and the oven is at ${celsius(oven)}.`
          : Number.isFinite(time)
            ? `It cools on the way: after ${out()} in the air the middle is at ${celsius(middle)}, and the rest counts on ${celsius(want)}.`
            : `An oven at ${celsius(oven)} never brings the middle to ${celsius(want)}.`,
    },
  }));
}

function judgeKiln(working: Working): Check[] {
  const { number, text, note } = working;
  const want = number('mould.temperature');
  const diameter = number('flask.diameter');
  const { height, ...mould } = mouldOf(working);
  const plan = schedule.run({
    ...mould,
    diameter,
    height,
    binder: /phosphate/.test(text('mould')) ? 'phosphate' : 'gypsum',
    pattern: burnsAs[text('pattern')] ?? 'natural',
    T_cast: want,
    h: air.kiln,
  });
  const { total, peak, soak } = plan.values;
  for (const sentence of plan.notes) note(sentence);
  const from = 'The card “Burnout schedule”; the maker’s sheet comes first.';
  line(working, 'kiln.total', 'In the kiln, from cold to ready', from, 's', total);
  line(working, 'kiln.peak', 'Peak of the burnout', from, 'K', peak);
  line(working, 'kiln.hold', 'Hold at the peak', from, 's', plan.values['hold_peak']);
  line(working, 'kiln.soak', 'Soak at the casting temperature', from, 's', soak);
  if (total === undefined || peak === undefined || soak === undefined)
    return weigh(working, 'warming', -1, () => ({
      title: 'Burnt out, and still hot',
      levers: ['mould.temperature'],
      steps: [],
      why: { holds: '', fails: plan.notes.join(' ') || 'There is no schedule for this mould.' },
    }));
  const flask = flaskTemperature.run({
    ...mould,
    diameter,
    height,
    cover: Math.max(0.003, (diameter - number('part.length')) / 2),
    T_peak: peak,
    T_kiln: want,
    t_kiln: soak,
    h_kiln: air.kiln,
    h_air: air.flask,
  });
  const out = (): string => say(number('mould.out'), 's');
  const cavity = line(
    working,
    'flask.cavity',
    'At the pattern when the metal comes',
    'The card “Flask temperature at the pour”.',
    'K',
    flask.values['cavity'],
  );
  return weigh(working, 'warming', (cavity - (want - flaskSlack)) / flaskSlack, () => ({
    shows: 'kiln.total',
    title: 'Burnt out, and still hot',
    levers: ['mould.out'],
    steps: ['kiln.total', 'kiln.peak', 'kiln.hold', 'kiln.soak', 'flask.cavity'],
    why: {
      holds: `Plan ${say(total, 'h')} in the kiln with a peak of ${celsius(peak)}. After ${out()} out of it the cavity is at ${celsius(cavity)}.`,
      fails: `Too long out of the kiln: after ${out()} the cavity is at ${celsius(cavity)}, and the rest counts on ${celsius(want)}.`,
    },
  }));
}
