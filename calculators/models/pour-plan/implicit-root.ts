import type { Formula } from '../../core/formula.ts';
import { residualOf } from '../../core/solve.ts';
import { rootBetween } from './bracket.ts';

/**
 * The root of a formula whose two sides cross once as `find` rises, sought in its logarithm from a bracket
 * widened about `near`. Undefined when none is bracketed; the caller then asks `solve`, which scans the whole
 * range and says why. A plan is sampled a thousand times, and a scan costs ten times this.
 */
export function implicitRoot(
  formula: Formula,
  given: Readonly<Record<string, number>>,
  find: string,
  near: number,
): number | undefined {
  const at = residualOf(formula, given, find);
  const f = (log: number): number => at(Math.exp(log));
  let low = Math.log(near) - 1;
  let high = low + 2;
  for (let i = 0; i < 12; i += 1) {
    if (f(low) * f(high) < 0) return Math.exp(rootBetween(f, low, high));
    low -= 1.5;
    high += 1.5;
  }
  return undefined;
}
