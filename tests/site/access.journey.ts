import type { Page } from '@playwright/test';
import { closely, expect, onDesk, test } from './site.ts';

/** What sticks out of the window sideways: elements that do not scroll by themselves, outermost first. */
const sticksOut = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.documentElement.scrollWidth - window.innerWidth;
    if (wide <= 0) return [];
    const out = [...document.querySelectorAll('main *')].filter((element) => {
      const box = element.getBoundingClientRect();
      const wider =
        element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).overflowX === 'visible';
      return box.width > 0 && (box.right > window.innerWidth + 1 || wider);
    });
    return [
      `${wide} px`,
      ...out.slice(0, 3).map(({ tagName, className }) => `${tagName} ${String(className)}`),
    ];
  });

for (const path of closely()) {
  test(`/${path} reflows at 320 px, and with text twice as large`, { tag: onDesk }, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    expect(await sticksOut(page), 'at 320 px').toEqual([]);
    await page.setViewportSize({ width: 640, height: 800 });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    expect(await sticksOut(page), 'at 640 px with text twice as large').toEqual([]);
    const cut = await page
      .locator('button:visible, .press:visible')
      .evaluateAll((buttons) =>
        buttons
          .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 2)
          .map(({ textContent }) => textContent?.trim()),
      );
    expect(cut, 'words cut off in buttons').toEqual([]);
  });
}

test(
  'with forced colours a field, a button and the focus keep an edge',
  { tag: onDesk },
  async ({ page }) => {
    await page.emulateMedia({ forcedColors: 'active' });
    await page.goto('formulas/filling/velocity/');
    const field = page.getByRole('textbox').first();
    await field.focus();
    const [border, outline] = await field.evaluate((element) => {
      const style = getComputedStyle(element);
      return [style.borderBottomStyle, style.outlineStyle];
    });
    expect(border).not.toBe('none');
    expect(outline).not.toBe('none');
  },
);

test('with reduced motion nothing moves by itself', { tag: onDesk }, async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  for (const path of ['', 'lessons/will-it-get-there/', 'plan/']) {
    await page.goto(path);
    await page.waitForLoadState('networkidle');
    const moving = await page.evaluate(() =>
      document
        .getAnimations()
        .filter(
          ({ playState, effect }) =>
            playState === 'running' && Number(effect?.getComputedTiming().duration) > 20,
        )
        .map(({ effect }) => (effect as KeyframeEffect).target?.className),
    );
    expect(moving, path).toEqual([]);
  }
});

test('a calculator says its fields, its answer and what is wrong to a reader of the screen', async ({
  page,
}) => {
  await page.goto('formulas/filling/velocity/');
  const calculator = page.locator('.calculator');
  await calculator.hover();
  await expect(page.locator('astro-island:not([ssr]) .calculator')).toBeVisible();
  await expect(calculator).toMatchAriaSnapshot(`
    - region /Calculator/:
      - combobox "Find"
      - textbox /head of metal/
  `);
  await page
    .getByRole('textbox', { name: /head of metal/ })
    .first()
    .fill('a lot');
  await expect(page.getByRole('textbox', { name: /head of metal/ }).first()).toHaveAccessibleDescription(
    /Start with a number/,
  );
  await expect(calculator.locator('[aria-live], [role=status], output').first()).toBeAttached();
});

test('an exercise says its question, its field and its verdict', async ({ page }) => {
  await page.goto('exercises/mass-of-the-clapper/');
  const exercise = page.locator('.exercise').first();
  await exercise.scrollIntoViewIfNeeded();
  await expect(page.locator('astro-island:not([ssr]) .exercise').first()).toBeVisible();
  await expect(exercise).toMatchAriaSnapshot(`
    - paragraph: /What will it weigh/
    - textbox "Mass of the part, m, with its unit"
    - status
    - paragraph:
      - button "Check"
  `);
  await exercise.getByRole('textbox').first().fill('1 g');
  await exercise
    .getByRole('button', { name: /^Check/ })
    .first()
    .click();
  const verdict = exercise.locator('.exercise-verdict').first();
  await expect(verdict).toContainText('Not yet');
  expect(
    await verdict.evaluate((element) => element.closest('[aria-live], [role=status], [role=alert]') !== null),
    'the verdict is announced',
  ).toBe(true);
});

