import { readPour, type Pour } from '../../../calculators/pour-log/record.ts';

/**
 * The pours on this device, each under its own name in IndexedDB: a write happens wholly or not at all, so that a
 * closed lid in the middle loses one change and never a log.
 */
export interface Kept {
  readonly pours: readonly Pour[];
  readonly problem?: string;
}

/** A mark of one change. */
export const newMark = (): string => crypto.randomUUID().slice(0, 8);

const database = 'warm-mould-pours';
const table = 'pours';
const channel = 'warm-mould:pours';

const off = 'This browser keeps nothing for this page. Export the log to keep it.';
const full =
  'There is not enough room on this device: the last change is not kept. Export the log, or take photos out of it.';

function open(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(database, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(table, { keyPath: 'id' });
    asked.onsuccess = () => {
      // A later version in another tab must not wait for this one.
      asked.result.onversionchange = () => asked.result.close();
      resolve(asked.result);
    };
    asked.onerror = () => reject(asked.error ?? new Error('not opened'));
    asked.onblocked = () => reject(new Error('blocked'));
  });
}

export async function readKept(): Promise<Kept> {
  try {
    const base = await open();
    const all = await new Promise<unknown[]>((resolve, reject) => {
      const asked = base.transaction(table).objectStore(table).getAll();
      asked.onsuccess = () => resolve(asked.result as unknown[]);
      asked.onerror = () => reject(asked.error ?? new Error('not read'));
    });
    base.close();
    const pours = all.flatMap((one) => readPour(one) ?? []);
    const lost = all.length - pours.length;
    return {
      pours: pours.sort((a, b) => (a.day < b.day ? 1 : -1)),
      ...(lost > 0
        ? { problem: `${lost} of the pours on this device could not be read. They stay where they are.` }
        : {}),
    };
  } catch {
    return { pours: [], problem: off };
  }
}

/** Keeps these pours, and takes others away, in one go; answers with a sentence when the device would not. */
export async function keepPours(
  put: readonly Pour[],
  remove: readonly string[] = [],
): Promise<string | undefined> {
  try {
    const base = await open();
    await new Promise<void>((resolve, reject) => {
      const change = base.transaction(table, 'readwrite');
      change.oncomplete = () => resolve();
      change.onabort = () => reject(change.error ?? new Error('not kept'));
      for (const id of remove) change.objectStore(table).delete(id);
      for (const pour of put) change.objectStore(table).put(pour);
    });
    base.close();
    tell();
    return undefined;
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? full : off;
  }
}

function tell(): void {
  const others = new BroadcastChannel(channel);
  others.postMessage('changed');
  others.close();
}

/** Calls back when another tab changed the log; the answer stops listening. */
export function onOtherTab(changed: () => void): () => void {
  const others = new BroadcastChannel(channel);
  others.onmessage = changed;
  return () => others.close();
}
