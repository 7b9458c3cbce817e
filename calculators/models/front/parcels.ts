/**
 * Metal in a channel as a queue of parcels, the oldest, farthest first. Each keeps its volume (m³, all channels
 * alike together) and its heat above the liquidus (J/kg). Parcels travel with the flow, so nothing spreads along
 * the stream but what is mixed on purpose: into the last parcel until it is a cell long, and at the head.
 */
export interface Parcels {
  readonly volumes: number[];
  readonly heats: number[];
}

export const noParcels = (): Parcels => ({ volumes: [], heats: [] });

/** Metal coming in at the near end. It is mixed into the newest parcel while that is shorter than `cell`. */
export function push({ volumes, heats }: Parcels, volume: number, heat: number, cell: number): void {
  if (!(volume > 0)) return;
  const last = volumes.length - 1;
  if (last >= 0 && volumes[last]! < cell) {
    const whole = volumes[last]! + volume;
    heats[last] = (heats[last]! * volumes[last]! + heat * volume) / whole;
    volumes[last] = whole;
  } else {
    volumes.push(volume);
    heats.push(heat);
  }
}

/** The oldest metal, `volume` of it, handed out at the far end piece by piece. */
export function pop(
  { volumes, heats }: Parcels,
  volume: number,
  give: (volume: number, heat: number) => void,
): void {
  let left = volume;
  while (left > 0 && volumes.length > 0) {
    const first = volumes[0]!;
    // A remnant below rounding goes along with the rest of its parcel.
    if (first <= left * (1 + 1e-12)) {
      give(first, heats[0]!);
      volumes.shift();
      heats.shift();
      left -= first;
    } else {
      give(left, heats[0]!);
      volumes[0] = first - left;
      return;
    }
  }
}

/** Keeps the first `head` of the stream one mixed parcel: there the metal rolls over as it advances. */
export function mixHead({ volumes, heats }: Parcels, head: number): void {
  if (volumes.length === 0) return;
  if (volumes[0]! > head * (1 + 1e-12)) {
    volumes.splice(1, 0, volumes[0]! - head);
    heats.splice(1, 0, heats[0]!);
    volumes[0] = head;
    return;
  }
  while (volumes.length > 1 && volumes[0]! < head * (1 - 1e-12)) {
    const taken = Math.min(volumes[1]!, head - volumes[0]!);
    const whole = volumes[0]! + taken;
    heats[0] = (heats[0]! * volumes[0]! + heats[1]! * taken) / whole;
    volumes[0] = whole;
    if (taken >= volumes[1]! * (1 - 1e-12)) {
      volumes.splice(1, 1);
      heats.splice(1, 1);
    } else {
      volumes[1] = volumes[1]! - taken;
    }
  }
}
