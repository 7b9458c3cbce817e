/**
 * `npm run -s axe [-- part of an address [minutes]]`: axe over every built page, in the light, in the dark, at 320 px and
 * with text twice as large, beside the journeys, which take two pages of a kind. What was seen is kept in
 * `test-results/axe.txt`, so that a run that was broken off goes on where it was; take the file away to begin again.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { serveFolder } from '../../src/cli/static-server.ts';
import { dark, faultsIn, light, looks, open, woken, type Look } from './axe.ts';
import { findBrowser } from './browser.ts';
import { dist, pageKinds, pages } from './site.ts';

const [wanted = '', minutes = 'Infinity'] = process.argv.slice(2);
const until = performance.now() + 60_000 * Number(minutes);
const results = fileURLToPath(new URL('../../test-results/', import.meta.url));
mkdirSync(results, { recursive: true });
const kept = `${results}axe.txt`;
const seen = new Set(existsSync(kept) ? readFileSync(kept, 'utf8').trim().split('\n') : []);
const before = seen.size;
/** Colours of every page first, then the narrow looks, of one page of each kind before the rest. */
const kinds = pageKinds();
const others = pages.filter((path) => !kinds.includes(path));
const rounds = [
  [kinds, looks],
  [others, [light, dark]],
  [others, looks],
] as const;

const site = await serveFolder(dist, { base: '/' });
const browser = await chromium.launch(await findBrowser());
let found = 0;
let looked = 0;

async function lookAt(page: Page, path: string, left: readonly Look[]): Promise<void> {
  await page.setViewportSize(light.size);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.goto(site.address + path);
  await woken(page);
  await open(page);
  for (const look of left) {
    const faults = await faultsIn(page, look);
    looked += 1;
    found += faults.length;
    for (const fault of faults) console.log(`/${path}: ${fault}`);
    if (faults.length > 0) continue;
    seen.add(`${look.name} /${path}`);
    appendFileSync(kept, `${look.name} /${path}\n`);
  }
}

for (const [paths, taken] of rounds) {
  for (const path of paths.filter((each) => each.includes(wanted))) {
    const left = taken.filter(({ name }) => !seen.has(`${name} /${path}`));
    if (left.length === 0 || performance.now() > until) continue;
    // A page of its own for each, so that nothing kept by the last is met by the next.
    const context = await browser.newContext({ serviceWorkers: 'block' });
    await lookAt(await context.newPage(), path, left).catch((error: unknown) => {
      found += 1;
      console.log(`/${path}: was not looked at: ${String(error).slice(0, 200)}`);
    });
    await context.close();
  }
}
await browser.close();
await site.close();
console.log(`${looked} looks at ${pages.length} pages, ${before} looks before: ${found} violations.`);
process.exitCode = found > 0 ? 1 : 0;
