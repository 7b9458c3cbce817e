import { readPour, type Pour } from '../../../calculators/pour-log/record.ts';
import { changeTable, readTable, wasFull, type KeptTable } from '../kept-table.ts';

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

/** Keeps these pours, and takes others away, in one go; answers with a sentence when the device would not. */
export async function keepPours(
  put: readonly Pour[],
  remove: readonly string[] = [],
): Promise<string | undefined> {
  try {
    await changeTable(where, put, remove);
    tell();
    return undefined;
  } catch (error) {
    return wasFull(error) ? full : off;
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
