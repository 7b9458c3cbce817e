import type { ResolvedMaterial } from '../core/material.ts';
import type { Input, ListInput, Model, QuantityInput, Row, Scalar, Values } from '../core/model.ts';
import { didYouMean } from '../core/nearest.ts';
import { readQuantity, readSpread } from '../core/quantity.ts';
import { typedAndShown } from '../core/shown.ts';
import { toSI } from '../core/units.ts';

export type ResolvedMaterials = Readonly<Record<string, ResolvedMaterial>>;

export interface Completed {
  /** In SI; a quantity with neither a value given nor a start is left out. */
  readonly values: Values;
  /** Half-widths of 95 % intervals in SI, by name; a row's field is `sections.1.thickness`. */
  readonly spreads: Readonly<Record<string, number>>;
  /** What could not be read, one sentence each, naming the input; its start is used instead. */
  readonly problems: readonly string[];
}

/** The inputs a model starts with, its material numbers from the materials it starts with. */
export function defaultInputs(model: Model, materials: ResolvedMaterials): Completed {
  return completeInputs(model, {}, materials);
}

/**
 * A model's inputs from what is given of them: a number is in SI, a text is read as typed (`'150 mm ± 2 mm'`),
 * the rest takes its start or the material's number. Never throws; what cannot be read is a problem in words.
 */
export function completeInputs(
  model: Pick<Model, 'id' | 'inputs'>,
  given: Readonly<Record<string, unknown>>,
  materials: ResolvedMaterials,
): Completed {
  const reader = startReading(materials);
  const names = Object.keys(model.inputs);
  for (const name of Object.keys(given)) {
    if (!(name in model.inputs))
      reader.problem(`${model.id} has no input "${name}"${didYouMean(name, names)}`);
  }
  const entries = Object.entries(model.inputs);
  const values: Record<string, Scalar | readonly Row[]> = {};
  // Materials first: the numbers that follow them need their choice.
  const materialsFirst = [...entries].sort(
    (a, b) => Number(b[1].kind === 'material') - Number(a[1].kind === 'material'),
  );
  for (const [name, input] of materialsFirst) {
    const value =
      input.kind === 'list'
        ? reader.rows(name, input, given[name])
        : reader.one(name, input, given[name], values);
    if (value !== undefined) values[name] = value;
  }
  const ordered = Object.fromEntries(names.flatMap((name) => (name in values ? [[name, values[name]]] : [])));
  return { values: ordered, spreads: reader.spreads, problems: reader.problems };
}

