import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';

/** Kilobytes of script, compressed, that a page may fetch before anything is pressed. */
export function scriptBudget(path: string): number {
  return /^(?:plan|freeze|sets|part|pour-day|find|connect)\//.test(path) ? 60 : 20;
}

/** Starts counting; the function returned gives the compressed kilobytes so far, inline script included. */
export function fetchedScripts(page: Page): () => Promise<number> {
  const outside: Promise<number>[] = [];
  page.on('response', (response) => {
    // The worker of a page that needs no press is counted with it; what a press fetches comes later.
    if (response.request().resourceType() === 'script') outside.push(response.body().then(compressed));
  });
  return async () => {
    const inside = await page
      .locator('script:not([src])')
      .evaluateAll((elements) => elements.map((element) => element.textContent).join('\n'));
    const sizes = await Promise.all(outside);
    return (sizes.reduce((sum, size) => sum + size, 0) + compressed(Buffer.from(inside))) / 1000;
  };
}

function compressed(bytes: Buffer): number {
  return bytes.length === 0 ? 0 : gzipSync(bytes, { level: 9 }).length;
}

/** Islands that wait until they are seen belong to the first load all the same. */
export async function scrollThrough(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let y = 0; y < document.body.scrollHeight; y += window.innerHeight) {
      window.scrollTo(0, y);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  });
  await page.waitForLoadState('networkidle');
}
