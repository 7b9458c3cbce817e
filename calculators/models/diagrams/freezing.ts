import type { Branch, Diagram, Point } from './diagram.ts';

/** The other coordinate on a line of points, straight between two; undefined off its ends. */
function along(points: readonly Point[], from: 0 | 1, value: number): number | undefined {
  const to = from === 0 ? 1 : 0;
  for (let i = 1; i < points.length; i += 1) {
    const a = points[i - 1]!;
    const b = points[i]!;
    const share = a[from] === b[from] ? 0 : (value - a[from]) / (b[from] - a[from]);
    if (share >= -1e-12 && share <= 1 + 1e-12 && !(a[from] === b[from] && value !== a[from]))
      return a[to] + share * (b[to] - a[to]);
  }
  return undefined;
}

const temperatureAt = (points: readonly Point[], percent: number) => along(points, 0, percent);
const percentAt = (points: readonly Point[], celsius: number) => along(points, 1, celsius);

/** °C at which an alloy begins to freeze, and the branch it begins on. */
export function liquidusOf(
  diagram: Diagram,
  percent: number,
): { celsius: number; branch: Branch } | undefined {
  for (const branch of diagram.branches) {
    const celsius = temperatureAt(branch.liquidus, percent);
    if (celsius !== undefined) return { celsius, branch };
  }
  return undefined;
}

/** °C at which an alloy that freezes slowly is all solid. */
export function solidusOf(diagram: Diagram, percent: number): number | undefined {
  for (const { solidus } of diagram.branches) {
    const [hot, cold] = [solidus[0]!, solidus[solidus.length - 1]!];
    if (hot[0] === cold[0]) continue;
    const celsius = temperatureAt(solidus, percent);
    if (celsius !== undefined) return celsius;
  }
  return diagram.last?.celsius;
}

/** Solid share by the lever rule at a temperature between the two; undefined where the table has no tie line. */
export function leverAt(diagram: Diagram, percent: number, celsius: number): number | undefined {
  for (const { liquidus, solidus } of diagram.branches) {
    const liquid = percentAt(liquidus, celsius);
    const solid = percentAt(solidus, celsius);
    if (liquid === undefined || solid === undefined || liquid === solid) continue;
    const share = (percent - liquid) / (solid - liquid);
    if (share >= -1e-9 && share <= 1 + 1e-9) return Math.min(1, Math.max(0, share));
  }
  return undefined;
}

const steps = 400;

/**
 * Solid share by Scheil's rule, no spreading in the solid: ln f_L = −∫dC/(C − C_S) along the liquidus from the
 * alloy to the liquid left at this temperature. Flemings, Solidification Processing (1974), ch. 2 and 5.
 */
export function scheilAt(branch: Branch, percent: number, celsius: number): number | undefined {
  const end = percentAt(branch.liquidus, celsius);
  if (end === undefined) return undefined;
  const width = (end - percent) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const liquid = percent + (i + 0.5) * width;
    const temperature = temperatureAt(branch.liquidus, liquid);
    const solid = temperature === undefined ? undefined : percentAt(branch.solidus, temperature);
    if (solid === undefined || solid === liquid) return undefined;
    sum += width / (liquid - solid);
  }
  return 1 - Math.exp(-sum);
}
