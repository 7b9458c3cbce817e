import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { listName, workerName, type FileList, type Stopped } from './list.ts';

/** Pictures for the file on the host's front page; no page shows them. */
const leftOut = (path: string): boolean =>
  path === listName || path === workerName || path.startsWith('tour/') || path.endsWith('.map');
const packs = new Set(['.html', '.css', '.js', '.json', '.svg', '.webmanifest', '.txt', '.wasm']);

/** The list of every file under a built folder. */
export function listFiles(folder: string, built: string): FileList {
  const all = createHash('sha256');
  let packed = 0;
  const files: Record<string, [string, number]> = {};
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.split(sep).join('/'))
    .sort()) {
    const file = join(folder, path);
    if (leftOut(path) || !statSync(file).isFile()) continue;
    const bytes = readFileSync(file);
    const hash = createHash('sha256').update(bytes).digest('base64url').slice(0, 22);
    files[path] = [hash, bytes.length];
    all.update(`${path} ${hash}\n`);
    packed += packs.has(extname(path)) ? gzipSync(bytes, { level: 5 }).length : bytes.length;
  }
  return { version: all.digest('base64url').slice(0, 12), built, files, packed };
}

/** Writes the list and the worker into a built folder; with `stop`, those that take every kept copy away. */
export async function writeOffline(
  folder: string,
  { stop = false, built = new Date().toISOString().slice(0, 10) } = {},
): Promise<void> {
  const list: FileList | Stopped = stop ? { stop } : listFiles(folder, built);
  writeFileSync(join(folder, listName), JSON.stringify(list));
  await build({
    configFile: false,
    root: fileURLToPath(new URL('.', import.meta.url)),
    publicDir: false,
    logLevel: 'error',
    define: { STOP: String(stop) },
    build: {
      outDir: folder,
      emptyOutDir: false,
      copyPublicDir: false,
      lib: {
        entry: fileURLToPath(new URL('worker.ts', import.meta.url)),
        formats: ['iife'],
        name: 'kept',
        fileName: () => workerName,
      },
    },
  });
}
