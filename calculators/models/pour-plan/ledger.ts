/** Numbers by the ids of their lines. Emptied and filled again it makes nothing new, which trials count on. */
export interface Ledger {
  readonly set: (id: string, value: number) => void;
  readonly get: (id: string) => number | undefined;
  readonly has: (id: string) => boolean;
  readonly clear: () => void;
  /** A reader of one line: its number, NaN where there is none. */
  readonly reader: (id: string) => () => number;
}

const most = 2048;

export function startLedger(): Ledger {
  const places = new Map<string, number>();
  const numbers = new Float64Array(most).fill(Number.NaN);
  const get = (id: string): number | undefined => {
    const place = places.get(id);
    const value = place === undefined ? Number.NaN : numbers[place]!;
    return Number.isNaN(value) ? undefined : value;
  };
  const placeFor = (id: string): number => {
    let place = places.get(id);
    if (place === undefined) {
      place = places.size;
      if (place >= most) throw new Error(`a plan has no more than ${most} lines`);
      places.set(id, place);
    }
    return place;
  };
  return {
    set: (id, value) => {
      numbers[placeFor(id)] = value;
    },
    get,
    has: (id) => get(id) !== undefined,
    clear: () => {
      numbers.fill(Number.NaN, 0, places.size);
    },
    reader: (id) => {
      const place = placeFor(id);
      return () => numbers[place]!;
    },
  };
}

const joined = new Map<string, Map<string, string>>();

/** `sections.1` and `flows` as one id, joined once. */
export function lineOf(id: string, line: string): string {
  let lines = joined.get(id);
  if (!lines) joined.set(id, (lines = new Map<string, string>()));
  let whole = lines.get(line);
  if (whole === undefined) lines.set(line, (whole = `${id}.${line}`));
  return whole;
}
