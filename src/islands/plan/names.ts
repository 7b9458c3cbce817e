import type { ListInput, Output } from '../../../calculators/core/model.ts';
import { usualRows, type Form, type FormRow, type Inputs } from '../form-entries.ts';

const wordIn = (spec: ListInput): string =>
  Object.entries(spec.item).find(([, cell]) => cell.kind === 'text')?.[0] ?? '';

/** What the readers called their rows: the names below change with these and with nothing else of the form. */
export function rowNames(inputs: Inputs, form: Form): string {
  const names = Object.entries(inputs).flatMap(([name, spec]) => {
    if (spec.kind !== 'list') return [];
    const word = wordIn(spec);
    return [((form[name] as readonly FormRow[] | undefined) ?? usualRows(spec)).map((row) => row[word])];
  });
  return JSON.stringify(names);
}

/** The name of an input, of a cell of a row, or of a number of the plan; the rows by the names given to them. */
export function namesOf(
  inputs: Inputs,
  outputs: Readonly<Record<string, Output>>,
  form: Form,
): (name: string) => string {
  const rowName = (list: string, at: number): string => {
    const spec = inputs[list];
    if (spec?.kind !== 'list') return '';
    const row = ((form[list] as readonly FormRow[] | undefined) ?? usualRows(spec))[at - 1];
    const text = row?.[wordIn(spec)];
    return typeof text === 'string' && text.trim() !== '' ? text.trim() : `Number ${at}`;
  };
  return (name) => {
    const own = inputs[name]?.name;
    if (own !== undefined) return own;
    const [, list = '', at = '', cell = ''] = /^([a-z]+)\.(\d+)\.(.+)$/.exec(name) ?? [];
    const spec = inputs[list];
    if (spec?.kind === 'list') {
      const what = spec.item[cell]?.name ?? outputs[name]?.name.replace(/^Section \d+: /, '') ?? cell;
      return `${rowName(list, Number(at))}: ${what.charAt(0).toLowerCase()}${what.slice(1)}`;
    }
    return outputs[name]?.name ?? '';
  };
}
