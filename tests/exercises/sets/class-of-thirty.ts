import type { Draft } from '../../../calculators/exercises/sets/building.ts';
import { withSum, type Given, type HandIn } from '../../../calculators/exercises/sets/hand-in.ts';
import { variantFor } from '../../../calculators/exercises/sets/learner.ts';
import type { GradedSet } from '../../../calculators/exercises/sets/set-file.ts';
import { draftOf } from './course-bank.ts';

/**
 * A class of thirty with known right and wrong ways. Every answer is worked out here by plain arithmetic from
 * the learner's own numbers, and the marks of every way were written down by hand from the rules of marking:
 * one mark of a number is its unit's, a later part follows from the learner's own earlier one, a choice is all
 * or nothing, an order keeps a share for each neighbour pair that stands.
 */
const questionIds = [
  'mass-of-the-clapper',
  'what-is-left',
  'heat-at-arms-length',
  'seal-from-wax-to-charge',
  'dressing-in-order',
  'gauge-that-stalls',
  'a-path-that-closed',
  'shield-that-fills',
] as const;
export const ownId = 'own-why-warm-the-mould';

export const classDraft = (more: Partial<Draft> = {}): Draft => ({
  ...draftOf(questionIds, { id: 'spring-test', title: 'Spring test at the mill', ...more }),
  picks: [
    ...questionIds.map((id) => ({ id })),
    {
      id: ownId,
      outcome: 'Say why a mould is warmed',
      own: {
        title: 'Why warm the mould',
        kind: 'text',
        outcome: 'own-say-why',
        marks: 3,
        difficulty: 1,
        question: 'Why do you warm the mould before you pour? Give two reasons.',
        rubric: ['Moisture would turn to steam.', 'Thin webs freeze before they fill.'],
      },
    },
  ],
});

type Numbers = Readonly<Record<string, number>>;
type Way = (n: Numbers) => Given;
const one = (text: string): Given => ({ texts: { answer: text } });
const r = (x: number): string => String(Number(x.toPrecision(4)));

const mass = ({ V, rho }: Numbers): number => (V! * rho!) / 1000;
const massWays: Record<string, Way> = {
  right: (n) => one(`${r(mass(n))} g`),
  kilo: (n) => one(`${r(mass(n) / 1000)} kg`),
  bare: (n) => one(r(mass(n))),
  cubic: (n) => one(`${r(mass(n))} cm³`),
  thousand: (n) => one(`${r(mass(n) * 1000)} g`),
  divided: ({ V, rho }) => one(`${r(V! / (rho! / 1000))} g`),
  water: ({ V }) => one(`${r(V!)} g`),
  near: (n) => one(`${r(mass(n) * 1.05)} g`),
  words: () => one('a good handful'),
  five: () => one('5'),
  blank: () => ({}),
};

/** Kilopascals of the standard atmosphere at these heights, from its table. */
const standardAir: Record<number, number> = { 300: 97.773, 900: 90.971, 1400: 85.6, 1800: 81.494 };
const air = ({ z }: Numbers): number => standardAir[z!]!;
const two = (first: string, second: string): Given => ({ texts: { air: first, left: second } });
const leftWays: Record<string, Way> = {
  right: (n) => two(`${r(air(n))} kPa`, `${r(air(n) - n['p_g']!)} kPa`),
  mbar: (n) => two(`${r(air(n) * 10)} mbar`, `${r((air(n) - n['p_g']!) * 10)} mbar`),
  // The sea's air for the workshop's, and carried on.
  sea: ({ p_g }) => two('101.3 kPa', `${r(101.3 - p_g!)} kPa`),
  nopower: ({ z, p_g }) => {
    const wrong = 101.325 * (1 - z! / 44330.77);
    return two(`${r(wrong)} kPa`, `${r(wrong - p_g!)} kPa`);
  },
  added: (n) => two(`${r(air(n))} kPa`, `${r(air(n) + n['p_g']!)} kPa`),
  noair: (n) => two('', `${r(air(n) - n['p_g']!)} kPa`),
  bare: (n) => two(r(air(n)), r(air(n) - n['p_g']!)),
  blank: () => ({}),
};

const radiant = (T: number, share: number): number =>
  (0.8 * 5.670374e-8 * (T ** 4 - 293.15 ** 4) * share) / 1000;
const share = (radius: number, d: number): number => radius ** 2 / (radius ** 2 + d ** 2);
const kelvin = ({ T }: Numbers): number => T! + 273.15;
const heat = (n: Numbers): number => radiant(kelvin(n), share(n['r']!, n['d']!));
const heatWays: Record<string, Way> = {
  right: (n) => one(`${r(heat(n))} kW/m²`),
  watts: (n) => one(`${r(heat(n) * 1000)} W/m²`),
  bare: (n) => one(r(heat(n))),
  celsius: (n) => one(`${r(radiant(n['T']!, share(n['r']!, n['d']!)))} kW/m²`),
  diameter: (n) => one(`${r(radiant(kelvin(n), share(2 * n['r']!, n['d']!)))} kW/m²`),
  noshare: (n) => one(`${r(radiant(kelvin(n), 1))} kW/m²`),
  minus: (n) => one(`-${r(heat(n))} kW/m²`),
  blank: () => ({}),
};

