import { utf8 } from './bytes.ts';

/** The first 32 bits of the fractional part of a root of the n-th prime, as the standard derives its constants. */
const primes = (count: number): number[] => {
  const found: number[] = [];
  for (let n = 2; found.length < count; n += 1) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
};
const fraction = (x: number): number => ((x - Math.floor(x)) * 0x100000000) | 0;
const rounds = primes(64).map((prime) => fraction(Math.cbrt(prime)));
const start = primes(8).map((prime) => fraction(Math.sqrt(prime)));
const turn = (x: number, by: number): number => (x >>> by) | (x << (32 - by));

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, or of bytes, in hexadecimal. */
export function sha256(data: string | Uint8Array): string {
  const message = typeof data === 'string' ? utf8(data) : data;
  const length = Math.ceil((message.length + 9) / 64) * 64;
  const padded = new Uint8Array(length);
  padded.set(message);
  padded[message.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(length - 8, Math.floor(message.length / 0x20000000));
  view.setUint32(length - 4, (message.length << 3) >>> 0);
  const state = Int32Array.from(start);
  const words = new Int32Array(64);
  for (let block = 0; block < length; block += 64) {
    for (let i = 0; i < 16; i += 1) words[i] = view.getInt32(block + 4 * i);
    for (let i = 16; i < 64; i += 1) {
      const x = words[i - 15]!;
      const y = words[i - 2]!;
      const low = turn(x, 7) ^ turn(x, 18) ^ (x >>> 3);
      const high = turn(y, 17) ^ turn(y, 19) ^ (y >>> 10);
      words[i] = (words[i - 16]! + low + words[i - 7]! + high) | 0;
    }
    let a = state[0]!;
    let b = state[1]!;
    let c = state[2]!;
    let d = state[3]!;
    let e = state[4]!;
    let f = state[5]!;
    let g = state[6]!;
    let h = state[7]!;
    for (let i = 0; i < 64; i += 1) {
      const sum = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
      const first = (h + sum + ((e & f) ^ (~e & g)) + rounds[i]! + words[i]!) | 0;
      const second = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + first) | 0;
      d = c;
      c = b;
      b = a;
      a = (first + second) | 0;
    }
    state[0]! += a;
    state[1]! += b;
    state[2]! += c;
    state[3]! += d;
    state[4]! += e;
    state[5]! += f;
    state[6]! += g;
    state[7]! += h;
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

/** The same data has the same text: keys in order, nothing between. What JSON leaves out is left out. */
export function canonical(data: unknown): string {
  if (Array.isArray(data)) return `[${data.map((item) => canonical(item ?? null)).join(',')}]`;
  if (typeof data === 'object' && data !== null) {
    const entries = Object.entries(data)
      .filter(([, value]) => value !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([key, value]) => `${JSON.stringify(key)}:${canonical(value)}`).join(',')}}`;
  }
  return JSON.stringify(data) ?? 'null';
}

/** What stands for the data wherever it must be known again. */
export const hashOf = (data: unknown): string => sha256(canonical(data));
