import { defineConfig } from 'vitest/config';

/**
 * The tests of the engine alone, for mutation; the laws over thousands of cases would take a day. `tests/tools/mutation.mjs` says which
 * of them belong to the part in hand. They share one process: they change nothing that another could see.
 */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    environment: 'node',
    isolate: false,
    include: JSON.parse(process.env['MUTATION_TESTS'] ?? '["tests/unit/core/**/*.test.ts", "tests/published/**/*.test.ts"]') as string[],
    testTimeout: 60_000
  }
});