function startReading(materials: ResolvedMaterials) {
  const spreads: Record<string, number> = {};
  const problems: string[] = [];

  const problem = (sentence: string): void => {
    problems.push(sentence);
  };

  function keepSpread(name: string, width: number | undefined): void {
    if (width !== undefined && width > 0) spreads[name] = width;
  }

  function ownSpread(input: QuantityInput, value: number): number | undefined {
    return input.spread === undefined ? undefined : readSpread(input.spread, value, input.unit);
  }

  function start(
    name: string,
    input: QuantityInput,
    chosen: Readonly<Record<string, unknown>>,
  ): number | undefined {
    const { from } = input;
    const material = from && materials[String(chosen[from.input])];
    const found = from && material?.[from.property as keyof ResolvedMaterial];
    if (found) {
      keepSpread(name, found.spread);
      return found.value;
    }
    if (input.usual === undefined) return undefined;
    const value = toSI(input.usual, input.unit);
    keepSpread(name, ownSpread(input, value));
    return value;
  }

  function quantityOf(
    name: string,
    input: QuantityInput,
    raw: unknown,
    chosen: Readonly<Record<string, unknown>>,
  ): number | undefined {
    const blank = typeof raw === 'string' && raw.trim() === '';
    if (raw === undefined || raw === null || blank) return start(name, input, chosen);
    if (typeof raw === 'number' && Number.isFinite(raw)) {
      keepSpread(name, ownSpread(input, raw));
      return raw;
    }
    if (typeof raw !== 'string') {
      problem(`${name}: write it as a text with its unit, for example "10 ${input.show ?? input.unit}".`);
      return start(name, input, chosen);
    }
    const reading = readQuantity(typedAndShown(raw)[0], { unit: input.unit, show: input.show });
    if (!reading.ok) {
      problem(`${name}: ${reading.message}`);
      return start(name, input, chosen);
    }
    keepSpread(name, reading.spread ?? ownSpread(input, reading.value));
    return reading.value;
  }

  function one(
    name: string,
    input: Exclude<Input, ListInput>,
    raw: unknown,
    chosen: Readonly<Record<string, unknown>>,
  ): Scalar {
    const open = raw === undefined || raw === null;
    if (input.kind === 'quantity') return quantityOf(name, input, raw, chosen);
    if (input.kind === 'flag') {
      if (open) return input.usual;
      if (raw === true || raw === 'yes' || raw === 'true') return true;
      if (raw === false || raw === 'no' || raw === 'false') return false;
      problem(`${name}: write yes or no.`);
      return input.usual;
    }
    if (open) return input.usual;
    if (typeof raw !== 'string') {
      problem(`${name}: write it as a text.`);
      return input.usual;
    }
    if (input.kind === 'choice' && !Object.hasOwn(input.options, raw)) {
      const options = Object.keys(input.options);
      problem(`${name}: "${raw}" is not one of ${options.join(', ')}${didYouMean(raw, options)}.`);
      return input.usual;
    }
    if (input.kind === 'material' && !Object.hasOwn(materials, raw)) {
      problem(`${name}: no material "${raw}"${didYouMean(raw, Object.keys(materials))}.`);
      return input.usual;
    }
    return raw;
  }

  function rows(name: string, input: ListInput, raw: unknown): readonly Row[] {
    let list: readonly unknown[] = input.usual;
    if (Array.isArray(raw)) list = raw;
    else if (raw !== undefined && raw !== null) problem(`${name}: write it as a list of rows.`);
    if (list.length > input.most) problem(`${name}: at most ${input.most} rows; the rest are left out.`);
    return list.slice(0, input.most).map((row, index) => {
      const at = `${name}.${index + 1}`;
      const fields =
        typeof row === 'object' && row !== null ? (row as Readonly<Record<string, unknown>>) : {};
      if (fields !== row) problem(`${at}: write the row as names and values.`);
      for (const field of Object.keys(fields)) {
        if (!(field in input.item))
          problem(`${at} has no "${field}"${didYouMean(field, Object.keys(input.item))}.`);
      }
      const read: Record<string, Scalar> = {};
      for (const [field, spec] of Object.entries(input.item)) {
        const value = one(`${at}.${field}`, spec, fields[field], {});
        if (value !== undefined) read[field] = value;
      }
      return read;
    });
  }

  return { spreads, problems, problem, one, rows };
}

/** Every quantity among the values by its name, rows included, in SI. */
export function numbersOf(model: Model, values: Values): Record<string, number> {
  const numbers: Record<string, number> = {};
  for (const [name, input] of Object.entries(model.inputs)) {
    const value = values[name];
    if (input.kind === 'quantity' && typeof value === 'number') numbers[name] = value;
    if (input.kind !== 'list' || !Array.isArray(value)) continue;
    (value as readonly Row[]).forEach((row, index) => {
      for (const [field, spec] of Object.entries(input.item)) {
        const cell = row[field];
        if (spec.kind === 'quantity' && typeof cell === 'number')
          numbers[`${name}.${index + 1}.${field}`] = cell;
      }
    });
  }
  return numbers;
}

/** The same values with some of those numbers changed. */
export function withNumbers(model: Model, values: Values, numbers: Readonly<Record<string, number>>): Values {
  const changed: Record<string, Scalar | readonly Row[]> = { ...values };
  /** Copies of the lists, made once each. */
  const copies: Record<string, Record<string, Scalar>[]> = {};
  for (const name in numbers) {
    if (model.inputs[name]?.kind === 'quantity') {
      changed[name] = numbers[name];
      continue;
    }
    const [list = '', row = '', ...field] = name.split('.');
    const rows = values[list];
    if (model.inputs[list]?.kind !== 'list' || !Array.isArray(rows)) continue;
    const copy = (copies[list] ??= (rows as readonly Row[]).map((one) => ({ ...one })));
    const one = copy[Number(row) - 1];
    if (one) one[field.join('.')] = numbers[name];
    changed[list] = copy;
  }
  return changed;
}
