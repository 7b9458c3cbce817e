import {
  defineModel,
  type Check,
  type QuantityInput,
  type Result,
  type Step,
  type Values,
} from '../core/model.ts';
import { known, noResult, notAboveNought, numberAt, rowsAt, textAt } from './given.ts';
import { bestCharge, type Bound, type Stock } from './make-up/programme.ts';
import { meltOf, roundedToScale } from './make-up/rounding.ts';
import { say } from './pour-plan/say.ts';

const elements = {
  Cu: 'copper',
  Sn: 'tin',
  Zn: 'zinc',
  Si: 'silicon',
  Al: 'aluminium',
  Mn: 'manganese',
  Ag: 'silver',
  Au: 'gold',
  Ni: 'nickel',
  Pb: 'lead',
  P: 'phosphorus',
  Fe: 'iron',
} as const;
const symbols = Object.keys(elements);

const shareOf = (name: string): QuantityInput => ({
  kind: 'quantity',
  name,
  unit: '1',
  show: '%',
  range: [0, 1],
  why: 'a share of the whole',
});

const inputs = {
  batch: {
    kind: 'quantity',
    name: 'metal wanted after melting',
    unit: 'kg',
    show: 'g',
    range: [0.001, 50],
    why: 'small charges',
    usual: 0.1,
    first: true,
  },
  scale: {
    kind: 'quantity',
    name: 'what the scale can show',
    unit: 'kg',
    show: 'g',
    range: [0.000001, 0.01],
    why: 'from a fine balance to a kitchen scale',
    usual: 0.0001,
  },
  stock: {
    kind: 'list',
    name: 'metal in stock',
    most: 30,
    item: {
      name: { kind: 'text', name: 'name', usual: 'metal' },
      have: {
        kind: 'quantity',
        name: 'in hand',
        unit: 'kg',
        show: 'g',
        range: [0, 100],
        why: 'a small store',
        note: 'Open: as much as you like.',
      },
      use: {
        kind: 'quantity',
        name: 'use at least',
        unit: 'kg',
        show: 'g',
        range: [0, 100],
        why: 'a small store',
      },
      price: {
        kind: 'quantity',
        name: 'cost of a kilogram, or its carbon',
        unit: '1',
        range: [0, 200000],
        why: 'from scrap to gold',
        usual: 10,
      },
      ...Object.fromEntries(
        symbols.map((symbol) => [symbol, shareOf(elements[symbol as keyof typeof elements])]),
      ),
    },
    usual: [
      { name: 'copper', price: 10, Cu: 1 },
      { name: 'tin', price: 30, Sn: 1 },
      { name: 'own returns, 10 % tin', have: 0.04, price: 3, Cu: 0.9, Sn: 0.1 },
    ],
  },
  target: {
    kind: 'list',
    name: 'wanted in the melt',
    most: 12,
    item: {
      element: { kind: 'choice', name: 'element', options: elements, usual: 'Cu' },
      least: shareOf('at least'),
      most: shareOf('at most'),
    },
    usual: [{ element: 'Sn', least: 0.118, most: 0.122 }],
  },
  loss: {
    kind: 'list',
    name: 'burnt or boiled away in melting',
    most: 12,
    item: {
      element: { kind: 'choice', name: 'element', options: elements, usual: 'Zn' },
      share: { ...shareOf('share of it lost'), range: [0, 0.5], usual: 0.02 },
    },
    usual: [
      { element: 'Zn', share: 0.05 },
      { element: 'Sn', share: 0.01 },
    ],
  },
} as const;

function readStock(given: Values): readonly Stock[] | string {
  const stock: Stock[] = [];
  for (const [index, row] of rowsAt(given, 'stock').entries()) {
    const name = textAt(row, 'name') || `metal ${index + 1}`;
    const shares = Object.fromEntries(symbols.map((symbol) => [symbol, numberAt(row, symbol) || 0]));
    const sum = Object.values(shares).reduce((all, share) => all + share, 0);
    if (Object.values(shares).some((share) => share < 0)) return `${name}: no share can be below nought.`;
    if (sum > 1.005) return `${name}: its elements add up to ${say(sum, '%', 4)}, more than the whole.`;
    if (!(sum > 0)) return `${name}: say what it is made of.`;
    const have = numberAt(row, 'have');
    const use = Math.max(0, numberAt(row, 'use') || 0);
    if (use > have) return `${name}: more is to be used than there is.`;
    stock.push({
      name,
      shares,
      rest: Math.max(0, 1 - sum),
      price: Math.max(0, numberAt(row, 'price') || 0),
      least: use,
      most: Number.isNaN(have) ? Number.POSITIVE_INFINITY : Math.max(0, have),
    });
  }
  return stock.length === 0 ? 'Name at least one metal in stock.' : stock;
}

