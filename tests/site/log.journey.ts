import { readFile } from 'node:fs/promises';
import { expect, onDesk, test } from './site.ts';
import type { Page } from '@playwright/test';

async function open(page: Page): Promise<void> {
  await page.goto('log/');
  await expect(page.locator('.log')).toHaveAttribute('data-awake', 'true');
}

async function write(page: Page, name: string, casting: string): Promise<void> {
  await page.getByRole('button', { name: 'Write down a pour' }).click();
  await page.getByLabel('Part', { exact: true }).fill(name);
  await page.getByLabel('Charge weighed out, g').fill('120');
  await page.getByLabel('Casting, g').fill(casting);
  await page.getByLabel('All other metal, g').fill('70');
  await page.getByLabel('Section', { exact: true }).fill('Rim');
  await page.getByLabel('It was').selectOption('part');
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await expect(page.locator('.pours')).toContainText(name);
}

/** A pour is shown at once and kept a moment later, and only then said to be. */
const keptOnDevice = (page: Page) => expect(page.getByRole('status').first()).toContainText('is kept');

test('a pour is written down, survives a reload, is changed, taken away and brought back', async ({
  page,
}) => {
  await open(page);
  await write(page, 'Hinge', '48,2');
  await keptOnDevice(page);
  await page.reload();
  await expect(page.locator('.pours')).toContainText('Hinge');
  await expect(page.locator('.pours')).toContainText('casting 48.2 g');
  await expect(page.locator('.pours')).toContainText('Rim filled in part');
  await page.getByRole('button', { name: /^Change/ }).click();
  await page.getByLabel('Casting, g').fill('47');
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await expect(page.locator('.pours')).toContainText('casting 47 g');
  await page.getByRole('button', { name: /^Take away/ }).click();
  await expect(page.locator('.pours li')).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.pours')).toContainText('Hinge');
});

test('more metal back than was weighed out is asked about', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Write down a pour' }).click();
  await page.getByLabel('Part', { exact: true }).fill('Hinge');
  await page.getByLabel('Charge weighed out, g').fill('12');
  await page.getByLabel('Casting, g').fill('48');
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await expect(page.getByRole('alert')).toContainText('More metal came back');
});

test('the mill’s log is marked as invented and teaches its three numbers', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Show the mill’s log' }).click();
  await expect(page.locator('.pours li')).toHaveCount(14);
  await expect(page.locator('.pours li').first()).toContainText('invented');
  await expect(page.locator('.learned')).toContainText('s/mm²');
  await expect(page.locator('.learned')).toContainText('would teach most');
  await expect(page.locator('.learned')).toContainText('of the charge');
  for (const [button, says] of [
    ['Use this loss in the open plan', 'your own loss'],
    ['Use this margin in the open plan', 'your own fill factor'],
    ['Use this constant in the open plan', 'your own mould constant'],
  ] as const) {
    await page.getByRole('button', { name: button }).click();
    await expect(page.getByRole('status').first()).toContainText(`now reckons with ${says}`);
  }
  await page.getByRole('button', { name: 'Take the mill’s log away' }).click();
  await expect(page.locator('.pours li')).toHaveCount(0);
  await page.goto(page.url().replace(/log\/.*$/, 'plan/'));
  await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
  await expect(page.locator('.plan .decisions')).toContainText('by the book', { timeout: 30_000 });
});

test(
  'an exported log comes back, and a copy changed elsewhere is shown beside the one here',
  { tag: onDesk },
  async ({ page }, info) => {
    await open(page);
    await write(page, 'Hinge', '48');
    const wait = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    const text = await readFile((await (await wait).path())!, 'utf8');
    const log = JSON.parse(text) as { pours: { marks: string[]; found: { casting: number } }[] };
    log.pours[0]!.marks.push('elsewhere');
    log.pours[0]!.found.casting = 0.031;
    await page.getByRole('button', { name: /^Change/ }).click();
    await page.getByLabel('Casting, g').fill('47');
    await page.getByRole('button', { name: 'Keep this pour' }).click();
    await expect(page.locator('.pours')).toContainText('casting 47 g');
    await page.locator('input[type=file][accept*=json]').setInputFiles({
      name: 'pours.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(log)),
    });
    await expect(page.locator('.conflict')).toContainText('casting 31 g');
    await page.getByRole('button', { name: 'Take the file’s' }).click();
    await expect(page.locator('.pours')).toContainText('casting 31 g');
    expect(info.errors).toEqual([]);
  },
);

test('two tabs see one log', { tag: onDesk }, async ({ page, context }) => {
  await open(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(other.locator('.log')).toHaveAttribute('data-awake', 'true');
  await write(page, 'Hinge', '48');
  await expect(other.locator('.pours')).toContainText('Hinge');
  await other.close();
});

test('a plan of this device lends its sections and what it predicted', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Write down a pour' }).click();
  await page.getByLabel('Take a plan of this device').selectOption('0');
  await expect(page.getByLabel('Part', { exact: true })).toHaveValue('Lamp shield');
  await expect(page.getByRole('group', { name: 'Webs' })).toBeVisible();
  await expect(page.getByRole('group', { name: 'Webs' }).getByLabel('Margin planned')).not.toHaveValue('');
});

