/** The UTF-8 bytes of a text; half of a surrogate pair becomes U+FFFD, as everywhere else. */
export function utf8(text: string): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(text.length * 3);
  let length = 0;
  for (let at = 0; at < text.length; at += 1) {
    // By single units: `codePointAt` has been seen to look past the end of a cut text once it is compiled.
    const unit = text.charCodeAt(at);
    const next = at + 1 < text.length ? text.charCodeAt(at + 1) : 0;
    const pair = unit >= 0xd800 && unit <= 0xdbff && next >= 0xdc00 && next <= 0xdfff;
    const whole = pair ? 0x10000 + ((unit - 0xd800) << 10) + (next - 0xdc00) : unit;
    const code = whole >= 0xd800 && whole <= 0xdfff ? 0xfffd : whole;
    if (code < 0x80) {
      bytes[length++] = code;
      continue;
    }
    if (code < 0x800) bytes[length++] = 0xc0 | (code >> 6);
    else {
      if (code < 0x10000) bytes[length++] = 0xe0 | (code >> 12);
      else {
        bytes[length++] = 0xf0 | (code >> 18);
        bytes[length++] = 0x80 | ((code >> 12) & 63);
        // It stood in two places.
        at += 1;
      }
      bytes[length++] = 0x80 | ((code >> 6) & 63);
    }
    bytes[length++] = 0x80 | (code & 63);
  }
  return bytes.slice(0, length);
}

/** The text of UTF-8 bytes, or undefined where they are none: overlong, cut short, or half of a pair. */
export function textOf(bytes: Uint8Array): string | undefined {
  const pieces: string[] = [];
  let codes: number[] = [];
  for (let at = 0; at < bytes.length;) {
    const first = bytes[at]!;
    const more =
      first < 0x80 ? 0 : first < 0xc2 ? -1 : first < 0xe0 ? 1 : first < 0xf0 ? 2 : first < 0xf5 ? 3 : -1;
    if (more < 0 || at + more >= bytes.length) return undefined;
    let code = more === 0 ? first : first & (0x3f >> more);
    for (let i = 1; i <= more; i += 1) {
      const next = bytes[at + i]!;
      if ((next & 0xc0) !== 0x80) return undefined;
      code = (code << 6) | (next & 63);
    }
    const least = [0, 0x80, 0x800, 0x10000][more]!;
    if (code < least || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff)) return undefined;
    codes.push(code);
    if (codes.length === 4096) {
      pieces.push(String.fromCodePoint(...codes));
      codes = [];
    }
    at += more + 1;
  }
  pieces.push(String.fromCodePoint(...codes));
  return pieces.join('');
}

const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const places = new Map([...signs].map((sign, at) => [sign, at]));

/** Base 64 with the alphabet that stands in an address (RFC 4648, section 5), without padding. */
export function base64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b, c] = [bytes[at], bytes[at + 1], bytes[at + 2]];
    pieces.push(signs[a >> 2]! + signs[((a & 3) << 4) | ((b ?? 0) >> 4)]!);
    if (b !== undefined) pieces.push(signs[((b & 15) << 2) | ((c ?? 0) >> 6)]!);
    if (c !== undefined) pieces.push(signs[c & 63]!);
  }
  return pieces.join('');
}

/** The bytes of such a text; undefined where it is none. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (text.length % 4 === 1) return undefined;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const sign of text) {
    const place = places.get(sign);
    if (place === undefined) return undefined;
    held = ((held << 6) | place) & 0xfff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at] = (held >> bits) & 255;
      at += 1;
    }
  }
  // What is left over must be nought, so that one run of bytes has one text.
  return (held & ((1 << bits) - 1)) === 0 ? bytes : undefined;
}
