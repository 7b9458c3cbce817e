import { defineModel, type Check, type Result, type Step, type Values } from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt, textAt } from './given.ts';
import { celsius, say } from './pour-plan/say.ts';
import { boiling, dryingDose } from './warming/drying.ts';
import { flaskBody, flaskInputs } from './warming/flask.ts';
import { stuffInputs } from './warming/inputs.ts';
import { lagBehind } from './warming/ramp.ts';

const hour = 3600;

/**
 * Holds in hours by flask size, for wax in plaster investment, and the fastest climb. Common practice: public
 * copies of makers' sheets give the 6, 8 and 12 hour cycles of the first three; the last is an estimate.
 */
const table = [
  { upTo: 0.065, dry: 2, middle: 1, late: 0, peak: 2, soak: 1, climb: 5 },
  { upTo: 0.09, dry: 2, middle: 2, late: 0, peak: 3, soak: 1, climb: 4 },
  { upTo: 0.125, dry: 2, middle: 2, late: 2, peak: 4, soak: 2, climb: 3 },
  { upTo: Number.POSITIVE_INFINITY, dry: 3, middle: 3, late: 2, peak: 5, soak: 3, climb: 2 },
] as const;

const binders = {
  gypsum: { name: 'plaster (gypsum)', peak: 1003.15, limit: 1023.15 },
  phosphate: { name: 'phosphate', peak: 1123.15, limit: 1323.15 },
} as const;

const inputs = {
  ...flaskInputs,
  binder: {
    kind: 'choice',
    name: 'binder of the investment',
    options: { gypsum: binders.gypsum.name, phosphate: binders.phosphate.name },
    usual: 'gypsum',
    first: true,
  },
  pattern: {
    kind: 'choice',
    name: 'pattern inside',
    options: { wax: 'wax', resin: 'printed resin', natural: 'leaf, wood or card' },
    usual: 'wax',
    first: true,
  },
  T_cast: {
    kind: 'quantity',
    name: 'flask temperature for the pour',
    unit: 'K',
    show: '°C',
    range: [320, 1100],
    why: 'from a warm mould to the hottest flask',
    usual: 773.15,
    first: true,
  },
  sheet_peak: {
    kind: 'quantity',
    name: 'peak on the maker’s sheet',
    unit: 'K',
    show: '°C',
    range: [900, 1350],
    why: 'below it carbon does not burn, above it no investment of this course is fired',
    note: 'Written here, it is used instead of the usual one.',
    group: 'From the sheet',
  },
  sheet_climb: {
    kind: 'quantity',
    name: 'fastest climb on the maker’s sheet',
    unit: 'K/s',
    show: 'K/min',
    range: [0.005, 0.5],
    why: 'faster cracks the mould',
    group: 'From the sheet',
  },
  ...stuffInputs('gypsum-investment'),
  h: {
    kind: 'quantity',
    name: 'surface coefficient in the kiln',
    unit: 'W/(m²·K)',
    range: [5, 150],
    why: 'air and radiation',
    usual: 40,
  },
  water: {
    kind: 'quantity',
    name: 'water in the mould as it goes in, by mass of dry mould',
    unit: '1',
    show: '%',
    range: [0, 0.5],
    why: 'as mixed',
    usual: 0.4,
    note: 'Free water and the water bound in gypsum. A mould just set holds about 40 %.',
    group: 'Mould',
  },
} as const;

/** Kelvin-seconds above boiling that a steady climb gives. */
const climbDose = (from: number, to: number, speed: number): number =>
  (Math.max(0, to - boiling) ** 2 - Math.max(0, from - boiling) ** 2) / (2 * speed);

