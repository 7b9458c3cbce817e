/** A place where a function of one variable is zero, found by bracketing and Brent's method. */
const steps = 240;

/**
 * Every root of `f` between `low` and `high` that a scan of 240 steps brackets, in rising order. The scan is
 * logarithmic when both ends are positive and more than a factor of twenty apart. A sign change across a
 * pole is not a root. Roots closer together than a step can be missed.
 */
export function findRoots(f: (x: number) => number, low: number, high: number): number[] {
  const logarithmic = low > 0 && high / low > 20;
  const at = (i: number): number => {
    if (i === 0) return low;
    if (i === steps) return high;
    return logarithmic ? low * (high / low) ** (i / steps) : low + ((high - low) * i) / steps;
  };
  const roots: number[] = [];
  let x0 = at(0);
  let f0 = f(x0);
  if (f0 === 0) roots.push(x0);
  for (let i = 1; i <= steps; i += 1) {
    const x1 = at(i);
    const f1 = f(x1);
    if (f1 === 0) roots.push(x1);
    else if (Number.isFinite(f0) && Number.isFinite(f1) && f0 * f1 < 0) {
      const x = brent(f, x0, x1, f0, f1);
      const size = Math.abs(f(x));
      if (size <= Math.min(Math.abs(f0), Math.abs(f1)) || size < 1e-9 * (Math.abs(f0) + Math.abs(f1)))
        roots.push(x);
    }
    x0 = x1;
    f0 = f1;
  }
  return roots;
}

/** Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4). */
function brent(f: (x: number) => number, low: number, high: number, fLow: number, fHigh: number): number {
  let a = low;
  let b = high;
  let fa = fLow;
  let fb = fHigh;
  let c = a;
  let fc = fa;
  let width = b - a;
  let before = width;
  for (let i = 0; i < 100; i += 1) {
    if (Math.sign(fb) === Math.sign(fc)) {
      c = a;
      fc = fa;
      width = b - a;
      before = width;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 4e-16 * Math.abs(b);
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    if (Math.abs(before) >= tolerance && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p = 2 * half * s;
      let q = 1 - s;
      if (a !== c) {
        const r = fb / fc;
        const t = fa / fc;
        p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
        q = (t - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(tolerance * q), Math.abs(before * q))) {
        before = width;
        width = p / q;
      } else {
        width = half;
        before = half;
      }
    } else {
      width = half;
      before = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(width) > tolerance ? width : Math.sign(half) * tolerance;
    fb = f(b);
  }
  return b;
}
