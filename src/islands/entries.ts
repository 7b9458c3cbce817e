import type { SymbolSpec } from '../../calculators/core/formula.ts';
import { plainNumber, unitLabel } from '../../calculators/core/print.ts';
import {
  quantityFigures,
  readQuantity,
  spreadOf,
  unitChoices,
  type Reading,
} from '../../calculators/core/quantity.ts';
import { typedAndShown } from '../../calculators/core/shown.ts';
import { findUnit, fromSI, unit, widthFromSI, type UnitSymbol } from '../../calculators/core/units.ts';

export { fromFragment } from './fragment.ts';

/** What stands in one field: the text, the unit chosen beside it and the `±` text, which may be empty. */
export interface Entry {
  readonly text: string;
  readonly unit: UnitSymbol;
  readonly spread: string;
  /** The value in SI while the text is only a rounding of it. */
  readonly exact?: number;
  /** What was typed, while it is only shown in another unit: it is reckoned with, kept and come back to. */
  readonly typed?: Entry;
}

export type EntrySpec = Pick<SymbolSpec, 'unit' | 'show' | 'range' | 'usual'>;

/** An entry from a written quantity: `'150 mm'`. */
export function entryOf(text: string): Entry {
  const symbol = quantityFigures(text).unit;
  return { text: text.slice(0, text.indexOf(' ')), unit: symbol, spread: '' };
}

/** An entry for a number in SI, to six figures unless told; the number itself is kept. */
export function entryFor(si: number, symbol: UnitSymbol, figures = 6): Entry {
  return { text: plainNumber(fromSI(si, symbol), { figures }), unit: symbol, spread: '', exact: si };
}

