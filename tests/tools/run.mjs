/** `npm test`: everything but the benchmarks, cheap things first, one closing line. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureBrowser } from './browser.mjs';

const CACHE = '.cache/tests';
rmSync(CACHE, { recursive: true, force: true });
mkdirSync(CACHE, { recursive: true });
const totals = { passed: 0, failed: 0 };

const node = (args, env = {}) => spawnSync(process.execPath, args, { stdio: 'inherit', env: { ...process.env, ...env } }).status ?? 1;
const bin = (path, ...args) => [`node_modules/${path}`, ...args];

function title(text) {
  console.log(`\n— ${text}`);
}

/** A check that passes or fails as a whole. */
function check(name, ...commands) {
  title(name);
  const ok = commands.every((args) => node(args) === 0);
  totals[ok ? 'passed' : 'failed']++;
  console.log(`${ok ? 'ok' : 'FAILED'}: ${name}`);
}

/** A runner whose JSON report tells how many passed; a crash that leaves no report counts as one failure. */
function suite(name, args, report, count, env) {
  title(name);
  const status = node(args, env);
  let passed = 0;
  let failed = 0;
  try {
    ({ passed, failed } = count(JSON.parse(readFileSync(report, 'utf8'))));
  } catch {
    failed = 1;
  }
  if (status !== 0 && failed === 0) failed = 1;
  totals.passed += passed;
  totals.failed += failed;
  console.log(`${name}: ${passed} passed, ${failed} failed`);
}

const vitest = (name, config) => {
  const report = `${CACHE}/${name}.json`;
  suite(name, bin('vitest/vitest.mjs', 'run', '--config', config, '--reporter=dot', '--reporter=json', `--outputFile.json=${report}`), report, (r) => ({ passed: r.numPassedTests, failed: r.numFailedTests + (r.numRuntimeErrorTestSuites ?? 0) }));
};

check('types', bin('@sveltejs/kit/svelte-kit.js', 'sync'), bin('svelte-check/bin/svelte-check', '--fail-on-warnings', '--threshold', 'warning'), bin('typescript/bin/tsc', '-p', 'tests/core.tsconfig.json'));
check('borders', bin('dependency-cruiser/bin/dependency-cruise.mjs', 'src', '--config', 'tests/borders.cjs'));
vitest('node', 'tests/vitest.config.ts');
ensureBrowser();
check('build', bin('vite/bin/vite.js', 'build'));
check('size of the first screen', ['tests/tools/size.mjs']);
vitest('component', 'tests/component.config.mjs');
{
  // Absolute: the runner takes a relative name from its configuration's own folder.
  const report = resolve(CACHE, 'browser.json');
  suite('browser', bin('@playwright/test/cli.js', 'test', '--config', 'tests/browser/playwright.config.ts'), report, (r) => ({ passed: r.stats.expected + r.stats.flaky, failed: r.stats.unexpected }), { PLAYWRIGHT_JSON_OUTPUT_NAME: report });
}

console.log(`\n${totals.passed} passed, ${totals.failed} failed`);
process.exit(totals.failed === 0 && totals.passed > 0 ? 0 : 1);
