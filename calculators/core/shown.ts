import { findUnit, type UnitSymbol } from './units.ts';

/**
 * A written quantity, `150 mm ± 2 ~ in`, as it was typed and the unit a form shows it in, which changes nothing of
 * it. What is no unit behind `~` belongs to what was typed.
 */
export function typedAndShown(text: string): readonly [typed: string, shown?: UnitSymbol] {
  const at = text.lastIndexOf('~');
  const shown = at < 0 ? undefined : findUnit(text.slice(at + 1).trim())?.symbol;
  return shown === undefined ? [text] : [text.slice(0, at).trim(), shown];
}
