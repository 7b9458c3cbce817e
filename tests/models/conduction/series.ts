/**
 * Bodies cooling in surroundings with a surface coefficient, no latent heat: the series of Carslaw and Jaeger,
 * Conduction of Heat in Solids, §3.11, §7.7 and §9.4, written here anew. Bi = h·half/k, Fo = α·t/half².
 */
export type SeriesShape = 'straight' | 'round' | 'ball';

function bessel(order: 0 | 1, x: number): number {
  let term = order === 0 ? 1 : x / 2;
  let sum = term;
  for (let n = 1; n < 80; n += 1) {
    term *= -(x * x) / 4 / (n * (n + order));
    sum += term;
  }
  return sum;
}

/** Nought at the roots. */
const condition: Record<SeriesShape, (z: number, bi: number) => number> = {
  straight: (z, bi) => z * Math.sin(z) - bi * Math.cos(z),
  round: (z, bi) => z * bessel(1, z) - bi * bessel(0, z),
  ball: (z, bi) => z * Math.cos(z) + (bi - 1) * Math.sin(z),
};
const coefficient: Record<SeriesShape, (z: number) => number> = {
  straight: (z) => (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z)),
  round: (z) => ((2 / z) * bessel(1, z)) / (bessel(0, z) ** 2 + bessel(1, z) ** 2),
  ball: (z) => (4 * (Math.sin(z) - z * Math.cos(z))) / (2 * z - Math.sin(2 * z)),
};
const profile: Record<SeriesShape, (z: number, x: number) => number> = {
  straight: (z, x) => Math.cos(z * x),
  round: (z, x) => bessel(0, z * x),
  ball: (z, x) => (x === 0 ? 1 : Math.sin(z * x) / (z * x)),
};

export function roots(shape: SeriesShape, bi: number, count: number): number[] {
  const f = condition[shape];
  const found: number[] = [];
  const step = 0.01;
  for (let z = 1e-6; found.length < count; z += step) {
    if (Math.sign(f(z, bi)) === Math.sign(f(z + step, bi))) continue;
    let [low, high] = [z, z + step];
    for (let n = 0; n < 60; n += 1) {
      const middle = (low + high) / 2;
      if (Math.sign(f(middle, bi)) === Math.sign(f(low, bi))) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}

export const firstTerm = (shape: SeriesShape, bi: number): [root: number, coefficient: number] => {
  const [z = 0] = roots(shape, bi, 1);
  return [z, coefficient[shape](z)];
};

/** Part of the first difference in temperature that is left, at x of the half-thickness or radius. */
export function left(shape: SeriesShape, bi: number, fo: number, x: number): number {
  return roots(shape, bi, 5).reduce(
    (sum, z) => sum + coefficient[shape](z) * profile[shape](z, x) * Math.exp(-z * z * fo),
    0,
  );
}
