import { changeTable, readTable, wasFull, type KeptTable } from '../kept-table.ts';
import { isRecord } from '../plan/store.ts';

/** A photo taken while a plan is followed; it goes into the log with the pour. */
export interface DayPhoto {
  readonly id: string;
  /** The name of the plan. */
  readonly plan: string;
  /** The screen it was taken on. */
  readonly screen: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** A `data:` address of a picture made small. */
  readonly picture: string;
}

/** As many as a pour of the log takes. */
export const mostPhotos = 6;

const where: KeptTable = { database: 'warm-mould-days', table: 'photos' };

const off = 'This browser keeps no photos for this page. They stay until it is closed.';
const full =
  'There is not enough room on this device: that photo stays until the page is closed. Write the pour into the log, or take photos out of it.';

/** A photo from anything; undefined when it is none of these pages. */
export function readPhoto(value: unknown): DayPhoto | undefined {
  if (!isRecord(value)) return undefined;
  const { id, plan, screen, at, picture } = value;
  return typeof id === 'string' &&
    typeof plan === 'string' &&
    typeof screen === 'string' &&
    typeof at === 'number' &&
    typeof picture === 'string' &&
    picture.startsWith('data:image/')
    ? { id, plan, screen, at, picture }
    : undefined;
}

/** Every photo of pour days on this device, the first taken first; none where nothing is kept. */
export async function everyPhoto(): Promise<readonly DayPhoto[]> {
  try {
    return (await readTable(where)).flatMap((one) => readPhoto(one) ?? []).sort((a, b) => a.at - b.at);
  } catch {
    return [];
  }
}

export const photosOf = async (plan: string): Promise<readonly DayPhoto[]> =>
  (await everyPhoto()).filter((photo) => photo.plan === plan);

/** Keeps these photos and lets others go; answers with a sentence when the device would not. */
export async function keepPhotos(
  put: readonly DayPhoto[],
  remove: readonly string[] = [],
): Promise<string | undefined> {
  try {
    await changeTable(where, put, remove);
    return undefined;
  } catch (error) {
    return wasFull(error) ? full : off;
  }
}
