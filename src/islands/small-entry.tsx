import { useState } from 'preact/hooks';

/** A short field with its label: what cannot be read stays typed, with what is wrong under it. */
export function SmallEntry<T>(props: {
  readonly id: string;
  readonly label: string;
  /** Whose marks or tolerance, for one who hears the page. */
  readonly of?: string;
  readonly value: string;
  /** The value of what was typed; a sentence of what can be typed when it is none. */
  readonly read: (text: string) => { readonly value: T } | string;
  readonly put: (value: T) => void;
  /** Typing has come to rest on a value. */
  readonly done?: () => void;
}) {
  const [typed, setTyped] = useState<string>();
  const read = typed === undefined ? undefined : props.read(typed);
  const wrong = typeof read === 'string' ? read : '';
  return (
    <div>
      <label htmlFor={props.id}>
        {props.label}
        {props.of !== undefined && <span class="unseen"> of {props.of}</span>}
      </label>{' '}
      <input
        id={props.id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={typed ?? props.value}
        aria-invalid={wrong !== ''}
        aria-describedby={`${props.id}-wrong`}
        onInput={({ currentTarget }) => {
          setTyped(currentTarget.value);
          const now = props.read(currentTarget.value);
          if (typeof now !== 'string') props.put(now.value);
        }}
        onBlur={() => {
          if (typed === undefined || wrong !== '') return;
          setTyped(undefined);
          props.done?.();
        }}
      />
      <p class="problem" id={`${props.id}-wrong`} role="status">
        {wrong !== '' && `${wrong} It stays ${props.value}.`}
      </p>
    </div>
  );
}
