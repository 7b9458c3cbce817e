import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, onDesk, test } from './site.ts';

const page0 = 'freeze/';
const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name }).first();
const freeze = (page: Page) => page.locator('.freeze');
const when = (page: Page) => page.locator('section[aria-labelledby="when"] .sentence');

async function open(page: Page, hash = ''): Promise<void> {
  await page.goto(`${page0}${hash}`);
  await solved(page);
}
const solved = (page: Page): Promise<void> =>
  expect(freeze(page)).toHaveAttribute('data-solved', 'true', { timeout: 45_000 });

/** Seconds that the first question is answered with. */
const answer = async (page: Page): Promise<number> =>
  Number((await when(page).locator('strong').textContent())?.split(/\s/)[0]);

test('a junction freezes last where the webs meet, and a warmer mould holds it longer', async ({ page }) => {
  await open(page);
  await expect(page.getByRole('heading', { level: 2 })).toContainText([
    'When did it freeze?',
    'Where last?',
    'Where is feeding poor?',
  ]);
  await expect(page.locator('section[aria-labelledby="where-last"]')).toContainText('0.3 mm from the middle');
  const cold = await answer(page);
  await field(page, /^Mould at the pour/).fill('400');
  await expect(freeze(page)).toHaveAttribute('data-solved', 'false');
  await solved(page);
  expect(await answer(page)).toBeGreaterThan(1.3 * cold);
});

test('what is put in is kept in the address and opens from it', async ({ page }) => {
  await open(page, '#freeze:shape=bar&diameter=6+mm&fine=4');
  const found = await answer(page);
  await field(page, /^Length/).fill('30');
  await solved(page);
  await expect(page).toHaveURL(/diameter=6.*length=30/);
  await page.reload();
  await solved(page);
  await expect(field(page, /^Length/)).toHaveValue('30');
  expect(await answer(page)).toBeGreaterThan(found);
});

test('bad input is told beside its field, and the answer from before stays', async ({ page }) => {
  await open(page, '#freeze:fine=4');
  const before = await when(page).textContent();
  await field(page, /^Thickness(?! of)/).fill('0');
  await expect(page.locator('[id="freeze-thickness-says"]')).toContainText('above nought');
  await expect(freeze(page)).toHaveAttribute('data-stale', 'true');
  await expect(when(page)).toHaveText(before ?? '');
  await field(page, /^Thickness(?! of)/).fill('4');
  await solved(page);
  await page.locator('summary', { hasText: /^Metal/ }).click();
  await field(page, /^Solidus/).fill('1100');
  await expect(page.locator('[id="freeze-metal.solidus-says"]')).toContainText('above the liquidus');
});

test('a billion cells are refused with what would fit, and nothing hangs', async ({ page }) => {
  await open(page, '#freeze:shape=block&fine=4');
  await field(page, /^Thickness(?! of)/).fill('0.01');
  await expect(page.locator('.state')).toContainText('would fit', { timeout: 20_000 });
  await expect(when(page)).toContainText('solid after');
});

test('a long sum shows how far it is and can be stopped', { tag: onDesk }, async ({ page }) => {
  await open(page, '#freeze:shape=square-boss&fine=4');
  await page.getByLabel('How fine').selectOption('16');
  await expect(page.getByRole('button', { name: 'Stop' })).toBeEnabled();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.locator('.state')).toContainText('Stopped');
  await expect(when(page)).toContainText('solid after');
});

test('a new question asked midway ends the one before, and an earlier answer stays till it is in', async ({
  page,
}) => {
  await open(page, '#freeze:shape=square-boss&fine=4');
  const before = await answer(page);
  await page.getByLabel('How fine').selectOption('16');
  await expect(page.getByRole('button', { name: 'Stop' })).toBeEnabled();
  await expect(when(page)).toContainText('solid after');
  await page.getByLabel('How fine').selectOption('4');
  await field(page, /^Height of the boss/).fill('9');
  // That of the one before, or what it had come to.
  expect(await when(page).textContent()).toContain('solid after');
  await expect(page).toHaveURL(/boss\.height=9/);
  await expect.poll(() => freeze(page).getAttribute('data-stale')).toBe('false');
  const after = await answer(page);
  expect(after).toBeGreaterThan(before);
  // What the long one might still have found is not taken for this one's.
  await page.reload();
  await solved(page);
  expect(await answer(page)).toBe(after);
});

