/**
 * `npm run -s bench:build`: the time to build the site at once, four and sixteen times its lessons, as
 * made copies in a folder of its own. Says the seconds and the milliseconds a page; a straight line is wanted.
 * It takes many minutes, so it is no part of `npm run bench`.
 */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const times = process.argv.slice(2).map(Number);
/** Lessons are the heaviest pages, so these are what is multiplied. */
const folder = 'content/lessons';

for (const factor of times.length > 0 ? times : [1, 4, 16]) {
  const copy = mkdtempSync(join(tmpdir(), 'build-'));
  for (const name of [
    'astro.config.mjs',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'LICENSE',
    'calculators',
    'content',
    'src',
    'tests',
  ])
    cpSync(join(root, name), join(copy, name), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  const files = readdirSync(join(copy, folder)).filter((name) => name.endsWith('.mdx'));
  const course = join(copy, 'content/course.yaml');
  let order = readFileSync(course, 'utf8');
  for (const name of files) {
    const slug = name.replace('.mdx', '');
    const more = Array.from({ length: factor - 1 }, (_, at) => `${slug}-copy-${at + 1}`);
    // The exercises stay the first lesson's: each has one page.
    const text = readFileSync(join(copy, folder, name), 'utf8').replace(
      /^exercises:.*\n(?:^[ \t]+-? ?.*\n)*/m,
      'exercises: []\n',
    );
    for (const one of more) writeFileSync(join(copy, folder, `${one}.mdx`), text);
    order = order.replace(new RegExp(`^( *- )${slug}$`, 'm'), (line, dash: string) =>
      [line, ...more.map((one) => dash + one)].join('\n'),
    );
  }
  writeFileSync(course, order);
  const start = performance.now();
  const { status, stdout, stderr } = spawnSync('npm', ['run', '-s', 'build'], {
    cwd: copy,
    encoding: 'utf8',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  const seconds = (performance.now() - start) / 1000;
  const pages = Number(/(\d+) page\(s\) built/.exec(stdout)?.[1] ?? Number.NaN);
  console.log(
    status === 0
      ? `${String(factor).padStart(3)} ×  ${pages} pages  ${seconds.toFixed(1)} s  ${((1000 * seconds) / pages).toFixed(0)} ms a page`
      : `${factor} × did not build: ${stderr.slice(-300)}${stdout.slice(-300)}`,
  );
  rmSync(copy, { recursive: true });
}
