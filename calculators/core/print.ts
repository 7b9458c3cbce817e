import { interval } from './interval.ts';
import { findUnit, fromSI, type UnitSymbol, widthFromSI } from './units.ts';

/** How finely to print: no digit finer than the spread, or else so many significant figures (3). */
export interface Fineness {
  /** Half-width, in the unit of the number printed (in SI for a quantity in SI). */
  readonly spread?: number | undefined;
  readonly figures?: number | undefined;
}

const raised: Readonly<Record<string, string>> = { '-': '⁻', '1': '¹', '2': '²', '3': '³' };
const raise = (text: string): string =>
  [...text].map((c) => raised[c] ?? String.fromCharCode(0x2070 + Number(c))).join('');

const placeOf = (value: number): number => Number(value.toExponential().split('e')[1]);

/** The power of ten of the last digit worth printing. */
function lastPlace(value: number, { spread, figures = 3 }: Fineness): number {
  if (spread !== undefined && spread > 0 && Number.isFinite(spread)) {
    // Two digits of a spread that begins with 1, one of any other.
    return placeOf(spread) - (spread.toExponential().startsWith('1') ? 1 : 0);
  }
  const digits = Math.min(17, Math.max(1, Math.round(figures)));
  return value === 0 ? 0 : placeOf(Number(value.toPrecision(digits))) - digits + 1;
}

/** A number smaller than the last place worth printing: one of that place, or nothing where nothing is nearer. */
function notBelow(value: number, place: number): number {
  if (place <= placeOf(value)) return value;
  return Math.abs(value) < 0.5 * 10 ** place ? 0 : Math.sign(value) * 10 ** place;
}

/** Rounded at a power of ten not above its first digit, as ASCII without an exponent. */
function roundedAt(value: number, place: number): string {
  if (place <= 0) return value.toFixed(Math.min(100, -place));
  return String(value === 0 ? 0 : Number(value.toPrecision(placeOf(value) - place + 1)));
}

function printAt(given: number, place: number): string {
  if (!Number.isFinite(given)) return 'no number';
  const value = notBelow(given, place);
  const size = Math.abs(value);
  let text: string;
  if (size !== 0 && (size >= 1e6 || size < 1e-4)) {
    const digits = Math.min(17, placeOf(value) - place + 1);
    const [mantissa = '', power = ''] = value.toExponential(digits - 1).split('e');
    text = `${mantissa} × 10${raise(power.replace('+', ''))}`;
  } else {
    text = roundedAt(value, place);
    // Five figures and more before the point stand in threes.
    text = text.replace(
      /^(-?)(\d{5,})/,
      (_, sign: string, whole: string) => sign + whole.replace(/\B(?=(\d{3})+$)/g, '\u202f'),
    );
  }
  return text.replace('-', '−');
}

/** A number for display: real minus sign, digits no finer than its spread, a power of ten only when very large or small. */
export function printNumber(value: number, fineness: Fineness = {}): string {
  return printAt(value, lastPlace(value, fineness));
}

/**
 * A unit as it stands after a number: nothing for a plain number, `°` for an angle, `°C` for a difference too, a root
 * for a half power.
 */
export function unitLabel(symbol: UnitSymbol): string {
  if (symbol === '1') return '';
  if (symbol === 'deg') return '°';
  if (symbol === 'J·s^-½/(m²·K)') return 'J/(m²·K·√s)';
  return symbol.replace('Δ', '').replace('H2O', 'H₂O');
}

/** A printed number with its unit behind it. */
function withUnit(number: string, symbol: UnitSymbol): string {
  const label = unitLabel(symbol);
  if (label === '') return number;
  return label === '°' ? `${number}°` : `${number} ${label}`;
}

/** A quantity in SI printed in a unit: `0.42 s`. `spread` is in SI. */
export function printQuantity(si: number, symbol: UnitSymbol, { spread, figures }: Fineness = {}): string {
  const width = spread === undefined ? undefined : widthFromSI(spread, symbol);
  return withUnit(printNumber(fromSI(si, symbol), { spread: width, figures }), symbol);
}

/**
 * `0.42 s (0.30 to 0.61)`: a value in SI with its half-width, or with the two ends of its interval, in SI.
 * Without a spread, the value to three figures.
 */
export function printWithSpread(
  si: number,
  symbol: UnitSymbol,
  spread: number | readonly [low: number, high: number],
): string {
  const [low, high] = typeof spread === 'number' ? interval(si, spread) : spread;
  const narrow = Math.min(si - low, high - si) > 0 ? Math.min(si - low, high - si) : (high - low) / 2;
  if (!(narrow > 0) || !Number.isFinite(high - low)) return printQuantity(si, symbol);
  const place = lastPlace(0, { spread: widthFromSI(narrow, symbol) });
  const at = (end: number): string => printAt(fromSI(end, symbol), place);
  return `${withUnit(at(si), symbol)} (${at(low)} to ${at(high)})`;
}

/** A number to copy: ASCII, no grouping, read back by any program. Twelve figures unless told. */
export function plainNumber(value: number, { spread, figures = 12 }: Fineness = {}): string {
  if (!Number.isFinite(value)) return '';
  const place = lastPlace(value, { spread, figures });
  const rounded = notBelow(value, place);
  const digits = rounded === 0 ? 1 : placeOf(rounded) - place + 1;
  return String(Number(rounded.toPrecision(Math.min(17, digits))));
}

/** A written quantity, `'-5 J·s^-½/(m²·K)'`, as it is shown: a real minus, and the unit as it stands after a number. */
export function printWritten(text: string): string {
  const [number = '', ...rest] = text.split(' ');
  const symbol = findUnit(rest.join(' '))?.symbol;
  return symbol === undefined ? text : withUnit(number.replace('-', '−'), symbol);
}
