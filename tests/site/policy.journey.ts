import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dist, expect, onDesk, pages, test } from './site.ts';

const fileOf = (path: string): string => join(dist, path.endsWith('.html') ? path : `${path}index.html`);
const unescaped = (text: string): string =>
  text
    .replace(/&#39;|&apos;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const all = (html: string, pattern: RegExp): RegExpExecArray[] => [...html.matchAll(pattern)];

/** What a page does or allows that the strict policy forbids, as sentences. */
function faultsOf(html: string): string[] {
  const faults: string[] = [];
  const [meta] = all(html, /<meta http-equiv="content-security-policy" content="([^"]*)"/gi);
  if (!meta) return ['has no policy'];
  const policy = new Map(
    unescaped(meta[1] ?? '')
      .split(';')
      .map((part) => part.trim().split(/\s+/))
      .map(([name = '', ...values]) => [name, values] as const),
  );
  const [early] = all(html.slice(0, meta.index), /<script\b[^>]*>/g);
  if (early) faults.push(`has ${early[0]} before its policy`);
  if (policy.get('default-src')?.join(' ') !== "'none'") faults.push('allows something by default');
  for (const [name, values] of policy) {
    // Typeset maths places its parts by style attributes; elements and sheets stay hashed.
    const loose = values.filter(
      (value) => /^'unsafe-/.test(value) && !(name === 'style-src-attr' && value === "'unsafe-inline'"),
    );
    if (loose.length > 0 && !loose.every((value) => value === "'wasm-unsafe-eval'"))
      faults.push(`${name} allows ${loose.join(' ')}`);
    const far = values.filter((value) => /^https?:|\*/.test(value));
    if (far.length > 0) faults.push(`${name} allows ${far.join(' ')}`);
  }
  const allowed = (name: string): readonly string[] =>
    policy.get(`${name}-src-elem`) ?? policy.get(`${name}-src`) ?? [];
  for (const [, attributes = '', text = ''] of all(html, /<script\b([^>]*)>([\s\S]*?)<\/script>/g)) {
    if (/\bsrc=/.test(attributes) || /type="(?:application|text)\/(?:json|ld\+json)/.test(attributes))
      continue;
    if (!allowed('script').includes(hashOf(text)))
      faults.push(`has a script without its hash: ${text.slice(0, 40)}`);
  }
  for (const [, text = ''] of all(html, /<style\b[^>]*>([\s\S]*?)<\/style>/g))
    if (!allowed('style').includes(hashOf(text)))
      faults.push(`has a style without its hash: ${text.slice(0, 40)}`);
  const markup = html.replace(/<script\b[\s\S]*?<\/script>/g, '');
  for (const [tag] of all(markup, /<[a-z][^>]*\son[a-z]+="[^>]*>/g))
    faults.push(`has a handler in ${tag.slice(0, 60)}`);
  if (/\b(?:href|src)="javascript:/i.test(markup)) faults.push('has an address that is a script');
  for (const [tag] of all(
    html,
    /<(?:script|img|link|iframe|source|video|audio|object|embed)\b[^>]*\s(?:src|href)="(?:https?:)?\/\/[^>]*>/g,
  ))
    if (!/rel="canonical"/.test(tag)) faults.push(`takes from elsewhere: ${tag.slice(0, 80)}`);
  return faults;
}

test('every built page keeps to the strict policy', { tag: onDesk }, () => {
  expect(pages.length).toBeGreaterThan(3);
  const faults = pages.flatMap((path) =>
    faultsOf(readFileSync(fileOf(path), 'utf8')).map((fault) => `/${path} ${fault}`),
  );
  expect(faults).toEqual([]);
});

test('the check of the policy can fail', { tag: onDesk }, () => {
  const page = (policy: string, body: string): string =>
    `<meta http-equiv="content-security-policy" content="${policy}">${body}`;
  const strict = "default-src 'none'; script-src 'self'";
  expect(faultsOf('<p>')).toEqual(['has no policy']);
  expect(faultsOf(page("default-src 'self'", ''))).toHaveLength(1);
  expect(faultsOf(page("default-src 'none'; script-src 'unsafe-eval'", ''))).toHaveLength(1);
  expect(faultsOf(page("default-src 'none'; img-src https://elsewhere.example", ''))).toHaveLength(1);
  expect(faultsOf(page(strict, '<script>1</script>'))).toHaveLength(1);
  expect(faultsOf(page(strict, '<p onclick="go()">'))).toHaveLength(1);
  expect(faultsOf(page(strict, '<img src="https://elsewhere.example/a.png">'))).toHaveLength(1);
  expect(faultsOf(page(strict, '<script src="/own.js"></script>'))).toEqual([]);
});

test('a session of reading and working keeps no cookie', { tag: onDesk }, async ({ page, context }) => {
  for (const path of ['', 'exercises/', 'formulas/filling/velocity/', 'plan/']) {
    if (!existsSync(fileOf(path))) continue;
    await page.goto(path);
    await page.waitForLoadState('networkidle');
  }
  expect(await context.cookies()).toEqual([]);
});
