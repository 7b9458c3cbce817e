import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** How a page is looked at: its window, its colours, and the rules that can differ from the first of them. */
export interface Look {
  readonly name: string;
  readonly size: { readonly width: number; readonly height: number };
  readonly colours: 'light' | 'dark';
  readonly text?: '200%';
  readonly rules: readonly string[] | 'all';
}

const desk = { width: 1280, height: 900 };

export const light: Look = { name: 'light', size: desk, colours: 'light', rules: 'all' };

/** Only colours differ in the dark. */
export const dark: Look = {
  name: 'dark',
  size: desk,
  colours: 'dark',
  rules: ['color-contrast', 'link-in-text-block'],
};

/** Each is put on after the one before it, by the same page. */
export const looks: readonly Look[] = [
  light,
  dark,
  { name: '320 px', size: { width: 320, height: 640 }, colours: 'light', rules: 'all' },
  { name: 'text 200 %', size: { width: 640, height: 800 }, colours: 'light', text: '200%', rules: 'all' },
];

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * Opens folds, draws what is out of sight (an element skipped until it is seen keeps the colours it had when they
 * change) and takes out what axe need not see, since it walks the whole document once for every rule that
 * asks for colours: inside typeset maths, hidden from readers by its own MathML twin, and rows of a long table
 * built like those before them. Boxes stay as large as they were.
 */
export const open = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    for (const element of document.querySelectorAll<HTMLElement>('*'))
      if (getComputedStyle(element).contentVisibility === 'auto') element.style.contentVisibility = 'visible';
    const sums = [...document.querySelectorAll<HTMLElement>('.katex-html')].map(
      (sum) => [sum, sum.getBoundingClientRect()] as const,
    );
    for (const [sum, { width, height }] of sums) {
      sum.replaceChildren();
      sum.style.cssText = `display: inline-block; width: ${width}px; height: ${height}px`;
    }
    for (const row of document.querySelectorAll('tbody tr:nth-child(n + 9)'))
      if (row.closest('astro-island') === null) row.remove();
  });

/** What axe finds in one look at an opened page, as lines. */
export async function faultsIn(page: Page, { name, size, colours, text, rules }: Look): Promise<string[]> {
  await page.setViewportSize(size);
  await page.emulateMedia({ colorScheme: colours, reducedMotion: 'reduce' });
  await page.evaluate((fontSize) => {
    document.documentElement.style.fontSize = fontSize;
  }, text ?? '');
  // One frame, so no second page is needed to gather what the frames say.
  const axe = new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] })
    .exclude('.katex-html')
    .exclude('tbody tr:nth-child(n + 9)');
  const { violations } = await (rules === 'all' ? axe.withTags(tags) : axe.withRules([...rules])).analyze();
  return violations.map(
    ({ id, nodes }) => `${name}: ${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
}

/** Islands wake in this time; a page of a hundred cards may never count as idle on a busy machine. */
export const woken = (page: Page): Promise<void> =>
  page.waitForLoadState('networkidle', { timeout: 15_000 }).catch(() => undefined);