/** A number without a unit or a per cent sign. */
const isBare = (text: string): boolean => !/[\p{L}%‰°"'’”′″]/u.test(text.replace(/[eE](?=[-+]?\d)/, ''));

const hasSpread = (text: string): boolean => /±|\+ ?\/? ?-/.test(text);

/**
 * How many figures a number is shown with in another unit: those it was written with, three at least; four when it
 * was written with more than anyone measures, as a result carried along is.
 */
const figuresShown = (written: number): number => (written > 6 ? 4 : Math.max(3, written));

const read = new WeakMap<Entry, { readonly unit: UnitSymbol; readonly reading: Reading }>();

/** A form reads all its fields at every stroke, and at most one of them is another entry than before. */
export function readEntry(entry: Entry, spec: EntrySpec): Reading {
  const known = read.get(entry);
  if (known?.unit === spec.unit) return known.reading;
  const { text, unit: symbol, typed } = entry;
  const origin = typed && readEntry(typed, spec);
  const reading = origin?.ok ? { ...origin, unit: symbol, written: +text } : readAfresh(entry, spec);
  read.set(entry, { unit: spec.unit, reading });
  return reading;
}

/**
 * A bare `±` in the text is in the unit of the number beside it: `2 in ± 0.1`. One in the field of its own was
 * written in the unit the field shows, and stays that when a number with another unit is typed over the old one;
 * its unit is never the number's. A `±` in the text counts before the one that stood in its field.
 */
function readAfresh({ text, unit: symbol, spread: beside, exact }: Entry, spec: EntrySpec): Reading {
  const alone = readQuantity(text, { unit: spec.unit, show: symbol });
  const written = beside.trim();
  if (!alone.ok) return alone;
  const value = exact ?? alone.value;
  if (written === '' || hasSpread(text)) return { ...alone, value };
  const bare = isBare(written);
  const spread = bare ? spreadOf(written, 0, symbol) : spreadOf(written, alone.written, alone.unit);
  if (typeof spread !== 'number') return { ok: false, message: spread.message };
  const notes = [
    ...(alone.note === undefined ? [] : [alone.note]),
    ...(bare && alone.unit !== symbol ? [`± ${written} ${unitLabel(symbol)}`.trim()] : []),
    ...(alone.unit === '%' && written.includes('%') ? [`± ${written} is taken of the value`] : []),
  ];
  return { ...alone, value, spread, ...(notes.length === 0 ? {} : { note: notes.join('; ') }) };
}

/** After typing: a unit or a spread written in the text moves to its own place. */
export function settled(entry: Entry, spec: EntrySpec): Entry {
  const reading = readEntry(entry, spec);
  if (!reading.ok || entry.exact !== undefined) return entry;
  const inline = hasSpread(entry.text) && reading.spread !== undefined;
  const named = /[^\d\s.,·\-−+/eE×^⁻⁰¹²³⁴-⁹½¼¾]/.test(entry.text);
  if (reading.unit === entry.unit && !inline && !named) return entry;
  // A share stays a share: 5 % of another number is another width.
  const share = /(?:±|\+ ?\/? ?-)\s*([\d.,]+ ?%)\s*$/.exec(entry.text)?.[1];
  // A nought at the end was written on purpose.
  const plain = /^-?[\d.]+/.exec(entry.text)?.[0] ?? '';
  return {
    text: Number(plain) === reading.written ? plain : plainNumber(reading.written),
    unit: reading.unit,
    spread: inline
      ? (share ?? plainNumber(widthFromSI(reading.spread, reading.unit), { figures: 6 }))
      : reading.unit === entry.unit
        ? entry.spread
        : spreadIn(reading.unit, entry, reading),
  };
}

/** The spread of a field that changes its unit: a bare one is worked out anew. */
const spreadIn = (
  symbol: UnitSymbol,
  { spread }: Entry,
  reading: Extract<Reading, { ok: true }>,
  figures = 3,
): string =>
  reading.spread !== undefined && isBare(spread)
    ? plainNumber(widthFromSI(reading.spread, symbol), { figures })
    : spread;

/** The same quantity in another unit, and in its own again as it was typed. A text that cannot be read is left alone. */
export function inUnit(entry: Entry, spec: EntrySpec, symbol: UnitSymbol): Entry {
  const done = settled(entry, spec);
  const typed = done.typed ?? done;
  const reading = readEntry(typed, spec);
  if (!reading.ok) return { text: entry.text, unit: symbol, spread: entry.spread };
  if (typed.unit === symbol) return typed;
  return {
    ...entryFor(reading.value, symbol, figuresShown(reading.figures)),
    // Only shown: what was typed is what is read, and no doubt is known to three figures.
    spread: spreadIn(symbol, typed, reading, 2),
    typed,
  };
}

/** The number of an entry that is only a rounding of it, short. */
const shortened = (entry: Entry, spec: EntrySpec): Entry => {
  const reading = readEntry(entry, spec);
  return reading.ok
    ? { ...entryFor(reading.value, entry.unit, figuresShown(reading.figures)), spread: entry.spread }
    : entry;
};

/**
 * What is written of an entry, in a link or a kept plan: the number as it was typed, and `shown` when it stands in
 * another unit; a number whose text is only a rounding to ten figures, and `shown` with its own unit.
 */
export function toWrite(entry: Entry): { readonly entry: Entry; readonly shown?: UnitSymbol } {
  if (entry.typed) return { entry: toWrite(entry.typed).entry, shown: entry.unit };
  if (entry.exact === undefined) return { entry };
  const text = plainNumber(fromSI(entry.exact, entry.unit), { figures: 10 });
  return text === entry.text ? { entry } : { entry: { ...entry, text }, shown: entry.unit };
}

/** An entry from what was written of it, with the unit it is shown in, if any. */
export function asShown(entry: Entry, spec: EntrySpec, shown: UnitSymbol | undefined): Entry {
  if (shown === undefined || !unitChoices(spec.unit).some(({ symbol }) => symbol === shown)) return entry;
  return shown === entry.unit ? shortened(entry, spec) : inUnit(entry, spec, shown);
}

/** The entry with another spread: what was typed had its own. */
export const withSpread = ({ text, unit: symbol, exact }: Entry, spread: string): Entry => ({
  text,
  unit: symbol,
  spread,
  ...(exact !== undefined && { exact }),
});

/** One step up or down: one in the second figure, so that a press changes a number by 1 to 10 %. */
export function stepped(before: Entry, spec: EntrySpec, direction: 1 | -1): Entry {
  const entry = settled(before, spec);
  const reading = readEntry(entry, spec);
  const usual = spec.usual === undefined ? 0 : fromSI(unitValue(spec.usual, spec.unit), entry.unit);
  const now = reading.ok ? fromSI(reading.value, reading.unit) : usual;
  const size = Math.abs(now) || Math.abs(usual) || 1;
  const step = 10 ** (Math.floor(Math.log10(size)) - 1);
  const next = Math.round(now / step + direction) * step;
  return {
    text: plainNumber(next, { figures: 10 }),
    unit: reading.ok ? reading.unit : entry.unit,
    spread: entry.spread,
  };
}

const unitValue = (value: number, symbol: UnitSymbol): number =>
  value * unit(symbol).factor + unit(symbol).offset;

export function negated({ text, unit: symbol, spread }: Entry): Entry {
  const trimmed = text.trim();
  return { text: /^[-−]/.test(trimmed) ? trimmed.slice(1) : `-${trimmed}`, unit: symbol, spread };
}

/** Whether the field may hold a number below zero in the unit it shows. */
export function mayBeNegative(spec: EntrySpec, symbol: UnitSymbol): boolean {
  return spec.range === undefined
    ? unit(spec.unit).kind !== 'plain'
    : fromSI(unitValue(spec.range[0], spec.unit), symbol) < 0;
}

/** `filling/velocity:find=v&h=150mm~in&dp=15inHg±5%25`: a calculator's state as the part of an address after `#`. */
export function toFragment(
  id: string,
  find: string,
  entries: Readonly<Record<string, Entry>>,
  specs: Readonly<Record<string, EntrySpec>> = {},
): string {
  const parts = Object.entries(entries)
    .filter(([symbol]) => symbol !== find)
    .map(([symbol, entry]) => {
      const spec = specs[symbol];
      // A unit still in the text goes to its place first, or it would stand twice.
      const { entry: kept, shown } = toWrite(spec ? settled(entry, spec) : entry);
      const { text, unit: written, spread } = kept;
      // Among percentages a plain number says that it is one, or the link would open a hundred times smaller.
      const plain = spec && homeUnit(spec) !== '1' ? 'number' : '';
      // A unit that begins with a figure, 1/K, must not run into the number.
      const named = written === '1' ? plain : /^\d/.test(written) ? ` ${written}` : written;
      const value = `${text.trim()}${named}${spread.trim() === '' ? '' : `±${spread.trim()}`}${shown ? `~${shown}` : ''}`;
      return `${symbol}=${value.replace(/[%&=#\s]/g, encodeURIComponent)}`;
    });
  return `${id}:${[`find=${find}`, ...parts].join('&')}`;
}

/** An entry from the text of a link. What cannot be read is shown as it came, with its message. */
export function entryFromLink(text: string, spec: EntrySpec, symbol: UnitSymbol): Entry {
  const [written, shown] = typedAndShown(text);
  const [value = '', spread = ''] = written.split('±');
  const entry = settled({ text: value, unit: symbol, spread: '' }, spec);
  return asShown({ ...entry, spread: spread.replace(/[^\d.,%eE +\-/a-zA-Zµ°Δ"²³]/g, '') }, spec, shown);
}

/** The unit a field starts with. */
export const homeUnit = (spec: EntrySpec): UnitSymbol => findUnit(spec.show ?? spec.unit)!.symbol;
