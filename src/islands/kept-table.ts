/**
 * A table of this device in IndexedDB: a write happens wholly or not at all, so that a closed lid in the middle
 * loses one change and never what was there.
 */
export interface KeptTable {
  readonly database: string;
  /** Of its one store; everything in it has an `id`. */
  readonly table: string;
}

function open({ database, table }: KeptTable): Promise<IDBDatabase> {
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

/** Everything in the table as it lies there. Rejects when the browser keeps nothing for the page. */
export async function readTable(which: KeptTable): Promise<unknown[]> {
  const base = await open(which);
  const all = await new Promise<unknown[]>((resolve, reject) => {
    const asked = base.transaction(which.table).objectStore(which.table).getAll();
    asked.onsuccess = () => resolve(asked.result as unknown[]);
    asked.onerror = () => reject(asked.error ?? new Error('not read'));
  });
  base.close();
  return all;
}

/**
 * Works on the table in one go: all of it happens or none. What throws in the middle, there or in an answer that is
 * handed to `orNothing`, undoes the rest. Rejects with the device’s reason.
 */
export async function withTable(
  which: KeptTable,
  work: (store: IDBObjectStore, orNothing: (step: () => void) => void) => void,
): Promise<void> {
  const base = await open(which);
  try {
    await new Promise<void>((resolve, reject) => {
      const change = base.transaction(which.table, 'readwrite');
      change.oncomplete = () => resolve();
      change.onabort = () => reject(change.error ?? new Error('not kept'));
      const orNothing = (step: () => void): void => {
        try {
          step();
        } catch (error) {
          reject(error instanceof Error ? error : new Error('not kept'));
          change.abort();
        }
      };
      const store = change.objectStore(which.table);
      orNothing(() => work(store, orNothing));
    });
  } finally {
    base.close();
  }
}

/** Puts these and takes others away, in one go. Rejects with the device’s reason. */
export const changeTable = (
  which: KeptTable,
  put: readonly { readonly id: string }[],
  remove: readonly string[] = [],
): Promise<void> =>
  withTable(which, (store) => {
    for (const id of remove) store.delete(id);
    for (const one of put) store.put(one);
  });

/** Whether a write was refused for want of room. */
export const wasFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError';
