import { describe, expect, it } from 'vitest';
import { erfc, erfcx } from '../../calculators/core/special.ts';
import { besselJ } from '../../calculators/models/warming/bessel.ts';
import { afterOne, afterTwo, timeToReach, type Body } from '../../calculators/models/warming/body.ts';
import {
  at,
  evenStart,
  firstFactor,
  later,
  mean,
  rootOf,
  underNewSurface,
  type Shape,
} from '../../calculators/models/warming/series.ts';

/**
 * First root and factor: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table 5.1, and Çengel,
 * Heat Transfer, Table 4-2, which agree. From memory; to one in the last printed digit.
 */
const oneTerm: readonly (readonly [Shape, number, number, number])[] = [
  ['plate', 0.01, 0.0998, 1.0017],
  ['cylinder', 0.01, 0.1412, 1.0025],
  ['sphere', 0.01, 0.173, 1.003],
  ['plate', 0.1, 0.3111, 1.0161],
  ['cylinder', 0.1, 0.4417, 1.0246],
  ['sphere', 0.1, 0.5423, 1.0298],
  ['plate', 1, 0.8603, 1.1191],
  ['cylinder', 1, 1.2558, 1.2071],
  ['plate', 10, 1.4289, 1.262],
  ['sphere', 10, 2.8363, 1.9249],
  ['plate', 100, 1.5552, 1.2731],
  ['cylinder', 100, 2.3809, 1.6015],
  ['sphere', 100, 3.1102, 1.999],
];

describe('the series of warming through', () => {
  it.each(oneTerm)(
    'has the tabulated first root and factor of a %s at Bi = %d',
    (shape, Bi, root, factor) => {
      expect(Math.abs(rootOf(shape, Bi, 1) - root)).toBeLessThanOrEqual(1.0001e-4);
      expect(Math.abs(firstFactor(shape, Bi) - factor)).toBeLessThanOrEqual(1.0001e-4);
    },
  );

  it.each([
    // Table of roots in Essentials of Applied Mathematics for Scientists and Engineers (2007), p. 172; read.
    [2, 2.0288],
    [5, 2.5704],
  ])('has the tabulated first root of a ball at Bi = %d', (Bi, root) => {
    expect(rootOf('sphere', Bi, 1)).toBeCloseTo(root, 4);
  });

  it.each([
    // Carslaw & Jaeger (1959), Appendix IV, Table I, roots of α tan α = C; memory. First four at C = 1.
    ['plate', 1, [0.8603, 3.4256, 6.4373, 9.5293]],
    // The same, Table III, roots of αJ₁(α) = CJ₀(α); memory. First four at C = 1.
    ['cylinder', 1, [1.2558, 4.0795, 7.1558, 10.271]],
    // A ball at C = Bi − 1 = 0: cos α = 0, the odd halves of π.
    ['sphere', 1, [1.5708, 4.7124, 7.854, 10.9956]],
  ] as const)('counts the roots of a %s without losing one', (shape, Bi, roots) => {
    roots.forEach((root, i) => expect(rootOf(shape, Bi, i + 1)).toBeCloseTo(root, 4));
    for (const strong of [1e-4, 0.3, 7, 400]) {
      for (let n = 1; n < 60; n += 1)
        expect(rootOf(shape, strong, n + 1)).toBeGreaterThan(rootOf(shape, strong, n) + 1);
    }
  });

  it.each([
    // Abramowitz & Stegun (1964), Tables 9.1 and 9.5; memory.
    [0, 1, 0.7651976866],
    [1, 1, 0.4400505857],
    [0, 5, -0.1775967713],
    [1, 5, -0.3275791376],
    [0, 2.4048255577, 0],
    [1, 3.8317059702, 0],
    [0, 30.6346064684, 0],
  ] as const)('has J%d(%d)', (order, x, value) => {
    expect(besselJ(order, x)).toBeCloseTo(value, 9);
  });

  it.each(['plate', 'cylinder', 'sphere'] as const)('begins a %s at one temperature', (shape) => {
    for (const Bi of [0.05, 1, 30]) {
      const early = later(evenStart(shape, Bi, 1e-4), 1e-4);
      expect(at(early, 0)).toBeCloseTo(1, 4);
      expect(at(early, 0.7)).toBeCloseTo(1, 4);
    }
  });

  it('warms the face of a plate at first as an endless body does, exp and erfc', () => {
    // Carslaw & Jaeger §2.7: at the face 1 − θ = 1 − erfcx(Bi√Fo), while the middle has not noticed.
    for (const [Bi, Fo] of [
      [2, 0.002],
      [10, 0.001],
      [0.5, 0.004],
    ] as const) {
      const profile = later(evenStart('plate', Bi, Fo), Fo);
      expect(at(profile, 1)).toBeCloseTo(erfcx(Bi * Math.sqrt(Fo)), 6);
    }
  });

  it('comes to the endless body with its face held, when the surface takes heat without limit', () => {
    // 1 − θ = erfc(x/√(4αt)) from one face; Bi = 1e5 stands for a held face.
    const profile = later(evenStart('plate', 1e5, 0.005), 0.005);
    expect(1 - at(profile, 0.9)).toBeCloseTo(erfc(0.1 / Math.sqrt(0.02)), 4);
  });

  it('is lumped when the Biot number is small: every place fades as exp(−n·Bi·Fo)', () => {
    for (const [shape, n] of [
      ['plate', 1],
      ['cylinder', 2],
      ['sphere', 3],
    ] as const) {
      const [Bi, Fo] = [0.001, 400];
      const profile = later(evenStart(shape, Bi, Fo), Fo);
      expect(mean(profile)).toBeCloseTo(Math.exp(-n * Bi * Fo), 3);
      expect(at(profile, 1) / at(profile, 0)).toBeCloseTo(1, 3);
    }
  });

  it('loses through the surface what the body loses inside', () => {
    // d(mean)/dFo = −n·Bi·θ(1), by differences.
    for (const [shape, n] of [
      ['plate', 1],
      ['cylinder', 2],
      ['sphere', 3],
    ] as const) {
      const start = evenStart(shape, 3, 0.05);
      const [before, middle, after] = [0.0499, 0.05, 0.0501].map((Fo) => later(start, Fo)) as [
        ReturnType<typeof later>,
        ReturnType<typeof later>,
        ReturnType<typeof later>,
      ];
      expect((mean(after) - mean(before)) / 0.0002).toBeCloseTo(-n * 3 * at(middle, 1), 3);
    }
  });

  it.each(['plate', 'cylinder', 'sphere'] as const)(
    'tells a %s the same under another surface coefficient as before it changed',
    (shape) => {
      const left = later(evenStart(shape, 3, 0.05), 0.05);
      const told = later(underNewSurface(left, 7, 1e-4), 1e-4);
      for (const x of [0, 0.3, 0.6, 0.9]) expect(at(told, x)).toBeCloseTo(at(left, x), 2);
      expect(mean(told)).toBeCloseTo(mean(left), 2);
    },
  );
});

