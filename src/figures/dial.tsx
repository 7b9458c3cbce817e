import type { JSX } from 'preact';

export interface DialProps {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** The steps it can stand on, rising. */
  readonly values: readonly number[];
  readonly at: number;
  readonly change: (at: number) => void;
}

/** A field with a step down and up, and a slider beside it: all four set the same place among the steps. */
export function Dial({ id, label, unit, values, at, change }: DialProps): JSX.Element {
  const last = values.length - 1;
  const value = values[at]!;
  const typed = (field: HTMLInputElement): void => {
    const wanted = Number.parseFloat(field.value.replace(',', '.').replace('−', '-'));
    const next = Number.isNaN(wanted) ? at : nearestTo(values, wanted);
    field.value = String(values[next]!);
    change(next);
  };
  const step = (by: 1 | -1, sign: string, word: string): JSX.Element => (
    <button
      type="button"
      aria-label={`${label}: one step ${word}`}
      aria-disabled={by < 0 ? at === 0 : at === last}
      onClick={() => change(Math.min(last, Math.max(0, at + by)))}
    >
      {sign}
    </button>
  );
  return (
    <div class="dial needs-script">
      <label for={id}>
        {label}
        {unit && `, ${unit}`}
      </label>
      <span class="dial-field">
        {step(-1, '−', 'down')}
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={value}
          onChange={({ currentTarget }) => typed(currentTarget)}
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
        onInput={({ currentTarget }) => change(Number(currentTarget.value))}
      />
    </div>
  );
}

export function nearestTo(values: readonly number[], wanted: number): number {
  let best = 0;
  values.forEach((value, i) => {
    if (Math.abs(value - wanted) < Math.abs(values[best]! - wanted)) best = i;
  });
  return best;
}
