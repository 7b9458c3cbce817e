import { defineConfig, devices } from '@playwright/test';
import { findBrowser } from './site/browser.ts';

const counted = process.env['WARM_MOULD_COUNTS'];
const browser = await findBrowser();

export default defineConfig({
  testDir: 'site',
  testMatch: '**/*.journey.ts',
  outputDir: '../test-results/journeys',
  fullyParallel: true,
  workers: 2,
  forbidOnly: true,
  // Roomy, so that a slow machine fails nothing: no journey passes or fails on time.
  timeout: 90_000,
  expect: { timeout: 30_000 },
  reporter: counted === undefined ? 'list' : [['line'], ['json', { outputFile: `${counted}/journeys.json` }]],
  use: {
    launchOptions: browser,
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
  },
  projects: [
    { name: 'desk', use: { ...devices['Desktop Chrome'], viewport: { width: 1280, height: 900 } } },
    {
      name: 'phone',
      grepInvert: /@desk/,
      use: { ...devices['Pixel 7'], viewport: { width: 360, height: 780 } },
    },
  ],
});
