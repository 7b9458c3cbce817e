import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { judge, marginOf } from './pour-plan/verdict.ts';
import { celsius, say } from './pour-plan/say.ts';
import { known, knownSteps, noResult, notAboveNought, numberAt, textAt } from './given.ts';
import {
  afterOne,
  afterTwo,
  modulusOf,
  timeToReach,
  type Body,
  type Stay,
  type Stuff,
} from './warming/body.ts';
import { boiling, dryingTime } from './warming/drying.ts';
import { stuffInputs } from './warming/inputs.ts';

const shapes = {
  plate: 'slab, warmed on both faces',
  'one-face': 'slab, warmed on one face only',
  cylinder: 'long cylinder, warmed all round',
  flask: 'cylinder of this height, warmed all over',
  ball: 'ball',
} as const;

function bodyOf(shape: string, thickness: number, height: number): Body {
  if (shape === 'one-face') return [{ shape: 'plate', half: thickness }];
  if (shape === 'cylinder') return [{ shape: 'cylinder', half: thickness / 2 }];
  if (shape === 'ball') return [{ shape: 'sphere', half: thickness / 2 }];
  if (shape === 'flask')
    return [
      { shape: 'cylinder', half: thickness / 2 },
      { shape: 'plate', half: height / 2 },
    ];
  return [{ shape: 'plate', half: thickness / 2 }];
}

