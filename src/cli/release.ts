/**
 * `npm run -s release`: the built site, a small server for it and the notices as one archive in `release/`, and a
 * file of checksums beside it. Build first. The same build gives the same bytes.
 */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync, type Zippable } from 'fflate';
import { noticesOf } from './notices.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const dist = join(root, 'dist');

const readme = `Warm Mould, to run from a folder, a stick or any static host.

On this machine, with Node 20 or newer:   node serve.js
With Python instead:                       python3 -m http.server --directory site 4321
On a host: put what is in "site" where the host serves files from.

Opening site/index.html by a double click shows the lessons, but a browser runs no calculators from a file.
SHA256SUMS beside the archive: sha256sum -c SHA256SUMS (or: shasum -a 256 -c SHA256SUMS) says whether it is whole.
notices.txt holds the licences.
`;

/** Times in an archive are those of the oldest a zip can hold, so that the same files make the same archive. */
const mtime = new Date(1980, 0, 2);

export function releaseOf(folder: string, more: Readonly<Record<string, string>>): Uint8Array {
  const files: Zippable = {};
  const put = (name: string, bytes: Uint8Array): void => {
    // Pictures and archives are packed already.
    const level = /\.(?:png|jpg|webp|woff2|zip|pdf)$/.test(name) ? 0 : 9;
    files[name] = [bytes, { level, mtime }];
  };
  for (const name of Object.keys(more).sort()) put(name, new TextEncoder().encode(more[name]));
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    const path = join(folder, name);
    if (statSync(path).isFile()) put(`site/${name.split(sep).join('/')}`, new Uint8Array(readFileSync(path)));
  }
  return zipSync(files);
}

function release(): number {
  if (!existsSync(dist)) {
    console.error('There is no site to release yet; run npm run build first.');
    return 1;
  }
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    readonly version: string;
  };
  const bytes = releaseOf(dist, {
    'README.txt': readme,
    'serve.js': readFileSync(join(root, 'src/cli/stick.js'), 'utf8'),
    'package.json': '{ "type": "module", "private": true }\n',
    'notices.txt': noticesOf(root),
  });
  const name = `warm-mould-${version}.zip`;
  const sum = createHash('sha256').update(bytes).digest('hex');
  mkdirSync(join(root, 'release'), { recursive: true });
  writeFileSync(join(root, 'release', name), bytes);
  writeFileSync(join(root, 'release', 'SHA256SUMS'), `${sum}  ${name}\n`);
  console.log(`release/${name}, ${(bytes.length / 1e6).toFixed(1)} MB\n${sum}`);
  return 0;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.exitCode = release();
