import { defineConfig } from 'vitest/config';

/** The tests of the engine alone, for mutation. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: { environment: 'node', include: ['tests/unit/core/**/*.test.ts', 'tests/published/**/*.test.ts', 'tests/property/**/*.test.ts'], testTimeout: 60_000 }
});
