/**
 * Super time steps by Runge–Kutta–Legendre stages, first order: Meyer, Balsara and Aslam (2014), eq. 16 to 19.
 * s stages reach (s² + s)/2 times as far as one explicit step may.
 */

/** Below the bound by this much, because the bound of a step is an estimate from row sums. */
const margin = 0.95;

/** Stages needed for a step `ratio` times as long as an explicit one may be. */
export function stagesFor(ratio: number): number {
  return Math.max(1, Math.ceil((Math.sqrt(1 + (8 * ratio) / margin) - 1) / 2));
}

/** Stage j of s: how much of the last change is carried on, and the part of the whole step it adds. */
export function stageOf(j: number, s: number): { readonly back: number; readonly part: number } {
  return { back: (1 - j) / j, part: ((2 * j - 1) / j) * (2 / (s * s + s)) };
}
