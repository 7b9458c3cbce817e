import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { sources } from '../calculators/sources.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const text = globSync('{calculators,content,src,tests}/**/*.{ts,tsx,astro,yaml,md,mdx}', { cwd: root })
  .filter((file) => !/[/\\]sources\.ts$|sources\.test\.ts$/.test(file))
  .map((file) => readFileSync(root + file, 'utf8'))
  .join('\n');

it('the bibliography lists no work that nothing relies on', () => {
  const words = new Set(text.match(/[a-z0-9]+(?:-[a-z0-9]+)*/g));
  expect(Object.keys(sources).filter((key) => !words.has(key))).toEqual([]);
});
