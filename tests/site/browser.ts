import { createReadStream, existsSync, mkdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createBrotliDecompress } from 'node:zlib';
import { chromium } from '@playwright/test';

export interface Browser {
  readonly executablePath: string;
  readonly args: string[];
  readonly env?: Record<string, string>;
}

const installed = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** A browser in the sandbox of its own where it may; root has none to give. */
const args = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

/** The browser of the journeys: the one named, else Playwright's, else the packaged one, else the system's. */
export async function findBrowser(): Promise<Browser> {
  const named = process.env['WARM_MOULD_CHROMIUM'];
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return { executablePath: named, args };
    throw new Error(`WARM_MOULD_CHROMIUM names ${named}, and there is no such file.`);
  }
  const own = chromium.executablePath();
  if (own !== '' && existsSync(own)) return { executablePath: own, args };
  const packaged = await packagedBrowser();
  if (packaged !== undefined) return packaged;
  const system = installed.find((path) => existsSync(path));
  if (system !== undefined) return { executablePath: system, args };
  throw new Error(
    'The journeys need a Chromium: install one from your system’s packages, or run "npm exec -- playwright install chromium", or set WARM_MOULD_CHROMIUM to the path of one.',
  );
}

/** The npm-shipped Chromium runs on Linux x64 only, and needs the libraries packed beside it. */
async function packagedBrowser(): Promise<Browser | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  try {
    const { default: shipped } = await import('@sparticuz/chromium');
    const executablePath = await shipped.executablePath();
    const libraries = await unpackLibraries();
    const path = [libraries, process.env['LD_LIBRARY_PATH']].filter(Boolean).join(':');
    return { executablePath, args: ['--no-sandbox'], env: { ...cleanEnvironment(), LD_LIBRARY_PATH: path } };
  } catch (error) {
    console.warn(`The packaged Chromium could not be unpacked: ${String(error)}`);
    return undefined;
  }
}

async function unpackLibraries(): Promise<string> {
  const folder = join(tmpdir(), 'al2023');
  if (!existsSync(join(folder, 'lib'))) {
    const require = createRequire(import.meta.url);
    const entry = require.resolve('@sparticuz/chromium');
    const { extract } = createRequire(entry)('tar-fs') as { extract: (to: string) => NodeJS.WritableStream };
    mkdirSync(folder, { recursive: true });
    const packed = join(dirname(entry), '../bin/al2023.tar.br');
    await pipeline(createReadStream(packed), createBrotliDecompress(), extract(folder));
  }
  return join(folder, 'lib');
}

function cleanEnvironment(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}
