import { describe, expect, it } from 'vitest';
import { follow } from '../../../calculators/models/front/follow.ts';
import type { Metal } from '../../../calculators/models/front/pour.ts';
import { open, pour, push } from './pour.ts';

/**
 * Measured fluidity, as bands and never tuned to: A356 drawn into tubes by suction, Metals 12(11) (2022) 1986,
 * abstract (doi 10.3390/met12111986; read). Tube width and coefficient are not in it, so ratios are compared, over
 * the widths and coefficients such a test may have.
 */
const aluminium: Metal = {
  rho: 2430,
  c: 1160,
  latent: 441e3,
  solidus: 828.15,
  liquidus: 888.15,
  gamma: 0.85,
  theta: (130 / 180) * Math.PI,
  mu: 0.0012,
  stop: 0.35,
  gate: 0,
};

interface Changed {
  readonly mu?: number;
  readonly loss?: number;
  readonly gamma?: number;
  readonly head?: number;
}

const length = (
  wall: { b: number; h: number },
  d: number,
  celsius: number,
  suction: number,
  { loss = 0.5, head = 0, ...metal }: Changed = {},
): number =>
  follow(
    pour([{ shape: 'round', thickness: d, length: 3, loss }], {
      metal: { ...aluminium, ...metal, gate: celsius + 273.15 },
      mould: { ...open, ...wall, temperature: 293.15 },
      drive: push({ suction, head }),
      cells: 200,
    }),
  ).fronts[0]!.reached;

const quartz = [2000, 5000].flatMap((h) => [0.004, 0.006].map((d) => ({ wall: { b: 1500, h }, d })));
const steel = [2000, 5000].flatMap((h) => [0.004, 0.006].map((d) => ({ wall: { b: 8000, h }, d })));

describe('beside measured fluidity', () => {
  it.each(quartz)(
    'grows with superheat in quartz by 26 → 36 cm, within 15 %, and evenly: $d m, $wall.h',
    ({ wall, d }) => {
      const [a, b, c] = [650, 690, 730].map((celsius) => length(wall, d, celsius, 15_000)) as [
        number,
        number,
        number,
      ];
      expect(c / a / (36 / 26)).toBeGreaterThan(0.85);
      expect(c / a / (36 / 26)).toBeLessThan(1.15);
      expect(Math.abs((2 * b) / (a + c) - 1)).toBeLessThan(0.03);
    },
  );

  it.each([...quartz, ...steel])(
    'grows with suction, 5 → 30 kPa, by less than the speed alone would, √6: $d m, $wall.b, $wall.h',
    ({ wall, d }) => {
      // Measured 1.72 in quartz, 1.55 in steel; here more, and the model says so.
      const ratio = length(wall, d, 690, 30_000) / length(wall, d, 690, 5000);
      expect(ratio).toBeGreaterThan(1);
      expect(ratio).toBeLessThan(Math.sqrt(6));
    },
  );

  it.each(steel)('grows with superheat in steel, though less than measured: $d m, $wall.h', ({ wall, d }) => {
    // Measured 13 → 29 cm. In a chilling tube a shell grows on the wall and stays there; here what freezes travels
    // with the stream, so this is not reproduced, and the model says so.
    const ratio = length(wall, d, 730, 15_000) / length(wall, d, 650, 15_000);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(29 / 13);
  });

  it('grows with the width of the channel, more than in proportion and less than its square', () => {
    // Zadeh & Campbell, Int. J. Cast Metals Res. 16 (2003) 162, abstract (read): in sand, with the square of the modulus.
    const wall = { b: 1000, h: 2000 };
    const power = Math.log2(length(wall, 0.008, 690, 10_000) / length(wall, 0.004, 690, 10_000));
    expect(power).toBeGreaterThan(1);
    expect(power).toBeLessThan(2);
  });
});

/**
 * Why suction does more here than in the published test, 1.72 in quartz and 1.55 in steel: what each part of the
 * model is worth, so that nobody looks for the gap where it is not. A resistance that goes with the square of the
 * speed leaves the run going with √p, and friction as rough as can be with ∛p: x·v² ∝ p, so x ∝ p^⅓·t^⅔ and
 * 6^⅓ = 1.82 at one time to stop. Both measured ratios lie below that, so no loss of pressure explains them: at
 * 30 kPa the metal must stay fluid for a shorter time, (1.72/1.82)^1.5 = 0.92 and (1.55/1.82)^1.5 = 0.79 at most.
 * To close the gap in this model the coefficient at the wall would have to grow with the speed to the power 0.3 in
 * quartz and 0.45 in steel (ratio 2.15^(1 − m), 2.23^(1 − m)). No source was found that says so, so it is not in.
 * The air path of such an apparatus counts too (Imono 67(4) (1995) 246, abstract, read); what it was here is not known.
 */
describe('what the trend with suction does not come from', () => {
  const cases = [
    { name: 'quartz', wall: { b: 1500, h: 5000 }, measured: 1.72 },
    { name: 'steel', wall: { b: 8000, h: 5000 }, measured: 1.55 },
  ];
  const ratio = (wall: { b: number; h: number }, change?: Changed, d = 0.004): number =>
    length(wall, d, 690, 30_000, change) / length(wall, d, 690, 5000, change);

  it.each(cases)(
    'entry loss, thickness of the liquid and tension: more of each widens it in $name',
    (one) => {
      const plain = ratio(one.wall);
      for (const change of [{ loss: 5 }, { mu: 0.012 }, { gamma: 2.5 }, { mu: 0 }])
        expect(ratio(one.wall, change)).toBeGreaterThan(plain);
    },
  );

  it.each(cases)('a head of its own, 100 mm, that the test may have had: $name', ({ wall, measured }) => {
    // How deep the tube was dipped is not in the abstract. It takes the ratio from 2.15 to 1.86, from 2.23 to 1.91.
    const with100 = ratio(wall, { head: 0.1 });
    expect(with100).toBeGreaterThan(1.8);
    expect(with100).toBeLessThan(1.95);
    expect(with100).toBeGreaterThan(measured);
  });

  it('a wall that touches perfectly: right in quartz, but the runs are then far shorter than the 31 cm measured', () => {
    const wall = { b: 1500, h: 1e6 };
    for (const d of [0.004, 0.006]) {
      expect(ratio(wall, {}, d)).toBeLessThan(1.72);
      expect(length(wall, d, 690, 15_000)).toBeLessThan(0.155);
    }
    const steel = { b: 8000, h: 1e6 };
    for (const d of [0.004, 0.006]) expect(ratio(steel, {}, d)).toBeGreaterThan(1.55);
  });
});
