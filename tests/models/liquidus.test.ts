import { describe, expect, it } from 'vitest';
import { diagrams } from '../../calculators/models/diagrams/diagrams.ts';
import { leverAt, liquidusOf, scheilAt, solidusOf } from '../../calculators/models/diagrams/freezing.ts';
import type { Diagram } from '../../calculators/models/diagrams/diagram.ts';
import { liquidus } from '../../calculators/models/liquidus.ts';

/** Straight lines from 1000 °C, the solid a fifth as rich as the liquid: Scheil's rule has a closed form here. */
const straight: Diagram = {
  name: 'straight',
  first: 'A',
  second: 'B',
  range: [0, 50],
  last: { celsius: 500, kind: 'eutectic' },
  scheil: true,
  branches: [
    {
      solid: 'A',
      liquidus: [
        [0, 1000],
        [50, 500],
      ],
      solidus: [
        [0, 1000],
        [10, 500],
      ],
    },
  ],
  source: { key: 'flemings', at: 'ch. 5', how: 'memory' },
};

describe('the two rules of freezing', () => {
  it('keeps to f_s = 1 − (C_L/C_0)^(1/(k−1)) where the partition is constant', () => {
    // Scheil's equation, Flemings ch. 5: k = 0.2, C_0 = 10, C_L = 30 at 700 °C: 1 − 3^(−1.25) = 0.74672.
    expect(scheilAt(straight.branches[0]!, 10, 700)).toBeCloseTo(0.74672, 4);
    // All the way to the eutectic at C_L = 50: 5^(−1.25) = 0.13375 is left.
    expect(1 - scheilAt(straight.branches[0]!, 10, 500)!).toBeCloseTo(0.13375, 4);
  });

  it('keeps to the lever: (C_L − C_0)/(C_L − C_S)', () => {
    // At 700 °C: C_L 30, C_S 6: (30 − 10)/24.
    expect(leverAt(straight, 10, 700)).toBeCloseTo(20 / 24, 9);
  });

  it('has more solid by Scheil’s rule never, since it keeps richer liquid', () => {
    for (const id of ['ag-cu', 'cu-sn', 'al-si']) {
      const diagram = diagrams[id]!;
      const top = liquidusOf(diagram, 6)!;
      for (let T = top.celsius - 2; T > (diagram.last?.celsius ?? 0) + 5; T -= 15) {
        const lever = leverAt(diagram, 6, T);
        const scheil = scheilAt(top.branch, 6, T);
        if (lever === undefined || scheil === undefined) continue;
        expect(scheil).toBeLessThanOrEqual(lever + 1e-3);
      }
    }
  });
});

describe.each(Object.entries(diagrams))('the diagram %s', (_id, diagram) => {
  it('falls along every line, with the solid below the liquid, from the melting points of the pure metals', () => {
    for (const { liquidus: upper, solidus: lower } of diagram.branches) {
      for (const line of [upper, lower]) {
        line.slice(1).forEach(([, celsius], i) => expect(celsius).toBeLessThan(line[i]![1]));
      }
    }
    // CRC Handbook: Ag 961.78, Cu 1084.62, Al 660.32, Au 1064.18 °C.
    const melts: Readonly<Record<string, number>> = { Ag: 961.78, Cu: 1084.62, Al: 660.32, Au: 1064.18 };
    expect(liquidusOf(diagram, 0)!.celsius).toBeCloseTo(melts[diagram.first]!, 0);
    if (diagram.range[1] === 100)
      expect(liquidusOf(diagram, 100)!.celsius).toBeCloseTo(melts[diagram.second]!, 0);
  });

  it('never has an alloy solid before it begins to freeze', () => {
    for (let percent = diagram.range[0]; percent <= diagram.range[1]; percent += 0.5) {
      expect(solidusOf(diagram, percent) ?? 0).toBeLessThanOrEqual(
        liquidusOf(diagram, percent)!.celsius + 0.05,
      );
    }
  });
});

describe('the question of the bench', () => {
  it('refuses outside the table instead of guessing', () => {
    const outside = liquidus.run({ system: 'cu-sn', share: 0.3 });
    expect(outside.values).toEqual({});
    expect(outside.notes.join(' ')).toMatch(/25 % Sn/);
  });

  it('knows the eutectics of the assessed diagrams', () => {
    // NIST phase data: Ag–Cu 779.1 °C at 28.41 % Cu (read). Al–Si 577 °C at 12.6 % Si (Massalski, memory).
    expect(liquidusOf(diagrams['ag-cu']!, 28.41)!.celsius).toBeCloseTo(779.1, 0);
    expect(liquidusOf(diagrams['al-si']!, 12.6)!.celsius).toBeCloseTo(577, 0);
  });

  it('leaves liquid for the eutectic in cast sterling, which the slow solidus denies', () => {
    const { values } = liquidus.run({ system: 'ag-cu', share: 0.075, T: 1063.15 });
    expect(values.solid).toBe(1);
    expect(values.scheil!).toBeLessThan(0.95);
    expect(values.rest!).toBeGreaterThan(0.05);
    expect(values.rest!).toBeLessThan(0.2);
  });

  it('leaves half of aluminium with 7 % silicon for the eutectic', () => {
    // Flemings (1974) and every text on A356: about half the alloy freezes as eutectic; lever (7 − 1.65)/(12.6 − 1.65) = 0.489.
    const { values } = liquidus.run({ system: 'al-si', share: 0.07, T: 577.5 + 273.15 });
    expect(1 - values.solid!).toBeCloseTo(0.489, 1);
    expect(values.rest!).toBeGreaterThan(0.489);
    expect(values.rest!).toBeLessThan(0.58);
  });
});
