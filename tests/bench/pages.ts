/**
 * `npm run -s bench:pages [-- part of an address]`, after a build: how soon a page of each kind is there on a cheap
 * phone with a poor line, in the packaged Chromium slowed down by its own protocol: processor four times, 150 ms to
 * the server and back, 1.6 Mbit a second. Each page is opened three times in a browser that holds nothing of it,
 * and the middle one counts. What is wanted are the bounds of “good” of the web’s core measures, from memory:
 * largest paint 2.5 s, shift 0.1; and 200 ms of blocking, its stand-in for the delay of a touch. Nothing passes or
 * fails on time.
 */
import { fileURLToPath } from 'node:url';
import { chromium, type Browser } from '@playwright/test';
import { serveFolder } from '../../src/cli/static-server.ts';
import { findBrowser } from '../site/browser.ts';
import { pageKinds } from '../site/site.ts';

const rounds = 3;
const line = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 };

interface Seen {
  readonly first: number;
  readonly largest: number;
  /** Of every task after the first paint, what it took beyond 50 ms. */
  readonly blocked: number;
  readonly shift: number;
  readonly kilobytes: number;
  readonly script: number;
  readonly elements: number;
}

/** Runs in the page before anything of it: keeps what the browser reports of paints, shifts and long tasks. */
function watch(): void {
  const kept = { largest: 0, shift: 0, tasks: [] as [number, number][] };
  Object.assign(globalThis, { watched: kept });
  const on = (type: string, use: (entry: PerformanceEntry) => void): void =>
    new PerformanceObserver((list) => list.getEntries().forEach(use)).observe({ type, buffered: true });
  on('largest-contentful-paint', ({ startTime }) => (kept.largest = startTime));
  on('layout-shift', (entry) => (kept.shift += (entry as PerformanceEntry & { value: number }).value));
  on('longtask', ({ startTime, duration }) => kept.tasks.push([startTime, duration]));
}

function seen(): Omit<Seen, 'kilobytes' | 'script'> {
  const { watched } = globalThis as unknown as {
    watched: { largest: number; shift: number; tasks: [number, number][] };
  };
  const first = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN;
  return {
    first,
    largest: watched.largest,
    blocked: watched.tasks
      .filter(([start, took]) => start + took > first)
      .reduce((sum, [, took]) => sum + took - 50, 0),
    shift: watched.shift,
    elements: document.getElementsByTagName('*').length,
  };
}

async function openedOnce(browser: Browser, address: string): Promise<Seen> {
  // A browser of its own for each, so that nothing is in its store; its worker would fetch the course beside the page.
  const context = await browser.newContext({
    viewport: { width: 360, height: 780 },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    await page.addInitScript(watch);
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', line);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    let bytes = 0;
    let script = 0;
    const scripts = new Set<string>();
    session.on('Network.responseReceived', ({ requestId, type }) => {
      if (type === 'Script') scripts.add(requestId);
    });
    session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
      bytes += encodedDataLength;
      if (scripts.has(requestId)) script += encodedDataLength;
    });
    await page.goto(address, { waitUntil: 'load' });
    // Islands wake when the browser is idle; what they do then is of the wait.
    await page.waitForTimeout(3500);
    return { ...(await page.evaluate(seen)), kilobytes: bytes / 1000, script: script / 1000 };
  } finally {
    await context.close();
  }
}

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

const [wanted = ''] = process.argv.slice(2);
const site = await serveFolder(fileURLToPath(new URL('../../dist', import.meta.url)), { base: '/' });
const { executablePath, args, env } = await findBrowser();
const browser = await chromium.launch({ executablePath, args, ...(env && { env }) });
console.log(
  '\nA page opened for the first time, a phone four times slower, 1.6 Mbit a second, the middle of three',
);
console.log(' first   largest  blocked   shift      all   script  elements');
console.log(' paint s paint s       ms              kB       kB');
for (const path of pageKinds().filter((one) => one.includes(wanted))) {
  const all: Seen[] = [];
  for (let round = 0; round < rounds; round += 1) all.push(await openedOnce(browser, site.address + path));
  const of = (name: keyof Seen, places: number, wide: number, by = 1): string =>
    (middle(all.map((one) => one[name])) / by).toFixed(places).padStart(wide);
  console.log(
    [
      of('first', 2, 6, 1000),
      of('largest', 2, 8, 1000),
      of('blocked', 0, 8),
      of('shift', 3, 8),
      of('kilobytes', 0, 8),
      of('script', 1, 8),
      of('elements', 0, 8),
      `  /${path}`,
    ].join(' '),
  );
}
await browser.close();
await site.close();
