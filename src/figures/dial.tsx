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
  const go = (next: number, why = ''): void => {
    setSaid(why);
    change(Math.min(last, Math.max(0, next)));
  };
  /** What reads a typed number comes when one is typed. */
  const typed = async (field: HTMLInputElement): Promise<void> => {
    try {
      const { takeTyped } = await import('./dial-typed.ts');
      const { stop, says } = await takeTyped(field.value, { unit, values, at, exactly });
      if (stop === undefined) return setSaid(says);
      field.value = shown(values[stop]!);
      go(stop, says);
    } catch {
      field.value = shown(value);
    }
  };
  const pressed = (event: KeyboardEvent): void => {
    const by = keys[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    // A number typed and not yet taken is where the step starts from.
    const wanted = Number(
      (event.currentTarget as HTMLInputElement).value.replace('−', '-').replace(',', '.'),
    );
    go((wanted === value || Number.isNaN(wanted) ? at : nearestTo(values, wanted)) + by);
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
              <span class="by-key">{', keys ↑\u00a0↓ step'}</span>
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

export const shown = (value: number): string => String(value).replace('-', '−');

export function nearestTo(values: readonly number[], wanted: number): number {
  let best = 0;
  values.forEach((value, i) => {
    if (Math.abs(value - wanted) < Math.abs(values[best]! - wanted)) best = i;
  });
  return best;
}
