import { defineConfig } from 'vitest/config';

/** The tests of the engine alone, for mutation; the laws over thousands of cases would take a day. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: { environment: 'node', isolate: false, include: ['tests/unit/core/**/*.test.ts', 'tests/published/**/*.test.ts'], testTimeout: 60_000 }
});
