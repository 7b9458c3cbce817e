/**
 * Seeded random numbers: xoroshiro128+ with the shifts 24, 16, 37, as its authors revised it in 2018
 * (Blackman, D.; Vigna, S.: Scrambled Linear Pseudorandom Number Generators). The 64-bit words are kept as
 * halves of 32 bits, and a draw is the lower half of the sum. Streams are frozen: a learner's variant of an
 * exercise and a sampled spread must come out the same for ever, so golden values stand in the test.
 */
export interface Random {
  /** The next draw, a whole number from 0 to 2³² − 1. */
  readonly next: () => number;
  /** Evenly spread in [0, 1), 53 bits. */
  readonly uniform: () => number;
  /** A whole number from 0 to n − 1, each equally often; n from 1 to 2³². */
  readonly uniformInt: (n: number) => number;
  /** Standard normal, by the polar method. */
  readonly normal: () => number;
}

export type RandomState = readonly [high0: number, low0: number, high1: number, low1: number];

/**
 * Four 32-bit words from a text: FNV-1a over its UTF-16 units from four different starts, each finished with
 * the 32-bit finaliser of MurmurHash3. Not for secrets. Never all zero, where the generator would stand still.
 */
export function hashWords(text: string): RandomState {
  const words = [0x811c9dc5, 0x9e3779b9, 0x85ebca6b, 0xc2b2ae35].map((start) => {
    let h = start;
    for (let i = 0; i < text.length; i += 1) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
    h = Math.imul(h ^ text.length ^ (h >>> 16), 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    return (h ^ (h >>> 16)) | 0;
  });
  if (!words.some(Boolean)) words[3] = 1;
  return [words[0]!, words[1]!, words[2]!, words[3]!];
}

export function randomFrom(state: RandomState): Random {
  let [h0, l0, h1, l1] = state;

  function next(): number {
    const drawn = (l0 + l1) >>> 0;
    const h = h0 ^ h1;
    const l = l0 ^ l1;
    // s0 ← rotl(s0, 24) ^ s ^ (s << 16);  s1 ← rotl(s, 37)
    const turnedHigh = (h0 << 24) | (l0 >>> 8);
    const turnedLow = (l0 << 24) | (h0 >>> 8);
    h0 = turnedHigh ^ h ^ ((h << 16) | (l >>> 16));
    l0 = turnedLow ^ l ^ (l << 16);
    h1 = (l << 5) | (h >>> 27);
    l1 = (h << 5) | (l >>> 27);
    return drawn;
  }

  const uniform = (): number => ((next() >>> 5) * 0x4000000 + (next() >>> 6)) / 0x20000000000000;

  function uniformInt(n: number): number {
    if (!Number.isInteger(n) || n < 1 || n > 0x100000000)
      throw new Error(`no whole number below ${n} to draw`);
    // Buckets of equal width; draws past the last whole bucket are thrown away. The upper bits choose,
    // because the lowest bits of this generator are its weakest.
    const width = Math.floor(0x100000000 / n);
    for (;;) {
      const bucket = Math.floor(next() / width);
      if (bucket < n) return bucket;
    }
  }

  let spare: number | undefined;
  function normal(): number {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const r = x * x + y * y;
      if (r > 0 && r < 1) {
        const scale = Math.sqrt((-2 * Math.log(r)) / r);
        spare = y * scale;
        return x * scale;
      }
    }
  }

  return { next, uniform, uniformInt, normal };
}

/** A generator for this seed text: the same text always gives the same stream. */
export function createRandom(seed: string): Random {
  return randomFrom(hashWords(seed));
}
