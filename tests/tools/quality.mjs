/**
 * `npm run quality [-- name …]`: runs what gives each figure of docs/quality.md and writes the page anew. With names only those are run, and the
 * others keep the figure and the day that they had. What takes long (`npm test`, the full fuzz, two hundred kills) is run where it is named.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, cpus } from 'node:os';

const KEPT = 'docs/quality.json';
const last = (text, n = 1) => text.trim().split('\n').slice(-n);
const lines = (pattern) => (text) => text.split('\n').filter((l) => pattern.test(l)).map((l) => l.trim().replace(/ {2,}/g, ' '));

/** What the page promises, the command that shows it, and which of its words are the figure. */
const FIGURES = {
  size: { asked: 'First screen: at most 74 kB of JavaScript, compressed; all of it in the page itself', command: 'node tests/tools/size.mjs', take: last },
  phone: { asked: 'Poor phone (processor ÷ 6), cold: section usable within 3 s on a slow network; from a press to what it shows under 100 ms at p98', command: 'npm run bench phone', take: lines(/^phone,/) },
  lighthouse: { asked: 'Audit: 100 in performance, accessibility, best practices', command: 'npm run lighthouse', take: lines(/^(performance|accessibility|best-practices):/) },
  drag: { asked: 'A drag redraws within a frame (16.7 ms)', command: 'npm run bench drag', take: lines(/drag,|style and layout/) },
  strategies: { asked: 'Sliders and 10 000 rows of the Strategies station within a frame', command: 'npm run bench strategies', take: lines(/p50/) },
  table: { asked: 'A million canopies × all strategies in under 5 s on two cores and under 300 MB', command: 'npm run bench table', take: lines(/lines\/s|peak|canopies|plain/) },
  draws: { asked: '10 000 canopies × 1 000 draws in under 10 s', command: 'npm run bench table-draws', take: lines(/\d/) },
  fuzz: { asked: 'Every door takes or refuses 100 000 hostile inputs: never a throw, a hang, a second, a changed prototype', command: 'npm run fuzz', long: true, take: lines(/inputs, /) },
  crash: { asked: 'Browser killed 200 times: the last acknowledged save is there and opens', command: 'npm run crash', long: true, take: (t) => last(t, 2) },
  tests: { asked: 'Everything else: laws, published cases, journeys, barriers (axe) in every station and theme, languages, frozen files', command: 'npm test', long: true, take: last },
  audit: { asked: 'No known weakness in what is installed', command: 'npm audit', take: (t) => (/found 0|vulnerabilit/.test(t) ? lines(/vulnerabilit/)(t) : ['the registry gave no answer to the question']) }
};

const names = process.argv.slice(2);
for (const name of names)
  if (!Object.hasOwn(FIGURES, name)) {
    console.error(`There is no figure ${name}. There are: ${Object.keys(FIGURES).join(', ')}.`);
    process.exit(2);
  }
const kept = existsSync(KEPT) ? JSON.parse(readFileSync(KEPT, 'utf8')) : {};
for (const [name, { command, long, take }] of Object.entries(FIGURES)) {
  if (names.length > 0 ? !names.includes(name) : long) continue;
  console.log(`— ${command}`);
  const { stdout, stderr, status } = spawnSync('sh', ['-c', command], { encoding: 'utf8', maxBuffer: 1 << 28 });
  const told = take(`${stdout}\n${name === 'audit' ? stderr : ''}`);
  kept[name] = { told: told.length > 0 ? told : [`it ended with ${status} and no figure`], on: new Date().toISOString().slice(0, 10) };
  for (const line of kept[name].told) console.log(`  ${line}`);
}
writeFileSync(KEPT, `${JSON.stringify(kept, null, 2)}\n`);

const cell = (text) => text.replaceAll('|', '\\|');
const rows = Object.entries(FIGURES).map(([name, { asked, command }]) => {
  const k = kept[name];
  return `| ${cell(asked)} | ${k ? k.told.map(cell).join('<br>') : 'not measured yet'} | \`${command}\` | ${k?.on ?? ''} |`;
});
writeFileSync(
  'docs/quality.md',
  `# Figures of quality

Written by \`npm run quality\`; do not edit. Times are those of one machine with ${availableParallelism()} cores (${cpus()[0]?.model.trim() ?? 'unknown'}), not always quiet: a figure is what was seen, not a promise. What is asked stands beside it, whether it was met or not.

| asked | seen | command | on |
| --- | --- | --- | --- |
${rows.join('\n')}
`
);