/** Why the drying hold is shorter than boiling all the water off at its temperature would take. */
function aboutWater(where: string, after: number, held: number, at: number): string {
  if (where === '')
    return 'By an estimate this mould is still wet in the middle at its peak: ask the maker for longer holds.';
  if (after < held) return `By an estimate all the water has gone within the drying hold at ${celsius(at)}.`;
  return `The drying hold is not there to boil all the water off: at ${celsius(at)} alone that takes far longer. It takes the first of it gently. The rest boils off as the kiln climbs, faster the hotter it is. By an estimate the last of it goes ${where}, ${say(after, 'h')} from cold.`;
}

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'diameter', 'height', 'T_cast', 'k', 'rho', 'c', 'h');
  if (bad !== undefined) return noResult(bad);
  const binder = textAt(given, 'binder') === 'phosphate' ? binders.phosphate : binders.gypsum;
  const pattern = textAt(given, 'pattern') || 'wax';
  const cast = numberAt(given, 'T_cast');
  const peak = numberAt(given, 'sheet_peak') || binder.peak;
  const hottest = Math.max(peak, cast);
  if (hottest > binder.limit)
    return noResult(
      binder === binders.gypsum
        ? `Refused: ${celsius(hottest)} is past the limit of plaster investment, ${celsius(binder.limit)}. Beyond it gypsum breaks down, gives off sulphur dioxide and spoils the metal; with carbon left it begins near 700 °C.`
        : `Refused: ${celsius(hottest)} is hotter than phosphate investment is fired here, ${celsius(binder.limit)}. Follow the maker’s sheet.`,
    );
  const diameter = numberAt(given, 'diameter');
  const row = table.find(({ upTo }) => diameter <= upTo) ?? table[3];
  const resin = pattern !== 'wax';
  const climb = numberAt(given, 'sheet_climb') || row.climb / 60;
  const k = numberAt(given, 'k');
  const stuff = { k, alpha: k / (numberAt(given, 'rho') * numberAt(given, 'c')) };
  const body = flaskBody(diameter, numberAt(given, 'height'));
  const h = numberAt(given, 'h');
  const behind = lagBehind(body, stuff, h);
  const share = Math.max(0, numberAt(given, 'water') || 0);
  /** What is still to come before the last water has boiled off, K·s. */
  let wet = dryingDose(body, stuff, numberAt(given, 'rho'), share, h);
  let dryAt = 0;
  let dryWhere = '';
  /** A printed resin swells before it softens: half the speed up to 315 °C. */
  const speedTo = (level: number): number => (resin && level <= 645 ? climb / 2 : climb);

  const levels = [
    { id: 'dry', at: 423.15, hold: row.dry * hour, why: 'the water boils off' },
    {
      id: 'middle',
      at: row.late > 0 ? 588.15 : 643.15,
      hold: row.middle * hour,
      why: 'gypsum and silica change',
    },
    ...(row.late > 0
      ? [{ id: 'late', at: 753.15, hold: row.late * hour, why: 'the middle catches up' }]
      : []),
    {
      id: 'peak',
      at: peak,
      hold: (row.peak + (resin ? 1 : 0)) * hour,
      why: 'the carbon burns, in a stream of air',
    },
    { id: 'soak', at: cast, hold: row.soak * hour, why: 'the middle comes to the casting temperature' },
  ];
  const steps: Step[] = [];
  const notes = [
    'The maker’s sheet comes first: this table is for seeing why a sheet says what it says, and for when there is none.',
  ];
  const holds: Record<string, number> = {};
  let from = 293.15;
  let total = 0;
  for (const { id, at, hold, why } of levels) {
    const down = at < from;
    const speed = speedTo(at);
    const way = Math.abs(at - from);
    const needed = way > 0 ? behind(speed, way / speed).holdFor(10) : 0;
    // At the peak the middle must be there before the burning counts.
    const held = id === 'peak' ? hold + needed : Math.max(hold, needed);
    holds[id] = held;
    const wetBefore = wet > 0;
    if (wet > 0 && !down) {
      const rising = climbDose(from, at, speed);
      const start = Math.max(0, from - boiling);
      if (wet <= rising) {
        dryAt = total + (boiling + Math.sqrt(2 * speed * wet + start ** 2) - from) / speed;
        dryWhere = `on the climb to ${celsius(at)}`;
      } else if (at > boiling && wet <= rising + held * (at - boiling)) {
        const into = (wet - rising) / (at - boiling);
        dryAt = total + way / speed + into;
        dryWhere = `${say(into, 'min')} into the hold at ${celsius(at)}`;
      }
      wet = dryWhere === '' ? wet - rising - held * Math.max(0, at - boiling) : 0;
    }
    steps.push(
      {
        id: `to-${id}`,
        title: `${down ? 'Down' : 'Up'} to ${celsius(at)} at ${say(speed, 'K/min')}`,
        value: way / speed,
        unit: 'min',
      },
      {
        // A step of an output's name would be shown in the output's unit, and `peak` is a temperature.
        id: `hold_${id}`,
        title: `Hold at ${celsius(at)}: ${why}`,
        value: held,
        unit: 'h',
        note: wetBefore
          ? wet > 0
            ? 'Usual for this size. While there is water in it the middle stays near 100 °C, whatever the kiln shows.'
            : `Usual for this size. By an estimate the last water goes ${dryWhere}; only then does the middle warm on.`
          : needed > hold || id === 'peak'
            ? `The middle needs ${say(needed, 'min')} to come within 10 °C.`
            : `Usual for this size; the middle is within 10 °C after ${say(needed, 'min')}.`,
      },
    );
    total += way / speed + held;
    from = at;
  }
  steps.push({ id: 'total', title: 'From cold to ready', value: total, unit: 'h' });
  if (share > 0) notes.push(aboutWater(dryWhere, dryAt, holds.dry ?? 0, levels[0]!.at));
  if (diameter > 0.125) notes.push('Above 125 mm the holds are an estimate: ask the maker.');
  if (resin)
    notes.push(
      'Resin and natural patterns: slow up to 315 °C, an hour more at the peak with plenty of air; ash left behind is the usual failure.',
    );
  notes.push('Do not let the flask go cold and heat it again: the silica in it cracks the mould.');
  const checks: Check[] = [
    {
      id: 'limit',
      title: 'Below the limit of the binder',
      verdict: binder.limit - hottest < 10 ? 'close' : 'holds',
      margin: Math.log(binder.limit / hottest),
      why: `The hottest is ${celsius(hottest)}; ${binder.name} is not fired above ${celsius(binder.limit)}.`,
      levers: ['sheet_peak', 'T_cast'],
    },
  ];
  return {
    values: known({
      total,
      climb,
      peak,
      hold_dry: holds.dry,
      hold_peak: holds.peak,
      soak: holds.soak,
      dry: share > 0 && dryWhere === '' ? NaN : dryAt,
    }),
    steps,
    checks,
    notes,
  };
}

