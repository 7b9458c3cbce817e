import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/** Packages whose code, type or drawings reach a browser; what they themselves need comes with them. */
const shipped = [
  'preact',
  'fflate',
  'katex',
  'uqr',
  'yalps',
  '@fontsource-variable/atkinson-hyperlegible-next',
];
/** Needed by a command of a package, not by what is sent to a browser. */
const notShipped = ['commander'];

const folder = 'node_modules/';

function licenceText(root: string, name: string): string {
  const at = join(root, folder, name);
  const file = existsSync(at)
    ? readdirSync(at).find((entry) => /^(?:licen[cs]e|copying)(?:\.(?:md|txt))?$/i.test(entry))
    : undefined;
  return file === undefined
    ? 'The package carries no licence text.'
    : readFileSync(join(at, file), 'utf8').trim();
}

/** The notices as text: our own licence, the full text of what is shipped, a line for what only builds. */
export function noticesOf(root: string): string {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    readonly packages: Readonly<Record<string, Locked>>;
  };
  const of = (name: string): Locked => lock.packages[folder + name] ?? {};
  const inPages = new Set<string>();
  const add = (name: string): void => {
    if (inPages.has(name) || notShipped.includes(name)) return;
    inPages.add(name);
    Object.keys(of(name).dependencies ?? {}).forEach(add);
  };
  shipped.forEach(add);
  const building = Object.entries(lock.packages)
    .filter(([path, { dev, optional }]) => path.startsWith(folder) && !dev && !optional)
    .map(([path, one]) => ({ name: path.slice(path.lastIndexOf(folder) + folder.length), ...one }))
    .filter(({ name }) => !inPages.has(name));
  const line = '-'.repeat(72);
  return [
    'Warm Mould',
    '',
    readFileSync(join(root, 'LICENSE'), 'utf8').trim(),
    '',
    'What follows is the work of others that these pages contain, with its licence.',
    ...[...inPages]
      .sort()
      .flatMap((name) => [
        '',
        line,
        `${name} ${of(name).version ?? ''}, ${of(name).license ?? 'licence not stated'}`,
        '',
        licenceText(root, name),
      ]),
    '',
    line,
    'The pages were built with these packages, which are not part of them:',
    '',
    ...[
      ...new Set(
        building.map(
          ({ name, version, license }) => `${name} ${version ?? ''}, ${license ?? 'licence not stated'}`,
        ),
      ),
    ].sort(),
    '',
  ].join('\n');
}
