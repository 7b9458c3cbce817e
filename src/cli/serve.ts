/** `npm run serve`: serves `dist` on a free port and says where. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { serveFolder } from './static-server.ts';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

if (!existsSync(dist)) {
  console.error('There is no site to serve yet; run npm run build first.');
  process.exitCode = 1;
} else {
  const wish = Number(process.env['PORT'] ?? 4321);
  const site = await serveFolder(dist, { port: wish, base: process.env['SITE_BASE'] ?? '/' });
  console.log(`\nWarm Mould is at ${site.address}\nStop it with Ctrl+C.`);
}
