import { defineConfig } from 'vitest/config';

/** Tests that need no browser. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    name: 'node',
    environment: 'node',
    include: ['tests/{unit,published,property,scenes,cli,measured}/**/*.test.ts'],
    testTimeout: 30_000,
    // Golden files are written anew only on demand.
    update: process.env['UPDATE_GOLDEN'] === '1'
  }
});
