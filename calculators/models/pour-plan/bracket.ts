const most = 80;

/**
 * The root of `f` between two points where its signs differ: regula falsi in Illinois form (Dowell, M.;
 * Jarratt, P.: A modified regula falsi method, BIT 11, 1971). At a jump it ends at the jump.
 */
export function rootBetween(f: (x: number) => number, from: number, to: number): number {
  let low = from;
  let high = to;
  let fLow = f(low);
  let fHigh = f(high);
  for (let i = 0; i < most; i += 1) {
    // Every fourth step halves, so that a jump or a flat end cannot hold it up.
    const straight = (low * fHigh - high * fLow) / (fHigh - fLow);
    const middle = i % 4 === 3 || !Number.isFinite(straight) ? (low + high) / 2 : straight;
    const fMiddle = f(middle);
    if (fMiddle === 0 || Math.abs(high - low) <= 1e-14 * (Math.abs(high) + Math.abs(low))) return middle;
    if (fMiddle * fHigh < 0) {
      low = high;
      fLow = fHigh;
    } else {
      fLow /= 2;
    }
    high = middle;
    fHigh = fMiddle;
    if (Math.abs(fMiddle) < 1e-13) break;
  }
  return high;
}