/**
 * Ramps and holds (s) of a burnout by flask size, binder and pattern: the usual hold, or longer where the
 * middle's lag asks for it. Gives way to what is written from the maker's sheet; refuses past the binder's limit.
 */
export const schedule = defineModel({
  id: 'investment/schedule',
  title: 'Burnout, ramp by ramp',
  answers: 'How fast do I heat this flask, where do I hold it, and when is it ready?',
  inputs,
  outputs: {
    total: { name: 'from cold to ready', unit: 's', show: 'h' },
    climb: { name: 'fastest climb', unit: 'K/s', show: 'K/min' },
    peak: { name: 'peak', unit: 'K', show: '°C' },
    hold_dry: { name: 'drying hold', unit: 's', show: 'h' },
    hold_peak: { name: 'hold at the peak', unit: 's', show: 'h' },
    soak: { name: 'soak at the casting temperature', unit: 's', show: 'h' },
    dry: { name: 'from cold until the last water has gone, an estimate', unit: 's', show: 'h' },
  },
  run,
  assumes: [
    'the mould stood one to two hours after setting and goes in damp, wax drained first',
    'a kiln that holds its temperature, with air coming through it',
    'cooling from the peak goes no faster than the climb',
  ],
  source: {
    key: 'trade-practice',
    at: 'burnout cycles of 6, 8 and 12 hours by flask size',
    how: 'common practice',
  },
  alsoSee: [
    { key: 'makers-data', at: 'burnout table of the investment: it comes first', how: 'common practice' },
    { key: 'gypsum-breakdown', at: 'thermogravimetry of gypsum-bonded investments', how: 'read' },
  ],
  examples: [
    {
      title: 'Flask of 60 × 65 mm in wax: drying hold of two hours',
      given: { diameter: '60 mm', height: '65 mm', T_cast: '500 °C' },
      expect: { hold_dry: '2 h' },
      from: {
        byHand:
          'First row of the usual cycles. The middle lags R²·rate/4α = 30² × 0.0833 / (4 × 0.34) = 55 K and the surface’s share; at e-folding times of a few minutes it is within 10 °C long before two hours.',
      },
    },
    {
      title: 'The same, climbing as the sheet says',
      given: { diameter: '60 mm', height: '65 mm', sheet_climb: '3 K/min' },
      expect: { climb: '3 K/min' },
      from: { byHand: 'What is written from the sheet stands.' },
    },
    {
      title: 'When the last of 40 % water has gone from it',
      given: {
        diameter: '60 mm',
        height: '65 mm',
        k: '0.4 W/(m·K)',
        rho: '1250 kg/m³',
        c: '950 J/(kg·K)',
        water: '40 %',
      },
      expect: { dry: '3.10 h' },
      from: {
        byHand:
          'Pace over radius 1.6 / (1250 × 0.4 × 2.2567e6 × 0.03² × 1.667) = 9.45e-7, over height 0.8 / (1250 × 0.4 × 2.2567e6 × 0.0325² × 1.615) = 4.16e-7, so 734,800 K·s. To 150 °C: 15,000 in 1560 s. Two hours at 50 K: 360,000. The climb: √(2 × 359,800/12 + 50²) = 249.9 K above boiling, 2399 s on. In all 11,159 s.',
      },
    },
  ],
  caution: [
    'Burnout gives off smoke, carbon monoxide and acrid vapours: the kiln is vented outdoors, never in a room where people stay.',
    'Gypsum past 750 °C, or past 700 °C with carbon left in it, gives off sulphur dioxide.',
  ],
  monotone: [
    { input: 'sheet_climb', output: 'total', sense: '-' },
    { input: 'sheet_peak', output: 'peak', sense: '+' },
    { input: 'water', output: 'dry', sense: '+' },
  ],
  words: ['burnout', 'kiln', 'ramp', 'hold', 'dewax', 'firing'],
});
