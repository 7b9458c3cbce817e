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

test('an answer handed in while the page still wakes is marked, not lost', async ({ page }) => {
  await page.route('**/_astro/exercise*.js', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 600));
    await route.continue();
  });
  await page.goto('lessons/how-long-have-i-got/');
  const answer = page.locator('.exercise').getByRole('textbox').first();
  await answer.scrollIntoViewIfNeeded();
  await answer.fill('5 mm');
  await answer.press('Enter');
  await expect(page.locator('.exercise-verdict').first()).toContainText('Not yet');
  await expect(answer).toHaveValue('5 mm');
  expect(new URL(page.url()).search).toBe('');
});
