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

const length = (wall: { b: number; h: number }, d: number, celsius: number, suction: number): number =>
  follow(
    pour([{ shape: 'round', thickness: d, length: 3 }], {
      metal: { ...aluminium, gate: celsius + 273.15 },
      mould: { ...open, ...wall, temperature: 293.15 },
      drive: push({ suction }),
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
