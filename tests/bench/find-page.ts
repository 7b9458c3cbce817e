/**
 * `npm exec -- node tests/bench/find-page.ts` after a build: what a key of the search takes of the page's thread
 * in the browser of the journeys, drawing included, at full speed and under its six-fold slow-down. The same
 * wait without a key is taken off. No part of `npm run bench`, which needs no build and no browser.
 */
import { chromium } from '@playwright/test';
import { serveFolder } from '../../src/cli/static-server.ts';
import { findBrowser } from '../site/browser.ts';
import { findQueries } from '../site/find-queries.ts';

const folder = process.argv[2] ?? 'dist';
const keys = findQueries.flatMap(({ typed }) =>
  Array.from({ length: typed.length }, (_, at) => typed.slice(0, at + 1)).filter(
    (text) => text.length % 4 === 0 || text === typed,
  ),
);
const site = await serveFolder(folder, { base: '/' });
const browser = await chromium.launch(await findBrowser());
const page = await browser.newPage({ viewport: { width: 360, height: 780 }, reducedMotion: 'reduce' });
const devtools = await page.context().newCDPSession(page);
await page.goto(`${site.address}find/`);
await page.fill('#find-field', 'a');
await page.waitForSelector('.found a');
await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });

const spent = async (): Promise<Record<string, number>> => {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return Object.fromEntries(metrics.map(({ name, value }) => [name, 1000 * value]));
};
/** Types one text, waits for the frame that shows it, and says what the thread did meanwhile, in milliseconds. */
const key = async (text: string | undefined): Promise<Record<string, number>> => {
  const before = await spent();
  await page.evaluate(
    (typed) =>
      new Promise<void>((done) => {
        if (typed !== undefined) {
          const field = document.querySelector<HTMLInputElement>('#find-field')!;
          field.value = typed;
          field.dispatchEvent(new Event('input', { bubbles: true }));
        }
        requestAnimationFrame(() => requestAnimationFrame(() => done()));
      }),
    text,
  );
  const after = await spent();
  return Object.fromEntries(
    Object.entries(after).map(([name, value]) => [name, value - (before[name] ?? 0)]),
  );
};
const at = (costs: readonly number[], share: number): number =>
  costs.toSorted((a, b) => a - b)[Math.min(costs.length - 1, Math.floor(share * costs.length))] ?? NaN;
const three = (costs: readonly number[]): string =>
  `half below ${at(costs, 0.5).toFixed(1)} ms, 95 of 100 below ${at(costs, 0.95).toFixed(1)}, the dearest ${at(costs, 1).toFixed(1)}`;

console.log(`\nA key of the search in the browser, ${keys.length} keys`);
for (const rate of [1, 6]) {
  await devtools.send('Emulation.setCPUThrottlingRate', { rate });
  const idle: number[] = [];
  const all: number[] = [];
  const parts: Record<string, number[]> = { ScriptDuration: [], RecalcStyleDuration: [], LayoutDuration: [] };
  for (const text of keys) {
    const cost = await key(text);
    all.push(cost['TaskDuration']!);
    for (const [name, costs] of Object.entries(parts)) costs.push(cost[name]!);
    // The rows that are put off are drawn before the next key, and outside the sum.
    await page.waitForTimeout(300);
    idle.push((await key(undefined))['TaskDuration']!);
  }
  const wait = at(idle, 0.5);
  console.log(
    `  slowed ${rate} ×: ${three(all.map((cost) => cost - wait))} (the wait alone ${wait.toFixed(1)})`,
  );
  for (const [name, costs] of Object.entries(parts))
    console.log(`    ${name.replace('Duration', '').toLowerCase().padEnd(12)} ${three(costs)}`);
}
await browser.close();
await site.close();
