import type { Page } from '@playwright/test';
import { expect, onDesk, test } from './site.ts';

// A page left while it still fades in is an error to the browser.
test.use({ contextOptions: { reducedMotion: 'reduce' } });

test(
  'a slash opens the search from any page, and not while something is typed',
  { tag: onDesk },
  async ({ page }) => {
    await page.goto('formulas/freezing/modulus/');
    const field = page.locator('.calculator .entry input').first();
    await field.focus();
    await page.keyboard.type('/');
    await expect(page).toHaveURL(/modulus/);
    await field.blur();
    await page.keyboard.press('/');
    await expect(page).toHaveURL(/find\/$/);
    await expect(page.getByLabel('What are you looking for?')).toBeFocused();
    await page.getByLabel('opens this page from every other').uncheck();
    await page.goto('glossary/');
    await page.keyboard.press('/');
    await expect(page).toHaveURL(/glossary\/$/);
  },
);

test('what is typed is found, kept in the address and opened with Enter', async ({ page }) => {
  await page.goto('');
  await page.getByRole('link', { name: 'Find', exact: true }).click();
  await page.getByLabel('What are you looking for?').fill('permability');
  await expect(page.locator('.found a').first()).toContainText('Permeability');
  await expect(page).toHaveURL(/#find:q=permability$/);
  await page.reload();
  await expect(page.locator('.found a').first()).toContainText('Permeability');
  await page.getByLabel('What are you looking for?').press('Enter');
  await expect(page).toHaveURL(/glossary\/#permeability$/);
});

test('all that is found is reached by the arrows at once, and counted', async ({ page }) => {
  await page.goto('find/');
  const field = page.getByLabel('What are you looking for?');
  await field.fill('sand');
  await expect(page.locator('.found a').first()).toBeVisible();
  await expect(page.getByRole('status')).toHaveText('The 12 nearest.');
  // At a key only what a screen shows is drawn; the arrows do not wait for the rest.
  await field.pressSequentially('s');
  for (let row = 0; row < 12; row += 1) await page.keyboard.press('ArrowDown');
  await expect(page.locator('.found a').nth(11)).toBeFocused();
  for (let row = 0; row < 12; row += 1) await page.keyboard.press('ArrowUp');
  await expect(field).toBeFocused();
});

test('a form of several equations takes the units of a shop and answers in them', async ({ page }) => {
  await page.goto('formulas/sand/warm-through/');
  const [thickness, oven] = [/Thickness or diameter/, /Oven temperature/].map((name) =>
    page.getByRole('textbox', { name }),
  );
  await thickness!.fill('3 in');
  await oven!.fill('450 F');
  await oven!.blur();
  const outcome = page.locator('.outcome dl');
  await expect(outcome).toContainText('°F');
  await expect(outcome).not.toContainText('°C');
  await expect(page.locator('.model-card')).toHaveAttribute('data-stale', 'false');
  const found = await outcome.innerText();
  await page.getByLabel('Units everywhere').selectOption('us');
  await expect(page.getByRole('textbox', { name: /Temperature wanted/ })).toHaveValue('284');
  await expect(page.getByText('Between 125 and 620 °F')).toHaveCount(2);
  // The same hand, another unit: not a digit of the answer moves.
  expect(await outcome.innerText()).toBe(found);
});

test('from what is known to what is wanted, then solved and carried on in inches', async ({ page }) => {
  await page.goto('connect/');
  const pick = async (label: string, word: string): Promise<void> => {
    await page.getByLabel(label, { exact: true }).fill(word);
    await page.locator('.fits button').first().click();
  };
  await pick('I want', 'time to freeze');
  await pick('I know', 'volume of the section');
  await pick('I know', 'surface that cools');
  await page.locator('.links a').first().click();
  await expect(page).toHaveURL(/freezing\/modulus\/#/);
  await page.getByLabel('Units everywhere').selectOption('us');
  const output = page.locator('.calculator output');
  await expect(output).toContainText('in');
  const volume = page.getByRole('textbox', { name: /volume of the section/i });
  await volume.fill('2 in³');
  await volume.blur();
  await expect(output).toHaveText(/M = .*\d/);
  await page.getByText('Use this in another card').click();
  await page.getByRole('link', { name: 'Freezing time by rule, from a test casting' }).click();
  await expect(page.locator('h1')).toContainText('Freezing time by rule');
  await expect(page.getByRole('textbox', { name: /^M modulus/ })).not.toHaveValue('');
  await expect(page.locator('.calculator output')).toHaveText(/t = .*\d/);
});

test('a card keeps its last numbers, its size and the habit of units', async ({ page }) => {
  await page.goto('formulas/freezing/modulus/');
  const volume = page.getByRole('textbox', { name: /volume of the section/i });
  const before = await volume.inputValue();
  await volume.fill('77');
  await page.getByRole('button', { name: 'Large' }).click();
  // Pressed while the card wakes, it grows a moment later.
  await expect(async () => {
    const parts = await page.locator('.calculator.large :is(button, select, input):visible').all();
    expect(parts.length).toBeGreaterThan(5);
    for (const part of parts) {
      const box = await part.boundingBox();
      expect(box?.height, await part.evaluate((element) => element.outerHTML)).toBeGreaterThanOrEqual(56);
    }
  }).toPass({ timeout: 10_000 });
  await page.waitForTimeout(600);
  await page.goto('formulas/');
  await page.goto('formulas/freezing/modulus/');
  await expect(volume).toHaveValue('77');
  await expect(page.locator('.calculator.large')).toBeVisible();
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(volume).toHaveValue(before);
  await page.getByLabel('Units everywhere').selectOption('jeweller');
  await page.goto('formulas/charge/total/');
  await expect(page.locator('.calculator output')).toContainText('dwt');
});

test('a pour is followed at the bench, timed, and nothing is lost when the phone sleeps', async ({
  page,
}) => {
  await page.clock.install();
  await page.goto('pour-day/');
  const next = page.getByRole('button', { name: 'Next' });
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Before you light anything');
  await page.getByLabel('Extraction runs').check();
  while ((await page.getByRole('heading', { level: 2 }).textContent()) !== 'Seconds in hand')
    await next.click();
  await expect(page.locator('.day-number')).toHaveText(/^\d\d\ss$/);
  const inHand = Number.parseInt((await page.locator('.day-number').textContent()) ?? '', 10);
  await page.getByRole('button', { name: 'Out of the furnace' }).click();
  await page.clock.runFor(9000);
  // Nine seconds on, and one more or less that the machine took.
  const left = [inHand - 10, inHand - 9, inHand - 8].join('|');
  await expect(page.getByRole('timer')).toHaveText(new RegExp(`^0:(${left})$`));
  await page.reload();
  await page.clock.runFor(1000);
  await expect(page.getByRole('timer')).toHaveText(/^0:1[45678]$/);
  await page.clock.runFor(24_000);
  await expect(page.getByText('Too cold by the sum.')).toBeVisible();
  await page.getByRole('button', { name: 'Out of the furnace: start again' }).click();
  await page.clock.runFor(5000);
  await page.getByRole('button', { name: 'The metal is in' }).click();
  await expect(page.getByText('The metal is in: after 5.')).toBeVisible();
  await page.getByLabel('Note').fill('a little splash');
  await next.click();
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Hold the suction');
  await page.clock.runFor(7000);
  await expect(page.getByText('Let the air in.')).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: 'Back' }).click();
  await expect(page.getByLabel('Note')).toHaveValue('a little splash');
  // A glove hits the wrong key: the pour comes back with everything in it.
  await page.getByRole('button', { name: 'New pour' }).click();
  await expect(page.getByLabel('Extraction runs')).not.toBeChecked();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Note')).toHaveValue('a little splash');
});

/** A picture of 1400 by 700 pixels, drawn in the browser so that it is a whole file. */
async function picture(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [1400, 700];
    const drawn = canvas.getContext('2d')!;
    drawn.fillStyle = 'orange';
    drawn.fillRect(0, 0, 700, 700);
    return canvas.toDataURL('image/png').split(',')[1]!;
  });
  return { name: 'rim.png', mimeType: 'image/png', buffer: Buffer.from(base64, 'base64') };
}

