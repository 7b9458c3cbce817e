import { describe, expect, it } from 'vitest';
import { body, cool } from './bare.ts';
import { firstTerm, left, type SeriesShape } from './series.ts';

const bi = 1;
const fo = 0.5;
const h = (bi * body.k) / body.half;
const time = (fo * body.half ** 2) / body.alpha;

describe('without latent heat', () => {
  // Incropera and DeWitt, 6th ed., Table 5.1, Bi = 1 (from memory).
  it.each<[SeriesShape, number, number]>([
    ['straight', 0.8603, 1.1191],
    ['round', 1.2558, 1.2071],
    ['ball', 1.5708, 1.2732],
  ])('the series of a %s body begins as the tables say', (shape, root, coefficient) => {
    const [z, c] = firstTerm(shape, bi);
    expect(z).toBeCloseTo(root, 4);
    expect(c).toBeCloseTo(coefficient, 4);
  });

  it.each<SeriesShape>(['straight', 'round', 'ball'])('a %s body cools as its series', (shape) => {
    const { theta, axes, result } = cool([shape], 40, h, time, 0.005);
    const { centres } = axes[0]!;
    for (const cell of [0, 20, 39]) {
      const wanted = left(shape, bi, fo, centres[cell]! / body.half);
      expect(Math.abs(theta[cell]! / wanted - 1), `cell ${cell}`).toBeLessThan(0.002);
    }
    expect(result.drift).toBeLessThan(1e-9);
  });

  it('a bar as high as it is wide cools as the product of bar and plate', () => {
    const { theta, axes, result } = cool(['round', 'straight'], 20, h, time, 0.005);
    const [x, y] = axes;
    for (const [i, j] of [
      [0, 0],
      [19, 0],
      [0, 19],
      [12, 7],
    ] as const) {
      const wanted =
        left('round', bi, fo, x!.centres[i]! / body.half) *
        left('straight', bi, fo, y!.centres[j]! / body.half);
      expect(Math.abs(theta[i + 20 * j]! / wanted - 1), `cell ${i}, ${j}`).toBeLessThan(0.004);
    }
    expect(result.drift).toBeLessThan(1e-9);
  });

  it('a cube cools as the product of three plates', () => {
    const { theta, axes } = cool(['straight', 'straight', 'straight'], 8, h, time, 0.01);
    const wanted = left('straight', bi, fo, axes[0]!.centres[0]! / body.half) ** 3;
    expect(Math.abs(theta[0]! / wanted - 1)).toBeLessThan(0.006);
  });
});

describe('the error', () => {
  const error = (shape: SeriesShape, cells: number, growth: number): number => {
    const { theta, axes } = cool([shape], cells, h, time, growth);
    return Math.abs(theta[0]! - left(shape, bi, fo, axes[0]!.centres[0]! / body.half));
  };

  it.each<SeriesShape>(['straight', 'round', 'ball'])(
    'of a %s body falls with the square of the cells',
    (shape) => {
      const order = Math.log2(error(shape, 5, 1e-4) / error(shape, 10, 1e-4));
      expect(order).toBeGreaterThan(1.8);
      expect(order).toBeLessThan(2.3);
    },
  );

  it('falls with the step', () => {
    const order = Math.log2(error('straight', 80, 0.04) / error('straight', 80, 0.02));
    expect(order).toBeGreaterThan(0.85);
    expect(order).toBeLessThan(1.3);
  });
});
