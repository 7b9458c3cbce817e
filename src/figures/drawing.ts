/** So many significant figures, never with a power of ten: `0.42`, `1.8`, `120`. */
export function figures(value: number, count = 2): string {
  const text = value.toPrecision(count);
  return text.includes('e') ? String(Number(text)) : text;
}

/** The colour of a temperature in °C on the one heat scale: sand grey at 20 to near white at 1200. */
export function heat(celsius: number): string {
  const place = Math.min(3.999, Math.max(0, (celsius - 20) / 295));
  const below = Math.floor(place);
  const part = Math.round((place - below) * 100);
  return `color-mix(in oklab, var(--heat-${below + 1}) ${part}%, var(--heat-${below}))`;
}

/** Labels that would stand on each other, moved apart by `gap`, keeping their order; none below `lowest`. */
export function spaced(places: readonly number[], gap: number, lowest = Number.POSITIVE_INFINITY): number[] {
  const order = places.map((_, i) => i).sort((a, b) => places[a]! - places[b]!);
  const moved = [...places];
  for (let i = 1; i < order.length; i += 1) {
    const before = moved[order[i - 1]!]!;
    if (moved[order[i]!]! < before + gap) moved[order[i]!] = before + gap;
  }
  order.forEach((label, i) => {
    moved[label] = Math.min(moved[label]!, lowest - gap * (order.length - 1 - i));
  });
  return moved;
}

/** These parts of every decade that lie between two numbers above nought: `[1, 2, 5]` from 0.3 to 20 gives 0.5 to 20. */
export function withinDecades(low: number, high: number, parts: readonly number[]): number[] {
  const first = Math.floor(Math.log10(low));
  const last = Math.ceil(Math.log10(high));
  return Array.from({ length: last - first + 1 }, (_, i) => first + i)
    .flatMap((power) => parts.map((part) => Number((part * 10 ** power).toPrecision(2))))
    .filter((place) => place >= low * (1 - 1e-9) && place <= high * (1 + 1e-9));
}

/** What a figure's numbers look like as a table, for who cannot or will not use the drawing. */
export interface FigureTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
