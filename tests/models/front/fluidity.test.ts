import { describe, expect, it } from 'vitest';
import {
  a356,
  bySuction,
  bySuperheat,
  byWidth,
  quartz,
  runOf,
  standingOf,
  steel,
  trends,
  type Changed,
  type Tube,
} from '../../published/trends.ts';

/** Published trends as bands, never tuned to: the statements and their sources stand in `tests/published/trends.ts`. */
const stands: Readonly<Record<string, ReturnType<typeof standingOf>>> = {
  'trend-suction': 'within',
  'trend-superheat': 'below',
  'trend-straight': 'within',
  'trend-metal-mould': 'below',
  'trend-width': 'within',
};

describe('beside published fluidity', () => {
  it.each(trends)('$id stands to its band as the evidence page and the card say', (trend) => {
    expect(standingOf(trend, trend.here())).toBe(stands[trend.id]);
  });

  it.each([...quartz, ...steel])(
    'suction, 5 to 30 kPa: within the band in each tube, above the one test that was read: $width m, $b, $h',
    (tube) => {
      const [inQuartz, inSteel, rule] = trends[0]!.published.map(({ value }) => value) as [
        number,
        number,
        number,
      ];
      const ratio = bySuction(tube);
      expect(ratio).toBeGreaterThan(Math.max(inQuartz, inSteel));
      expect(ratio).toBeLessThan(rule);
    },
  );

  it.each(quartz)('superheat in quartz: within 15 % of the measured growth: $width m, $h', (tube) => {
    const measured = trends[1]!.published[0]!.value;
    expect(Math.abs(bySuperheat(tube) / measured - 1)).toBeLessThan(0.15);
  });

  it.each(steel)('superheat in steel: more run, though less than measured: $width m, $h', (tube) => {
    expect(bySuperheat(tube)).toBeGreaterThan(1);
    expect(bySuperheat(tube)).toBeLessThan(trends[1]!.published[1]!.value);
  });

  it('a channel twice as wide: in proportion at a bare skin, towards the square at close touch', () => {
    const tube = { b: 1000, width: 0.004, wall: 293.15 };
    const powers = [200, 2000, 20_000, 200_000].map((h) => byWidth({ ...tube, h }));
    for (let n = 1; n < powers.length; n += 1) expect(powers[n]!).toBeGreaterThan(powers[n - 1]! - 0.02);
    expect(powers.at(-1)!).toBeGreaterThan(powers[0]!);
    expect(powers.at(-1)!).toBeLessThanOrEqual(2);
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
  const tubeOf = (wall: { b: number; h: number }, width: number): Tube => ({ ...wall, width, wall: 293.15 });
  const ratio = (wall: { b: number; h: number }, change?: Changed, width = 0.004): number =>
    bySuction(tubeOf(wall, width), change);

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
      expect(runOf(a356, tubeOf(wall, d), 690, 15_000)).toBeLessThan(0.155);
    }
    const steel = { b: 8000, h: 1e6 };
    for (const d of [0.004, 0.006]) expect(ratio(steel, {}, d)).toBeGreaterThan(1.55);
  });
});
