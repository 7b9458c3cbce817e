import type { ListInput, Model } from '../../core/model.ts';
import { checkWritten, type Checked, type Written, type WrittenCell, type WrittenRow } from './written.ts';

/**
 * The inputs of a plan as the part of an address after `#`: `head=40+mm&suction.gauge=35+kPa`. Rows are parted
 * by `;` and their cells, in the order of the form, by `~`. Only what differs from the start is worth writing.
 */
export function writeFragment(model: Pick<Model, 'id' | 'inputs'>, inputs: Written): string {
  return Object.entries(inputs)
    .map(([name, entry]) => {
      const input = model.inputs[name];
      const text =
        input?.kind === 'list'
          ? (Array.isArray(entry) ? (entry as readonly WrittenRow[]) : [])
              .map((row) => rowText(input, row))
              .join(';')
          : cellText(entry as WrittenCell);
      return `${escaped(name)}=${text}`;
    })
    .join('&');
}

const rowText = (input: ListInput, row: WrittenRow): string =>
  Object.keys(input.item)
    .map((field) => (row[field] === undefined ? '' : cellText(row[field])))
    .join('~')
    .replace(/~+$/, '');

const cellText = (cell: WrittenCell): string =>
  typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : escaped(cell);

/**
 * Percent escapes for what the fragment uses itself; spaces as `+`, which keeps a quantity readable. Half of a
 * surrogate pair, which no address can carry, becomes the sign for what is not a character.
 */
export const escaped = (text: string): string =>
  encodeURIComponent(text.replace(/[\ud800-\udfff]/gu, '\ufffd'))
    .replace(/%20/g, '+')
    .replace(/%2F/g, '/')
    .replace(/~/g, '%7E');

function unescaped(text: string): string | undefined {
  try {
    return decodeURIComponent(text.replace(/\+/g, ' '));
  } catch {
    return undefined;
  }
}

/** Reads a fragment, without its `#` and without a name before it. Never throws; says what could not be read. */
export function readFragment(model: Pick<Model, 'id' | 'inputs'>, fragment: string): Checked {
  const raw: Record<string, unknown> = {};
  const broken: string[] = [];
  for (const part of fragment.split('&').filter((piece) => piece !== '')) {
    const [left = '', right] = part.split(/=(.*)/s);
    const name = unescaped(left);
    const value = name === undefined || right === undefined ? undefined : entryOf(model, name, right);
    if (name === undefined || value === undefined)
      broken.push(`"${part.slice(0, 40)}" in the address could not be read`);
    else raw[name] = value;
  }
  const { inputs, problems } = checkWritten(model, raw);
  return { inputs, problems: [...broken, ...problems] };
}

function entryOf(model: Pick<Model, 'id' | 'inputs'>, name: string, text: string): unknown {
  const input = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
  if (input?.kind !== 'list') return cellOf(input?.kind === 'flag', text);
  if (text === '') return [];
  const rows = text.split(';').map((row) => {
    const cells = row.split('~');
    return Object.fromEntries(
      Object.entries(input.item).flatMap(([field, spec], index) => {
        const cell = cells[index];
        return cell === undefined || cell === '' ? [] : [[field, cellOf(spec.kind === 'flag', cell)]];
      }),
    );
  });
  return rows.some((row) => Object.values(row).includes(undefined)) ? undefined : rows;
}

function cellOf(flag: boolean, text: string): WrittenCell | undefined {
  const cell = unescaped(text);
  return flag && (cell === 'yes' || cell === 'no') ? cell === 'yes' : cell;
}
