import { expect, pages, test } from './site.ts';

const lessons = pages.filter((path) => path.startsWith('lessons/'));

test.describe('without JavaScript', () => {
  test.use({ javaScriptEnabled: false });

  for (const path of lessons) {
    test(`/${path} can be read and worked`, async ({ page }) => {
      await page.goto(path);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      const words = (await page.getByRole('article').innerText()).split(/\s+/).length;
      expect(words, 'words to read').toBeGreaterThan(300);
      await expect(page.getByRole('navigation', { name: 'Previous and next lesson' })).toBeVisible();
      // Whatever is folded is a details element, which the browser opens by itself.
      const fold = page.locator('article details').first();
      if ((await fold.count()) > 0) {
        await fold.locator('summary').first().click();
        await expect(fold).toHaveAttribute('open', '');
      }
    });
  }
});

test('the course reads through by its next links', async ({ page }) => {
  // Every lesson is opened in turn: half a minute on a quiet machine.
  test.setTimeout(240_000);
  expect(lessons.length).toBeGreaterThan(1);
  await page.goto('contents/');
  await page.locator('main ol a').first().click();
  const turn = page.getByRole('navigation', { name: 'Previous and next lesson' });
  for (let read = 1; read < lessons.length; read += 1) {
    const next = turn.locator('a[rel="next"]');
    const title = (await next.innerText()).replace(/^Next\s*/, '').trim();
    await next.click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
  }
  await expect(turn.locator('a[rel="next"]')).toHaveAttribute('href', /plan\/$/);
});

test('the keyboard reaches the text and every link, and shows where it is', async ({ page }) => {
  await page.goto('contents/');
  await page.keyboard.press('Tab');
  const skip = page.getByRole('link', { name: 'Skip to the text' });
  await expect(skip).toBeFocused();
  await expect(skip).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.locator('#text')).toBeFocused();
  await page.keyboard.press('Tab');
  const focused = page.locator(':focus');
  await expect(focused).toHaveAttribute('href', /./);
  expect(await focused.evaluate((element) => element.closest('main') !== null)).toBe(true);
  expect(await focused.evaluate((element) => getComputedStyle(element).outlineStyle)).toBe('solid');
});

test('what is pressed in the masthead and the contents is big enough for a glove', async ({ page }) => {
  await page.goto('contents/');
  const small = await page
    .locator('.sections a, .imprint, main ol a, .turn a')
    .evaluateAll((links) =>
      links.filter((link) => link.getBoundingClientRect().height < 44).map((link) => link.textContent),
    );
  expect(small).toEqual([]);
});

test('paper carries no navigation, and black on white', async ({ page }) => {
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await page.goto(lessons[0] ?? 'about/');
  await expect(page.locator('.masthead')).toBeHidden();
  const colours = await page
    .locator('body')
    .evaluate((body) => [
      getComputedStyle(document.documentElement).backgroundColor,
      getComputedStyle(body).color,
    ]);
  expect(colours).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  await expect(page.locator('.on-paper')).toBeVisible();
});
