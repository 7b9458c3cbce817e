/** `npm run links`: every internal link and fragment of the built site leads somewhere. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const base = `/${(process.env['SITE_BASE'] ?? '').split('/').filter(Boolean).join('/')}/`.replace('//', '/');

if (!existsSync(dist)) throw new Error('There is no site to check; run npm run build first.');

const pages = new Map(
  readdirSync(dist, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.html'))
    .map((file) => [
      base +
        file
          .split(sep)
          .join('/')
          .replace(/(^|\/)index\.html$/, '$1'),
      read(join(dist, file)),
    ]),
);

function read(file: string) {
  const html = readFileSync(file, 'utf8').replace(/<script[\s\S]*?<\/script>/g, '');
  const attributes = (pattern: RegExp) =>
    [...html.matchAll(pattern)].map((match) => unescaped(match[1] ?? ''));
  return {
    name: relative(dist, file),
    ids: new Set(attributes(/\sid="([^"]+)"/g)),
    links: attributes(/\s(?:href|src)="([^"]*)"/g),
  };
}

function unescaped(text: string): string {
  return text.replace(/&#(?:38|x26);|&amp;/g, '&').replace(/&quot;|&#34;/g, '"');
}

/** What is wrong with a link of the page at `path`, as a sentence, or nothing. */
function problem(path: string, link: string): string | undefined {
  const url = new URL(link, `http://site${path}`);
  if (url.host !== 'site' || !url.protocol.startsWith('http')) return undefined;
  const at = decodeURIComponent(url.pathname);
  if (!at.startsWith(base)) return 'leaves the base path';
  const page = pages.get(at);
  if (page === undefined) {
    if (pages.has(`${at}/`)) return 'lacks the slash at its end';
    return existsSync(join(dist, at.slice(base.length))) && !at.endsWith('/') ? undefined : 'leads nowhere';
  }
  const fragment = decodeURIComponent(url.hash.slice(1));
  // A fragment with "=" carries the inputs of a calculator; the part before the colon names it.
  const id = fragment.includes('=') ? (/^([^:=]+):/.exec(fragment)?.[1] ?? '') : fragment;
  return id === '' || page.ids.has(id) ? undefined : `names no part "${id}" of that page`;
}

let links = 0;
const problems: string[] = [];
for (const [path, page] of pages) {
  for (const link of new Set(page.links)) {
    links += 1;
    const wrong = problem(path, link);
    if (wrong !== undefined) problems.push(`${page.name}: ${link} ${wrong}`);
  }
}
for (const line of problems) console.error(line);
console.log(`${links} links on ${pages.size} pages, ${problems.length} wrong`);
process.exitCode = problems.length > 0 ? 1 : 0;
