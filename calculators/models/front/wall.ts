import { erfcx } from '../../core/special.ts';

const rootPi = Math.sqrt(Math.PI);
const [step, last] = [0.02, 8] as const;

/** 1/Γ(n/2 + 1) for n = 2…12: each is the one two before it over n/2. */
const series = [1, 4 / (3 * rootPi)];
for (let n = 4; n <= 12; n += 1) series.push(series[n - 4]! / (n / 2));

/** Values and slopes of the function below on a grid, worked once: a race asks for it some ten thousand times. */
let table: { readonly value: Float64Array; readonly slope: Float64Array } | undefined;

function filled(): { readonly value: Float64Array; readonly slope: Float64Array } {
  const count = Math.round(last / step) + 2;
  const value = new Float64Array(count);
  const slope = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    const tau = i * step;
    const scaled = erfcx(tau);
    value[i] = (2 * tau) / rootPi - 1 + scaled;
    slope[i] = 2 * tau * scaled;
  }
  return { value, slope };
}

/** 2τ/√π − 1 + exp(τ²)·erfc(τ): series near nought, a cubic between grid points, then its last terms. */
export function soaked(tau: number): number {
  if (tau < 0.3) {
    let sum = 0;
    for (let n = series.length - 1; n >= 0; n -= 1) sum = series[n]! - tau * sum;
    return tau * tau * sum;
  }
  if (tau >= last) return (2 * tau) / rootPi - 1 + (1 - (0.5 - 0.75 / tau ** 2) / tau ** 2) / (tau * rootPi);
  table ??= filled();
  const i = Math.floor(tau / step);
  const u = tau / step - i;
  const rest = 1 - u;
  const { value, slope } = table;
  return (
    value[i]! * rest * rest * (1 + 2 * u) +
    value[i + 1]! * u * u * (1 + 2 * rest) +
    step * u * rest * (slope[i]! * rest - slope[i + 1]! * u)
  );
}

/**
 * Heat taken by one square metre of mould from metal one kelvin hotter, held there from first contact for `t`
 * seconds, J/(m²·K): a half-space of heat diffusivity b behind the coefficient h. Carslaw & Jaeger, Conduction
 * of Heat in Solids (1959), §2.7. For a short time it is h·t, for a long time 2b√(t/π).
 */
export function heatTaken(b: number, h: number): (t: number) => number {
  const scale = (b * b) / h;
  const rate = h / b;
  return (t) => (t > 0 ? scale * soaked(rate * Math.sqrt(t)) : 0);
}
