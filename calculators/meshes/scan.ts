/** A place in bytes read as text, without making text of them: a file may be half a gigabyte. */
export interface Scan {
  readonly bytes: Uint8Array;
  at: number;
}

const zero = 48;
const nine = 57;
const tens = Array.from({ length: 23 }, (_, n) => Number(`1e${n}`));

export const isSpace = (byte: number): boolean => byte === 32 || (byte >= 9 && byte <= 13);

/** Steps over blanks on this line, or over line ends too. */
export function skipBlanks(scan: Scan, lines = true): void {
  const { bytes } = scan;
  while (scan.at < bytes.length) {
    const byte = bytes[scan.at]!;
    if (!isSpace(byte) || (!lines && (byte === 10 || byte === 13))) return;
    scan.at += 1;
  }
}

/** To the start of the next line. */
export function skipLine(scan: Scan): void {
  const end = scan.bytes.indexOf(10, scan.at);
  scan.at = end < 0 ? scan.bytes.length : end + 1;
}

/** Steps over what is neither blank nor the end. */
export function skipWord(scan: Scan): void {
  const { bytes } = scan;
  while (scan.at < bytes.length && !isSpace(bytes[scan.at]!)) scan.at += 1;
}

/** True, and past it, when this word (lower case) stands here in either case and ends there. */
export function takeWord(scan: Scan, word: string): boolean {
  const { bytes, at } = scan;
  for (let i = 0; i < word.length; i += 1)
    if (((bytes[at + i] ?? 0) | 32) !== word.charCodeAt(i)) return false;
  const after = bytes[at + word.length];
  if (after !== undefined && !isSpace(after)) return false;
  scan.at = at + word.length;
  return true;
}

/**
 * The number that stands here, and past it; NaN when none does, and then past the word. Up to fifteen figures and
 * a power of ten up to 22 it is the nearest double, beyond that within its last two places.
 */
export function takeNumber(scan: Scan): number {
  const { bytes } = scan;
  let at = scan.at;
  let sign = 1;
  if (bytes[at] === 45) {
    sign = -1;
    at += 1;
  } else if (bytes[at] === 43) at += 1;
  let value = 0;
  let power = 0;
  let figures = 0;
  let any = false;
  for (; bytes[at]! >= zero && bytes[at]! <= nine; at += 1) {
    any = true;
    if (figures < 17) {
      value = value * 10 + (bytes[at]! - zero);
      if (value > 0) figures += 1;
    } else power += 1;
  }
  if (bytes[at] === 46) {
    at += 1;
    for (; bytes[at]! >= zero && bytes[at]! <= nine; at += 1) {
      any = true;
      if (figures < 17) {
        value = value * 10 + (bytes[at]! - zero);
        power -= 1;
        if (value > 0) figures += 1;
      }
    }
  }
  if (!any) {
    skipWord(scan);
    return Number.NaN;
  }
  if (bytes[at] === 101 || bytes[at] === 69) {
    let to = at + 1;
    const minus = bytes[to] === 45;
    if (minus || bytes[to] === 43) to += 1;
    if (bytes[to]! >= zero && bytes[to]! <= nine) {
      let written = 0;
      for (; bytes[to]! >= zero && bytes[to]! <= nine; to += 1)
        if (written < 10_000) written = written * 10 + (bytes[to]! - zero);
      power += minus ? -written : written;
      at = to;
    }
  }
  scan.at = at;
  if (value === 0) return 0;
  if (power === 0) return sign * value;
  if (power > 0) return sign * (power <= 22 ? value * tens[power]! : value * 10 ** power);
  return sign * (power >= -22 ? value / tens[-power]! : value * 10 ** Math.max(power, -340));
}

/** Whether these letters (lower case) stand anywhere in the first so many bytes, in either case. */
export function holds(bytes: Uint8Array, text: string, within: number): boolean {
  const end = Math.min(bytes.length, within) - text.length;
  for (let from = 0; from <= end; from += 1) {
    let i = 0;
    while (i < text.length && (bytes[from + i]! | 32) === (text.charCodeAt(i) | 32)) i += 1;
    if (i === text.length) return true;
  }
  return false;
}
