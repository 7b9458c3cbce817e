import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { base64, utf8 } from '../../calculators/exercises/sets/bytes.ts';
import { writeSet } from '../../calculators/exercises/sets/set-file.ts';
import { serveFolder, type Site } from '../../src/cli/static-server.ts';
import { writeOffline } from '../../src/offline/write.ts';
import { deflate } from '../../src/platform/deflate.ts';
import { draftOf, fileOf } from '../exercises/sets/course-bank.ts';
import { dist, expect, onDesk, test as base } from './site.ts';

/** A host that goes away is no trouble here; what the policy of the pages refuses is. */
const test = base.extend({
  trouble: async ({ page }, use) => {
    const refused: string[] = [];
    page.on('console', (message) => {
      if (
        /content security policy|refused/i.test(message.text()) &&
        !/ERR_CONNECTION_REFUSED/.test(message.text())
      )
        refused.push(message.text());
    });
    page.on('pageerror', (error) => {
      // The browser's own word on a page left while it was still fading in.
      if (!/^Transition was/.test(error.message)) refused.push(error.message);
    });
    await use(refused);
    expect(refused).toEqual([]);
  },
});

test.use({ serviceWorkers: 'allow' });
test.setTimeout(300_000);

/** The built site on a host of its own, which a journey may change and switch off. */
class Host {
  readonly folder = mkdtempSync(join(tmpdir(), 'host-'));
  site: Site | undefined;
  port = 0;
  readonly base = process.env['SITE_BASE'] ?? '/';

  async begin(): Promise<string> {
    if (this.port === 0) cpSync(dist, this.folder, { recursive: true });
    this.site = await serveFolder(this.folder, { base: this.base, port: this.port });
    this.port = Number(new URL(this.site.address).port);
    return this.site.address;
  }

  async off(): Promise<void> {
    await this.site?.close();
  }

  /** Puts a newer version of the front page there. */
  async renew(): Promise<void> {
    const file = join(this.folder, 'index.html');
    writeFileSync(file, readFileSync(file, 'utf8').replace('</main>', '<p id="new">Newer.</p></main>'));
    await writeOffline(this.folder);
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

let host: Host;
test.beforeEach(() => {
  host = new Host();
});
test.afterEach(async () => {
  await host.off();
  host.remove();
});

async function keepAll(page: Page, address: string): Promise<void> {
  await page.goto(`${address}offline/`);
  const press = page.getByRole('button', { name: /Keep the whole course, \d+ MB/ });
  await press.click();
  await expect(page.getByText('Kept on this device.')).toBeVisible({ timeout: 240_000 });
}

test('first visit, keep it, no signal, find by symbol, solve in inches, carry on, print', async ({
  page,
}) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', '');
  });
  const address = await host.begin();
  await keepAll(page, address);
  await host.off();
  await page.goto(`${address}find/`);
  await page.getByLabel('What are you looking for?').fill('V/A');
  await expect(page.locator('.found a').first()).toContainText('Modulus');
  await page.keyboard.press('Enter');
  await expect(page.locator('h1')).toContainText('Modulus');
  const field = page.locator('.calculator .entry input').first();
  const output = page.locator('.calculator output');
  await field.focus();
  await page.getByLabel('Units everywhere').selectOption('us');
  await expect(output).toContainText(/\bin$/);
  await field.fill('2');
  await field.blur();
  await page.getByRole('textbox', { name: /surface that cools/ }).fill('8');
  // Two cubic inches over eight square inches.
  await expect(output).toHaveText(/M = 0\.250? in/);
  await page.getByText('Use this in another card').click();
  await page.getByRole('link', { name: 'Freezing time by rule, from a test casting' }).click();
  await expect(page.locator('h1')).toContainText('Freezing time by rule');
  await expect(page.getByRole('textbox', { name: /^M modulus.*in$/ })).toHaveValue('0.25');
  await expect(output).toHaveText(/t = .*\d/);
  await page.goto(`${address}print/cards/`);
  await page.getByRole('checkbox', { name: /Freezing time by rule, from a test casting/ }).check();
  await page.getByRole('button', { name: 'Print' }).click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', '');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.paper-card:visible')).toHaveCount(1);
  await expect(page.locator('.paper-card:visible img')).toHaveAttribute(
    'alt',
    `Square code of ${address}formulas/freezing/time-rule/`,
  );
  await page.emulateMedia({ media: 'screen' });
  await page.goto(`${address}lessons/gates/`);
  await expect(page.locator('h1')).toHaveText('Gates');
  await page.goto(`${address}not-a-page/`);
  await expect(page.locator('h1')).toBeVisible();
});

