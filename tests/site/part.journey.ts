import { expect, onDesk, test } from './site.ts';
import type { Page } from '@playwright/test';

test.setTimeout(150_000);

async function open(page: Page): Promise<void> {
  await page.goto('part/');
  await expect(page.locator('.part')).toHaveAttribute('data-awake', 'true');
}

const ready = (page: Page) =>
  expect(page.locator('.part')).toHaveAttribute('data-ready', 'true', { timeout: 90_000 });

const fittings = [
  ['Lamp shield', /46\.9\sg/, '1.4 mm thick'],
  ['Latch keeper', /11\d(?:\.\d)?\sg/, '10 mm thick'],
  ['Letter seal', /19\.\d+\sg/, '1.2 mm thick'],
  ['Index pointer', /10\.\d+\sg/, '2.5 mm thick'],
] as const;

for (const [name, mass, section] of fittings)
  test(
    `the ${name.toLowerCase()} of the mill goes from its file to a plan`,
    { tag: onDesk },
    async ({ page }) => {
      await open(page);
      await page.getByRole('button', { name }).click();
      await ready(page);
      await expect(page.getByRole('status').first()).toContainText('of metal');
      await expect(page.locator('.numbers')).toContainText(mass);
      await expect(page.locator('table').last()).toContainText(section);
      await page.getByRole('button', { name: 'Plan this part' }).click();
      await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
      await expect(page.getByLabel('Name', { exact: true })).toHaveValue(new RegExp(`^${name}`));
      await expect(page.locator('.plan')).toHaveAttribute('data-stale', 'false');
      await expect(page.locator('.plan .decision').first()).toBeVisible();
      // Every row is one the plan could read, and the plan speaks of it.
      await expect(page.locator('.plan [aria-invalid="true"]')).toHaveCount(0);
      await expect(page.locator('.plan .decisions')).toContainText(section, { timeout: 20_000 });
    },
  );

test(
  'in a US shop a part is told and asked in inches, ounces and Fahrenheit',
  { tag: onDesk },
  async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem('warm-mould:units', 'us'));
    await open(page);
    await page.getByRole('button', { name: 'Lamp shield' }).click();
    await ready(page);
    // 46.9 g over 28.3495 g in an ounce.
    await expect(page.locator('.numbers')).toContainText(/1\.65[2-6]\soz/);
    for (const told of ['.numbers', '.answer', '.cut', 'table', 'section[aria-labelledby=solid]'])
      for (const one of await page.locator(`.part ${told}`).all())
        await expect(one).not.toContainText(/\d\s(mm|cm|g|°C)/);
    await expect(page.locator('table').last()).toContainText('0.055 in thick');
    const side = page.getByLabel('Side of the square gate, in');
    await expect(side).toHaveValue('0.197');
    await side.fill('4 mm');
    await side.press('Tab');
    await ready(page);
    await side.fill('500');
    await expect(
      page.getByText('A length is a number above 0 and up to 3.94 in. It stays 4 mm.'),
    ).toBeVisible();
    await expect(page.getByLabel('Mould at the pour, °F')).toHaveValue('302');
  },
);

test('the gate is put by the keyboard, and the run follows', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Index pointer' }).click();
  await ready(page);
  await page.getByRole('button', { name: 'How far must the metal run?' }).click();
  const answer = page.locator('.answer');
  const before = await answer.textContent();
  const stage = page.getByRole('application');
  await expect(stage.locator('.mark').first()).toBeAttached();
  await stage.focus();
  // From the hub to a place along the blade.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await expect(answer).not.toHaveText(before ?? '');
  await ready(page);
});

test('a file that is no part is answered with a sentence, and the next one still read', async ({ page }) => {
  await open(page);
  const input = page.locator('input[type=file]');
  await input.setInputFiles({ name: 'notes.stl', mimeType: 'text/plain', buffer: Buffer.from('hello') });
  await expect(page.getByRole('alert')).toContainText('could not be read');
  await input.setInputFiles({
    name: 'two.obj',
    mimeType: 'text/plain',
    buffer: Buffer.from('v 0 0 0\nv 30 0 0\nv 0 30 0\nv 0 0 30\nf 1 3 2\nf 1 2 4\nf 2 3 4\n'),
  });
  await ready(page);
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(page.locator('.part')).toContainText('1 hole');
  await expect(page.locator('.numbers')).toContainText('4.5');
});

test('the part prints its four views', { tag: onDesk }, async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Latch keeper' }).click();
  await ready(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.four figure:visible')).toHaveCount(4);
});

test(
  'gate and button are added as metal, the solver says when all is solid, and the plan weighs them',
  {
    tag: onDesk,
  },
  async ({ page }) => {
    test.setTimeout(480_000);
    await open(page);
    await page.getByRole('button', { name: 'Index pointer' }).click();
    await ready(page);
    await page.getByLabel('Cells').selectOption('quick');
    await ready(page);
    await page.getByLabel('Also metal').selectOption('button');
    await expect(page.getByText(/^Gate and button add 1\.95\scm³/)).toBeVisible({ timeout: 150_000 });
    await ready(page);
    await page.getByRole('button', { name: 'Where does it freeze last?' }).click();
    await expect(page.locator('.answer li').first()).toContainText('in the button');
    await page.getByRole('button', { name: 'Follow the heat' }).click();
    const solid = page.locator('section[aria-labelledby=solid]');
    await expect(solid).toContainText('All of it is solid after', { timeout: 200_000 });
    await expect(solid).toContainText('By modulus the last is');
    await expect(solid.locator('tbody tr').first()).toContainText('in the button');
    await page.getByRole('button', { name: 'Show it in the drawing' }).click();
    await expect(page.getByRole('button', { name: 'When is it solid?' })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await page.getByRole('button', { name: 'Plan this part' }).click();
    await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
    const kept = await page.evaluate(() => localStorage.getItem('warm-mould:plans:1'));
    expect(kept).toContain('"sprue.volume":"1.95 cm³"');
  },
);
