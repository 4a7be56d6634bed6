import { defineConfig } from '@playwright/test';
import path from 'node:path';
import { launchOptions } from './browser.mjs';

const root = path.resolve(import.meta.dirname, '..');
const LONGEST = ['**/offline.spec.ts', '**/update.spec.ts'];
const PORT = Number(process.env.BARE_TOES_PORT ?? 4631);

export default defineConfig({
  testDir: path.join(root, 'tests/e2e'),
  globalSetup: path.join(import.meta.dirname, 'watch-origins.mjs'),
  // emptied at each start, so a folder of its own
  outputDir: path.join(root, 'test-results/browser'),
  fullyParallel: true,
  workers: 2,
  // long walks over every page: a limit for what hangs, not for a slow machine
  timeout: 180_000,
  expect: { timeout: 15_000 },
  // a second try on a shared machine; what fails twice has failed
  retries: process.env.CI ? 1 : 0,
  forbidOnly: true,
  // the longest first, so that no worker waits for them at the end
  projects: [
    { name: 'kept on the device', testMatch: LONGEST },
    { name: 'pages', testIgnore: LONGEST },
  ],
  reporter: process.env.CI
    ? [['line'], ['json', { outputFile: path.join(root, 'test-results/e2e.json') }]]
    : [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}`,
    viewport: { width: 360, height: 740 },
    hasTouch: true,
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    // filling the offline store takes more than most tests do: only those about it let the worker run
    serviceWorkers: 'block',
    launchOptions: launchOptions(),
  },
  webServer: {
    command: `node ${path.join(root, '.ci/serve.mjs')} ${path.join(root, 'build')} ${PORT} plain`,
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: !process.env.CI,
  },
});
