import { entryIn, usualRows, type Books, type Form, type FormRow, type Inputs } from './form-entries.ts';
import { digest, titleOf } from './list-field.tsx';
import { spreadOf, written, type MaterialName } from './model-form.tsx';

/** An input as one line on paper: what stands in it, with its spread. */
export function inputLine(
  name: string,
  inputs: Inputs,
  form: Form,
  books: Books,
  materials: readonly MaterialName[],
): string {
  const spec = inputs[name]!;
  const held = form[name];
  if (spec.kind === 'quantity') {
    const entry = entryIn(name, spec, inputs, form, books);
    return entry.text.trim() === '' ? 'open' : [written(entry), spreadOf(entry)].filter(Boolean).join(' ');
  }
  if (spec.kind === 'list') {
    const rows = (held as readonly FormRow[] | undefined) ?? usualRows(spec);
    return rows.map((row, at) => `${titleOf(row, spec, at)} ${digest(row, spec)}`).join('; ');
  }
  const value = held === undefined || typeof held === 'object' ? spec.usual : held;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (spec.kind === 'choice') return spec.options[value] ?? value;
  return spec.kind === 'material' ? (materials.find(({ id }) => id === value)?.name ?? value) : value;
}