const part = ({ m_p }: Numbers): number => (m_p! / 0.96 / 1.018 ** 3) * 10.36;
const charge = ({ m_sprue, w }: Numbers, of: number): number => (of + m_sprue! + 3) / (1 - w! / 100);
const three = (p: number, c: number, eta: number): Given => ({
  texts: { part: `${r(p)} g`, charge: `${r(c)} g`, share: `${r(100 * eta)} %` },
});
const followed = (n: Numbers, p: number): Given => three(p, charge(n, p), p / charge(n, p));
const sealWays: Record<string, Way> = {
  right: (n) => followed(n, part(n)),
  noallow: (n) => followed(n, (n['m_p']! / 0.96) * 10.36),
  upside: (n) => followed(n, (n['m_p']! * 0.96) / 10.36),
  nosprue: (n) => {
    const c = (part(n) + 3) / (1 - n['w']! / 100);
    return three(part(n), c, part(n) / c);
  },
  noheel: (n) => {
    const c = (part(n) + n['m_sprue']!) / (1 - n['w']! / 100);
    return three(part(n), c, part(n) / c);
  },
  upyield: (n) => three(part(n), charge(n, part(n)), charge(n, part(n)) / part(n)),
  rest: (n) => three(part(n), charge(n, part(n)), part(n) / (charge(n, part(n)) - part(n))),
  first: (n) => ({ texts: { part: `${r(part(n))} g`, charge: '', share: ' ' } }),
  two: (n) => {
    const p = (n['m_p']! / 0.96) * 10.36;
    return three(p, charge(n, p), charge(n, p) / p);
  },
  blank: () => ({}),
};

const chosen =
  (...positions: number[]): Way =>
  () => ({ chosen: positions });
const design =
  (texts: Record<string, string>): Way =>
  () => ({ texts });

export const ways: readonly Record<string, readonly [Way, number]>[] = [
  pair(massWays, {
    right: 3,
    kilo: 3,
    bare: 2,
    cubic: 2,
    thousand: 1,
    divided: 1,
    water: 1,
    near: 1,
    words: 0,
    five: 0,
    blank: 0,
  }),
  pair(leftWays, { right: 4, mbar: 4, sea: 3, nopower: 3, added: 3, noair: 2, bare: 2, blank: 0 }),
  pair(heatWays, { right: 3, watts: 3, bare: 2, celsius: 1, diameter: 1, noshare: 1, minus: 1, blank: 0 }),
  pair(sealWays, {
    right: 7,
    noallow: 5,
    upside: 5,
    nosprue: 6,
    noheel: 6,
    upyield: 6,
    rest: 6,
    first: 3,
    two: 4,
    blank: 0,
  }),
  pair(
    {
      right: chosen(0, 1, 2, 3, 4),
      late: chosen(0, 1, 4, 2, 3),
      back: chosen(4, 3, 2, 1, 0),
      blank: chosen(),
    },
    { right: 2, late: 1, back: 0, blank: 0 },
  ),
  pair(
    { right: chosen(3, 0), one: chosen(0), three: chosen(0, 1, 3), blank: chosen() },
    { right: 2, one: 0, three: 0, blank: 0 },
  ),
  pair(
    { right: chosen(0, 3), one: chosen(0), pump: chosen(1), blank: chosen() },
    { right: 4, one: 0, pump: 0, blank: 0 },
  ),
  pair(
    {
      right: design({ 'suction.gauge': '15 kPa', head: '60 mm' }),
      more: design({ 'suction.gauge': '20 kPa', head: '60 mm' }),
      stray: design({ metal: 'sterling' }),
      hand: design({ head: 'a hand' }),
      blank: design({}),
    },
    { right: 4, more: 4, stray: 0, hand: 0, blank: 0 },
  ),
  // Words wait for a person: no mark yet.
  pair(
    { said: () => one('Damp would flash to steam,\nand thin webs freeze early.'), blank: () => ({}) },
    { said: 0, blank: 0 },
  ),
];

function pair(
  how: Record<string, Way>,
  marks: Record<string, number>,
): Record<string, readonly [Way, number]> {
  return Object.fromEntries(Object.entries(how).map(([name, way]) => [name, [way, marks[name]!]]));
}

