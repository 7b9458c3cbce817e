/** Every file of one build: its path below the base, a hash of its content and its size in bytes. */
export interface FileList {
  /** A hash over all of it: two builds with one version are the same to the byte. */
  readonly version: string;
  /** The day it was built. */
  readonly built: string;
  readonly files: Readonly<Record<string, readonly [hash: string, bytes: number]>>;
  /** About what travels when the host packs its text. */
  readonly packed: number;
}

/** What a host answers with once the pages are to be kept on devices no more. */
export interface Stopped {
  readonly stop: true;
}

/** What a device keeps: the list it has whole, and the one before it for a page that is still open. */
export interface Kept {
  readonly list: FileList;
  readonly before?: FileList['files'];
  /** When it was fetched whole, as an ISO day. */
  readonly since: string;
}

export const listName = 'offline.json';
export const workerName = 'sw.js';

/** Of the cache that holds the files: one for each place the site is served from. */
export const storeName = (scope: string): string => `warm-mould:kept:${new URL(scope).pathname}`;
/** Where in the cache the list lies, and a file by its content. */
export const keptList = (scope: string): string => `${scope}__kept/list.json`;
export const keptFile = (scope: string, hash: string): string => `${scope}__kept/${hash}`;

/** The file a path of an address means: a folder is its index page. */
export function fileOf(path: string): string {
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
}

/** What has to be fetched to go from what is held to a list. */
export function missing(
  list: FileList,
  held: ReadonlySet<string>,
): { path: string; hash: string; bytes: number }[] {
  const wanted = new Set<string>();
  return Object.entries(list.files).flatMap(([path, [hash, bytes]]) => {
    if (held.has(hash) || wanted.has(hash)) return [];
    wanted.add(hash);
    return [{ path, hash, bytes }];
  });
}

/** Every hash that must stay: of the list, and of the one before it. */
export function needed(list: FileList, before: FileList['files'] = {}): ReadonlySet<string> {
  return new Set([...Object.values(list.files), ...Object.values(before)].map(([hash]) => hash));
}

/** A list as fetched, or the word to stop, or nothing when it is neither. */
export function readList(value: unknown): FileList | Stopped | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if ('stop' in value && value.stop === true) return { stop: true };
  const { version, files, packed, built } = value as Partial<FileList>;
  return typeof version === 'string' &&
    typeof built === 'string' &&
    typeof packed === 'number' &&
    typeof files === 'object' &&
    files !== null
    ? { version, built, files, packed }
    : undefined;
}

/** What the files take on a device: one that stands in two places is kept once. */
export const bytesOf = (list: FileList): number =>
  missing(list, new Set()).reduce((sum, { bytes }) => sum + bytes, 0);

/** `12 MB`, `850 kB`: never less than it is. */
export function printBytes(bytes: number): string {
  if (bytes >= 9.95e6) return `${Math.ceil(bytes / 1e6)} MB`;
  if (bytes >= 1e6) return `${(Math.ceil(bytes / 1e5) / 10).toFixed(1)} MB`;
  return `${Math.ceil(bytes / 1e3)} kB`;
}
