import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { known, knownSteps, noResult, notAboveNought, numberAt } from './given.ts';
import { celsius } from './pour-plan/say.ts';
import { afterOne, afterTwo, type Stay } from './warming/body.ts';
import { flaskBody, flaskInputs } from './warming/flask.ts';
import { stuffInputs } from './warming/inputs.ts';

const inputs = {
  ...flaskInputs,
  cover: {
    kind: 'quantity',
    name: 'investment between the pattern and the flask wall',
    unit: 'm',
    show: 'mm',
    range: [0.003, 0.1],
    why: 'thinner is blown through, thicker than any small flask has',
    usual: 0.01,
    first: true,
  },
  ...stuffInputs('gypsum-investment'),
  T_peak: {
    kind: 'quantity',
    name: 'temperature of the whole flask before it is brought down',
    unit: 'K',
    show: '°C',
    range: [400, 1400],
    why: 'from an oven to the hottest burnout',
    usual: 1003.15,
    limit: {
      above: 1400,
      why: 'No investment of this course is fired so hot.',
    },
    note: 'Gypsum is never fired above 750 °C.',
  },
  T_kiln: {
    kind: 'quantity',
    name: 'kiln at the casting temperature',
    unit: 'K',
    show: '°C',
    range: [300, 1400],
    why: 'from a warm mould to the hottest flask',
    usual: 773.15,
    first: true,
  },
  t_kiln: {
    kind: 'quantity',
    name: 'soak at the casting temperature',
    unit: 's',
    show: 'min',
    range: [0, 36000],
    why: 'up to ten hours',
    usual: 5400,
    first: true,
  },
  h_kiln: {
    kind: 'quantity',
    name: 'surface coefficient in the kiln',
    unit: 'W/(m²·K)',
    range: [5, 150],
    why: 'air and radiation',
    usual: 50,
  },
  T_air: {
    kind: 'quantity',
    name: 'air of the workshop',
    unit: 'K',
    show: '°C',
    range: [260, 320],
    why: 'a workshop',
    usual: 293.15,
    group: 'Out of the kiln',
  },
  h_air: {
    kind: 'quantity',
    name: 'surface coefficient in the air',
    unit: 'W/(m²·K)',
    range: [5, 150],
    why: 'air and radiation',
    usual: 35,
    note: 'About 35 at 500 °C: most of it is radiation. An estimate.',
    group: 'Out of the kiln',
  },
  t_air: {
    kind: 'quantity',
    name: 'time out of the kiln until the metal is in',
    unit: 's',
    show: 's',
    range: [0, 3600],
    why: 'longer than an hour it is cold at the wall',
    usual: 60,
    group: 'Out of the kiln',
    first: true,
  },
} as const;

function run(given: Values): Result {
  const needed = [
    'diameter',
    'height',
    'k',
    'rho',
    'c',
    'h_kiln',
    'h_air',
    'T_peak',
    'T_kiln',
    'T_air',
  ] as const;
  const bad = notAboveNought(given, inputs, ...needed);
  if (bad !== undefined) return noResult(bad);
  const radius = numberAt(given, 'diameter') / 2;
  const cover = numberAt(given, 'cover');
  if (!(cover > 0 && cover <= radius))
    return noResult(
      'The cover must lie between the flask wall and the middle: give less than half the diameter.',
    );
  const k = numberAt(given, 'k');
  const stuff = { k, alpha: k / (numberAt(given, 'rho') * numberAt(given, 'c')) };
  const body = flaskBody(2 * radius, numberAt(given, 'height'));
  const peak = numberAt(given, 'T_peak');
  const kiln: Stay = {
    around: numberAt(given, 'T_kiln'),
    h: numberAt(given, 'h_kiln'),
    time: numberAt(given, 't_kiln') || 0,
  };
  const air: Stay = {
    around: numberAt(given, 'T_air'),
    h: numberAt(given, 'h_air'),
    time: numberAt(given, 't_air') || 0,
  };
  const middle = [0, 0];
  const cavity = [1 - cover / radius, 0];
  const wall = [1, 0];
  const before = afterOne(body, stuff, peak, kiln, middle);
  const atEnd = (place: readonly number[]): number => afterTwo(body, stuff, peak, kiln, air, place);
  const values = known({
    cavity: atEnd(cavity),
    centre: atEnd(middle),
    face: atEnd(wall),
    centre_before: before,
  });
  const steps: Step[] = [
    { id: 'centre_before', title: 'Middle at the end of the soak', value: before, unit: '°C' },
    {
      id: 'cavity',
      title: 'At the pattern nearest the wall, when the metal comes',
      value: atEnd(cavity),
      unit: '°C',
    },
    { id: 'centre', title: 'In the middle, when the metal comes', value: atEnd(middle), unit: '°C' },
    { id: 'face', title: 'At the wall, when the metal comes', value: atEnd(wall), unit: '°C' },
  ];
  const notes: string[] = [];
  const off = before - kiln.around;
  if (Math.abs(off) > 15)
    notes.push(
      `The soak is too short: the middle is still at ${celsius(before)}, ${Math.round(Math.abs(off))} °C ${off > 0 ? 'above' : 'below'} the kiln.`,
    );
  notes.push(
    'The flask’s steel and the hole of the pattern are left out: the wall cools a little faster at first.',
  );
  return { values, steps: knownSteps(steps), checks: [], notes };
}

