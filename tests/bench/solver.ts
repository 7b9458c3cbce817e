/**
 * `npm run -s bench:solver [-- pages]`, after a build: how long the worker of the freezing page takes in the packaged
 * Chromium for 281,600 cells, from a fresh page and again on the same page, and how long the page stands still
 * meanwhile. The worker is asked as the page asks it: told that cubes will come, and asked half a second later.
 * It tries one worker and two and stays with the faster.
 */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser } from '@playwright/test';
import { serveFolder } from '../../src/cli/static-server.ts';
import type { Part, Reply } from '../../src/workers/conduction-work.ts';
import { bronze, chill, sand } from '../models/conduction/ways.ts';
import { findBrowser } from '../site/browser.ts';
import { voxelsOf } from './plate-with-boss.ts';

const partWith = (wide: number): Part => ({
  shape: { kind: 'voxels', voxels: voxelsOf(0.0005, wide) },
  metal: bronze,
  others: [sand, chill],
  start: [1373.15, 293.15, 293.15],
  most: 1e6,
  frames: 48,
});

interface Seen {
  /** From asking, ms: the first picture, the coarse answer, the fine one; and what the fine pass took of it. */
  readonly picture: number;
  readonly coarse: number;
  readonly fine: number;
  readonly pass: number;
  /** The longest the page had no turn, ms. */
  readonly still: number;
}

/** Runs in the page: asks a worker of its own five times. */
async function ask([address, part]: [string, Part]): Promise<Seen[]> {
  const worker = new Worker(address, { type: 'module' });
  const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
  worker.postMessage({ soon: 'cubes' });
  await wait(500);
  const all: Seen[] = [];
  for (let asked = 1; asked <= 5; asked += 1) {
    let still = 0;
    let last = performance.now();
    const beat = new MessageChannel();
    beat.port1.onmessage = () => {
      const now = performance.now();
      still = Math.max(still, now - last);
      last = now;
      setTimeout(() => beat.port2.postMessage(0), 0);
    };
    beat.port2.postMessage(0);
    const began = performance.now();
    const seen = await new Promise<Seen>((resolve, reject) => {
      let [picture, coarse] = [Number.NaN, Number.NaN];
      worker.onmessage = ({ data }: MessageEvent<Reply>) => {
        const now = performance.now() - began;
        if (data.kind === 'refused') reject(new Error(data.why));
        if (data.kind === 'going' && Number.isNaN(picture)) picture = now;
        if (data.kind !== 'frozen') return;
        if (Number.isNaN(picture)) picture = now;
        if (data.done) resolve({ picture, coarse, fine: now, pass: data.took, still });
        else coarse = now;
      };
      worker.postMessage({ asked, part });
    });
    beat.port1.close();
    all.push(seen);
    await wait(200);
  }
  worker.terminate();
  return all;
}

async function freshPage(browser: Browser, address: string, script: string, part: Part): Promise<Seen[]> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.goto(address);
    return await page.evaluate(ask, [script, part] as [string, Part]);
  } finally {
    await context.close();
  }
}

const pages = Number(process.argv[2] ?? 4);
const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const name = readdirSync(join(dist, '_astro')).find((file) => /^conduction-(?!three).*\.js$/.test(file));
if (name === undefined) throw new Error('There is no built solver; run npm run build first.');
const site = await serveFolder(dist, { base: '/' });
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args, ...(env && { env }) });
for (const wide of [0.008, 0.018]) {
  console.log(
    `\n281,600 cells, boss of ${1000 * wide} mm, ms after asking; the first row of a page is a fresh worker's`,
  );
  console.log(' page  asked  first picture  coarse answer  fine answer  its pass  page stood still');
  for (let n = 1; n <= pages; n += 1) {
    const seen = await freshPage(browser, `${site.address}hosting/`, `/_astro/${name}`, partWith(wide));
    for (const [asked, { picture, coarse, fine, pass, still }] of seen.entries())
      console.log(
        [n, asked + 1].map((value) => String(value).padStart(5)).join('  ') +
          [picture, coarse, fine, pass, still].map((value) => value.toFixed(0).padStart(13)).join(''),
      );
  }
}
await browser.close();
await site.close();
