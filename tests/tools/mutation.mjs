/**
 * `npm run mutation -- [part …] [--every N] [--seed S] [--files REGEX] [--jobs J]`: changes the engine's code a little at a time and counts
 * the changes that its tests notice. Each part of the engine has the tests that are its own, so that a change is tried against few of them.
 * `--every N` tries a seeded sample, one of N pieces of fifteen lines; the whole takes hours. Ends with the score; under 80 % it fails.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join, sep } from 'node:path';
import { parseArgs } from 'node:util';

const LEAST = 80;
const PIECE = 15;
const unit = (names) => [`tests/unit/core/${names}.test.ts`, 'tests/published/published.test.ts'];
/** Files of a part below `src/core`, the first part that names a file has it; and its tests. */
const PARTS = {
  spray: { files: /^(spray\/|air\/(jet|wind)\.ts)/, tests: [...unit('{air*,spray/*}'), 'tests/published/**/*.test.ts'] },
  fitting: { files: /^fitting\//, tests: unit('fitting/*') },
  laser: { files: /^canopy\/laser\//, tests: unit('laser') },
  check: { files: /^check\//, tests: unit('check/*') },
  mix: { files: /^(mix|record)\//, tests: unit('{loads,mix/*,record/*}') },
  sprayer: { files: /^sprayer\//, tests: unit('{sprayer,evaluate,findings,sprayer/*}') },
  base: { files: /^/, tests: unit('{air-weather,canopy,dose,evaluate,evergreen,expressions,findings,independent,plain,units,working}') }
};
const partOf = (file) => Object.keys(PARTS).find((part) => PARTS[part].files.test(file.slice('src/core/'.length)));
/** Types, works and the registry of assumptions: nothing in them runs. */
const STILL = /\/(types|state|assumptions)\.ts$|^src\/core\/(sources\/|setting\/(document|result)\.ts)/;

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: { every: { type: 'string', default: '1' }, seed: { type: 'string', default: '1' }, files: { type: 'string', default: '' }, jobs: { type: 'string', default: '2' } }
});
const whole = (name) => {
  const n = Number(options[name]);
  if (!Number.isInteger(n) || n < 1) fail(`--${name} ${options[name]}: a whole number from 1 on is wanted.`);
  return n;
};
const [every, seed, jobs] = [whole('every'), whole('seed'), whole('jobs')];
const parts = positionals.length > 0 ? positionals : Object.keys(PARTS);
for (const part of parts) if (!(part in PARTS)) fail(`${part}: the parts are ${Object.keys(PARTS).join(', ')}.`);
// The run rewrites the sources in place and puts them back at its end: what is not committed could be lost.
if (spawnSync('git', ['diff', '--quiet', 'HEAD', '--', 'src']).status !== 0) fail('src has changes that are not committed. Commit them first: the run rewrites src while it lasts.');

const files = readdirSync('src/core', { recursive: true })
  .map((file) => join('src/core', file).split(sep).join('/'))
  .filter((file) => file.endsWith('.ts') && !STILL.test(file) && new RegExp(options.files).test(file))
  .sort();
const totals = { noticed: 0, all: 0 };
for (const part of parts) {
  const mutate = piecesOf(files.filter((file) => partOf(file) === part));
  if (mutate.length === 0) continue;
  rmSync('reports/mutation.json', { force: true });
  spawnSync(process.execPath, ['node_modules/@stryker-mutator/core/bin/stryker.js', 'run', 'tests/mutation.json', '--concurrency', String(jobs), '-m', mutate.join(',')], {
    stdio: 'inherit',
    env: { ...process.env, MUTATION_TESTS: JSON.stringify(PARTS[part].tests) }
  });
  count(part);
}
if (totals.all === 0) fail('Nothing to change: no code is in these files or pieces.');
const score = report('together', totals);
process.exit(score >= LEAST ? 0 : 1);

/** All of the files, or the pieces that the seed picks. */
function piecesOf(all) {
  if (every === 1) return all;
  let state = seed;
  const chance = () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
  return all.flatMap((file) => {
    const lines = readFileSync(file, 'utf8').split('\n').length;
    const starts = Array.from({ length: Math.ceil(lines / PIECE) }, (_, i) => 1 + i * PIECE);
    return starts.filter(() => chance() < 1 / every).map((from) => `${file}:${from}-${Math.min(from + PIECE - 1, lines)}`);
  });
}

/** Takes the runner's report aside and adds it up. */
function count(part) {
  mkdirSync('reports', { recursive: true });
  const kept = `reports/mutation-${part}.json`;
  try {
    renameSync('reports/mutation.json', kept);
  } catch {
    fail(`${part}: the run left no report.`);
  }
  const tried = Object.values(JSON.parse(readFileSync(kept, 'utf8')).files).flatMap((f) => f.mutants.map((m) => m.status));
  const noticed = tried.filter((s) => s === 'Killed' || s === 'Timeout').length;
  const all = noticed + tried.filter((s) => s === 'Survived' || s === 'NoCoverage').length;
  report(part, { noticed, all });
  totals.noticed += noticed;
  totals.all += all;
}

function report(name, { noticed, all }) {
  const score = all === 0 ? 0 : (100 * noticed) / all;
  console.log(`${name}: ${noticed} of ${all} changes noticed, ${score.toFixed(1)} %`);
  return score;
}

function fail(why) {
  console.error(why);
  process.exit(2);
}
