import type { Library } from '../../calculators/exercises/answer.ts';
import { defineFormula, type Formula } from '../../calculators/core/formula.ts';
import { defineModel, type Model } from '../../calculators/core/model.ts';

/** Small formulas to mark against, so that these tests stand on sums anyone can redo. */
const byHand = { key: 'nist-sp811', at: 'definitions only', how: 'common practice' } as const;

export const fall = defineFormula({
  id: 'test/fall',
  title: 'Speed after a fall',
  answers: 'How fast is it after falling so far?',
  equation: 'v = sqrt(2 * g * h)',
  symbols: {
    v: { name: 'speed', unit: 'm/s', range: [0, 20] },
    g: { name: 'gravity', unit: 'm/s²', constant: 9.80665 },
    h: { name: 'height', unit: 'm', show: 'mm', range: [0, 2] },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const run = defineFormula({
  id: 'test/run',
  title: 'Time to run',
  answers: 'How long does it take?',
  equation: 't = L / v',
  symbols: {
    t: { name: 'time', unit: 's', range: [0, 10] },
    L: { name: 'length', unit: 'm', show: 'mm', range: [0, 1] },
    v: { name: 'speed', unit: 'm/s', range: [0, 20] },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const gas = defineFormula({
  id: 'test/gas',
  title: 'Volume when warmed',
  answers: 'How large does it grow?',
  equation: 'V2 = V1 * T2 / T1 * p1 / p2',
  symbols: {
    V2: { name: 'volume after', unit: 'm³', show: 'mL' },
    V1: { name: 'volume before', unit: 'm³', show: 'mL' },
    T1: { name: 'temperature before', unit: 'K', show: '°C' },
    T2: { name: 'temperature after', unit: 'K', show: '°C' },
    p1: { name: 'absolute pressure before', unit: 'Pa', show: 'kPa' },
    p2: { name: 'absolute pressure after', unit: 'Pa', show: 'kPa' },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const disc = defineFormula({
  id: 'test/disc',
  title: 'Area of a disc',
  answers: 'How large is it?',
  equation: 'A = pi * r^2',
  symbols: {
    A: { name: 'area', unit: 'm²', show: 'mm²' },
    r: { name: 'radius', unit: 'm', show: 'mm' },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const lid = defineFormula({
  id: 'test/lid',
  title: 'Force on a round lid',
  answers: 'How hard does the air press?',
  equation: 'F = p * pi * d^2 / 4',
  symbols: {
    F: { name: 'force', unit: 'N' },
    p: { name: 'pressure', unit: 'Pa', show: 'kPa' },
    d: { name: 'diameter', unit: 'm', show: 'mm' },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const slope = defineFormula({
  id: 'test/slope',
  title: 'Level length of a slope',
  answers: 'How far does it reach?',
  equation: 'x = L * cos(theta)',
  symbols: {
    x: { name: 'level length', unit: 'm', show: 'mm' },
    L: { name: 'length', unit: 'm', show: 'mm' },
    theta: { name: 'angle', sign: 'θ', unit: 'deg' },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const stack = defineFormula({
  id: 'test/stack',
  title: 'Height of two that stand on each other',
  answers: 'How high is it?',
  equation: 'H = a + b',
  symbols: {
    H: { name: 'height', unit: 'm', show: 'mm', range: [0, 10] },
    a: { name: 'lower', unit: 'm', show: 'mm', range: [0, 10] },
    b: { name: 'upper', unit: 'm', show: 'mm', range: [0, 10] },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const pair = defineFormula({
  id: 'test/pair',
  title: 'Pull of two weights on a lever',
  answers: 'How hard does it pull?',
  equation: 'M = (p + q) * l',
  symbols: {
    M: { name: 'moment', unit: 'J' },
    p: { name: 'first weight', unit: 'N', range: [0, 100] },
    q: { name: 'second weight', unit: 'N', range: [0, 100] },
    l: { name: 'arm', unit: 'm', range: [0, 10] },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

export const dust = defineFormula({
  id: 'test/dust',
  title: 'Dust in a draught',
  answers: 'How much dust is in the air?',
  equation: 'C = G / Q',
  symbols: {
    C: { name: 'dust in the air', unit: 'mg/m³', range: [0, 100] },
    G: { name: 'dust given off', unit: 'kg/s', show: 'g/s', range: [0, 1] },
    Q: { name: 'air drawn through', unit: 'm³/s', show: 'm³/h', range: [0, 10] },
  },
  assumes: [],
  source: byHand,
  examples: [],
});

/** Holds when the head is at least 100 mm. */
export const headCheck: Model = defineModel({
  id: 'test-plan',
  title: 'Head',
  answers: 'Is the head enough?',
  inputs: {
    h: { kind: 'quantity', name: 'head', unit: 'm', show: 'mm', usual: 0.04, range: [0, 1] },
    w: { kind: 'quantity', name: 'width', unit: 'm', show: 'mm', usual: 0.01 },
  },
  outputs: { twice: { name: 'twice the head', unit: 'm', show: 'mm' } },
  run: ({ h }) => ({
    values: { twice: 2 * Number(h) },
    steps: [{ id: 'twice', title: 'Twice the head', value: 2 * Number(h), unit: 'mm' }],
    checks: [
      {
        id: 'head',
        title: 'Head',
        verdict: Number(h) >= 0.1 ? 'holds' : 'fails',
        why: 'It needs 100 mm.',
        margin: Number(h) - 0.1,
        levers: ['h'],
      },
    ],
    notes: [],
  }),
  assumes: [],
  source: byHand,
  examples: [],
});

const formulas: Record<string, Formula> = Object.fromEntries(
  [fall, run, gas, disc, lid, slope, stack, pair, dust].map((f) => [f.id, f as Formula]),
);

export const library: Library = {
  formula: (id) => formulas[id],
  model: (id) => (id === headCheck.id ? headCheck : undefined),
};

const words = {
  title: 'A title',
  outcome: 'an-outcome',
  misconceptions: [],
  difficulty: 1,
  question: 'From {h}, how fast?',
  hints: ['Think.'],
};

export const fallFile = {
  ...words,
  kind: 'number',
  marks: 3,
  formula: 'test/fall',
  find: 'v',
  given: { h: '200 mm' },
  vary: { h: { from: '200 mm', to: '400 mm', step: '25 mm' } },
  mistakes: [
    { equation: 'v = sqrt(g * h)', says: 'The 2 under the root is missing.' },
    { change: { h: '2*h' }, says: 'That is twice the height.' },
  ],
};

export const stepsFile = {
  ...words,
  kind: 'steps',
  marks: 4,
  given: { h: '200 mm' },
  parts: [
    { id: 'speed', question: 'How fast?', formula: 'test/fall', find: 'v', given: { h: '=h' }, marks: 2 },
    {
      id: 'time',
      question: 'How long?',
      formula: 'test/run',
      find: 't',
      given: { L: '75 mm', v: '$speed' },
      marks: 2,
    },
  ],
};

export const choiceFile = {
  ...words,
  kind: 'choice',
  marks: 2,
  options: [
    { text: 'warm the mould', right: true, because: 'It gives time.' },
    { text: 'pour later', right: false, because: 'It loses heat.' },
    { text: 'raise the head', right: true, because: 'It gives speed.' },
  ],
};

export const orderFile = {
  ...words,
  kind: 'order',
  marks: 3,
  items: ['weigh', 'melt', 'skim', 'pour'],
  because: 'Each needs the one before.',
};

export const designFile = {
  ...words,
  kind: 'design',
  marks: 2,
  model: 'test-plan',
  start: { h: '40 mm' },
  change: ['h'],
  must: ['head'],
  passing: { h: '120 mm' },
};
