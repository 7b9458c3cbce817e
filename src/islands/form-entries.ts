import type { ResolvedMaterial } from '../../calculators/core/material.ts';
import type { Input, ListInput, QuantityInput } from '../../calculators/core/model.ts';
import { plainNumber } from '../../calculators/core/print.ts';
import { readSpread, unitChoices, type Reading } from '../../calculators/core/quantity.ts';
import { habitUnit, type Habit } from '../../calculators/core/shop-units.ts';
import { typedAndShown } from '../../calculators/core/shown.ts';
import { toSI, widthFromSI, type UnitSymbol } from '../../calculators/core/units.ts';
import { asShown, entryFor, homeUnit, inUnit, readEntry, settled, toWrite, type Entry } from './entries.ts';

/** What stands in one field of a model's form: a quantity as typed, a word, a flag, or rows of these. */
export type Cell = Entry | string | boolean;
export type FormRow = Readonly<Record<string, Cell>>;
export type Held = Cell | readonly FormRow[];
/** By input name. An input that is absent stands at its usual value or at its material's number. */
export type Form = Readonly<Record<string, Held>>;

/** The same as written texts: what is kept, shared and calculated from. */
export type Texts = Readonly<Record<string, TextCell | readonly TextRow[]>>;
export type TextCell = string | boolean;
export type TextRow = Readonly<Record<string, TextCell>>;

export type Inputs = Readonly<Record<string, Input>>;
export type Books = Readonly<Record<string, ResolvedMaterial>>;

export const isEntry = (held: Held | undefined): held is Entry =>
  typeof held === 'object' && !Array.isArray(held) && 'unit' in held;

/** A spread in SI as a reader would write it: of the value where that is a round share, else in the unit. */
function spreadText(value: number, spread: number, symbol: UnitSymbol): string {
  if (!(spread > 0)) return '';
  const share = (100 * spread) / Math.abs(value);
  const relative = toSI(0, symbol) === 0 && Math.abs(share - Math.round(share)) < 1e-6 && share >= 1;
  return relative ? `${Math.round(share)} %` : plainNumber(widthFromSI(spread, symbol), { figures: 3 });
}

const quantityAt = (value: number, spread: number, symbol: UnitSymbol): Entry => ({
  ...entryFor(value, symbol),
  spread: spreadText(value, spread, symbol),
});

const blank = (spec: QuantityInput): Entry => ({ text: '', unit: homeUnit(spec), spread: '' });

const usually = new WeakMap<QuantityInput, Entry>();

/** The usual number of a quantity with its usual spread, always the same entry. Open when it has none. */
export function usualEntry(spec: QuantityInput): Entry {
  let entry = usually.get(spec);
  if (!entry) usually.set(spec, (entry = entryAt(spec, spec.usual)));
  return entry;
}

function entryAt(spec: QuantityInput, usual: number | undefined): Entry {
  if (usual === undefined) return blank(spec);
  const home = atHome.get(spec);
  if (home) return inUnit(entryAt(home, usual), spec, homeUnit(spec));
  const value = toSI(usual, spec.unit);
  const symbol = homeUnit(spec);
  const entry = entryFor(value, symbol);
  return spec.spread === undefined
    ? entry
    : { ...entry, spread: usualSpread(spec.spread, value, spec, symbol) };
}

/** The usual spread in the unit of the field; a percentage stays one. */
function usualSpread(text: string, value: number, spec: QuantityInput, symbol: UnitSymbol): string {
  if (text.includes('%')) return text;
  return plainNumber(widthFromSI(readSpread(text, value, spec.unit), symbol), { figures: 3 });
}

const inBooks = new WeakMap<object, Entry>();

