import { fromSI, toSI } from '../../calculators/core/units.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import type { FigureTable } from './drawing.ts';
import { figures, withinDecades } from './drawing.ts';

/** One quantity of a curve: its name, its unit as written, its two ends and where numbers stand along it. */
export interface Axis {
  readonly name: string;
  /** `°C`, `kPa`; empty for a plain number. */
  readonly unit: string;
  readonly log: boolean;
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

export interface Line {
  /** Written beside the line; empty where there is only one. */
  readonly label: string;
  /** In the unit of the upright axis; null where there is no answer. */
  readonly values: readonly (number | null)[];
}

export interface CurveProps {
  readonly id: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly at: number;
  readonly steps: readonly number[];
  readonly lines: readonly Line[];
}

/** Round steps between two ends, on a plain or a logarithmic axis, with one place more where it is asked for. */
export function stepsBetween(from: number, to: number, log: boolean, also?: number): number[] {
  const steps = log ? tenfoldSteps(from, to) : evenSteps(from, to);
  return also === undefined ? steps : [...new Set([...steps, also])].sort((a, b) => a - b);
}

function evenSteps(from: number, to: number): number[] {
  const step = roundStep((to - from) / 50);
  const count = Math.floor((to - from) / step + 1e-9);
  const steps = Array.from({ length: count + 1 }, (_, i) => Number((from + i * step).toPrecision(6)));
  // The last step is the end that was asked for, even where it is a short one.
  return to - steps[count]! > step * 1e-6 ? [...steps, to] : steps;
}

function tenfoldSteps(from: number, to: number): number[] {
  const count = Math.max(16, Math.min(60, Math.ceil(Math.log10(to / from) * 20)));
  const raw = Array.from({ length: count + 1 }, (_, i) => from * (to / from) ** (i / count));
  return [...new Set(raw.map((value) => Number(value.toPrecision(2))))];
}

/** 1, 2 or 5 times a power of ten, no finer than asked. */
export function roundStep(least: number): number {
  const decade = 10 ** Math.floor(Math.log10(least));
  const [part] = [1, 2, 5, 10].filter((k) => k * decade >= least * 0.999);
  return (part ?? 10) * decade;
}

/** Places within a decade, coarse to fine. */
const decades = [[1], [1, 2, 5], [1, 1.5, 2, 3, 4, 5, 6, 8]] as const;

/** Five or so places to write numbers at along an axis. */
export function ticksOf(low: number, high: number, log: boolean): number[] {
  if (log) {
    const few = decades.map((parts) => withinDecades(low, high, parts));
    // The finest that does not crowd: seven numbers fit under a drawing on a phone.
    return few.findLast(({ length }) => length >= 2 && length <= 7) ?? few[0]!;
  }
  const step = roundStep((high - low) / 5);
  const first = Math.ceil(low / step - 1e-9) * step;
  const ticks: number[] = [];
  for (let tick = first; tick <= high + step * 1e-6; tick += step) ticks.push(Number(tick.toPrecision(6)));
  return ticks;
}

/** The upright axis that holds all the lines; from nought where that wastes less than half of it. */
export function axisOf(name: string, unit: string, log: boolean, lines: readonly Line[]): Axis {
  const all = lines
    .flatMap(({ values }) => values.filter((value) => value !== null))
    .filter((value) => !log || value > 0);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const low = !log && least > 0 && least < 0.5 * most ? 0 : least;
  const high = most === low ? low + 1 : most;
  return { name, unit, log, low, high, ticks: ticksOf(low, high, log) };
}

/** A curve's numbers from a function in SI: one row of answers for each line, in the unit it is drawn in. */
export function curveLines(
  steps: readonly number[],
  x: UnitSymbol,
  y: UnitSymbol,
  lines: readonly { readonly label: string; readonly run: (si: number) => number | undefined }[],
): Line[] {
  return lines.map(({ label, run }) => ({
    label,
    values: steps.map((step) => {
      const found = run(toSI(step, x));
      if (found === undefined || !Number.isFinite(found)) return null;
      return Number(fromSI(found, y).toPrecision(5));
    }),
  }));
}

/** Five or six rows of the same numbers. */
export function curveTable({ x, y, steps, lines }: CurveProps): FigureTable {
  const every = Math.max(1, Math.round((steps.length - 1) / 5));
  const rows = steps.map((_, i) => i).filter((i) => i % every === 0 || i === steps.length - 1);
  const only = lines.length === 1;
  return {
    caption: y.unit === '' ? y.name : `${y.name}, ${y.unit}`,
    head: [unitOf(x), ...lines.map(({ label }) => (only ? unitOf(y) : label))],
    rows: rows.map((i) => [
      String(steps[i]),
      ...lines.map(({ values }) => (values[i] === null ? 'no answer' : figures(values[i]!, 3))),
    ]),
  };
}

const unitOf = ({ name, unit }: Axis): string => (unit === '' ? name : `${name}, ${unit}`);
