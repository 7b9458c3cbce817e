import type { Givens } from './definition.ts';

/** The text with each `{h}` replaced by that given. */
export function withNumbers(text: string, given: Givens): string {
  return text.replace(/\{(\w+(?:\.\w+)*)\}/g, (whole, name: string) => shown(given[name]) ?? whole);
}

/** A given as it stands in a sentence, as `printWritten` has it, but without the table of units a lesson need not carry. */
const shown = (text: string | undefined): string | undefined =>
  text
    ?.replace(/^-/, '−')
    .replace(/ deg$/, '°')
    .replace('Δ', '')
    .replace('H2O', 'H₂O')
    .replace('J·s^-½/(m²·K)', 'J/(m²·K·√s)');

/** What a part's question prints: shared givens, its own, and `your answer` for what an earlier part gave. */
export function partNumbers(shared: Givens, own: Givens): Givens {
  const shown = Object.entries(own).map(([name, text]) => [
    name,
    text.startsWith('=') ? (shared[text.slice(1)] ?? text) : text.startsWith('$') ? 'your answer' : text,
  ]);
  return { ...shared, ...Object.fromEntries(shown) };
}
