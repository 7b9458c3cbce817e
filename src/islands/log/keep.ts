import { standingOf, type Conflict } from '../../../calculators/pour-log/merge.ts';
import { readPour, type Pour } from '../../../calculators/pour-log/record.ts';
import { readTable, wasFull, withTable, type KeptTable } from '../kept-table.ts';

/** The pours on this device, each under its own name. */
export interface Kept {
  readonly pours: readonly Pour[];
  readonly problem?: string;
}

/** A mark of one change. */
export const newMark = (): string => crypto.randomUUID().slice(0, 8);

const where: KeptTable = { database: 'warm-mould-pours', table: 'pours' };
const channel = 'warm-mould:pours';

const off = 'This browser keeps nothing for this page. Export the log to keep it.';
const full =
  'There is not enough room on this device: the last change is not kept. Export the log, or take photos out of it.';

export async function readKept(): Promise<Kept> {
  try {
    const all = await readTable(where);
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

/** What came of keeping: a sentence when the device would not, and what was changed in two places. */
export interface Keeping {
  readonly problem?: string;
  /** `here` is what stays on the device until the reader decides. */
  readonly conflicts: readonly Conflict[];
  /** Copies left out because the device has newer ones. */
  readonly older: number;
  /** Not taken away, because another tab changed them since. */
  readonly stayed: readonly Pour[];
}

/**
 * Keeps these pours, and takes others away, all in one go or not at all. Each is held against what is on the device
 * at that moment: an older copy changes nothing, and where both went on the one on the device stays and both come
 * back to be decided. A pour to be taken away goes only as it was seen; a bare id goes whatever it is.
 */
export async function keepPours(
  put: readonly Pour[],
  remove: readonly (Pour | string)[] = [],
): Promise<Keeping> {
  const conflicts: Conflict[] = [];
  const stayed: Pour[] = [];
  let older = 0;
  try {
    await withTable(where, (store, orNothing) => {
      const asIs = (id: string, then: (kept: Pour | undefined) => void): void => {
        const asked = store.get(id);
        asked.onsuccess = () => orNothing(() => then(readPour(asked.result)));
      };
      for (const one of remove) {
        if (typeof one === 'string') store.delete(one);
        else
          asIs(one.id, (kept) => {
            const standing = kept && standingOf(one, kept);
            if (kept && (standing === 'newer' || standing === 'both')) stayed.push(kept);
            else store.delete(one.id);
          });
      }
      for (const pour of put)
        asIs(pour.id, (kept) => {
          const standing = kept ? standingOf(kept, pour) : 'newer';
          if (standing === 'newer') store.put(pour);
          else if (standing === 'older') older += 1;
          else if (standing === 'both') conflicts.push({ id: pour.id, here: kept!, there: pour });
        });
    });
    tell();
    return { conflicts, older, stayed };
  } catch (error) {
    return { problem: wasFull(error) ? full : off, conflicts: [], older: 0, stayed: [] };
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
