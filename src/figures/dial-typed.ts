import { nearestTo, shown, type DialProps } from './dial.tsx';

/** Where a typed number leads: a stop among the steps, or none where it was taken as it is; and what to say of it. */
interface Taken {
  readonly stop?: number;
  readonly says: string;
}

/** Takes a typed number exactly where the figure can work it, else goes to the nearest stop and says so. */
export async function takeTyped(
  text: string,
  {
    unit,
    values,
    at,
    exactly,
  }: Pick<DialProps, 'unit' | 'values' | 'at'> & {
    readonly exactly: DialProps['exactly'] | undefined;
  },
): Promise<Taken> {
  const amount = (x: number): string => `${shown(x)}${unit && `\u00a0${unit}`}`;
  const { wanted, rest } = readPlain(text);
  const stop = wanted === undefined ? at : nearestTo(values, wanted);
  const here = amount(values[stop]!);
  if (wanted === undefined) return { stop, says: `That is no number; still ${here}.` };
  const read = rest === '' || rest === unit ? '' : `Read as ${amount(wanted)}.`;
  const [low, high] = [values[0]!, values.at(-1)!];
  if (wanted < low || wanted > high)
    return { stop, says: `It goes from ${shown(low)} to ${amount(high)}; this is ${here}.` };
  if (values[stop] === wanted) return { stop, says: read };
  if (exactly && (await exactly(wanted))) return { says: read };
  return { stop, says: `${amount(wanted)} lies between two stops; this is ${here}.` };
}

/** The number a text begins with, and what stands behind it. */
export function readPlain(text: string): { readonly wanted: number | undefined; readonly rest: string } {
  const plain = text
    .trim()
    .replace(/^−/, '-')
    .replace(/[\s\u202f](?=\d{3}(?!\d))/g, '');
  const [all = '', , rest = ''] = /^([-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(.*)$/.exec(plain) ?? [];
  const wanted = Number.parseFloat(all.replace(',', '.'));
  return { wanted: Number.isNaN(wanted) ? undefined : wanted, rest: rest.trim() };
}
