import { defineModel, type Result, type Step, type Values } from '../core/model.ts';
import { evaluate } from '../core/solve.ts';
import { vapourPressure } from '../formulas/investment/vapour-pressure.ts';
import { ambient } from '../formulas/vacuum/ambient.ts';
import { known, noResult, notAboveNought, numberAt } from './given.ts';
import { say } from './pour-plan/say.ts';
import { judge } from './pour-plan/verdict.ts';

const inputs = {
  z: {
    kind: 'quantity',
    name: 'height above the sea',
    unit: 'm',
    range: [-430, 5500],
    why: 'from the lowest shore to the highest towns',
    usual: 300,
    first: true,
  },
  p_0: {
    kind: 'quantity',
    name: 'pressure brought down to sea level',
    unit: 'Pa',
    show: 'kPa',
    range: [95000, 105000],
    why: 'from a deep low to a strong high',
    usual: 101325,
    note: 'The figure of the weather report.',
  },
  T: {
    kind: 'quantity',
    name: 'temperature of the slurry',
    unit: 'K',
    show: '°C',
    range: [274, 323],
    why: 'colder it freezes, hotter it sets in the bowl',
    usual: 295.15,
    first: true,
  },
  hoped: {
    kind: 'quantity',
    name: 'vacuum hoped for on the gauge',
    unit: 'Pa',
    show: 'inHg',
    range: [0, 105000],
    why: 'no gauge shows more than the air outside',
    note: 'Only if somebody told you a figure: the slurry cannot go beyond its boiling point.',
  },
} as const;

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'p_0', 'T');
  if (bad !== undefined) return noResult(bad);
  const z = numberAt(given, 'z');
  const T = numberAt(given, 'T');
  if (!(z > -5000 && z < 11000))
    return noResult('The standard air is known from below the sea to 11 km only.');
  const air = evaluate(ambient, { z, p_0: numberAt(given, 'p_0') });
  const vapour = evaluate(vapourPressure, { T });
  const stalls = air - vapour;
  const steps: Step[] = [
    {
      id: 'air',
      title: 'Air pressure here',
      formula: ambient.id,
      given: { z, p_0: numberAt(given, 'p_0') },
      find: 'p',
      value: air,
      unit: 'kPa',
    },
    {
      id: 'vapour',
      title: 'Pressure at which this water boils',
      formula: vapourPressure.id,
      given: { T },
      find: 'p',
      value: vapour,
      unit: 'kPa',
    },
    {
      id: 'stalls',
      title: 'Gauge when it boils: the one less the other',
      formula: 'vacuum/gauge',
      given: { p: vapour, p_amb: air },
      find: 'p_g',
      value: stalls,
      unit: 'inHg',
    },
  ];
  const hoped = numberAt(given, 'hoped');
  const checks = Number.isFinite(hoped)
    ? judge({
        id: 'hoped',
        title: 'The vacuum hoped for',
        margin: Math.max(-5, Math.min(5, (stalls - hoped) / 1000)),
        levers: ['T', 'z'],
        steps: ['stalls'],
        why: {
          holds: `It boils before the gauge stalls: ${say(hoped, 'inHg', 3)} is less than ${say(stalls, 'inHg', 3)}.`,
          fails: `The gauge never gets to ${say(hoped, 'inHg', 3)}: the water boils at ${say(stalls, 'inHg', 3)} and feeds the pump with steam. Watch for the boil, not the number.`,
        },
      })
    : [];
  return {
    values: known({ stalls, vapour, air }),
    steps,
    checks,
    notes: [
      'The sign that counts is the boil itself. When the slurry has risen, broken and is rolling, the air is out; a longer wait only steals working time.',
    ],
  };
}

/** Gauge (Pa below ambient) at which the water of the slurry boils, from altitude, weather and temperature. */
export const boil = defineModel({
  id: 'investment/boil',
  title: 'Where the gauge stalls while the slurry boils',
  answers: 'What will my gauge show when the slurry boils, and why will it go no further?',
  inputs,
  outputs: {
    stalls: { name: 'gauge at which it stalls, below ambient', sign: 'p_g', unit: 'Pa', show: 'inHg' },
    vapour: { name: 'vapour pressure of the water', sign: 'p_v', unit: 'Pa', show: 'kPa' },
    air: { name: 'air pressure here', sign: 'p_a', unit: 'Pa', show: 'kPa' },
  },
  run,
  assumes: [
    'the standard atmosphere on a day of this weather',
    'the gauge stands at nought with the pump off',
    'the pump takes less steam than the water gives, as small pumps do',
  ],
  source: { key: 'buck', at: 'vapour pressure over water', how: 'memory' },
  alsoSee: [{ key: 'iso-2533', at: 'troposphere', how: 'memory' }],
  examples: [
    {
      title: 'Workshop at 1500 m, slurry at 25 °C: about −24 inHg and no more',
      given: { z: '1500 m', p_0: '101.325 kPa', T: '25 °C' },
      expect: { stalls: '24.0 inHg' },
      from: {
        byHand:
          'The standard air at 1500 m is 84.556 kPa in the tables; water at 25 °C has 3.169 kPa. 84.556 − 3.169 = 81.387 kPa; ÷ 3.38639 = 24.03 inHg.',
      },
    },
  ],
  caution: [
    'Glass and plastic bells under vacuum can burst: inspect them, put a guard over them, wear eye protection.',
    'Steam goes through the pump: run it with its gas ballast open or a trap before it.',
  ],
  monotone: [
    { input: 'z', output: 'stalls', sense: '-' },
    { input: 'T', output: 'stalls', sense: '-' },
    { input: 'p_0', output: 'stalls', sense: '+' },
  ],
  words: ['vacuum', 'altitude', 'gauge', 'inHg', 'debubble', 'slurry', 'boiling'],
});
