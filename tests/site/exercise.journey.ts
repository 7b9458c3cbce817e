import { expect, test } from './site.ts';

const lesson = 'lessons/will-it-get-there/';

test('an exercise reads a wrong answer kindly, gives hints and the worked answer, and keeps its state', async ({
  page,
}) => {
  await page.goto(lesson);
  const exercise = page
    .locator('.exercise')
    .filter({ has: page.getByRole('textbox') })
    .first();
  await exercise.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island:not([ssr]) .exercise').first()).toBeVisible();
  const answer = exercise.getByRole('textbox').first();
  await answer.fill('a while');
  await exercise
    .getByRole('button', { name: /^Check/ })
    .first()
    .click();
  await expect(exercise.locator('.exercise-verdict').first()).toContainText(/number/i);
  await answer.fill('12345 m/s');
  await exercise
    .getByRole('button', { name: /^Check/ })
    .first()
    .click();
  await expect(exercise.locator('.exercise-verdict').first()).not.toContainText(/^\s*$/);
  await page.reload();
  await expect(page.locator('.exercise').getByRole('textbox').first()).toHaveValue('12345 m/s');
});

test('a figure answers to the keyboard', async ({ page }) => {
  await page.goto('lessons/how-long-have-i-got/');
  const dial = page.getByRole('slider').first();
  await dial.scrollIntoViewIfNeeded();
  await dial.focus();
  const before = await page.locator('figure').first().innerText();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(page.locator('figure').first()).not.toHaveText(before);
});
