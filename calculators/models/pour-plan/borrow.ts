import type { Input } from '../../core/model.ts';

/**
 * The named inputs of a larger form, for a model that works one part of it: the same number is asked for in
 * the same words wherever it is asked for. Throws when the form has no such input.
 */
export function borrow(
  form: Readonly<Record<string, Input>>,
  ...names: readonly string[]
): Record<string, Input> {
  return Object.fromEntries(
    names.map((name) => {
      const input = form[name];
      if (!input)
        throw new Error(`no input "${name}" to borrow; the form has ${Object.keys(form).join(', ')}`);
      return [name, input];
    }),
  );
}
