/**
 * Serves the folder "site" beside this file on this machine only: `node serve.js`. It goes into the release, so
 * it is plain JavaScript over Node's own modules and needs no install.
 */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const site = fileURLToPath(new URL('./site/', import.meta.url));
const types = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** The file an address means, or undefined; nothing outside the folder. */
function fileOf(address) {
  let path;
  try {
    path = normalize(join(site, decodeURIComponent(new URL(address, 'http://here').pathname)));
  } catch {
    return undefined;
  }
  if (!path.startsWith(site.endsWith(sep) ? site : site + sep)) return undefined;
  const file = existsSync(path) && statSync(path).isDirectory() ? join(path, 'index.html') : path;
  return existsSync(file) && statSync(file).isFile() ? file : undefined;
}

const server = createServer((request, response) => {
  const file = fileOf(request.url ?? '/');
  const answer = file ?? join(site, '404.html');
  response.writeHead(file ? 200 : 404, {
    'content-type': types[extname(answer)] ?? 'application/octet-stream',
    'cache-control': 'no-cache',
  });
  if (request.method === 'HEAD' || !existsSync(answer)) response.end();
  else createReadStream(answer).pipe(response);
});

server.listen(Number(process.env.PORT ?? 4321), '127.0.0.1', () => {
  console.log(`Warm Mould is at http://localhost:${server.address().port}/\nStop it with Ctrl+C.`);
});
