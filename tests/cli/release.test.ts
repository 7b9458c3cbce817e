import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { noticesOf } from '../../src/cli/notices.ts';
import { releaseOf } from '../../src/cli/release.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'release-'));
mkdirSync(join(folder, 'site/lessons'), { recursive: true });
writeFileSync(join(folder, 'site/index.html'), '<h1>Home</h1>');
writeFileSync(join(folder, 'site/404.html'), '<h1>No such page</h1>');
writeFileSync(join(folder, 'site/lessons/index.html'), '<h1>Lessons</h1>');
writeFileSync(join(folder, 'secret.txt'), 'not for reading');
afterAll(() => {
  rmSync(folder, { recursive: true });
});

describe('the release', () => {
  it('holds the site and what goes with it, the same bytes every time', () => {
    const made = releaseOf(join(folder, 'site'), { 'README.txt': 'Read me.' });
    expect(Object.keys(unzipSync(made)).sort()).toEqual([
      'README.txt',
      'site/404.html',
      'site/index.html',
      'site/lessons/index.html',
    ]);
    expect(releaseOf(join(folder, 'site'), { 'README.txt': 'Read me.' })).toEqual(made);
  });

  it('names every package that reaches a browser, with its licence text', () => {
    const notices = noticesOf(root);
    for (const name of ['preact', 'katex', 'fflate', 'uqr', 'yalps', 'heap'])
      expect(notices).toMatch(new RegExp(`^${name} \\d`, 'm'));
    expect(notices).toContain('SIL OPEN FONT LICENSE');
    expect(notices).not.toContain('licence not stated');
    expect(notices).not.toContain('carries no licence text');
  });
});

describe('the small server in it', () => {
  it('serves the folder, its own 404 page, and nothing outside', async () => {
    cpSync(join(root, 'src/cli/stick.js'), join(folder, 'serve.js'));
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    const server = spawn(process.execPath, [join(folder, 'serve.js')], {
      env: { ...process.env, PORT: '0' },
    });
    try {
      const address = await new Promise<string>((resolve, reject) => {
        server.stdout.on('data', (data: Buffer) => {
          resolve(/http:\S+/.exec(String(data))?.[0] ?? '');
        });
        server.on('error', reject);
      });
      const asked = async (path: string) => {
        const answer = await fetch(address + path);
        return [answer.status, await answer.text()];
      };
      expect(await asked('')).toEqual([200, '<h1>Home</h1>']);
      expect(await asked('lessons/')).toEqual([200, '<h1>Lessons</h1>']);
      expect(await asked('nowhere/')).toEqual([404, '<h1>No such page</h1>']);
      for (const path of ['..%2fsecret.txt', '%2e%2e/secret.txt', '%zz'])
        expect((await asked(path))[0], path).toBe(404);
    } finally {
      server.kill();
    }
  });
});
