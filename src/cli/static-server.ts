import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { gzipSync } from 'node:zlib';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
};

export interface Site {
  /** Where it is, with the base path and a slash at the end. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves a folder of built pages as a plain host would: folders by their `index.html`, the site's own 404
 * page, right media types. A port that is taken is passed over for a free one; 0 asks for any.
 */
export async function serveFolder(folder: string, { port = 0, base = '/' } = {}): Promise<Site> {
  const prefix = `/${base.split('/').filter(Boolean).join('/')}/`.replace('//', '/');
  const server = createServer((request, response) => {
    const address = new URL(request.url ?? '/', 'http://site');
    const packed = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
    answer(folder, prefix, address, { headOnly: request.method === 'HEAD', packed }, response);
  });
  const taken = await listen(server, port).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EADDRINUSE' && error.code !== 'EACCES') throw error;
    return listen(server, 0);
  });
  return {
    address: `http://localhost:${taken}${prefix}`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => {
      server.off('error', reject);
      const at = server.address();
      resolve(at !== null && typeof at === 'object' ? at.port : port);
    });
  });
}

/** What the request wants of the answer: its head alone, and whether it reads gzip. */
interface Wanted {
  readonly headOnly: boolean;
  readonly packed: boolean;
}

function answer(
  folder: string,
  prefix: string,
  address: URL,
  wanted: Wanted,
  response: ServerResponse,
): void {
  const path = decoded(address.pathname);
  if (path === undefined || !`${path}/`.startsWith(prefix)) {
    send(folder, 404, join(folder, '404.html'), wanted, response);
    return;
  }
  const file = normalize(join(folder, path.slice(prefix.length - 1)));
  const inside = file === normalize(folder) || file.startsWith(normalize(folder + sep));
  const isFolder = inside && existsSync(file) && statSync(file).isDirectory();
  if (isFolder && !path.endsWith('/')) {
    response.writeHead(301, { location: `${address.pathname}/${address.search}` }).end();
    return;
  }
  const asked = isFolder ? join(file, 'index.html') : file;
  const found = inside && existsSync(asked) && statSync(asked).isFile();
  send(folder, found ? 200 : 404, found ? asked : join(folder, '404.html'), wanted, response);
}

function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path);
  } catch {
    return undefined;
  }
}

/** Text shrinks to a quarter; pictures and fonts are packed already. */
const packable = new Set(['.html', '.css', '.js', '.json', '.svg', '.txt', '.webmanifest', '.xml']);

function send(
  folder: string,
  status: number,
  file: string,
  { headOnly, packed }: Wanted,
  response: ServerResponse,
): void {
  if (!existsSync(file)) {
    response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found.\n');
    return;
  }
  const lasting = file.startsWith(join(folder, '_astro'));
  const raw = readFileSync(file);
  const pack = packed && packable.has(extname(file));
  const body = pack ? gzipSync(raw) : raw;
  response.writeHead(status, {
    'content-type': types[extname(file)] ?? 'application/octet-stream',
    'content-length': body.length,
    'cache-control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache',
    vary: 'accept-encoding',
    ...(pack && { 'content-encoding': 'gzip' }),
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
  });
  response.end(headOnly ? undefined : body);
}