function run(given: Values): Result {
  const bad = notAboveNought(given, inputs, 'batch', 'scale');
  if (bad !== undefined) return noResult(bad);
  const stock = readStock(given);
  if (typeof stock === 'string') return noResult(stock);
  const batch = numberAt(given, 'batch');
  const scale = numberAt(given, 'scale');
  const bounds: Bound[] = [];
  for (const row of rowsAt(given, 'target')) {
    const element = textAt(row, 'element');
    const least = numberAt(row, 'least') || 0;
    const most = Number.isNaN(numberAt(row, 'most')) ? 1 : numberAt(row, 'most');
    if (least > most)
      return noResult(
        `${element}: at least ${say(least, '%')} and at most ${say(most, '%')} contradict each other.`,
      );
    bounds.push({ element, least, most });
  }
  const kept = new Map<string, number>();
  for (const row of rowsAt(given, 'loss'))
    kept.set(textAt(row, 'element'), 1 - Math.min(0.99, Math.max(0, numberAt(row, 'share') || 0)));

  const best = bestCharge(stock, bounds, kept, batch);
  if (!best.ok) {
    const why = best.short.map(({ element, by, side, reached, bound }) =>
      element === 'mass'
        ? `The stock in hand is short by ${say(by, 'g', 3)}${side === 'over' ? ' the other way: what must be used is more than is wanted' : ''}.`
        : `${element}: the nearest the stock comes is ${say(reached, '%', 3)}, and ${side === 'under' ? 'at least' : 'at most'} ${say(bound, '%', 3)} is wanted: ${say(by, '%', 2)} ${side === 'under' ? 'short' : 'too much'}.`,
    );
    const check: Check = {
      id: 'can-be-made',
      title: 'Can it be made from this stock?',
      verdict: 'fails',
      margin: -Math.max(...best.short.map(({ by }) => by), 1e-6),
      why: why[0] ?? 'It cannot be made from this stock.',
      levers: [],
    };
    return {
      values: {},
      steps: [],
      checks: [check],
      notes: [...why, 'Add a metal that is richer or poorer in it, or widen the limits.'],
    };
  }

  const weighed = roundedToScale(stock, best.masses, bounds, kept, scale, batch);
  const melt = meltOf(stock, weighed, kept);
  if (!(melt.mass > 0))
    return noResult('The scale is too coarse: every part of this charge weighs less than it can show.');
  const steps: Step[] = stock.flatMap(({ name }, i): Step[] =>
    weighed[i]! > 0 ? [{ id: `weigh-${i + 1}`, title: `Weigh ${name}`, value: weighed[i]!, unit: 'g' }] : [],
  );
  const charge = weighed.reduce((sum, one) => sum + one, 0);
  const price = stock.reduce((sum, one, i) => sum + weighed[i]! * one.price, 0);
  for (const [symbol, share] of Object.entries(melt.shares))
    if (share > 0)
      steps.push({ id: `melt-${symbol}`, title: `${symbol} in the melt`, value: share, unit: '%' });
  const off = bounds.flatMap(({ element, least, most }) => {
    const share = melt.shares[element] ?? 0;
    return share < least - 1e-9 || share > most + 1e-9
      ? [
          `${element} comes to ${say(share, '%', 4)}, outside its limits, because the scale shows only ${say(scale, 'g')}.`,
        ]
      : [];
  });
  const room = Math.min(
    1,
    ...bounds.map(({ element, least, most }) => {
      const share = melt.shares[element] ?? 0;
      return Math.min(share - least, most - share);
    }),
  );
  const check: Check = {
    id: 'can-be-made',
    title: 'Can it be made from this stock?',
    verdict: off.length > 0 ? 'close' : 'holds',
    margin: room,
    why: off[0] ?? 'Yes, as weighed, every element lies within its limits.',
    levers: ['scale', 'batch'],
  };
  return { values: known({ charge, price, melt: melt.mass }), steps, checks: [check], notes: off };
}

/**
 * The cheapest charge (or least carbon) from a stock list that brings every element within its limits after
 * melting losses: a linear programme, its masses (kg) rounded to the scale and the composition they then give.
 * When there is none it names the element and how far the nearest falls short.
 */
export const makeUp = defineModel({
  id: 'charge/make-up',
  title: 'Charge from the metals in stock',
  answers: 'What do I weigh out of my stock to make this alloy, at the least cost?',
  inputs,
  outputs: {
    charge: { name: 'charge to weigh out', unit: 'kg', show: 'g' },
    price: { name: 'its cost, or carbon', unit: '1' },
    melt: { name: 'melt it leaves', unit: 'kg', show: 'g' },
  },
  run,
  assumes: [
    'the analyses are right: unknown scrap has no place in a charge',
    'each element loses the same share whatever it came in with',
    'shares not stated are something else, which neither burns nor counts',
  ],
  source: { key: 'dantzig', at: 'blending as a linear programme', how: 'memory' },
  examples: [
    {
      title: '100 g of bronze with 12 % tin, using up the returns',
      given: {},
      expect: { charge: '100.2 g' },
      from: {
        byHand:
          'Returns are cheapest: all 40 g, which bring 36 g of copper and 4 × 0.99 = 3.96 g of tin. Tin is dearest: only the least, 11.8 g, so 7.84 g more, 7.84 ÷ 0.99 = 7.919 g; 7.9 would fall below it, so 8.0 g are weighed. Copper 100 − 36 − 11.8 = 52.2 g. 40 + 8.0 + 52.2 = 100.2 g.',
      },
    },
  ],
  caution: [
    'Never melt plated, soldered or unknown metal: cadmium, beryllium and lead give poisonous fume.',
    'Zinc boils below the pouring temperature of brass: extraction, and add it last.',
  ],
  words: ['alloy', 'mixture', 'blend', 'stock', 'scrap', 'returns', 'linear programme', 'recipe'],
});
