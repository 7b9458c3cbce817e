import AxeBuilder from '@axe-core/playwright';
import { fetchedScripts, scriptBudget, scrollThrough } from './script.ts';
import { expect, pageKinds, pages, test } from './site.ts';

test('the site is built', () => {
  expect(pages).toContain('');
  expect(pages.length).toBeGreaterThan(3);
});

for (const path of pages) {
  test(`/${path} loads whole and lean, names itself and fits the screen`, async ({ page }) => {
    const scripts = fetchedScripts(page);
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    await expect(page).toHaveTitle(/Warm Mould/);
    await expect(page.locator('h1')).toHaveCount(1);
    await expect(page.locator('meta[name="description"]')).toHaveAttribute('content', /\w{3}/);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow, 'pixels the page scrolls sideways').toBeLessThanOrEqual(0);
    await scrollThrough(page);
    expect(await scripts(), 'kB of script at first load, compressed').toBeLessThanOrEqual(scriptBudget(path));
  });
}

for (const path of pageKinds()) {
  for (const scheme of ['light', 'dark'] as const) {
    test(`/${path} is accessible, ${scheme}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
      await page.goto(path);
      await page.waitForLoadState('networkidle');
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
      });
      // Typeset maths is hidden from readers by its own MathML twin, and takes axe minutes on a long page.
      test.slow();
      const { violations } = await new AxeBuilder({ page })
        .exclude('.katex-html')
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      const told = violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
      );
      expect(told).toEqual([]);
    });
  }
}

test('an address with no page says so and leads back', async ({ page }) => {
  const response = await page.goto('no/such/page/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No such page');
  await page.getByRole('main').getByRole('link', { name: 'contents' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Contents');
});
