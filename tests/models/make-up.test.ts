import highs from 'highs';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { makeUp } from '../../calculators/models/make-up.ts';
import { bestCharge, type Bound, type Stock } from '../../calculators/models/make-up/programme.ts';

const metal = (
  name: string,
  price: number,
  shares: Readonly<Record<string, number>>,
  most = Infinity,
): Stock => ({
  name,
  price,
  shares,
  rest: 0,
  least: 0,
  most,
});

const solver = await highs();

/** The same question put to another solver, in the format of CPLEX. */
function byHighs(
  stock: readonly Stock[],
  bounds: readonly Bound[],
  kept: ReadonlyMap<string, number>,
  batch: number,
): { status: string; cost: number } {
  const left = (one: Stock, element: string) => (one.shares[element] ?? 0) * (kept.get(element) ?? 1);
  const sum = (term: (one: Stock) => number) =>
    stock.map((one, i) => `${term(one) < 0 ? '-' : '+'} ${Math.abs(term(one)).toFixed(12)} x${i}`).join(' ');
  const lines = [
    'Minimize',
    `obj: ${sum(({ price }) => price)}`,
    'Subject To',
    `mass: ${sum((one) => one.rest + Object.keys(one.shares).reduce((all, e) => all + left(one, e), 0))} = ${batch}`,
    ...bounds.flatMap(({ element, least, most }, i) => [
      `lo${i}: ${sum((one) => left(one, element))} >= ${(least * batch).toFixed(12)}`,
      `hi${i}: ${sum((one) => left(one, element))} <= ${(most * batch).toFixed(12)}`,
    ]),
    'Bounds',
    ...stock.map(({ least, most }, i) => `${least} <= x${i}${Number.isFinite(most) ? ` <= ${most}` : ''}`),
    'End',
  ];
  const { Status, ObjectiveValue } = solver.solve(lines.join('\n'));
  return { status: Status, cost: ObjectiveValue };
}

describe('the charge of least cost', () => {
  it('costs what another solver says, and is impossible when it says so, on 60 made-up stores', () => {
    const random = createRandom('charges');
    const elements = ['Cu', 'Sn', 'Zn'];
    let possible = 0;
    for (let i = 0; i < 60; i += 1) {
      const stock = Array.from({ length: 5 }, (_, k) => {
        const [a, b] = [random.uniform(), random.uniform() * 0.5];
        const Cu = k === 0 ? 1 : a;
        const Sn = (1 - Cu) * b;
        const most = random.uniform() < 0.4 ? random.uniform() : Infinity;
        return metal(`metal ${k}`, 1 + 30 * random.uniform(), { Cu, Sn, Zn: 1 - Cu - Sn }, most);
      });
      const bounds = elements.map((element) => {
        const least = 0.4 * random.uniform();
        return { element, least, most: least + 0.4 * random.uniform() + (element === 'Cu' ? 0.4 : 0) };
      });
      const kept = new Map([['Zn', 0.9]]);
      const ours = bestCharge(stock, bounds, kept, 1);
      const theirs = byHighs(stock, bounds, kept, 1);
      expect(ours.ok, theirs.status).toBe(theirs.status === 'Optimal');
      if (!ours.ok) {
        expect(ours.short.length).toBeGreaterThan(0);
        continue;
      }
      possible += 1;
      const cost = ours.masses.reduce((sum, mass, k) => sum + mass * stock[k]!.price, 0);
      expect(cost).toBeCloseTo(theirs.cost, 5);
    }
    expect(possible).toBeGreaterThan(5);
    expect(possible).toBeLessThan(60);
  });

  it('agrees with the two-stock rule', () => {
    // 60 g of 99.9 % silver to 92.5 % with copper: 60 × 0.999/0.925 = 64.80 g.
    const given = {
      batch: 0.0648,
      scale: 0.00001,
      stock: [
        { name: 'fine silver', price: 900, Ag: 0.999, Cu: 0.001 },
        { name: 'copper', price: 10, Cu: 1 },
      ],
      target: [{ element: 'Ag', least: 0.925 }],
      loss: [],
    };
    const { steps } = makeUp.run(given);
    expect(steps.find(({ id }) => id === 'weigh-1')?.value).toBeCloseTo(0.06, 5);
    expect(steps.find(({ id }) => id === 'weigh-2')?.value).toBeCloseTo(0.0048, 5);
  });

  it('names the element and how much is missing', () => {
    const { values, notes, checks } = makeUp.run({
      batch: 0.1,
      scale: 0.0001,
      stock: [{ name: 'returns', price: 3, Cu: 0.92, Sn: 0.08 }],
      target: [{ element: 'Sn', least: 0.1 }],
      loss: [],
    });
    expect(values).toEqual({});
    expect(checks[0]?.verdict).toBe('fails');
    expect(notes[0]).toMatch(/^Sn: .*8\.00 %.*10\.0 %.*2\.0 % short/);
  });

  it('names the stock when there is too little of it', () => {
    const { notes } = makeUp.run({
      batch: 0.1,
      scale: 0.0001,
      stock: [{ name: 'copper', price: 3, have: 0.06, Cu: 1 }],
      target: [],
      loss: [],
    });
    expect(notes[0]).toMatch(/short by 40\.0 g/);
  });

  it('rounds to the scale and owns to it when that breaks a limit', () => {
    const { steps, checks } = makeUp.run({
      batch: 0.01,
      scale: 0.001,
      stock: [
        { name: 'copper', price: 10, Cu: 1 },
        { name: 'tin', price: 30, Sn: 1 },
      ],
      target: [{ element: 'Sn', least: 0.118, most: 0.122 }],
      loss: [],
    });
    for (const { id, value = 0 } of steps)
      if (id.startsWith('weigh')) expect(value / 0.001).toBeCloseTo(Math.round(value / 0.001), 9);
    expect(checks[0]?.verdict).toBe('close');
    expect(checks[0]?.why).toMatch(/scale/);
  });

  it('rounds the way that keeps the limits, and never past what is in hand', () => {
    // 11.8 g of tin are least: 7.919 g beside 40.03 g of returns must go up to 8.0, the returns down to 40.0.
    const { steps, checks } = makeUp.run({
      batch: 0.1,
      scale: 0.0001,
      stock: [
        { name: 'copper', price: 10, Cu: 1 },
        { name: 'tin', price: 30, Sn: 1 },
        { name: 'returns', have: 0.04003, price: 3, Cu: 0.9, Sn: 0.1 },
      ],
      target: [{ element: 'Sn', least: 0.118, most: 0.122 }],
      loss: [{ element: 'Sn', share: 0.01 }],
    });
    const grams = (id: string) => (steps.find((step) => step.id === id)?.value ?? NaN) * 1000;
    expect(grams('weigh-2')).toBeCloseTo(8, 6);
    expect(grams('weigh-3')).toBeCloseTo(40, 6);
    expect(checks[0]?.verdict).toBe('holds');
  });

  it('replaces what burns away', () => {
    const { steps } = makeUp.run({
      batch: 0.1,
      scale: 0.00001,
      stock: [
        { name: 'copper', price: 10, Cu: 1 },
        { name: 'zinc', price: 3, Zn: 1 },
      ],
      target: [{ element: 'Zn', least: 0.3, most: 0.3 }],
      loss: [{ element: 'Zn', share: 0.05 }],
    });
    // 30 g left of 30/0.95 = 31.579 g.
    expect(steps.find(({ id }) => id === 'weigh-2')?.value).toBeCloseTo(0.03158, 5);
  });
});