test('left midway and come back to, or closed and opened again, it has what was put in and solves', async ({
  page,
  context,
}) => {
  await open(page, '#freeze:shape=square-boss&fine=4');
  await field(page, /^Width of the boss/).fill('9');
  await page.getByLabel('How fine').selectOption('16');
  await expect(page).toHaveURL(/fine=16/);
  await expect(page.getByRole('button', { name: 'Stop' })).toBeEnabled();
  const address = page.url();
  await page.goto('about/');
  await page.goBack();
  await expect(field(page, /^Width of the boss/)).toHaveValue('9');
  await expect(page.getByLabel('How fine')).toHaveValue('16');
  await expect(page.getByRole('button', { name: 'Stop' })).toBeEnabled({ timeout: 20_000 });
  // Closed while it solves, and opened again from the address it had.
  const other = await context.newPage();
  await page.close();
  await other.goto(address);
  await expect(field(other, /^Width of the boss/)).toHaveValue('9');
  await other.getByLabel('How fine').selectOption('4');
  await solved(other);
  await expect(when(other)).toContainText('solid after');
});

test('the probe goes by keys and by pointer, and play-back moves the time', async ({ page }) => {
  await open(page, '#freeze:shape=plate&fine=4');
  const map = page.locator('#map-when');
  const probe = page.locator('.probe');
  await expect(probe).toContainText('Last place');
  await map.focus();
  await page.keyboard.press('ArrowRight');
  await expect(probe).toContainText('Probe');
  const first = await probe.textContent();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  await expect(probe).not.toHaveText(first ?? '');
  await map.locator('canvas').click({ position: { x: 8, y: 8 } });
  await expect(probe).toContainText('mould');
  const time = page.getByRole('slider', { name: 'Time' });
  await time.focus();
  await page.keyboard.press('End');
  await expect(probe).toContainText(`after ${(await when(page).locator('strong').textContent()) ?? ''}`);
});

test('squared paper is drawn on by keys, and an empty sheet says so', async ({ page }) => {
  await open(page, '#freeze:shape=drawn&fine=4');
  const before = await answer(page);
  const paper = page.locator('.grid svg');
  await paper.focus();
  for (let n = 0; n < 3; n += 1) {
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Space');
  }
  await solved(page);
  await expect.poll(() => answer(page)).not.toBe(before);
  await page.getByRole('button', { name: 'Clear the paper' }).click();
  await expect(page.locator('.grid .wrong')).toContainText('No square is metal');
  await page.getByRole('button', { name: 'Undo' }).click();
  await solved(page);
});

test('numbers and pictures are saved', { tag: onDesk }, async ({ page }) => {
  await open(page, '#freeze:shape=bar&fine=4');
  const wait = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save numbers, CSV' }).click();
  const text = await readFile(await (await wait).path(), 'utf8');
  const rows = text
    .trim()
    .split('\r\n')
    .filter((line) => !line.startsWith('#'));
  expect(rows[0]).toContain('solid s');
  const last = Math.max(...rows.slice(1).map((row) => Number(row.split(',')[4])));
  expect(Math.abs(last / (await answer(page)) - 1)).toBeLessThan(0.01);
  const picture = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save pictures, PNG' }).click();
  const bytes = await readFile(await (await picture).path());
  expect(bytes.subarray(1, 4).toString()).toBe('PNG');
});

test('solved, drawn on and narrow, it has nothing axe objects to', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await open(page, '#freeze:shape=drawn&fine=4');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
});

test('without a script it says what it needs', { tag: onDesk }, async ({ browser, site }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${site.address}${page0}`);
  expect(await page.content()).toContain('needs scripts to be on');
  await expect(freeze(page)).toBeHidden();
  await context.close();
});
