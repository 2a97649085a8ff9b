import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { browserPath, LAUNCH_ARGS } from '../tools/browser.mjs';

/** Journeys through the built page, on a laptop and on a phone. `npm test` builds before; PAGE_URL tests a page that is served already. */
const PORT = Number(process.env['PORT'] ?? 4273);
const served = process.env['PAGE_URL'];
const executablePath = browserPath();
const report = process.env['PLAYWRIGHT_JSON_OUTPUT_NAME'];

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  fullyParallel: true,
  // A journey waits for much: there are half as many again as processors.
  workers: Math.ceil(1.5 * availableParallelism()),
  retries: 0,
  // A busy machine is no fault of the page: what never comes is waited for a little longer, what comes late is no failure.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  forbidOnly: Boolean(process.env['CI']),
  reporter: report ? [['line'], ['json']] : [['line']],
  use: {
    actionTimeout: 20_000,
    // A language without a region: units are then metric, whatever machine this is.
    locale: 'en',
    // What the service worker answers is seen by no route and no watch: it is let in where it is what is tested.
    serviceWorkers: 'block',
    baseURL: served ?? `http://127.0.0.1:${PORT}/`,
    launchOptions: { args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) }
  },
  projects: [
    { name: 'laptop', grepInvert: /@phone\b/, use: { browserName: 'chromium', viewport: { width: 1440, height: 940 } } },
    { name: 'phone', grepInvert: /@laptop\b/, use: { browserName: 'chromium', viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 } }
  ],
  ...(served
    ? {}
    : {
        webServer: {
          command: `node tests/tools/serve-packed.mjs ${PORT}`,
          cwd: fileURLToPath(new URL('../..', import.meta.url)),
          url: `http://127.0.0.1:${PORT}/`,
          reuseExistingServer: false
        }
      })
});