/** Writing to the store fails from the n-th time on, as it does when a device is full. */
const fullAfter = (page: Page, times: number, error: string): Promise<void> =>
  page.evaluate(
    ([from, name]) => {
      const own = Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, 'put')!;
      const put = own.value as (this: IDBObjectStore, value: unknown) => IDBRequest<IDBValidKey>;
      let done = 0;
      Object.assign(window, {
        roomAgain: () => Object.defineProperty(IDBObjectStore.prototype, 'put', own),
      });
      Object.defineProperty(IDBObjectStore.prototype, 'put', {
        ...own,
        value: function (this: IDBObjectStore, value: unknown) {
          done += 1;
          if (done > from) throw new DOMException('', name);
          return put.call(this, value);
        },
      });
    },
    [times, error] as const,
  );
const roomAgain = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as { roomAgain: () => void }).roomAgain());

test(
  'a full device: said, what was written stays in hand and is kept when there is room',
  { tag: onDesk },
  async ({ page }) => {
    await open(page);
    await fullAfter(page, 0, 'QuotaExceededError');
    await write(page, 'Hinge', '48');
    await expect(page.getByRole('alert')).toContainText('not enough room');
    await expect(page.getByRole('status').first()).toHaveText('');
    // Another tab's change makes this one read the store again; what is in hand stays.
    await page.evaluate(() => new BroadcastChannel('warm-mould:pours').postMessage('changed'));
    await expect(page.locator('.pours')).toContainText('Hinge');
    await roomAgain(page);
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(page.getByRole('alert')).toHaveCount(0);
    await page.reload();
    await expect(page.locator('.pours')).toContainText('Hinge');
  },
);

test('a write broken off in the middle leaves all as it was', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await write(page, 'Hinge', '48');
  await fullAfter(page, 2, 'UnknownError');
  await page.getByRole('button', { name: 'Export', exact: true }).waitFor();
  const pour = (n: number) => ({
    id: `new-${n}`,
    day: `2026-02-0${n}`,
    plan: { name: `Part ${n}`, inputs: {} },
    predicted: {},
    did: {},
    found: { sections: [], defects: [], note: '', photos: [] },
    marks: [`m${n}`],
  });
  await page.locator('input[type=file][accept*=json]').setInputFiles({
    name: 'pours.json',
    mimeType: 'application/json',
    buffer: Buffer.from(
      JSON.stringify({ format: 'warm-mould-pours', version: 1, pours: [1, 2, 3, 4].map(pour) }),
    ),
  });
  await expect(page.getByRole('alert')).toContainText('keeps nothing');
  page.on('dialog', (dialog) => void dialog.accept());
  await page.reload();
  await expect(page.locator('.pours li')).toHaveCount(1);
  await expect(page.locator('.pours')).toContainText('Hinge');
});

test(
  'two tabs change one pour: both copies are shown, and the one chosen stands in both',
  { tag: onDesk },
  async ({ page, context }) => {
    await open(page);
    await write(page, 'Hinge', '48');
    const other = await context.newPage();
    await other.goto(page.url());
    await other.getByRole('button', { name: /^Change/ }).click();
    await other.getByLabel('Casting, g').fill('31');
    await page.getByRole('button', { name: /^Change/ }).click();
    await page.getByLabel('Casting, g').fill('47');
    await page.getByRole('button', { name: 'Keep this pour' }).click();
    await expect(page.locator('.pours')).toContainText('casting 47 g');
    await other.getByRole('button', { name: 'Keep this pour' }).click();
    await expect(other.locator('.conflict')).toContainText('casting 31 g');
    await expect(other.locator('.conflict')).toContainText('casting 47 g');
    await expect(page.locator('.pours')).toContainText('casting 47 g');
    await other.getByRole('button', { name: 'Take what you wrote' }).click();
    await expect(other.locator('.pours')).toContainText('casting 31 g');
    await expect(page.locator('.pours')).toContainText('casting 31 g');
    await other.close();
  },
);

test('an older copy of all that is kept does not undo a newer pour', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await write(page, 'Hinge', '48');
  await keptOnDevice(page);
  await page.goto(page.url().replace(/log\/.*$/, 'exercises/#keep'));
  const wait = page.waitForEvent('download');
  await page.getByRole('button', { name: /^Save/ }).first().click();
  const backup = await readFile((await (await wait).path())!, 'utf8');
  await open(page);
  await page.getByRole('button', { name: /^Change/ }).click();
  await page.getByLabel('Casting, g').fill('47');
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await keptOnDevice(page);
  await page.goto(page.url().replace(/log\/.*$/, 'exercises/#keep'));
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'backup.json',
      mimeType: 'application/json',
      buffer: Buffer.from(backup),
    });
  await expect(page.locator('body')).toContainText('Newer on this device');
  await open(page);
  await expect(page.locator('.pours')).toContainText('casting 47 g');
});