const inputs = {
  shape: { kind: 'choice', name: 'shape of the mould', options: shapes, usual: 'plate', first: true },
  thickness: {
    kind: 'quantity',
    name: 'thickness or diameter',
    unit: 'm',
    show: 'mm',
    range: [0.005, 0.4],
    why: 'small moulds; a larger one wants a day',
    usual: 0.07,
    first: true,
  },
  height: {
    kind: 'quantity',
    name: 'height, for a cylinder warmed all over',
    unit: 'm',
    show: 'mm',
    range: [0.01, 0.5],
    why: 'small moulds',
    usual: 0.1,
  },
  ...stuffInputs('dry-silica-sand'),
  moisture: {
    kind: 'quantity',
    name: 'water left in it, by mass of dry sand',
    unit: '1',
    show: '%',
    range: [0, 0.1],
    why: 'more than moulding sand holds',
    usual: 0,
    note: 'Every gram must boil away before the place it sits in passes 100 °C.',
    group: 'Mould',
  },
  T_start: {
    kind: 'quantity',
    name: 'temperature at the start',
    sign: 'T_0',
    unit: 'K',
    show: '°C',
    range: [260, 320],
    why: 'a workshop',
    usual: 293.15,
  },
  T_oven: {
    kind: 'quantity',
    name: 'oven temperature',
    unit: 'K',
    show: '°C',
    range: [325, 600],
    why: 'drying and warming; a burnout has its own schedule',
    usual: 493.15,
    first: true,
  },
  h_oven: {
    kind: 'quantity',
    name: 'surface coefficient in the oven',
    unit: 'W/(m²·K)',
    range: [5, 60],
    why: 'from still air to a strong fan',
    usual: 20,
    note: 'Air and radiation together: 12 to 20 in still air, 25 to 40 with a fan. An estimate.',
  },
  T_want: {
    kind: 'quantity',
    name: 'temperature wanted in the middle',
    unit: 'K',
    show: '°C',
    range: [325, 600],
    why: 'drying and warming',
    usual: 413.15,
    first: true,
  },
  t_oven: {
    kind: 'quantity',
    name: 'time in the oven, when it is fixed',
    unit: 's',
    show: 'min',
    range: [1, 100000],
    why: 'up to a day',
    note: 'Leave it open and the mould stays in until its middle is as wanted.',
  },
  T_air: {
    kind: 'quantity',
    name: 'air it is carried through',
    unit: 'K',
    show: '°C',
    range: [260, 320],
    why: 'a workshop',
    usual: 293.15,
    group: 'Out of the oven',
  },
  h_air: {
    kind: 'quantity',
    name: 'surface coefficient in the air',
    unit: 'W/(m²·K)',
    range: [5, 60],
    why: 'from still air to a draught',
    usual: 12,
    group: 'Out of the oven',
  },
  t_air: {
    kind: 'quantity',
    name: 'time out of the oven until the pour',
    unit: 's',
    show: 'min',
    range: [0, 7200],
    why: 'longer than two hours it is cold again',
    usual: 120,
    group: 'Out of the oven',
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(
    given,
    inputs,
    'thickness',
    'k',
    'rho',
    'c',
    'h_oven',
    'h_air',
    'T_start',
    'T_oven',
    'T_air',
  );
  if (bad !== undefined) return noResult(bad);
  const shape = textAt(given, 'shape') || 'plate';
  const height = numberAt(given, 'height');
  if (shape === 'flask' && !(height > 0)) return noResult('height is missing or not above nought');
  const k = numberAt(given, 'k');
  const rho = numberAt(given, 'rho');
  const alpha = k / (rho * numberAt(given, 'c'));
  const stuff: Stuff = { k, alpha };
  const body = bodyOf(shape, numberAt(given, 'thickness'), height);
  const start = numberAt(given, 'T_start');
  const around = numberAt(given, 'T_oven');
  const h = numberAt(given, 'h_oven');
  const want = numberAt(given, 'T_want');
  const share = Math.max(0, numberAt(given, 'moisture') || 0);
  if (share > 0 && around <= boiling + 5)
    return noResult(
      'A wet mould in an oven near or below 100 °C dries as fast as the air takes the water away, which this does not work out. Make the oven hotter, or dry to constant mass first.',
    );

  const modulus = modulusOf(body);
  const half = body[0]!.half;
  const biot = (h * modulus) / k;
  const drying = dryingTime(body, stuff, rho, share, around, h);
  const oven = { around, h };
  /** When the middle, dry, passes 100 °C: there the clock of warming stands still while the water boils. */
  const atBoiling = share > 0 ? (timeToReach(body, stuff, start, oven, boiling) ?? 0) : 0;
  const clock = (time: number): number =>
    share > 0 && time > atBoiling ? Math.max(atBoiling, time - drying) : time;

  const dry = timeToReach(body, stuff, start, oven, want);
  const reach = dry === undefined ? undefined : dry + (want > boiling ? drying : 0);
  const fixed = numberAt(given, 't_oven');
  const stay = Number.isFinite(fixed) ? fixed : reach;
  const steps: Step[] = [
    {
      id: 'alpha',
      title: 'How fast warmth spreads in it',
      formula: 'freezing/thermal-diffusivity',
      given: { k, rho, c: numberAt(given, 'c') },
      find: 'alpha',
      value: alpha,
      unit: 'mm²/s',
    },
    {
      id: 'biot',
      title: 'Is one temperature enough for the whole mould?',
      formula: 'freezing/biot',
      given: { h, M: modulus, k },
      find: 'Bi',
      value: biot,
      unit: '1',
      note:
        biot < 0.1
          ? 'Below 0.1: middle and face stay close together, and the lumped rule would do.'
          : 'Above 0.1: the middle lags behind the face, so the series is needed.',
    },
  ];
  if (biot < 0.1 && want < around && want > start)
    steps.push({
      id: 'lumped',
      title: 'The lumped rule, to compare',
      value: ((rho * numberAt(given, 'c') * modulus) / h) * Math.log((around - start) / (around - want)),
      unit: 'min',
    });
  if (drying > 0)
    steps.push({
      id: 'drying',
      title: 'Boiling the water off, through the dry shell',
      value: drying,
      unit: 'min',
      note: 'An estimate; weigh the mould, and call it dry when the mass no longer falls.',
    });
  const notes: string[] = [];
  if (reach === undefined)
    notes.push(
      `An oven at ${celsius(around)} never brings the middle to ${celsius(want)}: turn it up, or want less.`,
    );
  else
    steps.push({
      id: 'reach',
      title: `Time until the middle is at ${celsius(want)}`,
      value: reach,
      unit: 'min',
    });
  if (stay === undefined || !(stay > 0))
    return { values: known({ biot, drying, time: reach }), steps: knownSteps(steps), checks: [], notes };

  const middle = body.map(() => 0);
  const outside = body.map((_, i) => (i === 0 ? 1 : 0));
  const first: Stay = { ...oven, time: clock(stay) };
  const second: Stay = {
    around: numberAt(given, 'T_air'),
    h: numberAt(given, 'h_air'),
    time: Math.max(0, numberAt(given, 't_air') || 0),
  };
  const centre = afterOne(body, stuff, start, first, middle);
  const face = afterOne(body, stuff, start, first, outside);
  const centreAfter = afterTwo(body, stuff, start, first, second, middle);
  const faceAfter = afterTwo(body, stuff, start, first, second, outside);
  steps.push(
    {
      id: 'fourier',
      title: 'How far warmth has soaked in',
      formula: 'freezing/fourier',
      given: { alpha, t: first.time, a: half },
      find: 'Fo',
      value: (alpha * first.time) / half ** 2,
      unit: '1',
    },
    { id: 'centre', title: 'Middle as it leaves the oven', value: centre, unit: '°C' },
    { id: 'face', title: 'Outside as it leaves the oven', value: face, unit: '°C' },
    { id: 'centre_after', title: 'Middle at the pour', value: centreAfter, unit: '°C' },
    { id: 'face_after', title: 'Outside at the pour', value: faceAfter, unit: '°C' },
  );
  const checks: Check[] = Number.isFinite(fixed)
    ? judge({
        id: 'warm',
        title: 'Long enough in the oven',
        margin: reach === undefined ? -5 : marginOf(stay, reach),
        levers: ['t_oven', 'T_oven'],
        steps: ['reach'],
        why: {
          holds: `Long enough: the middle is at ${celsius(centre)}.`,
          fails: `Too short: after ${say(stay, 'min')} the middle is only at ${celsius(centre)}.`,
        },
      })
    : [];
  return {
    values: known({
      time: reach,
      centre,
      face,
      centre_after: centreAfter,
      face_after: faceAfter,
      biot,
      drying,
    }),
    steps: knownSteps(steps),
    checks,
    notes,
  };
}

/**
 * Middle and outside of a mould warmed in an oven and then carried in the air: the full series for slab,
 * cylinder, flask and ball, the second stay beginning from the profile the first one left. Temperatures K,
 * times s. A mould that still holds water is held at 100 °C while it boils off.
 */
export const warmThrough = defineModel({
  id: 'sand/warm-through',
  title: 'Warming a mould through, and carrying it to the pour',
  answers: 'How long must the mould stay in the oven, and how warm is it when the metal comes?',
  inputs,
  outputs: {
    time: { name: 'time until the middle is warm', sign: 't', unit: 's', show: 'min' },
    centre: { name: 'middle as it leaves the oven', unit: 'K', show: '°C' },
    face: { name: 'outside as it leaves the oven', unit: 'K', show: '°C' },
    centre_after: { name: 'middle at the pour', unit: 'K', show: '°C' },
    face_after: { name: 'outside at the pour', unit: 'K', show: '°C' },
    biot: { name: 'Biot number, over volume and surface', sign: 'Bi', unit: '1' },
    drying: { name: 'of it, boiling the water off', unit: 's', show: 'min' },
  },
  run,
  assumes: [
    'solid sand or investment with no metal in it: a flask of steel warms a little sooner',
    'one coefficient all round, the oven at its temperature from the start',
    'properties that do not change as it warms',
    'water boils off at a front that draws inwards: good to a factor of about two',
  ],
  source: {
    key: 'incropera',
    at: '§5.5 and §5.6, exact series for plane wall, cylinder and sphere',
    how: 'memory',
  },
  alsoSee: [{ key: 'carslaw-jaeger', at: '§3.11, §7.7, §9.4 and product solutions §1.15', how: 'memory' }],
  examples: [
    {
      title: 'Slab of brass, 40 mm, put into 500 °C for seven minutes',
      given: {
        T_start: '20 °C',
        T_oven: '500 °C',
        t_oven: '420 s',
        thickness: '40 mm',
        k: '110 W/(m·K)',
        rho: '8530 kg/m³',
        c: '380 J/(kg·K)',
        h_oven: '120 W/(m²·K)',
      },
      expect: { centre: '277 °C' },
      from: {
        byHand:
          'Bi 120 × 0.02 / 110 = 0.02182, so λ² = 0.02182 × (1 − 0.02182/3) = 0.02166 and A = 1 + 0.02182/6 = 1.0036. α = 110 / (8530 × 380) = 33.94 mm²/s, Fo = 33.94 × 420 / 400 = 35.63. λ²Fo = 0.7718, e to minus that 0.4622, times A 0.4638. 500 − 480 × 0.4638 = 277.4 °C.',
      },
    },
  ],
  caution: [
    'A mould that is warm outside can be wet inside. Weigh it: dry is when the mass no longer falls.',
    'Oil-bonded sand is never baked: it smokes and can take fire.',
    'A mould at these temperatures burns the hand: gloves, tongs and a dry place to set it down.',
  ],
  monotone: [
    { input: 'thickness', output: 'time', sense: '+' },
    { input: 'T_oven', output: 'time', sense: '-' },
    { input: 'h_oven', output: 'time', sense: '-' },
    { input: 'T_want', output: 'time', sense: '+' },
    { input: 'moisture', output: 'time', sense: '+' },
    { input: 't_oven', output: 'centre', sense: '+' },
  ],
  words: ['oven', 'preheat', 'bake', 'dry', 'soak', 'Heisler', 'Biot', 'Fourier', 'warm mould'],
});
