import type { JSX } from 'preact';
import { useState } from 'preact/hooks';

export interface DialProps {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** The steps it can stand on, rising. */
  readonly values: readonly number[];
  readonly at: number;
  readonly change: (at: number) => void;
  /** Takes a number between two steps as it is, where the figure can work it out; false when it cannot after all. */
  readonly exactly?: (wanted: number) => Promise<boolean>;
}

const many = 10;
/** How far each key goes; the ends are as far as it goes. */
const keys: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: many,
  PageDown: -many,
};

/** A field with a step down and up, and a slider beside it: all four set the same place among the steps. */
export function Dial({ id, label, unit, values, at, change, exactly }: DialProps): JSX.Element {
  const last = values.length - 1;
  const value = values[at]!;
  const [said, setSaid] = useState('');
  const amount = (x: number): string => `${shown(x)}${unit && `\u00a0${unit}`}`;
  const go = (next: number, why = ''): void => {
    setSaid(why);
    change(Math.min(last, Math.max(0, next)));
  };
  const typed = async (field: HTMLInputElement): Promise<void> => {
    const { wanted, rest } = readPlain(field.value);
    const near = wanted === undefined ? at : nearestTo(values, wanted);
    const stop = amount(values[near]!);
    const back = (why: string): void => {
      field.value = shown(values[near]!);
      go(near, why);
    };
    if (wanted === undefined) return back(`That is no number; still ${stop}.`);
    const read = rest === '' || rest === unit ? '' : `Read as ${amount(wanted)}.`;
    if (wanted < values[0]! || wanted > values[last]!)
      return back(`It goes from ${shown(values[0]!)} to ${amount(values[last]!)}; this is ${stop}.`);
    if (values[near] === wanted) return back(read);
    if (exactly && (await exactly(wanted))) {
      field.value = shown(wanted);
      return setSaid(read);
    }
    back(`${amount(wanted)} lies between two stops; this is ${stop}.`);
  };
  const pressed = (event: KeyboardEvent): void => {
    const by = keys[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const { wanted = value } = readPlain((event.currentTarget as HTMLInputElement).value);
    // A number typed and not yet taken is where the step starts from.
    go((wanted === value ? at : nearestTo(values, wanted)) + by);
  };
  const step = (by: 1 | -1, sign: string, word: string): JSX.Element => (
    <button
      type="button"
      aria-label={`${label}: one step ${word}`}
      aria-disabled={by < 0 ? at === 0 : at === last}
      onClick={() => go(at + by)}
    >
      {sign}
    </button>
  );
  return (
    <div class="dial needs-script">
      <span>
        <label for={id}>
          {label}
          {unit && `, ${unit}`}
        </label>
        <small id={`${id}-hint`} aria-live="polite">
          {said || (
            <>
              {shown(values[0]!)} to {shown(values[last]!)}
              <span class="by-key">, keys ↑ ↓ step</span>
            </>
          )}
        </small>
      </span>
      <span class="dial-field">
        {step(-1, '−', 'down')}
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          aria-describedby={`${id}-hint`}
          value={shown(value)}
          onKeyDown={pressed}
          onChange={({ currentTarget }) => void typed(currentTarget)}
        />
        {step(1, '+', 'up')}
      </span>
      <input
        type="range"
        min={0}
        max={last}
        step={1}
        value={at}
        aria-label={label}
        aria-valuetext={`${value} ${unit}`}
        onInput={({ currentTarget }) => go(Number(currentTarget.value))}
      />
    </div>
  );
}

const shown = (value: number): string => String(value).replace('-', '−');

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

export function nearestTo(values: readonly number[], wanted: number): number {
  let best = 0;
  values.forEach((value, i) => {
    if (Math.abs(value - wanted) < Math.abs(values[best]! - wanted)) best = i;
  });
  return best;
}
