import type { Page } from '@playwright/test';
import { expect, test } from './site.ts';

const card = 'formulas/filling/velocity/';

/** The card's calculator, awake. */
async function open(page: Page, address = card): Promise<void> {
  await page.goto(address);
  await page.locator('.calculator').hover();
  await expect(page.locator('astro-island:not([ssr]) .calculator')).toBeVisible();
}

const field = (page: Page, name: RegExp) => page.getByRole('textbox', { name }).first();

test('a card solves for another symbol, and shows how', async ({ page }) => {
  await open(page);
  await page.getByLabel('Find').selectOption('h');
  await page.getByText('Show the working').click();
  // h = (v/C)²/(2g) − (Δp − p_cap)/(ρg): with v = 2 m/s, C = 1, Δp = p_cap = 0 it is 4/(2 × 9.80665) = 0.20394 m.
  await field(page, /speed of the metal/).fill('2');
  await field(page, /discharge coefficient/).fill('1');
  await field(page, /pressure above the metal/).fill('0');
  await field(page, /pressure needed to enter/).fill('0');
  await expect(page.locator('.calculator')).toContainText('204 mm');
});

test('a unit typed in the text moves to its place, and the value follows', async ({ page }) => {
  await open(page);
  const pressure = field(page, /pressure above the metal/);
  await pressure.fill('5 inHg');
  await pressure.blur();
  await expect(pressure).toHaveValue('5');
  // 5 inHg is 16.932 kPa; √(2 × (9.80665 × 0.04 + (16 932 − 2805)/7520)) × 0.7 = 1.492 m/s.
  await expect(page.locator('.calculator')).toContainText('1.49 m/s');
});

test('nonsense is refused beside the field, and the last answer stays, greyed', async ({ page }) => {
  await open(page);
  const head = field(page, /head of metal/);
  for (const [text, message] of [
    ['1,234', 'could be'],
    ['a lot', 'Start with a number'],
    ['40 kg', 'measures a mass'],
  ] as const) {
    await head.fill(text);
    await expect(head).toHaveAttribute('aria-invalid', 'true');
    await expect(page.locator('.calculator')).toContainText(message);
    await expect(page.locator('.calculator')).toContainText('1.40 m/s');
  }
});

test('a link carries the calculator’s state', async ({ page }) => {
  await open(page, `${card}#filling/velocity:find=v&h=100mm&dp=0kPa&p_cap=0kPa&C=1`);
  // √(2 × 9.80665 × 0.1) = 1.400 m/s.
  await expect(field(page, /head of metal/)).toHaveValue('100');
  await expect(page.locator('.calculator')).toContainText('1.40 m/s');
});

test('an answer that does not exist is explained, not shown as a number', async ({ page }) => {
  await open(page);
  await field(page, /pressure above the metal/).fill('0');
  await field(page, /head of metal/).fill('10');
  await expect(page.locator('.calculator')).toContainText('does not enter');
});

test('what is typed while the calculator still sleeps is not lost', async ({ page }) => {
  await page.goto(card);
  await field(page, /head of metal/).fill('100');
  // √(2 × (9.80665 × 0.1 + (15 000 − 2805)/7520)) × 0.7 = 1.597 m/s.
  await expect(page.locator('.calculator')).toContainText('1.60 m/s');
});

test('units chosen and fields filled before a slow script arrives are all kept', async ({ page }) => {
  await page.route('**/_astro/*.js', async (route) => {
    await new Promise((later) => setTimeout(later, 400));
    await route.continue();
  });
  await page.goto(card);
  await page.getByLabel('Units everywhere').selectOption('us');
  await field(page, /head of metal/).fill('100 mm');
  await field(page, /pressure above the metal/).fill('0 kPa');
  await field(page, /pressure needed to enter/).fill('0 kPa');
  await field(page, /discharge coefficient/).fill('1');
  // √(2 × 9.80665 × 0.1) = 1.4004 m/s, over 0.3048 is 4.595 ft/s.
  await expect(page.locator('.calculator')).toContainText('4.59 ft/s');
  await expect(field(page, /discharge coefficient/)).toHaveValue('1');
  await expect(field(page, /head of metal/)).toHaveValue(/^100/);
});

test('running through the list of symbols never puts one symbol’s value in another’s field', async ({
  page,
}) => {
  await page.goto(card);
  const list = page.getByLabel('Find');
  await list.focus();
  // Speed, discharge coefficient, head: on past the coefficient before anything is worked out.
  await list.selectOption('C');
  await list.selectOption('h');
  await expect(field(page, /discharge coefficient/)).toHaveValue('0.7');
  await field(page, /speed of the metal/).fill('2 m/s');
  // (2 / 0.7)² / (2 × 9.80665) − (15 000 − 2805) / (7520 × 9.80665) = 0.4162 − 0.1654 = 0.251 m.
  await expect(page.locator('.calculator')).toContainText('251 mm');
});
