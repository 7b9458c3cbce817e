import { printWritten } from '../core/print.ts';
import type { Givens } from './definition.ts';

/** The text with each `{h}` replaced by that given. */
export function withNumbers(text: string, given: Givens): string {
  return text.replace(/\{(\w+(?:\.\w+)*)\}/g, (whole, name: string) => shown(given[name]) ?? whole);
}

/** A given as it stands in a sentence: a real minus, a degree sign, a difference in plain °C. */
const shown = (text: string | undefined): string | undefined =>
  text === undefined ? undefined : printWritten(text);

/** What a part's question prints: shared givens, its own, and `your answer` for what an earlier part gave. */
export function partNumbers(shared: Givens, own: Givens): Givens {
  const shown = Object.entries(own).map(([name, text]) => [
    name,
    text.startsWith('=') ? (shared[text.slice(1)] ?? text) : text.startsWith('$') ? 'your answer' : text,
  ]);
  return { ...shared, ...Object.fromEntries(shown) };
}
