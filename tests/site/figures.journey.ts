import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator } from '@playwright/test';
import { dist, expect, onDesk, pages, test } from './site.ts';

/** Every page with a figure that answers to the hand. */
const drawn = pages.filter((path) =>
  readFileSync(join(dist, path.endsWith('.html') ? path : `${path}index.html`), 'utf8').includes(
    'class="dial ',
  ),
);

/** All that a figure shows: its sentence, and the drawing with its words, places to a hundredth. */
const shown = (figure: Locator): Promise<string> =>
  figure.evaluate((element) =>
    [element.querySelector('.figure-says')?.textContent, element.querySelector('svg')?.outerHTML]
      .join('\n')
      .replace(/: /g, ':')
      .replace(/\d+\.\d{3,}/g, (digits) => Number(digits).toFixed(2)),
  );

test.describe('every figure answers to the keyboard', { tag: onDesk }, () => {
  test('there are about forty, each with a drawing in words and its numbers as a table', () => {
    expect(drawn.length).toBeGreaterThanOrEqual(40);
  });

  for (const path of drawn) {
    test(path, async ({ page }) => {
      test.slow();
      await page.goto(path);
      const figures = page.locator('figure.drawing').filter({ has: page.locator('.dial') });
      for (const figure of await figures.all()) {
        await figure.scrollIntoViewIfNeeded();
        // Some wake when they come into view, some only when they are reached for.
        await figure.locator('input, select, button').first().focus();
        await expect(figure.locator('astro-island')).not.toHaveAttribute('ssr');
        await expect(figure.getByRole('img').first()).toHaveAttribute('aria-label', /\w{3}/);
        await expect(figure.locator('details table tbody tr').first()).toBeAttached();
        for (const field of await figure.locator('.dial input[type=text]').all()) {
          const before = { value: await field.inputValue(), all: await shown(figure) };
          await field.focus();
          // At the upper end a step up leads nowhere.
          const hasRoom = await field.evaluate((element) => {
            const [, up] = element.closest('.dial')!.querySelectorAll('button');
            return up?.getAttribute('aria-disabled') !== 'true';
          });
          await field.press(hasRoom ? 'ArrowUp' : 'ArrowDown');
          await expect(field).not.toHaveValue(before.value);
          await expect.poll(() => shown(figure)).not.toBe(before.all);
          await field.press(hasRoom ? 'ArrowDown' : 'ArrowUp');
          await expect(field).toHaveValue(before.value);
          await expect.poll(() => shown(figure)).toBe(before.all);
        }
        for (const slider of await figure.getByRole('slider').all()) {
          const before = { value: await slider.inputValue(), all: await shown(figure) };
          await slider.focus();
          await slider.press(
            before.value === (await slider.getAttribute('max')) ? 'ArrowLeft' : 'ArrowRight',
          );
          await expect(slider).not.toHaveValue(before.value);
          await expect.poll(() => shown(figure)).not.toBe(before.all);
        }
        for (const group of await figure.locator('.choice').all()) {
          const other = group.getByRole('radio', { checked: false }).first();
          const before = await shown(figure);
          await group.getByRole('radio', { checked: true }).first().focus();
          await page.keyboard.press('ArrowDown');
          if ((await other.count()) > 0) await expect.poll(() => shown(figure)).not.toBe(before);
        }
      }
    });
  }
});

test('a number typed between two steps is taken as it is where it can be worked, else the stop is said', async ({
  page,
}) => {
  // Bronze at 1100 °C on sand at 123.4 °C: (14 000 × 1100 + 1000 × 123.4) ÷ 15 000 = 1034.9.
  await page.goto('lessons/contact-temperature/');
  const curve = page.locator('#figure-face-by-mould-temperature');
  await curve.scrollIntoViewIfNeeded();
  await expect(curve.locator('astro-island')).not.toHaveAttribute('ssr');
  const field = curve.getByRole('textbox');
  await field.fill('123.4');
  await field.press('Enter');
  await expect(curve.locator('.figure-says')).toContainText('At 123.4 °C');
  await expect(curve.locator('.figure-says')).toContainText('sand gives 1030 °C');
  await expect(field).toHaveValue('123.4');
  await field.fill('5000');
  await field.press('Enter');
  await expect(curve.locator('small')).toContainText('It goes from 20 to 600 °C; this is 600 °C.');
  await expect(field).toHaveValue('600');
  await field.fill('warm');
  await field.press('Enter');
  await expect(curve.locator('small')).toContainText('That is no number; still 600 °C.');

  await page.goto('lessons/warm-and-losing-it-again/');
  const model = page.locator('#figure-gate-by-walk');
  await model.scrollIntoViewIfNeeded();
  await expect(model.locator('astro-island')).not.toHaveAttribute('ssr');
  await model.getByRole('textbox').fill('5.13');
  await model.getByRole('textbox').press('Enter');
  await expect(model.locator('small')).toContainText(/5\.13\s?s lies between two stops; this is \d+\s?s\./);
});
