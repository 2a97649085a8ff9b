import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { browserPath, LAUNCH_ARGS } from './tools/browser.mjs';

/** Components in a real browser. */
const executablePath = browserPath();
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  plugins: [svelte()],
  optimizeDeps: { include: ['vitest-browser-svelte', 'idb', 'zod/mini', 'd3-array', 'd3-contour', 'd3-scale', 'd3-shape', 'hyparquet', 'hyparquet-compressors', 'hyparquet-writer', 'jsep', 'papaparse'] },
  test: {
    name: 'component',
    include: ['tests/component/**/*.test.ts'],
    // A busy machine is no fault of the page.
    expect: { poll: { timeout: 8_000 } },
    browser: {
      enabled: true,
      headless: true,
      screenshotFailures: false,
      provider: playwright({ launchOptions: { args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) } }),
      instances: [{ browser: 'chromium', viewport: { width: 1024, height: 768 } }]
    }
  }
});