/** The material's own number for an input that follows one; undefined when the material has none. */
export function bookEntry(spec: QuantityInput, inputs: Inputs, form: Form, books: Books): Entry | undefined {
  if (!spec.from) return undefined;
  const chosen = form[spec.from.input];
  const of = inputs[spec.from.input];
  const id = typeof chosen === 'string' ? chosen : of?.kind === 'material' ? of.usual : '';
  const found = (books[id] as Readonly<Record<string, { value: number; spread: number }>> | undefined)?.[
    spec.from.property
  ];
  if (!found) return undefined;
  const [unit, known] = [homeUnit(spec), inBooks.get(found)];
  if (known?.unit === unit) return known;
  const home = homeUnit(homeOf(spec));
  const entry = inUnit(quantityAt(found.value, found.spread, home), spec, unit);
  inBooks.set(found, entry);
  return entry;
}

/** What the field of a quantity shows: what was typed, else the material's number, else the usual one. */
export function entryIn(name: string, spec: QuantityInput, inputs: Inputs, form: Form, books: Books): Entry {
  const held = form[name];
  return isEntry(held) ? held : (bookEntry(spec, inputs, form, books) ?? usualEntry(spec));
}

/** Whether the reader's number stands in place of the material's. Another unit for the same number does not count. */
export function isYours(held: Held | undefined, spec: QuantityInput, book: Entry | undefined): boolean {
  if (!isEntry(held) || spec.from === undefined) return false;
  if (!book) return true;
  const [mine, theirs] = [readEntry(held, spec), readEntry(book, spec)];
  if (!mine.ok || !theirs.ok) return true;
  const near = (a = 0, b = 0): boolean => Math.abs(a - b) <= 2e-3 * Math.abs(b);
  return mine.value !== theirs.value || !near(mine.spread, theirs.spread);
}

const atHome = new WeakMap<QuantityInput, QuantityInput>();

/** An input as the model has it, whatever the shop. */
const homeOf = (spec: QuantityInput): QuantityInput => atHome.get(spec) ?? spec;

/** The inputs of a model as a shop is used to measure: what is not typed yet shows in its units. */
export function inputsIn(inputs: Inputs, habit: Habit): Inputs {
  type Single = Exclude<Input, ListInput>;
  const swap = (spec: Single): Single => {
    if (spec.kind !== 'quantity') return spec;
    const home = homeUnit(spec);
    const show = habitUnit(home, habit, spec);
    if (show === home) return spec;
    const swapped = { ...spec, show };
    atHome.set(swapped, spec);
    return swapped;
  };
  const all = (specs: ListInput['item']): ListInput['item'] =>
    Object.fromEntries(Object.entries(specs).map(([name, spec]) => [name, swap(spec)]));
  if (habit === 'metric') return inputs;
  return Object.fromEntries(
    Object.entries(inputs).map(([name, spec]) => [
      name,
      spec.kind === 'list' ? { ...spec, item: all(spec.item) } : swap(spec),
    ]),
  );
}

/** What was typed, each number in the unit its input shows; it is kept and reckoned with as it was typed. */
export function formIn(inputs: Inputs, form: Form): Form {
  const put = <One extends Held | undefined>(held: One, spec: Input | undefined): One | Entry =>
    spec?.kind === 'quantity' && isEntry(held) ? inUnit(held, spec, homeUnit(spec)) : held;
  return Object.fromEntries(
    Object.entries(form).map(([name, held]) => {
      const spec = inputs[name];
      if (spec?.kind !== 'list' || !Array.isArray(held)) return [name, put(held, spec)];
      return [
        name,
        (held as readonly FormRow[]).map((row) =>
          Object.fromEntries(Object.entries(row).map(([cell, value]) => [cell, put(value, spec.item[cell])])),
        ),
      ];
    }),
  );
}

/** The unit a number is said in, from the one at home and what it is. */
export type UnitOf = (home: UnitSymbol, role?: { readonly stress?: true }) => UnitSymbol;

/**
 * The unit a result is said in, from the one it is said in at home: that of the habit, or the one the reader chose
 * for a number of the form that would else be in the same unit.
 */