/** Explicit finite differences in a slab, told nothing of the series: cells, a half cell at each end. */
function slabByCells(
  stays: readonly { around: number; h: number; time: number }[],
  { k, rho, c, half, start }: { k: number; rho: number; c: number; half: number; start: number },
): { middle: number; face: number } {
  const cells = 80;
  const dx = half / cells;
  const alpha = k / (rho * c);
  let T = Array.from({ length: cells + 1 }, () => start);
  for (const { around, h, time } of stays) {
    const steps = Math.ceil((time * alpha) / (0.2 * dx * dx));
    const r = (alpha * (time / steps)) / (dx * dx);
    for (let i = 0; i < steps; i += 1) {
      T = T.map((here, j) => {
        if (j === 0) return here + 2 * r * (T[1]! - here);
        if (j === cells) return here + 2 * r * (T[j - 1]! - here + ((h * dx) / k) * (around - here));
        return here + r * (T[j - 1]! - 2 * here + T[j + 1]!);
      });
    }
  }
  return { middle: T[0]!, face: T[cells]! };
}

describe('a body that stays in one place and then another', () => {
  const sand = { k: 0.6, rho: 1500, c: 1100, half: 0.035, start: 293 };
  const stuff = { k: sand.k, alpha: sand.k / (sand.rho * sand.c) };
  const body: Body = [{ shape: 'plate', half: sand.half }];

  it.each([
    [1800, 120],
    [3600, 600],
    [600, 3000],
  ])('agrees with finite differences: oven %d s, air %d s', (oven, air) => {
    const first = { around: 493, h: 20, time: oven };
    const second = { around: 293, h: 12, time: air };
    const cells = slabByCells([first, second], sand);
    expect(Math.abs(afterTwo(body, stuff, sand.start, first, second, [0]) - cells.middle)).toBeLessThan(0.1);
    expect(Math.abs(afterTwo(body, stuff, sand.start, first, second, [1]) - cells.face)).toBeLessThan(0.1);
  });

  it('is the same in one stay as in two halves of it, in every shape', () => {
    const bodies: Body[] = [
      [{ shape: 'cylinder', half: 0.03 }],
      [{ shape: 'sphere', half: 0.03 }],
      [
        { shape: 'cylinder', half: 0.03 },
        { shape: 'plate', half: 0.05 },
      ],
    ];
    for (const each of bodies) {
      const place = each.map((_, i) => (i === 0 ? 0.5 : 0.2));
      const half = { around: 493, h: 20, time: 700 };
      // A hair's difference of the coefficient makes it go through the change of surface.
      const other = { ...half, h: 20.0001 };
      expect(afterTwo(each, stuff, 293, half, other, place)).toBeCloseTo(
        afterOne(each, stuff, 293, { ...half, time: 1400 }, place),
        2,
      );
    }
  });

  it('warms a short cylinder from all sides as the product of a long one and a slab', () => {
    const stay = { around: 493, h: 20, time: 1500 };
    const left = (one: Body, place: number[]) => (afterOne(one, stuff, 293, stay, place) - 493) / -200;
    const long: Body = [{ shape: 'cylinder', half: 0.03 }];
    const slab: Body = [{ shape: 'plate', half: 0.04 }];
    expect(left([...long, ...slab], [0.2, 0.6])).toBeCloseTo(left(long, [0.2]) * left(slab, [0.6]), 12);
  });

  it('reaches a temperature at the time it says', () => {
    const time = timeToReach(body, stuff, 293, { around: 493, h: 20 }, 413)!;
    expect(afterOne(body, stuff, 293, { around: 493, h: 20, time }, [0])).toBeCloseTo(413, 6);
    expect(timeToReach(body, stuff, 293, { around: 493, h: 20 }, 500)).toBeUndefined();
  });
});
