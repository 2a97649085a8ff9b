/** `npm run bench [name …]`: bundles each benchmark as the page is bundled, and runs it. */
import { spawnSync } from 'node:child_process';
import { build } from 'vite';

const ALL = ['evaluate', 'compare', 'fitting', 'spray', 'spray-search', 'spray-worker', 'table', 'table-draws', 'drag', 'phone', 'strategies'];
const wanted = process.argv.slice(2).length > 0 ? process.argv.slice(2) : ALL;
for (const name of wanted) {
  if (!ALL.includes(name)) {
    console.error(`There is no benchmark ${name}. There are: ${ALL.join(', ')}.`);
    process.exit(2);
  }
  const outDir = `.cache/bench/${name}`;
  await build({ configFile: false, logLevel: 'error', build: { ssr: `tests/bench/${name}.ts`, outDir, emptyOutDir: true, target: 'node20', minify: false, rolldownOptions: { output: { entryFileNames: `${name}.mjs` } } } });
  const { status } = spawnSync(process.execPath, ['--expose-gc', `${outDir}/${name}.mjs`], { stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
