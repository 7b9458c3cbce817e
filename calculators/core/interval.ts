/** Above this relative half-width a positive quantity is log-normal, so that it never goes below zero. */
const logNormalFrom = 0.2;
/** Standard deviations in half of a 95 % interval. */
const deviations = 1.959964;

const isWide = (value: number, spread: number): boolean => value > 0 && spread / value > logNormalFrom;

/**
 * The 95 % interval of a number with half-width `spread`: even in ratio, value ÷ (1 + r) to value × (1 + r),
 * when it is positive and uncertain by more than a fifth; even in width otherwise.
 */
export function interval(value: number, spread: number): readonly [low: number, high: number] {
  if (!isWide(value, spread)) return [value - spread, value + spread];
  const ratio = 1 + spread / value;
  return [value / ratio, value * ratio];
}

/** What turns a standard normal draw into one of the number. */
export function drawOf(value: number, spread: number): (normal: number) => number {
  if (!(spread > 0)) return () => value;
  if (isWide(value, spread)) {
    const scale = Math.log1p(spread / value) / deviations;
    return (normal) => value * Math.exp(scale * normal);
  }
  const scale = spread / deviations;
  return (normal) => value + scale * normal;
}
