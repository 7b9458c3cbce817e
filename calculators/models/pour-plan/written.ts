import type { Input, ListInput, Model } from '../../core/model.ts';
import { didYouMean } from '../../core/nearest.ts';
import { readQuantity } from '../../core/quantity.ts';
import { typedAndShown } from '../../core/shown.ts';

/** Inputs as a reader wrote them: what is kept, shared and exported. What is absent stands at its start. */
export type Written = Readonly<Record<string, WrittenCell | readonly WrittenRow[]>>;
export type WrittenCell = string | boolean;
export type WrittenRow = Readonly<Record<string, WrittenCell>>;

export interface Checked {
  readonly inputs: Written;
  /** What could not be read and is left out, one sentence each. */
  readonly problems: readonly string[];
}

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

type One = Exclude<Input, ListInput>;

/** Why an entry is no value of this input, or undefined when it is one. An empty quantity stands at its start. */
function fault(input: One, entry: unknown): string | undefined {
  if (input.kind === 'flag') return typeof entry === 'boolean' ? undefined : 'it is yes or no';
  if (typeof entry !== 'string') return 'it is not a text';
  if (input.kind === 'choice' && !Object.hasOwn(input.options, entry)) {
    const options = Object.keys(input.options);
    return `"${entry}" is not one of ${options.join(', ')}${didYouMean(entry, options)}`;
  }
  if (input.kind !== 'quantity' || entry.trim() === '') return undefined;
  const reading = readQuantity(typedAndShown(entry)[0], { unit: input.unit, show: input.show });
  return reading.ok ? undefined : `"${entry}": ${reading.message}`;
}

/** A number is taken as written in the field's own unit, as a careless hand would write it in JSON. */
const cell = (entry: unknown): unknown =>
  typeof entry === 'number' && Number.isFinite(entry) ? String(entry) : entry;

/** Keeps what these inputs of the model can be, and says what could not be read. */
export function checkWritten(
  model: Pick<Model, 'id' | 'inputs'>,
  raw: Readonly<Record<string, unknown>>,
): Checked {
  const inputs: Record<string, WrittenCell | readonly WrittenRow[]> = {};
  const problems: string[] = [];
  const keep = (at: string, spec: One, entry: unknown, put: (value: WrittenCell) => void): void => {
    const value = cell(entry);
    const wrong = fault(spec, value);
    if (wrong === undefined) put(value as WrittenCell);
    else problems.push(`${at} could not be read and stands at its start: ${wrong}`);
  };
  for (const [name, entry] of Object.entries(raw)) {
    const input = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
    if (!input) {
      problems.push(`"${name}" is no input of the plan${didYouMean(name, Object.keys(model.inputs))}`);
    } else if (input.kind !== 'list') {
      keep(input.name, input, entry, (value) => (inputs[name] = value));
    } else if (Array.isArray(entry)) {
      inputs[name] = checkRows(input, entry, keep, problems);
    } else {
      problems.push(`${input.name} could not be read and stands at its start: it is not a list of rows`);
    }
  }
  return { inputs, problems };
}

function checkRows(
  input: ListInput,
  rows: readonly unknown[],
  keep: (at: string, spec: One, entry: unknown, put: (value: WrittenCell) => void) => void,
  problems: string[],
): WrittenRow[] {
  if (rows.length > input.most) problems.push(`${input.name}: only the first ${input.most} rows are kept`);
  return rows.slice(0, input.most).flatMap((row, index) => {
    const at = `${input.name}, row ${index + 1}`;
    if (!isRecord(row)) {
      problems.push(`${at} could not be read and is left out: it is not names and values`);
      return [];
    }
    const kept: Record<string, WrittenCell> = {};
    for (const [field, entry] of Object.entries(row)) {
      const spec = Object.hasOwn(input.item, field) ? input.item[field] : undefined;
      if (spec) keep(`${at}, ${spec.name.toLowerCase()},`, spec, entry, (value) => (kept[field] = value));
      else problems.push(`${at} has no "${field}"${didYouMean(field, Object.keys(input.item))}`);
    }
    return [kept];
  });
}
