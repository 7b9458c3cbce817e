/**
 * `npm run -s bench:build [-- times…]`: what it costs to build the site at once, four and sixteen times its lessons,
 * as made copies in a folder of its own. Counts seconds of the processor, since a clock counts whatever else the
 * machine does, and says what each page more has cost since the line above; a straight line is wanted. It takes many
 * minutes, so it is no part of `npm run bench`.
 */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Every Node of the build adds the seconds it took to this file as it ends. */
const counter = (file: string): string =>
  `--import=data:text/javascript,${encodeURIComponent(
    `import { appendFileSync } from 'node:fs';
    process.on('exit', () => {
      const { user, system } = process.cpuUsage();
      appendFileSync(${JSON.stringify(file)}, (user + system) / 1e6 + '\\n');
    });`,
  ).replaceAll("'", '%27')}`;

const secondsIn = (file: string): number =>
  existsSync(file)
    ? readFileSync(file, 'utf8')
        .split('\n')
        .reduce((sum, line) => sum + Number(line), 0)
    : Number.NaN;

const root = fileURLToPath(new URL('../../', import.meta.url));
const times = process.argv.slice(2).map(Number);
/** Lessons are the heaviest pages, so these are what is multiplied. */
const folder = 'content/lessons';
let last: { readonly pages: number; readonly seconds: number } | undefined;

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
  const counts = join(copy, 'seconds.txt');
  const { status, stdout, stderr } = spawnSync('npm', ['run', '-s', 'build'], {
    cwd: copy,
    encoding: 'utf8',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_OPTIONS: counter(counts) },
  });
  const seconds = secondsIn(counts);
  const pages = Number(/(\d+) page\(s\) built/.exec(stdout)?.[1] ?? Number.NaN);
  const each = (of: number, by: number): string => `${((1000 * of) / by).toFixed(0)} ms`;
  const more = last ? `, ${each(seconds - last.seconds, pages - last.pages)} for each page more` : '';
  console.log(
    status === 0
      ? `${String(factor).padStart(3)} ×  ${pages} pages  ${seconds.toFixed(1)} s of the processor  ${each(seconds, pages)} a page${more}`
      : `${factor} × did not build: ${stderr.slice(-300)}${stdout.slice(-300)}`,
  );
  if (status === 0) last = { pages, seconds };
  rmSync(copy, { recursive: true });
}
