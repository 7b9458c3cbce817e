import { fileOf, keptFile, keptList, storeName, type Kept } from './list.ts';

/** The parts of a service worker's world that are used here; the library of the page does not have them. */
interface Lasting extends Event {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface Asking extends Lasting {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}
interface Worker {
  readonly registration: { readonly scope: string; readonly unregister: () => Promise<boolean> };
  readonly clients: { readonly claim: () => Promise<void> };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: ((kind: 'install' | 'activate', act: (event: Lasting) => void) => void) &
    ((kind: 'fetch', act: (event: Asking) => void) => void) &
    ((kind: 'message', act: (event: MessageEvent) => void) => void);
}

/** Set when the site is built to be kept no more: the worker that comes with it removes everything and itself. */
declare const STOP: boolean;

const worker = self as unknown as Worker;
const { scope } = worker.registration;
const base = new URL(scope).pathname;
/** A copy older than this is second choice while there is a connection. */
const oldAfterDays = 120;
const patience = 4000;

let memory: Promise<Kept | undefined> | undefined;

async function readKept(): Promise<Kept | undefined> {
  const cache = await caches.open(storeName(scope));
  const found = await cache.match(keptList(scope));
  return found ? ((await found.json()) as Kept) : undefined;
}

async function fromKept(kept: Kept, path: string): Promise<Response | undefined> {
  const file = fileOf(path);
  const hash = (kept.list.files[file] ?? kept.before?.[file])?.[0];
  if (hash === undefined) return undefined;
  const cache = await caches.open(storeName(scope));
  return cache.match(keptFile(scope, hash));
}

const isOld = ({ since }: Kept): boolean => Date.now() - Date.parse(since) > oldAfterDays * 86_400_000;

async function answer(request: Request, path: string): Promise<Response> {
  memory ??= readKept();
  const kept = await memory.catch(() => undefined);
  if (!kept) return fetch(request);
  const page = request.mode === 'navigate';
  if (page && isOld(kept)) {
    const fresh = await fetch(request, { signal: AbortSignal.timeout(patience) }).catch(() => undefined);
    if (fresh?.ok === true) return fresh;
  }
  const found = await fromKept(kept, path);
  if (found) return found;
  if (page && kept.list.files[`${path}/index.html`]) return Response.redirect(`${scope}${path}/`, 301);
  try {
    return await fetch(request);
  } catch (error) {
    const lost = page ? await fromKept(kept, '404.html') : undefined;
    if (!lost) throw error;
    return new Response(lost.body, { status: 404, headers: lost.headers });
  }
}

async function removeAll(): Promise<void> {
  for (const name of await caches.keys()) if (name === storeName(scope)) await caches.delete(name);
  await worker.registration.unregister();
}

// The worker is the same for every version of the pages: which version is served is in the list that is kept.
worker.addEventListener('install', (event) => event.waitUntil(worker.skipWaiting()));
worker.addEventListener('activate', (event) => event.waitUntil(STOP ? removeAll() : worker.clients.claim()));
worker.addEventListener('message', () => {
  memory = undefined;
});
if (!STOP)
  worker.addEventListener('fetch', (event) => {
    const { request } = event;
    const url = new URL(request.url);
    if (request.method !== 'GET' || request.headers.has('range') || !url.href.startsWith(scope)) return;
    const path = decodeURIComponent(url.pathname.slice(base.length));
    if (path === 'offline.json' || path === 'sw.js' || url.search.startsWith('?fresh=')) return;
    event.respondWith(answer(request, path));
  });