test('a photo is kept with the notes of the day and goes into the log with them', async ({ page }) => {
  await page.goto('pour-day/');
  const next = page.getByRole('button', { name: 'Next' });
  const camera = page.locator('.day-photos input[type=file]');
  await expect(camera).toHaveAttribute('capture', 'environment');
  await camera.setInputFiles(await picture(page));
  const shown = page.locator('.day-photos img');
  await expect(shown).toHaveCount(1);
  expect(
    await shown.evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]),
  ).toEqual([900, 450]);
  await page.getByLabel('Note').fill('sand a little damp');
  await expect(page.getByText('The photo is kept with the notes.')).toBeVisible();
  await page.reload();
  await expect(shown).toHaveCount(1);
  await page.getByRole('button', { name: 'Take out photo 1' }).click();
  await expect(shown).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(shown).toHaveCount(1);
  await next.click();
  await expect(shown).toHaveCount(0);
  await camera.setInputFiles({ name: 'x.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await expect(page.getByRole('alert')).toContainText('could not be read');
  while (await next.isVisible()) await next.click();
  await expect(shown).toHaveCount(1);
  await page.getByRole('link', { name: 'Write it into the pour log' }).click();
  await expect(page.getByLabel('Part', { exact: true })).toHaveValue('Lamp shield');
  await expect(page.getByRole('textbox', { name: 'Note' })).toHaveValue('sand a little damp');
  await expect(page.getByRole('group', { name: 'Webs' })).toBeVisible();
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await expect(page.locator('.pours li')).toHaveCount(1);
  await expect(page.locator('.pours img')).toHaveCount(1);
  await page.goBack();
  await page.getByRole('button', { name: 'New pour' }).click();
  await expect(shown).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(shown).toHaveCount(1);
  await page.getByRole('link', { name: 'Write it into the pour log' }).click();
  await page.getByRole('button', { name: 'Keep this pour' }).click();
  await expect(page.locator('.pours li')).toHaveCount(1);
  await expect(page.locator('.pours img')).toHaveCount(1);
});
