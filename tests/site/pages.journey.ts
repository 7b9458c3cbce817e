import { dark, faultsIn, light, open, woken } from './axe.ts';
import { fetchedScripts, scriptBudget, scrollThrough } from './script.ts';
import { closely, expect, onDesk, pages, test } from './site.ts';

test('the site is built', () => {
  expect(pages).toContain('');
  expect(pages.length).toBeGreaterThan(3);
});

for (const path of pages) {
  test(
    `/${path} loads whole, names itself and fits a desk and a phone`,
    { tag: onDesk },
    async ({ page }) => {
      await page.goto(path);
      await expect(page).toHaveTitle(/Warm Mould/);
      await expect(page.locator('h1')).toHaveCount(1);
      await expect(page.locator('meta[name="description"]')).toHaveAttribute('content', /\w{3}/);
      for (const width of [1280, 360]) {
        await page.setViewportSize({ width, height: 800 });
        const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(overflow, `pixels the page scrolls sideways at ${width}`).toBeLessThanOrEqual(0);
      }
    },
  );
}

for (const path of closely()) {
  test(`/${path} asks for little script`, { tag: onDesk }, async ({ page }) => {
    const scripts = fetchedScripts(page);
    await page.goto(path);
    await scrollThrough(page);
    expect(await scripts(), 'kB of script at first load, compressed').toBeLessThanOrEqual(scriptBudget(path));
  });

  test(`/${path} is accessible, light and dark`, async ({ page }) => {
    // A long page of folded working takes axe half a minute, more on a busy machine.
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme: light.colours, reducedMotion: 'reduce' });
    await page.goto(path);
    await woken(page);
    await open(page);
    const found = [];
    for (const look of [light, dark])
      found.push(...(await faultsIn(page, { ...look, size: page.viewportSize()! })));
    expect(found).toEqual([]);
  });
}

test('an address with no page says so and leads back', async ({ page }) => {
  const response = await page.goto('no/such/page/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No such page');
  await page.getByRole('main').getByRole('link', { name: 'contents' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Contents');
});
