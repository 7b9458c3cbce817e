import { Fragment } from 'preact';

/** A symbol as it is read: the letter slanted, its index lowered. `ρ_l`, `T_pour`, `Δp`. */
export function Sign({ text }: { readonly text: string }) {
  const [head = '', ...rest] = text.split('_');
  const letters = head.replace(/^Δ/, '');
  return (
    <Fragment>
      {head.startsWith('Δ') && 'Δ'}
      {/^[A-Z]{2,}/.test(letters) ? letters : <i>{letters}</i>}
      {rest.length > 0 && <sub>{rest.join(',')}</sub>}
    </Fragment>
  );
}