test('installed, it starts from its start page in a window of its own, without a signal', async ({
  page,
}) => {
  const address = await host.begin();
  await keepAll(page, address);
  const session = await page.context().newCDPSession(page);
  const { url, data, errors } = await session.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data ?? '') as {
    start_url: string;
    scope: string;
    display: string;
    icons: { src: string; sizes: string; purpose?: string }[];
  };
  expect(manifest.display).toBe('standalone');
  const start = new URL(manifest.start_url, url).href;
  expect(start.startsWith(new URL(manifest.scope, url).href)).toBe(true);
  expect(new URL(manifest.scope, url).href).toBe(address);
  // What installing asks of icons: one of 192 and one of 512 pixels, and one that may be masked.
  expect(manifest.icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
  expect(manifest.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);
  await host.off();
  await session.send('Emulation.setEmulatedMedia', {
    features: [{ name: 'display-mode', value: 'standalone' }],
  });
  await page.goto(start);
  await expect(page.locator('h1')).toBeVisible();
  // With no bar of the browser round it, the way back has to be on the page.
  await page.getByRole('link', { name: 'Find', exact: true }).click();
  await expect(page.getByLabel('What are you looking for?')).toBeVisible();
  await page.goto(`${address}pour-day/`);
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Before you light anything');
  for (const { src } of manifest.icons)
    expect(await page.evaluate(async (icon) => (await fetch(icon)).ok, new URL(src, url).href)).toBe(true);
});

test('a newer version is offered, never forced, while a plan is open', async ({ page }) => {
  const address = await host.begin();
  await keepAll(page, address);
  await page.goto(`${address}plan/`);
  await expect(page.locator('.plan[data-awake="true"]')).toBeVisible();
  await host.renew();
  const name = page.getByLabel(/name/i).first();
  await name.fill('Kept through it');
  // Even a browser that looks for a newer worker at once leaves the open page alone.
  await page.evaluate(async () => {
    document.documentElement.setAttribute('data-same-page', '');
    await (await navigator.serviceWorker.getRegistration())?.update();
  });
  await page.waitForTimeout(1500);
  await expect(page.locator('html')).toHaveAttribute('data-same-page', '');
  await expect(name).toHaveValue('Kept through it');
  // An hour later.
  await page.evaluate(() => localStorage.removeItem('warm-mould:looked'));
  await page.goto(address);
  await expect(page.locator('#new')).toHaveCount(0);
  await expect(page.locator('#newer')).toBeVisible();
  await page.goto(`${address}offline/`);
  await page.getByRole('button', { name: /Fetch the newer version/ }).click();
  await expect(page.getByText('The whole course is on this device.')).toBeVisible({ timeout: 60_000 });
  await page.goto(address);
  await expect(page.locator('#new')).toBeVisible();
  await page.goto(`${address}plan/`);
  await expect(page.getByLabel(/name/i).first()).toHaveValue('Kept through it');
});

test('a full device is told so, and keeps what it had', async ({ page }) => {
  const address = await host.begin();
  await page.addInitScript(() => {
    let puts = 0;
    const put = Cache.prototype.put;
    Cache.prototype.put = function (...given) {
      puts += 1;
      return puts > 40
        ? Promise.reject(new DOMException('full', 'QuotaExceededError'))
        : put.apply(this, given);
    };
  });
  await page.goto(`${address}offline/`);
  await page.getByRole('button', { name: /Keep the whole course/ }).click();
  await expect(page.getByText('This device has not enough room.')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Not on this device yet.')).toBeVisible();
  expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
});

test('the switch on the host takes every kept copy away', { tag: onDesk }, async ({ page }) => {
  const address = await host.begin();
  await keepAll(page, address);
  await writeOffline(host.folder, { stop: true });
  await page.goto(address);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect
    .poll(() =>
      page.evaluate(async () => [
        (await navigator.serviceWorker.getRegistrations()).length,
        (await caches.keys()).length,
      ]),
    )
    .toEqual([0, 0]);
  await page.goto(address);
  await expect(page.locator('h1')).toBeVisible();
});

test('a half-fetched copy is taken up where it was', { tag: onDesk }, async ({ page }) => {
  const address = await host.begin();
  await page.goto(`${address}offline/`);
  await page.getByRole('button', { name: /Keep the whole course/ }).click();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('still to be fetched')).toBeVisible();
  await page.getByRole('button', { name: /Keep the whole course/ }).click();
  await expect(page.getByText('Kept on this device.')).toBeVisible({ timeout: 120_000 });
  await page.getByRole('button', { name: 'Remove from this device' }).click();
  await expect(page.getByText('Not on this device yet.')).toBeVisible();
});

test('a graded set opened once is done and handed in without a signal', { tag: onDesk }, async ({ page }) => {
  const address = await host.begin();
  await keepAll(page, address);
  const file = fileOf(draftOf(['mass-of-the-clapper', 'what-is-left']));
  const packed = base64(await deflate(utf8(writeSet(file))));
  const link = `${address}sets/do/#set=${packed}`;
  await page.goto(link);
  await page.getByLabel('Your name').fill('Ada Brook');
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.locator('#q-mass-of-the-clapper-answer').fill('17');
  await host.off();
  await page.goto('about:blank');
  // Again by the link, and once more by the list of sets on this device.
  await page.goto(link);
  await expect(page.getByLabel('Your name')).toHaveValue('Ada Brook');
  await page.goto('about:blank');
  await page.goto(`${address}sets/do/`);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.locator('#q-mass-of-the-clapper-answer')).toHaveValue('17');
  await page.locator('#q-mass-of-the-clapper-answer').fill('178 g');
  const wait = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Hand in', exact: true }).click();
  expect(readFileSync((await (await wait).path()) ?? '', 'utf8')).toContain('178 g');
  await expect(page.locator('.outcome')).toContainText('of 7 marks');
});
