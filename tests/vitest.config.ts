import { defineConfig } from 'vitest/config';

/** Tests that need no browser. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    name: 'node',
    environment: 'node',
    include: ['tests/{unit,published,property,scenes,cli}/**/*.test.ts'],
    testTimeout: 30_000
  }
});
