/** `npm run weights`: what script each built page asks for before anything is pressed, against its budget. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { scriptBudget } from './script.ts';

const dist = fileURLToPath(new URL('../../dist/', import.meta.url));
const base = `/${(process.env['SITE_BASE'] ?? '').split('/').filter(Boolean).join('/')}/`.replace('//', '/');

if (!existsSync(dist)) throw new Error('There is no site to weigh; run npm run build first.');

/** Of a file of script: its compressed bytes, and the files it cannot run without. */
const weighed = new Map<string, { bytes: number; needs: readonly string[] }>();

function weigh(file: string): { bytes: number; needs: readonly string[] } {
  const known = weighed.get(file);
  if (known) return known;
  const text = readFileSync(join(dist, file));
  const imports = text
    .toString()
    .matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[^"'();]*?from)?\s*["']([^"']+)["']/g);
  const found = {
    bytes: compressed(text),
    needs: [...imports].map(([, needed = '']) => posix.join(dirname(file), needed)),
  };
  weighed.set(file, found);
  return found;
}

function compressed(bytes: Buffer): number {
  return gzipSync(bytes, { level: 9 }).length;
}

/** Islands that wake by themselves or when they are seen belong to the first load; those that wait for a hand do not. */
function filesOf(html: string): string[] {
  const islands = [...html.matchAll(/<astro-island\b[^>]*/g)].map(([tag]) => tag);
  const waking = islands.filter(
    (tag) =>
      !tag.includes('client="reach"') || /&quot;value&quot;:&quot;visible&quot;/.test(attribute(tag, 'opts')),
  );
  const outside = [...html.matchAll(/<script\b[^>]*\bsrc="[^"]*"[^>]*/g)].map(([tag]) =>
    attribute(tag, 'src'),
  );
  return [
    ...outside,
    ...waking.flatMap((tag) => [attribute(tag, 'component-url'), attribute(tag, 'renderer-url')]),
  ]
    .filter((url) => url.startsWith(base))
    .map((url) => url.slice(base.length));
}

function attribute(tag: string, name: string): string {
  return new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
}

/** Compressed kilobytes of a page, inline script included. */
function kilobytes(html: string): number {
  const wanted = filesOf(html);
  const reached = new Set<string>();
  for (let file = wanted.pop(); file !== undefined; file = wanted.pop()) {
    if (reached.has(file)) continue;
    reached.add(file);
    wanted.push(...weigh(file).needs);
  }
  const inline = [...html.matchAll(/<script\b(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g)].map(
    ([, text]) => text,
  );
  const outside = [...reached].reduce((sum, file) => sum + weigh(file).bytes, 0);
  return (outside + compressed(Buffer.from(inline.join('\n')))) / 1000;
}

const rows = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.html'))
  .map((file) => {
    const path = file
      .split(sep)
      .join('/')
      .replace(/(^|\/)index\.html$/, '$1');
    return { path, size: kilobytes(readFileSync(join(dist, file), 'utf8')), budget: scriptBudget(path) };
  })
  .sort((a, b) => b.size / b.budget - a.size / a.budget);

if (process.argv.includes('--all'))
  for (const { path, size } of rows) console.log(`${size.toFixed(1)} kB  /${path}`);
const over = rows.filter(({ size, budget }) => size > budget);
for (const { path, size, budget } of over) {
  console.error(`/${path} asks for ${size.toFixed(1)} kB of script, ${budget} kB are allowed`);
}
const [fullest] = rows;
console.log(
  `${rows.length} pages weighed, ${over.length} over their budget; fullest: /${fullest?.path ?? ''} ${fullest?.size.toFixed(1) ?? ''} of ${fullest?.budget ?? ''} kB.`,
);
process.exitCode = over.length > 0 ? 1 : 0;
