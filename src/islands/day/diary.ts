import { isRecord } from '../plan/store.ts';

/** What a pour leaves behind: where it stands, what was ticked and written, and the moments that were pressed. */
export interface Diary {
  /** The id it will have in the log; made at the first change. */
  readonly pour?: string;
  readonly at: number;
  readonly ticks: Readonly<Record<string, boolean>>;
  readonly notes: Readonly<Record<string, string>>;
  /** Milliseconds since 1970, by name. */
  readonly moments: Readonly<Record<string, number>>;
  /** Whether the clocks are heard and felt. */
  readonly loud: boolean;
}

export const blank: Diary = { at: 0, ticks: {}, notes: {}, moments: {}, loud: false };

const keyOf = (plan: string): string => `warm-mould:day:${plan}`;

function kept<T>(value: unknown, fits: (one: unknown) => one is T): Record<string, T> {
  return isRecord(value)
    ? Object.fromEntries(Object.entries(value).filter((pair): pair is [string, T] => fits(pair[1])))
    : {};
}

/** A diary from kept text; what cannot be read starts anew. */
export function diaryFrom(text: string | null): Diary {
  if (text === null) return blank;
  try {
    const value: unknown = JSON.parse(text);
    if (!isRecord(value)) return blank;
    const [at, pour] = [Number(value['at']), value['pour']];
    return {
      ...(typeof pour === 'string' && /^[\w-]{1,60}$/.test(pour) && { pour }),
      at: Number.isInteger(at) && at >= 0 ? at : 0,
      ticks: kept(value['ticks'], (one): one is boolean => typeof one === 'boolean'),
      notes: kept(value['notes'], (one): one is string => typeof one === 'string'),
      moments: kept(
        value['moments'],
        (one): one is number => typeof one === 'number' && Number.isFinite(one),
      ),
      loud: value['loud'] === true,
    };
  } catch {
    return blank;
  }
}

export function loadDiary(plan: string): Diary {
  try {
    return diaryFrom(localStorage.getItem(keyOf(plan)));
  } catch {
    return blank;
  }
}

/** Keeps the diary; false when the device would not. */
export function saveDiary(plan: string, diary: Diary): boolean {
  try {
    localStorage.setItem(keyOf(plan), JSON.stringify(diary));
    return true;
  } catch {
    return false;
  }
}

/** `0:07`, `12:40`, `1:02:05`; whole seconds. */
export function printClock(seconds: number): string {
  const whole = Math.max(0, Math.round(seconds));
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (part: number): string => String(part).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
}

/** The diary as text to copy or send. */
export function diaryText(
  plan: string,
  screens: readonly { readonly id: string; readonly title: string; readonly number?: string }[],
  { notes, moments, ticks }: Diary,
  photos = 0,
): string {
  const seconds = (from: string, to: string): string[] =>
    moments[from] !== undefined && moments[to] !== undefined
      ? [((moments[to] - moments[from]) / 1000).toFixed(1)]
      : [];
  return [
    `Pour of “${plan}”`,
    ...(moments['out'] === undefined
      ? []
      : [`Out of the furnace: ${new Date(moments['out']).toLocaleString('en-GB')}`]),
    ...seconds('out', 'in').map((time) => `From the furnace into the mould: ${time} s`),
    ...seconds('in', 'released').map((time) => `Suction held: ${time} s`),
    ...screens.flatMap(({ id, title, number }) => {
      const done = Object.keys(ticks).filter((tick) => tick.startsWith(`${id}:`) && ticks[tick]).length;
      const note = notes[id]?.trim() ?? '';
      return [
        `${title}${number === undefined ? '' : `: ${number}`}${done === 0 ? '' : ` (${done} ticked)`}${note === '' ? '' : `. ${note}`}`,
      ];
    }),
    ...(photos === 0 ? [] : [`${photos} ${photos === 1 ? 'photo' : 'photos'} on the device.`]),
  ].join('\n');
}