/** Name, the way taken in each question, and the marks as added up on paper. */
const table = `
Ada Brook        | right right right right right right right right said | 3 4 3 7 2 2 4 4 0 | 29
Bo Reed          | kilo mbar watts noallow right right right more said | 3 4 3 5 2 2 4 4 0 | 27
Cy Marsh         | bare sea celsius upside late one right right blank | 2 3 1 5 1 0 4 4 0 | 20
Di Weir          | cubic nopower diameter nosprue right three one stray said | 2 3 1 6 2 0 0 0 0 | 14
Ed Sluice        | thousand added noshare noheel back right pump hand said | 1 3 1 6 0 2 0 0 0 | 13
Fay Leat         | divided noair minus upyield right right right blank said | 1 2 1 6 2 2 4 0 0 | 18
Gus Mole         | water bare bare rest late blank right right blank | 1 2 2 6 1 0 4 4 0 | 20
Hal Quay         | near blank right first right right blank right said | 1 0 3 3 2 2 0 4 0 | 15
Ivy Staithe      | words right celsius two blank right right right said | 0 4 1 4 0 2 4 4 0 | 19
Jo Wharf         | five right celsius right right one right more said | 0 4 1 7 2 0 4 4 0 | 22
Kit Lock         | blank blank blank blank blank blank blank blank blank | 0 0 0 0 0 0 0 0 0 | 0
Lea Pound        | right sea right right right right right right blank | 3 3 3 7 2 2 4 4 0 | 28
Max Sill         | right added celsius noallow late right one right said | 3 3 1 5 1 2 0 4 0 | 19
Nan Gate         | right right diameter right right three right stray said | 3 4 1 7 2 0 4 0 0 | 21
Oz Paddle        | bare mbar right upside right right right right said | 2 4 3 5 2 2 4 4 0 | 26
Pip Race         | divided sea celsius noallow back one pump hand said | 1 3 1 5 0 0 0 0 0 | 10
Quin Tail        | right right right rest right right right more said | 3 4 3 6 2 2 4 4 0 | 28
Ria Head         | water nopower noshare nosprue late right right right blank | 1 3 1 6 1 2 4 4 0 | 22
Sam Float        | kilo right watts right right right one right said | 3 4 3 7 2 2 0 4 0 | 25
Tess Cog         | thousand sea celsius two right blank right blank said | 1 3 1 4 2 0 4 0 0 | 15
Una Trundle      | right noair right noheel right right right right said | 3 2 3 6 2 2 4 4 0 | 26
Vic Stone        | right right bare upyield late right pump right said | 3 4 2 6 1 2 0 4 0 | 22
Wyn Hopper       | cubic added minus first back three one blank blank | 2 3 1 3 0 0 0 0 0 | 9
Xan Damsel       | right right right right right one right right said | 3 4 3 7 2 0 4 4 0 | 27
Yve Bell         | near bare diameter noallow right right right more said | 1 2 1 5 2 2 4 4 0 | 21
Zed Quern        | right sea celsius right right right blank right said | 3 3 1 7 2 2 0 4 0 | 22
=HYPERLINK("http://example.invalid","Ann") | right right right right late right right right said | 3 4 3 7 1 2 4 4 0 | 28
<img src=x onerror=alert(1)> | divided sea noshare upside right one right right said | 1 3 1 5 2 0 4 4 0 | 20
Zoë Řeka         | kilo mbar celsius right right right right right said | 3 4 1 7 2 2 4 4 0 | 27
"Lee, Bo; junior" | bare blank blank blank back blank blank blank blank | 2 0 0 0 0 0 0 0 0 | 2
`;

export interface Pupil {
  readonly name: string;
  readonly ways: readonly string[];
  readonly marks: readonly number[];
  readonly total: number;
}

export const pupils: readonly Pupil[] = table
  .trim()
  .split('\n')
  .map((row) => {
    const [name = '', taken = '', marks = '', total = ''] = row.split(' | ');
    return {
      name: name.trim(),
      ways: taken.trim().split(' '),
      marks: marks.trim().split(' ').map(Number),
      total: Number(total),
    };
  });

/** A number as it stands before its unit. */
const numbersOf = (given: Readonly<Record<string, string>>): Numbers =>
  Object.fromEntries(Object.entries(given).map(([name, text]) => [name, Number.parseFloat(text)]));

export function answersOf(set: GradedSet, { name, ways: taken }: Pupil): Record<string, Given> {
  return Object.fromEntries(
    set.questions.map((exercise, at) => {
      const [way] = ways[at]![taken[at]!]!;
      const given = way(numbersOf(variantFor(set, name, exercise).given));
      return [exercise.id, Object.keys(given).length > 0 ? { ...given, seconds: 30 + at } : {}];
    }),
  );
}

export function handInOf(set: GradedSet, pupil: Pupil, minute = 0): HandIn {
  return withSum({
    format: 'warm-mould-hand-in',
    version: 1,
    set: { id: set.id, edition: set.edition, hash: set.hash },
    learner: pupil.name,
    library: '0.1.0',
    handedIn: `2026-03-02T10:${String(minute).padStart(2, '0')}:00Z`,
    answers: answersOf(set, pupil),
  });
}
