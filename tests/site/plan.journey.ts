import { readFile } from 'node:fs/promises';
import { expect, onDesk, test } from './site.ts';
import type { Page } from '@playwright/test';

const head = (page: Page) => page.getByRole('textbox', { name: /^Head of metal above the gate/ }).first();
const suction = (page: Page) => page.getByRole('textbox', { name: /^Suction at the gauge/ }).first();
const decision = (page: Page, id: string) => page.locator(`[id="decision-${id}"]`);

async function open(page: Page, address = 'plan/'): Promise<void> {
  await page.goto(address);
  await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
}

test('the lamp shield is there to read without a script', async ({ browser, site }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(`${site.address}plan/`);
  await expect(decision(page, 'edge')).toContainText('kPa fills an edge');
  await expect(page.locator('noscript')).toHaveCount(1);
  await context.close();
});

test('taking the suction away fails the webs, and the plan says what would have to change', async ({
  page,
}) => {
  await open(page);
  await expect(decision(page, 'entry')).toHaveAttribute('data-verdict', 'holds');
  await suction(page).fill('0');
  await expect(decision(page, 'entry')).toHaveAttribute('data-verdict', 'fails');
  await expect(decision(page, 'entry').locator('.change li').first()).toContainText('instead of', {
    timeout: 20_000,
  });
  await expect(decision(page, 'entry').locator('.chance')).toContainText('of 100', { timeout: 30_000 });
});

test('a number typed while the trials of the last one run is answered at once', async ({ page }) => {
  await open(page);
  const gauge = decision(page, 'gauge');
  await suction(page).fill('20');
  await expect(gauge).toContainText('must read 20 kPa', { timeout: 20_000 });
  await suction(page).fill('12');
  await expect(gauge).toContainText('must read 12 kPa', { timeout: 20_000 });
  await expect(gauge.locator('.chance')).toContainText('of 100', { timeout: 30_000 });
});

test('nonsense in a field is told beside it, keeps the last good answer and loses nothing', async ({
  page,
}) => {
  await open(page);
  await head(page).fill('forty');
  const message = page.locator(
    `[id="${(await head(page).getAttribute('aria-describedby'))?.split(' ')[0] ?? ''}"]`,
  );
  await expect(message).toContainText('Start with a number');
  await expect(head(page)).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('.plan')).toHaveAttribute('data-stale', 'true');
  await expect(decision(page, 'edge')).toContainText('kPa fills an edge');
  await head(page).fill('80');
  await expect(page.locator('.plan')).toHaveAttribute('data-stale', 'false');
});

test('a plan survives a reload, is copied, deleted and brought back', async ({ page }) => {
  await open(page);
  await head(page).fill('77');
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield copy');
  await page.reload();
  await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield copy');
  await expect(head(page)).toHaveValue('77');
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield copy');
});

test(
  'two tabs see one shelf, and neither loses the other’s plan',
  { tag: onDesk },
  async ({ page, context }) => {
    test.setTimeout(120_000);
    await open(page);
    const other = await context.newPage();
    await open(other, page.url());
    await page.getByRole('button', { name: 'Copy', exact: true }).click();
    await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield copy');
    const kept = other.getByLabel('Open', { exact: true });
    await expect(kept.locator('option')).toHaveCount(2);
    await expect(other.getByLabel('Name', { exact: true })).toHaveValue('Lamp shield');
    await head(other).fill('77');
    await open(page);
    await expect(page.getByLabel('Open', { exact: true }).locator('option')).toHaveCount(2);
    await other.close();
  },
);

test('a link carries the plan, and a broken one says what it lost and keeps the rest', async ({ page }) => {
  await open(page, 'plan/#pour-plan:plan=Latch&head=90+mm&colour=red&suction.gauge=%E0%A4%A');
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Latch');
  await expect(head(page)).toHaveValue('90');
  const problems = page.getByRole('alert');
  await expect(problems).toContainText('colour');
  await expect(problems).toContainText('suction.gauge');
});

test('on a slow line, what is asked is asked of the plan in the address', async ({ page }) => {
  await page.route('**/_astro/*.js', async (route) => {
    await new Promise((ready) => setTimeout(ready, 400));
    await route.continue();
  });
  await open(page, 'plan/#pour-plan:plan=Latch&mould.permeability=0.5+AFS');
  await page.getByRole('button', { name: 'Follow the metal' }).click();
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Latch');
  await expect(page.locator('.ask-front').locator('li')).toHaveCount(3, { timeout: 20_000 });
});

test('plans on the device that cannot be read leave a sentence and a working page', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('warm-mould:plans:1', '{"plans": "all of them"'));
  await open(page);
  await expect(page.getByRole('alert')).toContainText('could not be read');
  await expect(decision(page, 'edge')).toContainText('kPa fills an edge');
});

test('an exported plan is what the command line and an import read', async ({ page }) => {
  await open(page);
  await head(page).fill('66');
  await page.getByLabel('Name', { exact: true }).fill('Window');
  const wait = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export file' }).click();
  const file = await (await wait).path();
  const plan = JSON.parse(await readFile(file, 'utf8')) as {
    format: string;
    name: string;
    inputs: Record<string, string>;
  };
  expect(plan).toMatchObject({ format: 'warm-mould-plan', version: 1, name: 'Window' });
  expect(plan.inputs['head']).toContain('66 mm');
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await expect(head(page)).toHaveValue('40');
  await page.locator('input[type=file]').setInputFiles(file);
  await expect(head(page)).toHaveValue('66');
});

