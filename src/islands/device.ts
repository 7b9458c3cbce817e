/** Everything these pages keep on a device, as one file: answers, exercises to come back, plans, habits, pours, photos. */
export interface Backup {
  readonly kind: 'warm-mould-backup';
  readonly version: 1;
  /** The day it was saved. */
  readonly saved: string;
  readonly kept: Readonly<Record<string, string>>;
  /** The log, which is kept apart for its photos; checked pour by pour when it is brought back. */
  readonly pours?: readonly unknown[];
  /** Photos of pour days that are not in the log yet; checked one by one as well. */
  readonly photos?: readonly unknown[];
}

export type Keeper = Pick<Storage, 'length' | 'key' | 'getItem' | 'setItem' | 'removeItem'>;

const ours = 'warm-mould:';
/** A backup beyond this is not one of ours. */
const largest = 200_000_000;

export function keptKeys(keeper: Keeper): string[] {
  return Array.from({ length: keeper.length }, (_, at) => keeper.key(at) ?? '')
    .filter((key) => key.startsWith(ours))
    .sort();
}

export function backUp(
  keeper: Keeper,
  day: string,
  pours: readonly unknown[] = [],
  photos: readonly unknown[] = [],
): Backup {
  const kept = Object.fromEntries(keptKeys(keeper).map((key) => [key, keeper.getItem(key) ?? '']));
  return {
    kind: 'warm-mould-backup',
    version: 1,
    saved: day,
    kept,
    ...(pours.length > 0 && { pours }),
    ...(photos.length > 0 && { photos }),
  };
}

export type Restored =
  { readonly ok: true; readonly backup: Backup } | { readonly ok: false; readonly reason: string };

/** A backup read from the text of a file; the reason as a sentence where it is none. */
export function readBackup(text: string): Restored {
  const no = (reason: string): Restored => ({ ok: false, reason });
  if (text.length > largest) return no('The file is far larger than a backup of these pages can be.');
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return no('The file is not a backup: it cannot be read as JSON. Choose the file saved from this page.');
  }
  if (typeof data !== 'object' || data === null || !('kind' in data) || data.kind !== 'warm-mould-backup')
    return no('The file is not a backup of these pages. Choose the file saved from this page.');
  const { version, saved, kept, pours, photos } = data as unknown as Partial<Record<keyof Backup, unknown>>;
  if (version !== 1)
    return no(
      'The backup is of a later version of these pages. Open it there, or load the newest version here.',
    );
  if (typeof kept !== 'object' || kept === null || Array.isArray(kept))
    return no('The backup holds nothing that can be restored.');
  const entries = Object.entries(kept);
  if (!entries.every(([key, value]) => key.startsWith(ours) && typeof value === 'string'))
    return no(
      'The backup holds what these pages never wrote. It was changed or damaged, so nothing was restored.',
    );
  if ((pours !== undefined && !Array.isArray(pours)) || (photos !== undefined && !Array.isArray(photos)))
    return no('The log in the backup cannot be read. It was changed or damaged, so nothing was restored.');
  return {
    ok: true,
    backup: {
      kind: 'warm-mould-backup',
      version: 1,
      saved: typeof saved === 'string' ? saved : '',
      kept: Object.fromEntries(entries) as Record<string, string>,
      ...(Array.isArray(pours) && { pours: pours as unknown[] }),
      ...(Array.isArray(photos) && { photos: photos as unknown[] }),
    },
  };
}

/**
 * Puts a backup back. What is kept under the same name is replaced, the rest stays. Where the device runs full
 * everything is put back as it was before, and the answer is a sentence.
 */
export function restore(keeper: Keeper, { kept }: Backup): string | undefined {
  const before = Object.keys(kept).map((key) => [key, keeper.getItem(key)] as const);
  try {
    for (const [key, value] of Object.entries(kept)) keeper.setItem(key, value);
    return undefined;
  } catch {
    for (const [key] of before) keeper.removeItem(key);
    for (const [key, value] of before) if (value !== null) keeper.setItem(key, value);
    return 'There is not enough room on this device. Nothing was changed.';
  }
}

export function erase(keeper: Keeper): number {
  const keys = keptKeys(keeper);
  for (const key of keys) keeper.removeItem(key);
  return keys.length;
}

/** The day the last copy was saved, so that the page can say how old it is. */
const savedKey = `${ours}saved`;

export function noteSaved(keeper: Keeper, day: string): void {
  try {
    keeper.setItem(savedKey, day);
  } catch {
    // A full device saves a copy all the same; only its day is not kept.
  }
}

export function lastSaved(keeper: Keeper): string | undefined {
  const day = keeper.getItem(savedKey) ?? '';
  return /^\d{4}-\d{2}-\d{2}$/.test(day) ? day : undefined;
}

type Lasting = Pick<StorageManager, 'persist' | 'persisted'>;

/** Whether the browser has promised not to clear what is kept when the device runs short; never throws. */
export async function isLasting(storage: Partial<Lasting> | undefined): Promise<boolean> {
  try {
    return (await storage?.persisted?.()) ?? false;
  } catch {
    return false;
  }
}

/** Asks the browser for that promise, and says in a sentence what it answered. */
export async function askToLast(storage: Partial<Lasting> | undefined): Promise<string> {
  if (!storage?.persist) return 'This browser cannot be asked. Save a copy now and then.';
  try {
    if (await storage.persist())
      return 'The browser promises to keep it, even when the device runs short of room.';
  } catch {
    // Asked and not answered is the same as no.
  }
  return 'The browser gives no promise: it may clear what is kept when the device runs short. Save a copy now and then.';
}
