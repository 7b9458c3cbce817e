/**
 * Error functions, to about 1e-14 relative. Series and continued fraction as in Abramowitz & Stegun,
 * Handbook of Mathematical Functions (1964), 7.1.6 and 7.1.14. `erfcx(x)` is exp(x²)·erfc(x), which stays
 * finite where erfc underflows and exp overflows.
 */
const rootPi = Math.sqrt(Math.PI);
/** Below it the series of erf loses no digits that matter; above it the continued fraction is quick. */
const crossover = 2;

function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 200 && Math.abs(term) > 1e-17 * Math.abs(sum); n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / rootPi) * Math.exp(-x * x) * sum;
}

/** The fraction closes in as exp(−2x√(2n)): so many terms leave less than 1e-16, with some to spare. */
function erfcxFraction(x: number): number {
  let tail = x;
  for (let n = Math.ceil(10 + 220 / (x * x)); n >= 1; n -= 1) tail = x + n / 2 / tail;
  return 1 / (rootPi * tail);
}

export function erf(x: number): number {
  if (x < 0) return -erf(-x);
  return x < crossover ? erfSeries(x) : 1 - Math.exp(-x * x) * erfcxFraction(x);
}

export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x);
  return x < crossover ? 1 - erfSeries(x) : Math.exp(-x * x) * erfcxFraction(x);
}

export function erfcx(x: number): number {
  if (x < 0) return 2 * Math.exp(x * x) - erfcx(-x);
  return x < crossover ? Math.exp(x * x) * (1 - erfSeries(x)) : erfcxFraction(x);
}
