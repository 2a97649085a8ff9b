import { copyFile, mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';

const ROOT = join(import.meta.dirname, '../..');

/** The command line as plain modules in `folder`, which lies as deep as the repository's root does for its sources. */
async function make(folder: string): Promise<void> {
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    build: {
      ssr: true,
      outDir: join(folder, 'src'),
      target: 'node20',
      minify: false,
      rolldownOptions: {
        input: ['main.ts', 'table/worker.ts'].map((p) => join(ROOT, 'src/cli', p)),
        output: { preserveModules: true, preserveModulesRoot: join(ROOT, 'src'), entryFileNames: '[name].mjs' }
      }
    }
  });
  await copyFile(join(ROOT, 'package.json'), join(folder, 'package.json'));
}

/**
 * Makes the command once for all tests of a run: reading TypeScript anew at each of some hundred starts takes longer than what is tested.
 * That the command started from its sources, as users start it, does the same is shown in `cli/sources.test.ts`.
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  await mkdir(join(ROOT, '.cache'), { recursive: true });
  const folder = await mkdtemp(join(ROOT, '.cache/command-'));
  await make(folder);
  project.onTestsRerun(() => make(folder));
  process.env['ROWTAILOR_MADE'] = join(folder, 'src/cli/main.mjs');
  return () => rm(folder, { recursive: true, force: true });
}