/**
 * Temperatures (K) in a flask when the metal comes: soaked at the casting temperature from the burnout's peak,
 * then out in the air. Series over radius and height, the second stay beginning from the first one's profile.
 */
export const flaskTemperature = defineModel({
  id: 'investment/flask-temperature',
  title: 'How hot the flask really is when the metal comes',
  answers: 'After the soak and the walk from the kiln, how hot is the mould at the pattern?',
  inputs,
  outputs: {
    cavity: { name: 'at the pattern nearest the wall', sign: 'T_p', unit: 'K', show: '°C' },
    centre: { name: 'in the middle', sign: 'T_m', unit: 'K', show: '°C' },
    face: { name: 'at the wall', sign: 'T_w', unit: 'K', show: '°C' },
    centre_before: { name: 'middle at the end of the soak', sign: 'T_s', unit: 'K', show: '°C' },
  },
  run,
  assumes: [
    'a dry, burnt-out flask, at one temperature before it is brought down',
    'the same coefficient all round and at both ends; standing on a cold plate cools its foot sooner',
    'mid-height, where the heat goes out sideways',
  ],
  source: { key: 'incropera', at: '§5.6 and §5.8, radial systems and products', how: 'memory' },
  examples: [
    {
      title: 'Flask of 50 × 100 mm, all at 500 °C, two minutes in the air: the middle has lost eight degrees',
      given: {
        diameter: '50 mm',
        height: '100 mm',
        cover: '10 mm',
        k: '0.4 W/(m·K)',
        rho: '1250 kg/m³',
        c: '800 J/(kg·K)',
        T_peak: '500 °C',
        T_kiln: '500 °C',
        t_kiln: '60 min',
        h_kiln: '50 W/(m²·K)',
        T_air: '20 °C',
        h_air: '32 W/(m²·K)',
        t_air: '120 s',
      },
      expect: { centre: '492 °C' },
      from: {
        byHand:
          'Long cylinder, Bi = 32 × 0.025 / 0.4 = 2, Fo = 0.4 × 120 / 625 = 0.0768. Roots of xJ₁ = 2J₀: 1.5994, 4.2910, 7.2884; J₀ there 0.45572, −0.36255, 0.28916; factors 2Bi/((λ² + Bi²)J₀): 1.3384, −0.4923, 0.2422. 1.3384 × e^(−0.19647) = 1.0996; −0.4923 × e^(−1.41407) = −0.1197; 0.2422 × e^(−4.0797) = 0.0041. Sum 0.9840; through the ends, Fo 0.019, nothing has come yet. 20 + 480 × 0.9840 = 492.3 °C.',
      },
    },
  ],
  caution: [
    'A flask from the kiln burns through cloth and boils any damp it is set on: tongs, gauntlets, a dry refractory place.',
  ],
  monotone: [
    { input: 'T_kiln', output: 'cavity', sense: '+' },
    { input: 'T_air', output: 'face', sense: '+' },
  ],
  words: ['burnout', 'flask', 'mould temperature', 'soak', 'carry'],
});
