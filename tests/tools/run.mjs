/** `npm test`: everything but the benchmarks, cheap things first, one closing line. */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { ensureBrowser } from './browser.mjs';

const CACHE = '.cache/tests';
rmSync(CACHE, { recursive: true, force: true });
mkdirSync(CACHE, { recursive: true });
const totals = { passed: 0, failed: 0 };

const node = (args, env = {}) =>
  new Promise((done) => {
    const child = spawn(process.execPath, args, { stdio: 'inherit', env: { ...process.env, ...env } });
    child.on('error', () => done(1));
    child.on('close', (code) => done(code ?? 1));
  });
const bin = (path, ...args) => [`node_modules/${path}`, ...args];

function title(text) {
  console.log(`\n— ${text}`);
}

/** Runs a command that keeps to itself what it has to say until it ends. */
const told = (args) =>
  new Promise((done) => {
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] });
    const parts = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (part) => parts.push(part));
    child.on('error', (error) => done({ ok: false, said: String(error) }));
    child.on('close', (code) => done({ ok: code === 0, said: Buffer.concat(parts).toString('utf8') }));
  });

/** A check that passes or fails as a whole: its commands one after the other, up to the first that fails. */
async function check(name, ...commands) {
  let ok = true;
  const said = [];
  for (const args of commands) {
    const one = await told(args);
    said.push(one.said);
    ok &&= one.ok;
    if (!ok) break;
  }
  totals[ok ? 'passed' : 'failed']++;
  title(name);
  console.log(`${said.join('')}${ok ? 'ok' : 'FAILED'}: ${name}`);
}

/** A runner whose JSON report tells how many passed; a crash that leaves no report counts as one failure. */
async function suite(name, args, report, count, env) {
  title(name);
  const status = await node(args, env);
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
  return suite(name, bin('vitest/vitest.mjs', 'run', '--config', config, '--reporter=dot', '--reporter=json', `--outputFile.json=${report}`), report, (r) => ({ passed: r.numPassedTests, failed: r.numFailedTests + (r.numRuntimeErrorTestSuites ?? 0) }));
};

ensureBrowser();
// Each of the two keeps one processor busy: they run beside each other, and a check tells at its end what it has to say. The build is not
// beside them: it writes what the checks of types read.
await Promise.all([
  check('types', bin('@sveltejs/kit/svelte-kit.js', 'sync'), bin('svelte-check/bin/svelte-check', '--fail-on-warnings', '--threshold', 'warning'), bin('typescript/bin/tsc', '-p', 'tests/core.tsconfig.json')),
  check('borders', bin('dependency-cruiser/bin/dependency-cruise.mjs', 'src', '--config', 'tests/borders.cjs')).then(() => vitest('component', 'tests/component.config.mjs'))
]);
await vitest('node', 'tests/vitest.config.ts');
await check('build', bin('vite/bin/vite.js', 'build'));
await check('size of the first screen', ['tests/tools/size.mjs']);
{
  // Absolute: the runner takes a relative name from its configuration's own folder.
  const report = resolve(CACHE, 'browser.json');
  await suite('browser', bin('@playwright/test/cli.js', 'test', '--config', 'tests/browser/playwright.config.ts'), report, (r) => ({ passed: r.stats.expected + r.stats.flaky, failed: r.stats.unexpected }), { PLAYWRIGHT_JSON_OUTPUT_NAME: report });
}

console.log(`\n${totals.passed} passed, ${totals.failed} failed`);
process.exit(totals.failed === 0 && totals.passed > 0 ? 0 : 1);
