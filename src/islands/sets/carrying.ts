import { base64, fromBase64, textOf, utf8 } from '../../../calculators/exercises/sets/bytes.ts';
import {
  setFromShort,
  shortSet,
  type Bank,
  type Draft,
} from '../../../calculators/exercises/sets/building.ts';
import { readSet, setLimits, writeSet, type SetFile } from '../../../calculators/exercises/sets/set-file.ts';
import { parseUntrusted, type Read } from '../../../calculators/exercises/sets/untrusted.ts';
import { deflate, inflate } from '../../platform/deflate.ts';

/** The address of a page beside this one, with a set after its `#`. The part after `#` is never sent to a server. */
export async function longLink(page: string, file: SetFile): Promise<string> {
  return `${new URL(page, location.href).href}#set=${base64(await deflate(utf8(writeSet(file))))}`;
}

/** The same as a list of exercises of the course; undefined when the set has a question of its own. */
export async function shortLink(page: string, draft: Draft, file: SetFile): Promise<string | undefined> {
  const list = shortSet(draft, file);
  return list === undefined
    ? undefined
    : `${new URL(page, location.href).href}#ids=${base64(await deflate(utf8(list)))}`;
}

/** A square code holds this much at its largest; beyond about half of it a phone no longer reads it from paper. */
export const mostInSquare = 1200;

export async function fetchBank(address: string): Promise<Bank> {
  const response = await fetch(address);
  if (!response.ok) throw new Error('The list of exercises could not be fetched. Are you online?');
  return (await response.json()) as Bank;
}

const lost = 'The link is not whole. Ask for it again, or for the file of the set.';

/**
 * The set in the part of the address after `#`; undefined when there is none. Never rejects. `kept` gives a set on
 * this device by the start of its hash, so that a short link opened before needs no network again.
 */
export async function setFromLink(
  hash: string,
  bank: string,
  kept: (start: string) => SetFile | undefined = () => undefined,
): Promise<Read<SetFile> | undefined> {
  const [, kind, packed = ''] = /^#(set|ids)=([A-Za-z0-9_-]+)/.exec(hash) ?? [];
  if (kind === undefined) return undefined;
  try {
    const bytes = fromBase64(packed);
    const text = bytes && textOf(await inflate(bytes, setLimits.characters));
    if (text === undefined) return { ok: false, reason: lost };
    if (kind === 'set') return setFromText(text);
    const parsed = parseUntrusted(text, { characters: 20_000, depth: 5 });
    if (!parsed.ok) return parsed;
    const start: unknown = Array.isArray(parsed.value) ? parsed.value[9] : undefined;
    const here = typeof start === 'string' && start.length === 24 ? kept(start) : undefined;
    return here ? { ok: true, value: here } : setFromShort(parsed.value, await fetchBank(bank));
  } catch (error) {
    const offline = error instanceof TypeError && kind === 'ids';
    return {
      ok: false,
      reason: offline
        ? 'A short link needs the network once. Go online, or ask for the file of the set.'
        : lost,
    };
  }
}

/** A set from the text of a file, kept as the file it was. */
export function setFromText(text: string): Read<SetFile> {
  const read = readSet(text);
  return read.ok ? { ok: true, value: JSON.parse(text.replace(/^\uFEFF/, '')) as SetFile } : read;
}

/** Saves a file from the page. */
export function saveFile(
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  type = 'application/json',
): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const anchor = document.createElement('a');
  anchor.href = url;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** A name for a file: letters and digits of the text, dashes between. */
export const fileName = (...parts: string[]): string =>
  parts
    .map((part) =>
      part
        .normalize('NFKD')
        .toLowerCase()
        .replace(/\p{M}/gu, '')
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '')
        .slice(0, 40),
    )
    .filter((part) => part !== '')
    .join('-') || 'set';

export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

export const today = (): string => {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
};
