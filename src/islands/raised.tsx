import { Fragment } from 'preact';

/** A line of a sum as text, `2^1.5`, with its powers raised. */
export function Raised({ text }: { readonly text: string }) {
  return (
    <Fragment>
      {text
        .split(/\^(−?\d+(?:\.\d+)?|\(−?\d+(?:\.\d+)?\))/)
        .map((part, n) => (n % 2 === 1 ? <sup>{part.replace(/[()]/g, '')}</sup> : part))}
    </Fragment>
  );
}
