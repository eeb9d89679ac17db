import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

/** Browser journeys and tests of the running server, against the built pages. Nothing is retried; one worker, since a shop has state. */
const top = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  testDir: 'e2e',
  outputDir: `${top}test-results/e2e`,
  globalSetup: './e2e/support/global-setup.ts',
  forbidOnly: true,
  retries: 0,
  workers: 1,
  fullyParallel: false,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['line'], ['json', { outputFile: `${top}test-results/e2e.json` }]],
  use: {
    browserName: 'chromium',
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(process.env.CHROMIUM ? { executablePath: process.env.CHROMIUM } : {}),
      chromiumSandbox: false,
      args: [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
