import AxeBuilder from '@axe-core/playwright';
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
    await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
    await page.goto(path);
    // Islands wake in this time; a page of a hundred cards may never count as idle on a busy machine.
    await page.waitForLoadState('networkidle', { timeout: 15_000 }).catch(() => undefined);
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    // Typeset maths is hidden from readers by its own MathML twin; later rows of a table are built like the first.
    const axe = () => new AxeBuilder({ page }).exclude('.katex-html').exclude('tbody tr:nth-child(n + 9)');
    const light = await axe().withTags(axeTags).analyze();
    await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    // Only colours differ in the dark.
    const dark = await axe().withRules(['color-contrast', 'link-in-text-block']).analyze();
    expect([...told('light', light.violations), ...told('dark', dark.violations)]).toEqual([]);
  });
}

const axeTags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[] }[];
}

function told(scheme: string, violations: readonly Violation[]): string[] {
  return violations.map(
    ({ id, nodes }) => `${scheme}: ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
}

test('an address with no page says so and leads back', async ({ page }) => {
  const response = await page.goto('no/such/page/');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('No such page');
  await page.getByRole('main').getByRole('link', { name: 'contents' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Contents');
});
