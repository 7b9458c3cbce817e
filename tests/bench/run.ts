/** `npm run bench`: runs every measurement beside this file. Nothing passes or fails on time. */
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const here = fileURLToPath(new URL('./', import.meta.url));

for (const file of readdirSync(here).filter((name) => name.endsWith('.bench.ts'))) {
  await import(here + file);
}
