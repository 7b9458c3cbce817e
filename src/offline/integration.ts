import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { writeOffline } from './write.ts';

/**
 * After the build: the list of files a device may keep, and the worker that serves them. `SITE_OFFLINE=stop`
 * writes the ones that take every kept copy away instead.
 */
export function offline(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': ({ dir }) =>
        writeOffline(fileURLToPath(dir), { stop: process.env['SITE_OFFLINE'] === 'stop' }),
    },
  };
}