/** A page with each island on it. */
const islands: readonly (readonly [path: string, island: string])[] = [
  ['formulas/filling/velocity/', '.calculator'],
  ['formulas/sand/warm-through/', '.model-card'],
  ['exercises/', 'main'],
  ['exercises/mass-of-the-clapper/', '.exercise'],
  ['find/', 'main'],
  ['connect/', 'main'],
  ['plan/', '.plan'],
  ['pour-day/', 'main'],
  ['log/', '.log'],
  ['freeze/', 'main'],
  ['part/', 'main'],
  ['sets/build/', 'main'],
  ['sets/do/', 'main'],
  ['sets/mark/', 'main'],
  ['offline/', 'main'],
];

for (const [path, island] of islands) {
  test(`/${path} names each control and says changes aloud`, { tag: onDesk }, async ({ page }) => {
    await page.goto(path);
    const place = page.locator(island).first();
    await place.hover();
    await expect(page.locator('astro-island:not([ssr])').first()).toBeAttached({ timeout: 20_000 });
    const controls = (await place.ariaSnapshot())
      .split('\n')
      .filter((line) =>
        /^\s*- (?:button|link|textbox|combobox|checkbox|radio|spinbutton|slider|searchbox)\b/.test(line),
      );
    expect(controls.length).toBeGreaterThan(0);
    expect(
      controls.filter((line) => !/^\s*- \w+ ["/]/.test(line)),
      'controls without a name',
    ).toEqual([]);
    await expect(
      place.locator('[aria-live], [role=status], [role=alert], output').first(),
      'a place that is read out when it changes',
    ).toBeAttached();
  });
}

test('the plan says its fields and its decisions', async ({ page }) => {
  await page.goto('plan/');
  await expect(page.locator('.plan')).toHaveAttribute('data-awake', 'true');
  await expect(page.getByRole('textbox', { name: /^Head of metal above the gate/ }).first()).toBeVisible();
  const decision = page.locator('[id="decision-entry"]');
  expect(await decision.ariaSnapshot()).toMatch(/heading|text/);
  await expect(page.locator('[aria-live], [role=status]').first()).toBeAttached();
});

test(
  'a card is solved from the address bar to the answer by keys alone',
  { tag: onDesk },
  async ({ page }) => {
    await page.goto('formulas/filling/velocity/');
    const head = page.getByRole('textbox', { name: /head of metal/ }).first();
    for (let presses = 0; presses < 60; presses += 1) {
      await page.keyboard.press('Tab');
      if (await head.evaluate((element) => element === document.activeElement)) break;
    }
    await expect(head).toBeFocused();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('100 mm');
    // √(2 × (9.80665 × 0.1 + (15 000 − 2805)/7520)) × 0.7 = 1.597 m/s.
    await expect(page.locator('.calculator')).toContainText('1.60 m/s');
  },
);

test(
  'a lesson is reached, an exercise answered and the next lesson opened by keys alone',
  { tag: onDesk },
  async ({ page }) => {
    test.setTimeout(60_000);
    const tabTo = async (wanted: () => Promise<boolean>, most = 200): Promise<boolean> => {
      for (let presses = 0; presses < most; presses += 1) {
        await page.keyboard.press('Tab');
        if (await wanted()) return true;
      }
      return false;
    };
    const focusedText = (): Promise<string> =>
      page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
    const focusedTag = (): Promise<string> => page.evaluate(() => document.activeElement?.tagName ?? '');
    await page.goto('exercises/mass-of-the-clapper/');
    const answer = page.locator('.exercise').getByRole('textbox').first();
    expect(
      await tabTo(() => answer.evaluate((element) => element === document.activeElement)),
      'the field is reached',
    ).toBe(true);
    await page.keyboard.type('1 g');
    await page.keyboard.press('Enter');
    await expect(page.locator('.exercise-verdict').first()).toContainText('Not yet');
    await page.goto('contents/');
    expect(
      await tabTo(
        async () =>
          (await focusedTag()) === 'A' &&
          (await page.evaluate(() => document.activeElement?.closest('main ol') !== null)),
      ),
      'a lesson is reached',
    ).toBe(true);
    const title = await focusedText();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('Contents');
    expect(title.length).toBeGreaterThan(3);
  },
);
