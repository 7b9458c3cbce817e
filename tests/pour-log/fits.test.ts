import { describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { demoLog } from '../../calculators/pour-log/demo.ts';
import { ownConstant, ownFilling, ownLoss, pointsOf } from '../../calculators/pour-log/fits.ts';

const rounds = 1000;

/** How often of a thousand the interval holds the truth, and the middle of the estimates. */
function coverage(
  seed: string,
  truth: number,
  fit: (random: ReturnType<typeof createRandom>) => { value: number; low: number; high: number } | undefined,
) {
  const random = createRandom(seed);
  let held = 0;
  let done = 0;
  const values: number[] = [];
  while (done < rounds) {
    const own = fit(random);
    if (!own) continue;
    done += 1;
    values.push(own.value);
    if (own.low <= truth && truth <= own.high) held += 1;
  }
  values.sort((a, b) => a - b);
  return { share: held / rounds, median: values[rounds / 2]! };
}

describe('the log finds what simulated pours were made with', () => {
  it.each([4, 8, 20])('mould constant from %i timed sections that scatter by 20 %%', (n) => {
    const { share, median } = coverage(`constant ${n}`, 1.9e6, (random) =>
      ownConstant(
        Array.from({ length: n }, () => {
          const modulus = 0.5e-3 + 2e-3 * random.uniform();
          return { modulus, froze: 1.9e6 * modulus ** 2 * Math.exp(0.2 * random.normal()) };
        }),
      ),
    );
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.97);
    expect(median / 1.9e6).toBeCloseTo(1, 1.5);
  });

  it.each([5, 12])('losses from %i pours', (n) => {
    const { share } = coverage(`loss ${n}`, 0.018, (random) =>
      ownLoss(Array.from({ length: n }, () => 0.018 + 0.005 * random.normal())),
    );
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.97);
  });

  it.each([40, 80])('fill factor from %i sections, filled or not', { timeout: 120_000 }, (n) => {
    const { share, median } = coverage(`filling ${n}`, 0.9, (random) =>
      ownFilling(
        Array.from({ length: n }, () => {
          const margin = Math.exp(-1 + 2.2 * random.uniform());
          const chance = 1 / (1 + Math.exp(-4 * Math.log(margin / 0.9)));
          return { margin, filled: random.uniform() < chance };
        }),
      ),
    );
    expect(share).toBeGreaterThanOrEqual(0.93);
    expect(share).toBeLessThanOrEqual(0.97);
    expect(median / 0.9).toBeCloseTo(1, 1.3);
  });
});

describe('what the log says of more pours', () => {
  it('that so many more halve the doubt, as the table of t has it', () => {
    // t(3) = 3.182, / √4 = 1.591, half 0.796; t(8) = 2.306 / 3 = 0.769 is under it, t(7) = 2.365 / √8 = 0.836 is not
    const own = ownLoss([0.01, 0.02, 0.03, 0.02]);
    expect(own?.toHalve).toBe(5);
    expect(ownLoss([0.01, 0.02])).toBeUndefined();
  });

  it('that a pour near the margin in doubt teaches more than one far off', () => {
    const trials = Array.from({ length: 30 }, (_, n) => ({
      margin: 0.3 + n * 0.08,
      filled: n > 9 !== (n === 7 || n === 12),
    }));
    const fit = ownFilling(trials);
    expect(fit!.chance(fit!.teaches)).toBeGreaterThan(0.1);
    expect(fit!.chance(fit!.teaches)).toBeLessThan(0.9);
    expect(fit!.chance(fit!.value)).toBeCloseTo(0.5, 9);
  });

  it('nothing of filling while everything filled, and something when filled and not are cleanly apart', () => {
    expect(ownFilling(Array.from({ length: 20 }, () => ({ margin: 2, filled: true })))).toBeUndefined();
    const apart = ownFilling(
      Array.from({ length: 20 }, (_, n) => ({ margin: 0.5 + n * 0.1, filled: n >= 10 })),
    );
    expect(apart!.value).toBeGreaterThan(1.2);
    expect(apart!.value).toBeLessThan(1.7);
    expect(Number.isFinite(apart!.slope)).toBe(true);
  });

  it('the invented log of the mill is enough to learn all three from', () => {
    const { timed, trials, losses } = pointsOf(demoLog());
    expect(ownConstant(timed)).toBeDefined();
    expect(ownFilling(trials)).toBeDefined();
    expect(ownLoss(losses)).toBeDefined();
    expect(demoLog().every(({ invented }) => invented)).toBe(true);
    expect(demoLog()).toEqual(demoLog());
  });
});
