import {
  keptFile,
  keptList,
  listName,
  missing,
  needed,
  readList,
  storeName,
  workerName,
  type FileList,
  type Kept,
  type Stopped,
} from './list.ts';

/** Where the site is, as a whole address with a slash at its end. */
export const scopeOf = (base: string): string => new URL(base, location.href).href;

export const canKeep = (): boolean => 'serviceWorker' in navigator && 'caches' in globalThis;

/** What this device keeps whole, or nothing. */
export async function kept(scope: string): Promise<Kept | undefined> {
  const cache = await caches.open(storeName(scope));
  const found = await cache.match(keptList(scope));
  return found ? ((await found.json()) as Kept) : undefined;
}

/** The list the host has now; nothing when there is no connection. */
export async function offered(scope: string): Promise<FileList | Stopped | undefined> {
  try {
    const answer = await fetch(`${scope}${listName}`, {
      cache: 'no-store',
      signal: AbortSignal.timeout(8000),
    });
    return answer.ok ? readList(await answer.json()) : undefined;
  } catch {
    return undefined;
  }
}

async function held(cache: Cache): Promise<ReadonlySet<string>> {
  return new Set((await cache.keys()).map(({ url }) => url.slice(url.lastIndexOf('/') + 1)));
}

/** Bytes still to be fetched for this list. */
export async function toFetch(scope: string, list: FileList): Promise<number> {
  const cache = await caches.open(storeName(scope));
  return missing(list, await held(cache)).reduce((sum, { bytes }) => sum + bytes, 0);
}

export type Outcome =
  { readonly ok: true } | { readonly ok: false; readonly why: 'full' | 'changed' | 'line' | 'stopped' };

interface Ways {
  readonly onBytes: (bytes: number) => void;
  readonly signal: AbortSignal;
}

const atOnce = 6;

/**
 * Fetches what is missing of a list, checks each file against its hash, and only then makes it the kept one.
 * Whatever goes wrong before that leaves the copy that was kept as it was.
 */
export async function keep(scope: string, list: FileList, { onBytes, signal }: Ways): Promise<Outcome> {
  const cache = await caches.open(storeName(scope));
  const queue = missing(list, await held(cache));
  let why: 'full' | 'changed' | 'line' | 'stopped' | undefined;
  const stopped = (): boolean => signal.aborted || why !== undefined;
  const work = async (): Promise<void> => {
    for (let next = queue.shift(); next && !stopped(); next = queue.shift()) {
      const { path, hash, bytes } = next;
      // The worker leaves such an address alone, and no cache on the way has it.
      const url = `${scope}${path.split('/').map(encodeURIComponent).join('/')}?fresh=${hash}`;
      const found = await fetched(url, path === '404.html', signal);
      if (!found) why ??= 'line';
      else if ((await hashOf(found.body)) !== hash) why ??= 'changed';
      else
        try {
          await cache.put(
            keptFile(scope, hash),
            new Response(found.body, { headers: { 'content-type': found.type } }),
          );
          onBytes(bytes);
        } catch {
          why ??= 'full';
        }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  const before = await kept(scope);
  if (signal.aborted) why ??= 'stopped';
  if (why !== undefined) {
    // A line that broke can be taken up where it was; a full device gets its room back.
    if (why === 'full') await sweep(cache, before ? needed(before.list, before.before) : new Set());
    return { ok: false, why };
  }
  const now: Kept = {
    list,
    since: new Date().toISOString(),
    ...(before && before.list.version !== list.version && { before: before.list.files }),
  };
  try {
    await cache.put(keptList(scope), new Response(JSON.stringify(now)));
    await navigator.serviceWorker.register(`${scope}${workerName}`, { scope });
    (await navigator.serviceWorker.ready).active?.postMessage('changed');
  } catch {
    return { ok: false, why: 'full' };
  }
  await sweep(cache, needed(list, now.before));
  return { ok: true };
}

async function fetched(
  url: string,
  lost: boolean,
  signal: AbortSignal,
): Promise<{ body: ArrayBuffer; type: string } | undefined> {
  for (let attempt = 0; attempt < 3; attempt += 1) {
    try {
      const answer = await fetch(url, { cache: 'no-cache', signal });
      const type = answer.headers.get('content-type') ?? 'application/octet-stream';
      if (answer.ok || lost) return { body: await answer.arrayBuffer(), type };
    } catch {
      if (signal.aborted) return undefined;
    }
  }
  return undefined;
}

async function hashOf(body: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', body));
  return btoa(String.fromCharCode(...digest))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .slice(0, 22);
}

async function sweep(cache: Cache, stay: ReadonlySet<string>): Promise<void> {
  for (const request of await cache.keys()) {
    const name = request.url.slice(request.url.lastIndexOf('/') + 1);
    if (name !== 'list.json' && !stay.has(name)) await cache.delete(request);
  }
}

/** Takes the kept copy and its worker away. */
export async function letGo(scope: string): Promise<void> {
  await caches.delete(storeName(scope));
  for (const registration of await navigator.serviceWorker.getRegistrations())
    if (registration.scope === scope) await registration.unregister();
}

/** Room on the device in bytes, where the browser says. */
export async function room(): Promise<number | undefined> {
  const { quota, usage } = (await navigator.storage?.estimate?.()) ?? {};
  return quota === undefined || usage === undefined ? undefined : quota - usage;
}
