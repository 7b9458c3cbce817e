const blank = '\u00a0';
/** Units as they stand in a line of text; the inch is left out, since it reads as a word. */
const unit =
  '(?:°[CF]?|[%‰]|[kMGcmµn]?(?:Pa|[mgsJWNL]|bar|mol|Wh|cal)|K|Pa·s|min|h|atm|psi|torr|(?:mm|in)Hg|(?:mm|cm|in)H₂O|ft|lb|lbf|kgf|oz|ozt|dwt|ct|gr|hp|BTU|cfm|cP|ppm|AFS|darcy)(?![\\p{L}\\d])';
const afterNumber = new RegExp(`([\\d⁰¹²³⁴-⁹½¼¾]) (?=${unit})`, 'gu');
const atStart = new RegExp(`^ (?=${unit})`, 'u');

/**
 * A line of text in which no line breaks between a number and its unit, before a power of ten, or after ±: the space
 * there is one that does not break. What is printed so reads back as the same. `after` is what stands before it.
 */
export function together(text: string, after = ''): string {
  if (!text.includes(' ')) return text;
  const bound = text
    .replace(afterNumber, `$1${blank}`)
    .replace(/(\d) × (?=10[⁰¹²³⁴-⁹⁻])/g, `$1${blank}×${blank}`)
    .replace(/± (?=\d)/g, `±${blank}`);
  return /[\d½¼¾]$/.test(after) ? bound.replace(atStart, blank) : bound;
}
