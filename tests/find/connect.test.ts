import { describe, expect, it } from 'vitest';
import { formulas } from '../../calculators/formulas/index.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import { connect } from '../../src/find/connect.ts';
import { waysFrom } from '../../src/islands/carry.tsx';
import { graphFaults, graphOf, type Graph } from '../../src/find/graph.ts';

const graph = graphOf(Object.values(formulas));
const place = (name: string): number => {
  const at = graph.quantities.findIndex((one) => one.name === name);
  if (at < 0) throw new Error(`no quantity "${name}"`);
  return at;
};
const ask = (known: readonly string[], wanted: string) =>
  connect(graph, new Set(known.map(place)), place(wanted));

describe('the graph of quantities', () => {
  it('joins by names that exist and can be one thing', () => {
    expect(graphFaults(Object.values(formulas))).toEqual([]);
  });

  it('has every symbol that is not a constant, once', () => {
    const symbols = Object.values(formulas).flatMap((formula) =>
      Object.values(formula.symbols).filter(({ constant }) => constant === undefined),
    );
    expect(graph.relations.flatMap(({ parts }) => parts)).toHaveLength(symbols.length);
    for (const { id, parts } of graph.relations)
      expect(new Set(parts.map(({ quantity }) => quantity)).size, id).toBe(parts.length);
  });
});

describe('from what is known to what is wanted', () => {
  it('names the one formula that joins them', () => {
    const [first] = ask(['volume of the section', 'surface that cools'], 'modulus');
    expect(first!.links.map(({ relation }) => relation)).toEqual(['freezing/modulus']);
    expect(first!.lacking).toEqual([]);
  });

  it('chains two when one is not enough', () => {
    const chains = ask(['volume of the section', 'surface that cools', 'mould constant'], 'time to freeze');
    const chain = chains.find(({ links }) => links.at(-1)!.relation === 'freezing/time-rule')!;
    expect(chain.links.map(({ relation }) => relation)).toEqual(['freezing/modulus', 'freezing/time-rule']);
    expect(chains[0]).toBe(chain);
  });

  it('goes from a pattern on the scales to the charge, by the yield or by adding up', () => {
    const chains = ask(
      ['mass of the pattern', 'density of the pattern', 'density of the solid metal'],
      'charge to weigh out',
    );
    const ways = chains.map(({ links }) => links.map(({ relation }) => relation).join(' '));
    expect(ways).toContain('charge/mass-from-pattern charge/yield');
    expect(ways).toContain('charge/mass-from-pattern charge/total');
  });

  it('turns a formula round', () => {
    const [first] = ask(['modulus', 'surface that cools'], 'volume of the section');
    expect(first!.links[0]).toMatchObject({ relation: 'freezing/modulus', symbol: 'V' });
  });

  it('says what is still lacking, and what has a usual value', () => {
    const [first] = ask(['head of metal'], 'speed of the metal');
    expect(first!.lacking.length + first!.usual.length).toBeGreaterThan(0);
  });

  it('gives nothing for what is known already, or for no start at all', () => {
    expect(ask(['modulus'], 'modulus')).toEqual([]);
    expect(ask([], 'modulus')).toEqual([]);
  });

  it('never uses what it has not got, whatever is asked', () => {
    const names = graph.quantities.length;
    let seen = 0;
    for (let wanted = 0; wanted < names; wanted += 3) {
      const known = new Set([1, 7, 13, 29].map((step) => (wanted * step + 5) % names));
      for (const { links, uses, usual, lacking } of connect(graph, known, wanted)) {
        seen += 1;
        const have = new Set([...uses, ...usual, ...lacking]);
        expect(uses.every((one) => known.has(one))).toBe(true);
        expect(links.length).toBeLessThanOrEqual(4);
        for (const { from, gives, relation, symbol } of links) {
          for (const one of from) expect(have.has(one)).toBe(true);
          expect(formulas[relation]!.noSolve?.[symbol]).toBeUndefined();
          have.add(gives);
        }
        expect(links.at(-1)!.gives).toBe(wanted);
        expect(new Set(links.map(({ relation }) => relation)).size).toBe(links.length);
      }
    }
    expect(seen).toBeGreaterThan(20);
  });
});

describe('a small graph worked by hand', () => {
  // a + b → c (first), c + d → e (second), a + e → d is the second turned round.
  const small: Graph = {
    quantities: ['a', 'b', 'c', 'd', 'e'].map((name) => ({ name, sign: name, unit: '1' })),
    relations: [
      [0, 1, 2],
      [2, 3, 4],
    ].map((parts, at) => ({
      id: String(at),
      title: String(at),
      parts: parts.map((quantity) => ({ quantity, symbol: 'abcde'[quantity]!, found: true, usual: false })),
    })),
  };

  it('finds the only way', () => {
    expect(connect(small, new Set([0, 1, 3]), 4)).toEqual([
      {
        links: [
          { relation: '0', title: '0', gives: 2, symbol: 'c', from: [0, 1] },
          { relation: '1', title: '1', gives: 4, symbol: 'e', from: [2, 3] },
        ],
        uses: [0, 1, 3],
        usual: [],
        lacking: [],
      },
    ]);
  });

  it('runs it backwards', () => {
    const [chain] = connect(small, new Set([3, 4, 1]), 0);
    expect(chain!.links.map(({ gives }) => gives)).toEqual([2, 0]);
  });
});

describe('carrying numbers from one card to the next', () => {
  const entry = (text: string, unit: UnitSymbol) => ({ text, unit, spread: '' });
  const ways = waysFrom(
    graph,
    'freezing/modulus',
    { M: entry('2.5', 'mm'), V: entry('5', 'cm³'), A: entry('20', 'cm²') },
    '/',
  );

  it('opens the card with the number in its field, in the unit it was in', () => {
    const rule = ways.find(({ id }) => id === 'freezing/time-rule')!;
    expect(rule.link).toBe('/formulas/freezing/time-rule/#freezing/time-rule:find=t&M=2.5mm');
  });

  it('takes everything the two have in common, and never leads back to itself', () => {
    const chill = ways.find(({ id }) => id === 'feeding/chill')!;
    expect(chill.link).toContain('V=5cm³');
    expect(ways.some(({ id }) => id === 'freezing/modulus')).toBe(false);
    for (const { carries } of ways) expect(carries).toBeLessThanOrEqual(ways[0]!.carries);
  });
});
