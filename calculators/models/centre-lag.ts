import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt } from './given.ts';
import { boiling, dryingTime } from './warming/drying.ts';
import { flaskBody, flaskInputs } from './warming/flask.ts';
import { stuffInputs } from './warming/inputs.ts';
import { lagBehind } from './warming/ramp.ts';

const inputs = {
  ...flaskInputs,
  ...stuffInputs('gypsum-investment'),
  speed: {
    kind: 'quantity',
    name: 'how fast the kiln climbs',
    unit: 'K/s',
    show: 'K/min',
    range: [0.005, 0.5],
    why: 'faster cracks the mould',
    usual: 4 / 60,
    first: true,
  },
  climb: {
    kind: 'quantity',
    name: 'how far it climbs',
    unit: 'ΔK',
    show: 'Δ°C',
    range: [10, 1000],
    why: 'one ramp of a burnout',
    usual: 330,
    first: true,
  },
  h: {
    kind: 'quantity',
    name: 'surface coefficient in the kiln',
    unit: 'W/(m²·K)',
    range: [5, 150],
    why: 'air and radiation, from a warm oven to yellow heat',
    usual: 40,
    note: 'About 20 at 150 °C, 40 at 400 °C, 100 at 730 °C: radiation takes over. An estimate.',
  },
  close: {
    kind: 'quantity',
    name: 'close enough',
    unit: 'ΔK',
    show: 'Δ°C',
    range: [1, 100],
    why: 'finer than the kiln holds itself, or no longer close',
    usual: 10,
  },
  water: {
    kind: 'quantity',
    name: 'water still in the mould, by mass of dry mould',
    unit: '1',
    show: '%',
    range: [0, 0.5],
    why: 'as mixed',
    usual: 0,
    note: 'Free water and the water bound in gypsum. A mould just set holds about 40 %.',
  },
  T_dry: {
    kind: 'quantity',
    name: 'kiln while it dries',
    unit: 'K',
    show: '°C',
    range: [385, 600],
    why: 'above boiling, below where a wet mould bursts',
    usual: 423.15,
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(
    given,
    inputs,
    'diameter',
    'height',
    'k',
    'rho',
    'c',
    'speed',
    'climb',
    'h',
    'close',
  );
  if (bad !== undefined) return noResult(bad);
  const k = numberAt(given, 'k');
  const rho = numberAt(given, 'rho');
  const alpha = k / (rho * numberAt(given, 'c'));
  const speed = numberAt(given, 'speed');
  const radius = numberAt(given, 'diameter') / 2;
  const h = numberAt(given, 'h');
  const stuff = { k, alpha };
  const body = flaskBody(2 * radius, numberAt(given, 'height'));
  const share = Math.max(0, numberAt(given, 'water') || 0);
  const around = numberAt(given, 'T_dry');
  if (share > 0 && !(around > boiling + 5))
    return noResult('A wet mould dries only when the kiln is above 100 °C: raise the drying temperature.');
  const lag = lagBehind(body, stuff, h)(speed, numberAt(given, 'climb') / speed);
  const hold = lag.holdFor(numberAt(given, 'close'));
  const rule = ((radius ** 2 * speed) / (4 * alpha)) * (1 + (2 * k) / (h * radius));
  const drying = dryingTime(body, stuff, rho, share, around, h);
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
      id: 'rule',
      title: 'Lag of a very long flask that climbs for ever, R²·rate/(4α) and the surface’s share',
      value: rule,
      unit: 'Δ°C',
    },
    { id: 'steady', title: 'Lag of this flask if the climb never ended', value: lag.steady, unit: 'Δ°C' },
    { id: 'lag', title: 'Lag of the middle when the climb ends', value: lag.atEnd, unit: 'Δ°C' },
    { id: 'hold', title: 'Hold until the middle is close enough', value: hold, unit: 'min' },
  ];
  if (drying > 0)
    steps.push({
      id: 'drying',
      title: 'Before that, at the drying hold: boiling the water off',
      value: drying,
      unit: 'min',
      note: 'An estimate for boiling all of it off at this one temperature, longer than the usual drying hold. In a burnout the rest boils off as the kiln climbs, faster the hotter it is: the card of the whole schedule adds that up. The lag above begins only when the mould is dry.',
    });
  return {
    values: known({ lag: lag.atEnd, steady: lag.steady, hold, drying }),
    steps,
    checks: [],
    notes: [
      'The heat that gypsum and silica take up as they change on the way is not counted: hold longer rather than shorter.',
    ],
  };
}

/**
 * How far the middle of a dry flask is behind a steadily climbing kiln (K), and the hold (s) that brings it
 * close: series over radius and height, summed for any length of climb. Water still in it is a plateau before.
 */
export const centreLag = defineModel({
  id: 'investment/centre-lag',
  title: 'How far the middle of the flask is behind the kiln',
  answers: 'How long must the kiln hold before the middle of the flask is as hot as the kiln?',
  inputs,
  outputs: {
    hold: { name: 'hold needed', sign: 't_hold', unit: 's', show: 'min' },
    lag: { name: 'lag of the middle as the climb ends', unit: 'ΔK', show: 'Δ°C' },
    steady: { name: 'lag if the climb never ended', unit: 'ΔK', show: 'Δ°C' },
    drying: { name: 'boiling the water off, before', unit: 's', show: 'min' },
  },
  run,
  assumes: [
    'dry while it climbs; water is boiled off at a hold of its own before',
    'the empty places of the pattern are small beside the mould',
    'properties that do not change, and no heat taken by the changes of gypsum and silica',
    'the kiln climbs evenly and its air is as hot everywhere',
  ],
  source: { key: 'carslaw-jaeger', at: '§3.11 and §7.7, surroundings that warm steadily', how: 'memory' },
  examples: [
    {
      title: 'Long flask of 50 mm, kiln climbing 3 K a minute for ever, perfect surface',
      given: {
        diameter: '50 mm',
        height: '0.3 m',
        k: '0.4 W/(m·K)',
        rho: '1250 kg/m³',
        c: '800 J/(kg·K)',
        speed: '3 K/min',
        climb: '1000 Δ°C',
        h: '32 W/(m²·K)',
        close: '10 Δ°C',
      },
      expect: { steady: '39 Δ°C' },
      from: {
        byHand:
          'α = 0.4/(1250 × 800) = 0.4 mm²/s. 25² × 0.05 / (4 × 0.4) = 19.53 K. Bi = 32 × 0.025 / 0.4 = 2, so the surface adds as much again: 39.06 K. Ends six diameters apart change nothing to two figures.',
      },
    },
  ],
  caution: [
    'Burnout gives off smoke, carbon monoxide and, if gypsum is overheated, sulphur dioxide: vent the kiln outdoors.',
    'A wet mould heated fast can burst. Dry it first.',
  ],
  monotone: [
    { input: 'diameter', output: 'hold', sense: '+' },
    { input: 'height', output: 'hold', sense: '+' },
    { input: 'speed', output: 'lag', sense: '+' },
    { input: 'h', output: 'lag', sense: '-' },
    { input: 'climb', output: 'lag', sense: '+' },
    { input: 'water', output: 'drying', sense: '+' },
  ],
  words: ['burnout', 'ramp', 'soak', 'thermal lag', 'kiln'],
});
