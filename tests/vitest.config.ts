import { defineConfig } from 'vitest/config';

/** What has no state of its own: its tests share a process, so that the engine is read once and not for every file. */
const STATELESS = ['tests/unit/{core,job,words}/**/*.test.ts', 'tests/{property,scenes}/**/*.test.ts'];

/** Tests that need no browser. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    environment: 'node',
    // A worker waits while the commands it starts run: one for each processor, none kept free.
    maxWorkers: '100%',
    // A busy machine is no fault of what is tested.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    // Golden files are written anew only on demand.
    update: process.env['UPDATE_GOLDEN'] === '1',
    projects: [
      { extends: true, test: { name: 'engine', isolate: false, include: STATELESS } },
      { extends: true, test: { name: 'node', include: ['tests/{unit,published}/**/*.test.ts'], exclude: STATELESS } },
      { extends: true, test: { name: 'command', include: ['tests/{cli,measured}/**/*.test.ts'], globalSetup: 'tests/support/build-command.ts' } }
    ]
  }
});
