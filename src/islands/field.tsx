import type { ComponentChildren } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { unitLabel } from '../../calculators/core/print.ts';
import { unitChoices, type Reading } from '../../calculators/core/quantity.ts';
import type { UnitSymbol } from '../../calculators/core/units.ts';
import {
  inUnit,
  mayBeNegative,
  negated,
  settled,
  stepped,
  withSpread,
  type Entry,
  type EntrySpec,
} from './entries.ts';
import '../styles/calculator.css';

export interface FieldProps {
  /** Unique on the page. */
  readonly id: string;
  readonly label: ComponentChildren;
  /** The label as plain words, for the names of the buttons. */
  readonly name: string;
  readonly spec: EntrySpec;
  readonly entry: Entry;
  readonly reading: Reading;
  readonly onChange: (entry: Entry) => void;
  /** Show the field for `±`. */
  readonly withSpread?: boolean;
  /** What the calculation has to say about this number, each as a sentence. */
  readonly warnings?: readonly string[];
  /** The number is past a limit: no answer is given. */
  readonly refused?: boolean;
  readonly note?: string | undefined;
}

/** A message as a sentence: a capital first and a stop at the end. */
export const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.?:]$/.test(text) ? '' : '.'}`;

/** A unit chooser; a single unit stands as text. */
export function UnitChoice(props: {
  readonly name: string;
  readonly of: UnitSymbol;
  readonly value: UnitSymbol;
  readonly onChange: (symbol: UnitSymbol) => void;
}) {
  const { name: whose, of, value } = props;
  const change = useRef(props.onChange);
  change.current = props.onChange;
  // A stroke changes none of it, and a length has a dozen units.
  return useMemo(() => {
    const choices = unitChoices(of);
    if (choices.length < 2) return <span class="unit">{unitLabel(of)}</span>;
    return (
      <select
        class="unit"
        aria-label={`unit of ${whose}`}
        value={value}
        onChange={(event) => change.current(event.currentTarget.value as UnitSymbol)}
      >
        {choices.map(({ symbol, name }) => (
          <option value={symbol} title={name} selected={symbol === value}>
            {unitLabel(symbol) || 'number'}
          </option>
        ))}
      </select>
    );
  }, [whose, of, value]);
}

/** Pieces and channels are counted, and a ratio above one is no share: neither is shown in per cent. */
const isCount = ({ unit: own, range }: EntrySpec, shown: UnitSymbol): boolean =>
  own === '1' && shown === '1' && (range?.[0] ?? 0) >= 1;

/** One quantity: a text field that reads what people type, its unit, steps, sign, spread and messages. */
export function Field(props: FieldProps) {
  const { id, name, spec, entry, reading, onChange } = props;
  const input = useRef<HTMLInputElement>(null);
  const [letters, setLetters] = useState(false);
  const warnings = props.warnings ?? [];
  const says = `${id}-says`;
  const bad = !reading.ok || props.refused === true;
  const step = (direction: 1 | -1): void => onChange(stepped(entry, spec, direction));

  return (
    <div class="field">
      <label for={id}>
        {props.label}
        <span class="unseen">{unitLabel(entry.unit) && `, in ${unitLabel(entry.unit)}`}</span>
      </label>
      <div class="entry">
        <button type="button" class="step" aria-label={`less ${name}`} onClick={() => step(-1)}>
          −
        </button>
        <input
          ref={input}
          id={id}
          type="text"
          inputMode={letters ? 'text' : 'decimal'}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={entry.text}
          aria-invalid={bad}
          aria-describedby={says}
          onInput={(event) =>
            onChange({ text: event.currentTarget.value, unit: entry.unit, spread: entry.spread })
          }
          onBlur={() => onChange(settled(entry, spec))}
          onKeyDown={(event) => {
            if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
            event.preventDefault();
            step(event.key === 'ArrowUp' ? 1 : -1);
          }}
        />
        <button type="button" class="step" aria-label={`more ${name}`} onClick={() => step(1)}>
          +
        </button>
        {!isCount(spec, entry.unit) && (
          <UnitChoice
            name={name}
            of={spec.unit}
            value={entry.unit}
            onChange={(symbol) => onChange(inUnit(entry, spec, symbol))}
          />
        )}
        {mayBeNegative(spec, entry.unit) && (
          <button
            type="button"
            class="step"
            aria-label={`change the sign of ${name}`}
            onClick={() => onChange(negated(entry))}
          >
            +/−
          </button>
        )}
        <button
          type="button"
          class="step letters"
          aria-label="keyboard with letters"
          aria-pressed={letters}
          onClick={() => {
            setLetters(!letters);
            input.current?.focus();
          }}
        >
          abc
        </button>
      </div>
      {props.withSpread === true && (
        <p class="spread">
          <label for={`${id}-spread`}>
            ±<span class="unseen"> spread of {name}</span>
          </label>
          <input
            id={`${id}-spread`}
            type="text"
            inputMode={letters ? 'text' : 'decimal'}
            autocomplete="off"
            value={entry.spread}
            placeholder="none"
            aria-describedby={says}
            onInput={(event) => onChange(withSpread(entry, event.currentTarget.value))}
          />
          <button
            type="button"
            class="step"
            aria-label={`spread of ${name} in per cent`}
            onClick={() => onChange(withSpread(entry, `${entry.spread.replace(/[^\d.,]/g, '') || '5'} %`))}
          >
            %
          </button>
        </p>
      )}
      <div id={says} class="says">
        {!reading.ok && <p class="wrong">{sentence(reading.message)}</p>}
        {reading.ok && reading.note !== undefined && <p>{reading.note}</p>}
        {warnings.map((warning) => (
          <p class={props.refused === true ? 'wrong' : 'warning'}>{sentence(warning)}</p>
        ))}
        {props.note !== undefined && <p class="note">{props.note}</p>}
      </div>
    </div>
  );
}