export function unitsFollowing(inputs: Inputs, form: Form, habit: Habit): UnitOf {
  const chosen = new Map<string, UnitSymbol>();
  const keyOf = (home: UnitSymbol, role?: { readonly stress?: true }): string =>
    role?.stress ? `stress ${home}` : home;
  for (const [name, held] of Object.entries(form)) {
    const spec = inputs[name];
    if (spec?.kind !== 'quantity' || !isEntry(held)) continue;
    const [{ unit }, home] = [settled(held, spec), homeUnit(homeOf(spec))];
    if (unit !== habitUnit(home, habit, spec)) chosen.set(keyOf(home, spec), unit);
  }
  return (home, role) => chosen.get(keyOf(home, role)) ?? habitUnit(home, habit, role);
}

/** How the text of a quantity reads; undefined when it is empty and may be: there is nothing to start from. */
export function readingOf(entry: Entry, spec: QuantityInput, book?: Entry): Reading | undefined {
  const open = entry.text.trim() === '' && spec.usual === undefined && book === undefined;
  return open ? undefined : readEntry(entry, spec);
}

const rowsOf = new WeakMap<ListInput, readonly FormRow[]>();

/** Usual rows of a list, as the form holds them. Numbers of the definition are in each cell's own unit. */
export function usualRows(list: ListInput): readonly FormRow[] {
  const known = rowsOf.get(list);
  if (known) return known;
  const rows = list.usual.map((row) =>
    Object.fromEntries(
      Object.entries(list.item).map(([cell, spec]) => {
        const given = row[cell];
        if (spec.kind === 'quantity')
          return [cell, entryAt(spec, typeof given === 'number' ? given : spec.usual)];
        return [cell, typeof given === 'string' || typeof given === 'boolean' ? given : spec.usual];
      }),
    ),
  );
  rowsOf.set(list, rows);
  return rows;
}

/** A fresh row. */
export function newRow(list: ListInput): FormRow {
  return Object.fromEntries(
    Object.entries(list.item).map(([cell, spec]) => [
      cell,
      spec.kind === 'quantity' ? usualEntry(spec) : spec.usual,
    ]),
  );
}

/**
 * `150 mm ± 2`: an entry as one written text, with `~ in` behind it when it is shown in another unit. What cannot
 * be read is kept as it was typed. A spread that was taken away is written as none, since a text without one takes
 * the usual spread.
 */
export function textOf(entry: Entry, spec: QuantityInput): string {
  // A unit typed in the text is the one that counts, before the field has moved it to its place.
  const { entry: kept, shown } = toWrite(settled(entry, spec));
  const number = kept.text.trim();
  if (number === '') return '';
  const text = `${number}${unitText(kept.unit, spec)} ± ${kept.spread.trim() || '0'}`;
  return shown === undefined ? text : `${text} ~ ${shown}`;
}

/** A plain number in a field of percentages says that it is one, or it would be read back a hundred times smaller. */
const unitText = (symbol: UnitSymbol, spec: QuantityInput): string =>
  symbol !== '1' ? ` ${symbol}` : homeUnit(spec) === '1' ? '' : ' number';

/** The entry a written text was: the unit that ends it goes to its place beside the field. */
export function entryFromText(written: string, input: QuantityInput): Entry {
  const spec = homeOf(input);
  const [text, shown] = typedAndShown(written);
  return asShown(typedFromText(text, spec), spec, shown);
}

function typedFromText(text: string, spec: QuantityInput): Entry {
  const at = text.indexOf('±');
  const head = (at < 0 ? text : text.slice(0, at)).trim();
  const entry = headFromText(head, spec);
  if (at >= 0)
    return {
      ...entry,
      spread: text
        .slice(at + 1)
        .trim()
        .replace(/^0$/, ''),
    };
  const reading = readEntry(entry, spec);
  if (!reading.ok || spec.spread === undefined) return entry;
  return { ...entry, spread: usualSpread(spec.spread, reading.value, spec, entry.unit) };
}

function headFromText(head: string, spec: QuantityInput): Entry {
  const last = head.slice(head.lastIndexOf(' ') + 1);
  const found =
    head.includes(' ') &&
    unitChoices(spec.unit).find(({ symbol }) => (symbol === '1' ? 'number' : symbol) === last);
  if (found) return { text: head.slice(0, head.lastIndexOf(' ')).trim(), unit: found.symbol, spread: '' };
  return settled({ text: head, unit: homeUnit(spec), spread: '' }, spec);
}

