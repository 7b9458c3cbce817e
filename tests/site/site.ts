import { existsSync, readdirSync } from 'node:fs';
import { sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { test as base, expect, type Page } from '@playwright/test';
import { models } from '../../calculators/models/index.ts';
import { serveFolder, type Site } from '../../src/cli/static-server.ts';

export const dist = fileURLToPath(new URL('../../dist/', import.meta.url));

/** The tag of a journey whose outcome is the same on every screen: it runs once. */
export const onDesk = '@desk';

/** Every built page as a path below the base: `''`, `lessons/…/`, `404.html`. */
export const pages: readonly string[] = existsSync(dist)
  ? readdirSync(dist, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.html'))
      .map((file) =>
        file
          .split(sep)
          .join('/')
          .replace(/(^|\/)index\.html$/, '$1'),
      )
      .sort()
  : [];

/** One page of each kind; of those that are many, as lessons, cards of formulas and cards of models, two of each. */
export function pageKinds(): string[] {
  const seen = new Map<string, number>();
  return pages.filter((path) => {
    const [folder = '', ...rest] = path.split('/').filter(Boolean);
    const kind = rest.length === 0 ? path : rest.join('/') in models ? 'a model' : folder;
    const count = (seen.get(kind) ?? 0) + 1;
    seen.set(kind, count);
    return count <= 2;
  });
}

/**
 * The pages that are looked at closely: one or two of a kind, or every one with `EVERY_PAGE=1`, which takes the
 * better part of an hour. Parts of the whole go with Playwright’s `--shard`.
 */
export const closely = (): readonly string[] => (process.env['EVERY_PAGE'] === '1' ? pages : pageKinds());

interface Own {
  /** Where the built site is served for this worker. */
  readonly site: Site;
}

export const test = base.extend<{ trouble: string[] }, Own>({
  site: [
    // eslint-disable-next-line no-empty-pattern -- Playwright reads the fixtures needed from the pattern
    async ({}, use) => {
      const site = await serveFolder(dist, { base: process.env['SITE_BASE'] ?? '/' });
      await use(site);
      await site.close();
    },
    { scope: 'worker' },
  ],
  baseURL: async ({ site }, use) => {
    await use(site.address);
  },
  /** What a page must not do, gathered while a journey runs; a journey fails on any of it at its end. */
  trouble: [
    async ({ page, site }, use) => {
      const trouble: string[] = [];
      watch(page, site.address, trouble);
      await use(trouble);
      expect(trouble, 'errors, refused content and requests to others').toEqual([]);
    },
    { auto: true },
  ],
});

function watch(page: Page, address: string, trouble: string[]): void {
  const origin = new URL(address).origin;
  page.on('console', (message) => {
    if (message.type() === 'error' && !/status of 404/.test(message.text()))
      trouble.push(`console: ${message.text()}`);
  });
  page.on('pageerror', ({ message }) => {
    // A page that is there before its transition could begin goes without it, and the browser calls that an error.
    if (!/^Transition was (?:aborted|skipped)/.test(message)) trouble.push(`error: ${message}`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(?:data|blob):/.test(url))
      trouble.push(`request to another host: ${url}`);
  });
  page.on('response', (response) => {
    const asked = response.request();
    if (response.status() >= 400 && !asked.isNavigationRequest())
      trouble.push(`${response.status()}: ${response.url()}`);
  });
}

export { expect };
