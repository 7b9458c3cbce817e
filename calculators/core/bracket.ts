/** Steps towards the line through the ends before they take turns with halving, and all steps. */
const straightFirst = 9;
const most = 90;

/** What a search has seen of a function: a place and its value there. */
interface Seen {
  readonly x: number;
  readonly f: number;
}

/**
 * The root of `f` between two points where its signs differ: regula falsi as Anderson and Björck weigh it (A
 * new high order method of regula falsi type, BIT 13, 1973), with halving where that is slow. At a jump it
 * ends at the jump.
 */
export function rootBetween(f: (x: number) => number, from: number, to: number): number {
  return rootOf(f, { x: from, f: f(from) }, { x: to, f: f(to) });
}

function rootOf(f: (x: number) => number, low: Seen, high: Seen): number {
  let [a, fa, b, fb] = [low.x, low.f, high.x, high.f];
  for (let i = 0; i < most; i += 1) {
    const straight = (a * fb - b * fa) / (fb - fa);
    const halves = i >= straightFirst && i % 3 !== 0;
    const x = halves || !Number.isFinite(straight) ? (a + b) / 2 : straight;
    const fx = f(x);
    if (fx === 0 || Math.abs(b - a) <= 1e-14 * (Math.abs(b) + Math.abs(a))) return x;
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else {
      const kept = 1 - fx / fb;
      fa *= kept > 0 ? kept : 0.5;
    }
    b = x;
    fb = fx;
    if (Math.abs(fx) < 1e-13) break;
  }
  return b;
}

/**
 * The root of a function that crosses zero once over the positive numbers, sought in its logarithm from a
 * bracket widened about `near`. NaN when none is bracketed within nine decades.
 */
export function rootNear(f: (x: number) => number, near: number): number {
  const of = (log: number): number => f(Math.exp(log));
  const middle = Math.log(near);
  for (let width = 0.5; width < 22; width *= 2) {
    const low = { x: middle - width, f: of(middle - width) };
    const high = { x: middle + width, f: of(middle + width) };
    if (low.f * high.f < 0) return Math.exp(rootOf(of, low, high));
  }
  return Number.NaN;
}
