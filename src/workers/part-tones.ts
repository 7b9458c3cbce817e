/** The two ends of a scale of tones. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

export const bands = 6;
/** More is darker, the same on a light and on a dark page; one grey, because the heat scale is for temperature. */
export const tones: readonly (readonly [number, number, number])[] = [
  [235, 237, 236],
  [204, 210, 211],
  [168, 178, 181],
  [128, 141, 146],
  [88, 101, 107],
  [47, 57, 62],
];
export const plainTone = [196, 200, 199] as const;

export const toneOf = (band: number): string => `rgb(${tones[band]!.join(' ')})`;

/** Which tone a value has: bands of equal ratio between the ends of the scale. */
export function bandOf(value: number, { low, high }: Ends): number {
  if (!(high > low) || low <= 0)
    return Math.min(bands - 1, Math.max(0, Math.floor((bands * (value - low)) / (high - low || 1))));
  return Math.min(bands - 1, Math.max(0, Math.floor((bands * Math.log(value / low)) / Math.log(high / low))));
}

/** The values at which the tones change, with the two ends. */
export function bandEnds({ low, high }: Ends): number[] {
  return Array.from({ length: bands + 1 }, (_, n) =>
    low > 0 ? low * (high / low) ** (n / bands) : low + ((high - low) * n) / bands,
  );
}