test('the working of a decision opens by keyboard, with the equation and its numbers', async ({ page }) => {
  await open(page);
  const summary = decision(page, 'edge').locator('summary');
  await summary.focus();
  await page.keyboard.press('Enter');
  await expect(decision(page, 'edge').locator('.katex').first()).toBeVisible();
  await expect(decision(page, 'edge').locator('.numbers').first()).toContainText('/');
});

test('a plan prints on one sheet of A4', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print' }).click();
  await expect(page.locator('.qr')).toBeAttached();
  const pdf = await page.pdf({ format: 'A4' });
  const sheets = pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? [];
  expect(sheets).toHaveLength(1);
});

test('a number past its range still counts, with the reason the range ends', async ({ page }) => {
  await open(page);
  await head(page).fill('700');
  await expect(page.locator('.warning').filter({ hasText: 'no bench sprue is taller' })).toBeVisible();
  await expect(page.locator('.plan')).toHaveAttribute('data-stale', 'false');
});

test('the solver, asked, stands beside the quick sums and says why they differ', async ({ page }) => {
  await open(page);
  const solver = page.locator('.ask-solver', { hasText: 'Freezing, solved' });
  await solver.getByRole('button').click();
  await expect(solver.locator('li').first()).toContainText(/quick sum .* solved .*\./, { timeout: 30_000 });
  await expect(solver).not.toContainText('being solved', { timeout: 30_000 });
  await suction(page).fill('20');
  await expect(solver.locator('li')).toHaveCount(0);
});

test('the metal, followed from the gate, stands beside the quick sums and says why they differ', async ({
  page,
}) => {
  await open(page, 'plan/#pour-plan:mould.permeability=0.5+AFS');
  const front = page.locator('.ask-front');
  await front.getByRole('button', { name: 'Follow the metal' }).click();
  await expect(front.locator('li')).toHaveCount(3, { timeout: 30_000 });
  await expect(front.locator('li').first()).toContainText(
    /^Webs\. Quick sum: flows for .* Followed: full after .* less and less sand to leave by/,
  );
  await suction(page).fill('0');
  await expect(front.locator('li')).toHaveCount(0);
  await expect(decision(page, 'entry')).toHaveAttribute('data-verdict', 'fails');
  await front.getByRole('button').click();
  await expect(front.locator('li').first()).toContainText('does not enter', { timeout: 30_000 });
});

test('the plan, its sheet and its day follow the units of the shop, and what was typed stays', async ({
  page,
}) => {
  await open(page);
  const units = page.getByLabel('Units everywhere');
  const mould = page.getByRole('textbox', { name: /^Mould temperature/ }).first();
  await suction(page).fill('21');
  await expect(decision(page, 'gauge')).toContainText('must read 21 kPa');
  const verdicts = (): Promise<string[]> =>
    page
      .locator('.decision')
      .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['verdict']!));
  const [before, metric] = [await verdicts(), await mould.inputValue()];
  await units.selectOption('us');
  // 21 kPa is 6.20 inHg of 3.38639 kPa: NIST Special Publication 811, Appendix B.8.
  await expect(suction(page)).toHaveValue('6.2');
  await expect(decision(page, 'gauge')).toContainText('must read 6.20 inHg');
  await expect(decision(page, 'sand')).toContainText('psi');
  await expect(page.locator('.decision .why', { hasText: /\d.(?:°C|kPa|mm|g|kg)\b/ })).toHaveCount(0);
  await expect(page.locator('.figures .amount', { hasText: /\d.(?:°C|kPa|mm|g|kg)\b/ })).toHaveCount(0);
  expect(await verdicts()).toEqual(before);
  const fahrenheit = Number(await mould.inputValue());
  expect(((fahrenheit - 32) * 5) / 9).toBeCloseTo(Number(metric), 0);
  await mould.fill('160 C');
  await mould.blur();
  await expect(mould).toHaveValue('160');
  await page.reload();
  await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
  await expect(suction(page)).toHaveValue('6.2');
  await expect(mould).toHaveValue('160');
  await expect(page.getByLabel('unit of Mould temperature')).toHaveValue('°C');
  const kept = await page.evaluate(() => localStorage.getItem('warm-mould:plans:1'));
  expect(kept).toContain('21 kPa');
  expect(kept).toContain('~ inHg');
  expect(kept).toContain('160 °C');
  await expect(page.locator('.paper .found')).toContainText('°F');

  await page.goto('pour-day/');
  while ((await page.getByRole('heading', { level: 2 }).textContent()) !== 'What the gauge must show')
    await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.locator('.day-number')).toHaveText('6.20 inHg');
  await page.goto('log/');
  await expect(page.locator('.log')).toHaveAttribute('data-awake', 'true');
  await page.getByRole('button', { name: 'Write down a pour' }).click();
  await expect(page.getByLabel('Metal at the pour, °F')).toBeVisible();
  await expect(page.getByLabel('Suction at the gauge, inHg')).toBeVisible();

  await open(page);
  await units.selectOption('metric');
  await expect(suction(page)).toHaveValue('21');
  await expect(decision(page, 'gauge')).toContainText('must read 21 kPa');
});

test('a plan from an address keeps its units and values in any shop', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('warm-mould:units', 'us'));
  await open(page, 'plan/#pour-plan:plan=Rib&head=40+mm&suction.gauge=21');
  await expect(head(page)).toHaveValue('40');
  // Without a unit the address means the plan's own, kilopascals.
  await expect(suction(page)).toHaveValue('21');
  await expect(decision(page, 'gauge')).toContainText('must read 6.20 inHg');
  await expect(page.getByRole('textbox', { name: /^Mould temperature.*°F/ }).first()).toHaveValue('302');
});
