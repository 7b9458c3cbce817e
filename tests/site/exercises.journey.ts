import { readFileSync } from 'node:fs';
import { expect, test } from './site.ts';

const own = 'exercises/mass-of-the-clapper/';

test('what was got wrong comes back the next day with new numbers, and a copy brings everything back', async ({
  page,
}) => {
  await page.clock.setFixedTime(new Date(2026, 2, 2, 10));
  await page.goto(own);
  const answer = page.locator('.exercise').getByRole('textbox').first();
  await answer.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island:not([ssr]) .exercise').first()).toBeVisible();
  const asked = await page.locator('.exercise p').first().innerText();
  await answer.fill('1 g');
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.locator('.exercise-verdict').first()).toContainText('Not yet');

  await page.goto('exercises/');
  await expect(page.getByText('Nothing is due today. 1 will come back another day.')).toBeVisible();

  await page.clock.setFixedTime(new Date(2026, 2, 3, 10));
  await page.goto('exercises/');
  await expect(page.getByText(/from .*, with new numbers/)).toHaveCount(1);
  await page.getByText(/^Keep a copy/).click();
  const [copy] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save a copy' }).click(),
  ]);
  const path = await copy.path();
  expect(JSON.parse(readFileSync(path, 'utf8'))).toMatchObject({ kind: 'warm-mould-backup', version: 1 });

  await page.getByRole('button', { name: 'Erase it all' }).click();
  await page.getByRole('button', { name: 'Yes, erase it all' }).click();
  await expect(page.getByText(/^Erased\./)).toBeVisible();
  await expect(page.getByText(/^Nothing to come back to yet/)).toBeVisible();
  await page.getByLabel('Bring a copy back').setInputFiles({
    name: 'notes.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from('my notes'),
  });
  await expect(page.getByText(/^The file is not a backup/)).toBeVisible();
  await page.getByLabel('Bring a copy back').setInputFiles(path);
  await expect(page.getByText(/^Restored \d+ things? saved on 2026-03-03/)).toBeVisible();

  await page.getByRole('link', { name: 'Mass of the clapper' }).first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mass of the clapper');
  await expect(page.locator('.exercise p').first()).not.toHaveText(asked);
  await expect(page.locator('.exercise').getByRole('textbox').first()).toHaveValue('');
});

test('the contents say how far a lesson is, once something was tried', async ({ page }) => {
  await page.goto('contents/');
  await expect(page.locator('[data-exercises]').first()).toBeEmpty();
  await page.evaluate(() => {
    const kept = { seed: '1', answers: {}, chosen: [], hints: 0, tried: true };
    const marked = { answer: { verdict: 'right', unit: 'right', marks: 3, of: 3, says: [] } };
    localStorage.setItem('warm-mould:exercise:1:mass-of-the-clapper', JSON.stringify({ ...kept, marked }));
  });
  await page.reload();
  await expect(page.getByText(/^1 of \d exercises right$/)).toHaveCount(1);
});