function cellFromText(value: unknown, spec: Exclude<Input, ListInput>): Cell | undefined {
  if (spec.kind === 'flag')
    return typeof value === 'boolean'
      ? value
      : value === 'true'
        ? true
        : value === 'false'
          ? false
          : undefined;
  const text = typeof value === 'number' ? String(value) : value;
  if (typeof text !== 'string') return undefined;
  if (spec.kind === 'quantity') return entryFromText(text, spec);
  if (spec.kind === 'choice') return text in spec.options ? text : undefined;
  return text;
}

/** The form that written texts stand for. Names the model does not have, and words that are no choice, are left out. */
export function formFrom(inputs: Inputs, texts: Texts): Form {
  const form: Record<string, Held> = {};
  for (const [name, spec] of Object.entries(inputs)) {
    const value = texts[name];
    if (value === undefined) continue;
    if (spec.kind !== 'list') {
      const cell = cellFromText(value, spec);
      if (cell !== undefined) form[name] = cell;
    } else if (Array.isArray(value)) {
      form[name] = (value as readonly TextRow[]).slice(0, spec.most).map((row) => ({
        ...newRow(spec),
        ...Object.fromEntries(
          Object.entries(spec.item).flatMap(([key, cellSpec]) => {
            const cell = cellFromText(row[key], cellSpec);
            return cell === undefined ? [] : [[key, cell]];
          }),
        ),
      }));
    }
  }
  return form;
}

const cellText = (cell: Cell, spec: Input | undefined): TextCell =>
  !isEntry(cell) ? cell : spec?.kind === 'quantity' ? textOf(cell, spec) : cell.text;

/** The form as written texts, without numbers that only repeat the material's own in another unit. */
export function textsOf(inputs: Inputs, form: Form, books: Books): Texts {
  const texts: Record<string, TextCell | readonly TextRow[]> = {};
  for (const [name, held] of Object.entries(form)) {
    const spec = inputs[name];
    if (!spec) continue;
    if (spec.kind === 'list' && Array.isArray(held)) {
      texts[name] = (held as readonly FormRow[]).map((row) =>
        Object.fromEntries(
          Object.entries(row).map(([cell, value]) => [cell, cellText(value, spec.item[cell])]),
        ),
      );
    } else if (
      spec.kind === 'quantity' &&
      spec.from &&
      !isYours(held, spec, bookEntry(spec, inputs, form, books))
    ) {
      continue;
    } else if (!Array.isArray(held)) {
      texts[name] = cellText(held as Cell, spec);
    }
  }
  return texts;
}

/** Where a text cannot be read: the input, and the row counted from one and cell when it is a list. */
export interface Unread {
  readonly input: string;
  readonly row?: number;
  readonly cell?: string;
}

/** What stands at its usual value or at its material's number can be read: only what was typed is looked at. */
export function unreadable(inputs: Inputs, form: Form, books: Books): Unread[] {
  return Object.entries(inputs).flatMap(([name, spec]) => {
    if (form[name] === undefined) return [];
    if (spec.kind === 'quantity') {
      const reading = readingOf(
        entryIn(name, spec, inputs, form, books),
        spec,
        bookEntry(spec, inputs, form, books),
      );
      return reading === undefined || reading.ok ? [] : [{ input: name }];
    }
    if (spec.kind !== 'list') return [];
    const rows = (form[name] as readonly FormRow[] | undefined) ?? usualRows(spec);
    return rows.flatMap((row, i) =>
      Object.entries(spec.item).flatMap(([cell, cellSpec]) => {
        const held = row[cell];
        if (cellSpec.kind !== 'quantity' || !isEntry(held)) return [];
        const reading = readingOf(held, cellSpec);
        return reading === undefined || reading.ok ? [] : [{ input: name, row: i + 1, cell }];
      }),
    );
  });
}
