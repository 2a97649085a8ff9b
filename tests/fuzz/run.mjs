/**
 * `npm run fuzz -- [--runs 100000] [--seed 1] [--door name] …`: gives every door that many inputs made from real files. Ends with 1 where an
 * input made a door throw, hang, take longer than a second, change a prototype, or refuse without a reason; the input is kept as a file.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const { values } = parseArgs({ options: { runs: { type: 'string', default: '100000' }, seed: { type: 'string', default: '1' }, door: { type: 'string', multiple: true } } });
const runs = Number(values.runs);
const seed = Number(values.seed);
if (!(Number.isInteger(runs) && runs > 0 && Number.isInteger(seed))) {
  console.error('--runs and --seed are whole numbers.');
  process.exit(2);
}
const outDir = '.cache/fuzz';
await build({ configFile: false, logLevel: 'error', build: { ssr: true, outDir, emptyOutDir: true, target: 'node20', minify: false, rolldownOptions: { input: { worker: 'tests/fuzz/worker.ts', doors: 'tests/fuzz/doors.ts' }, output: { entryFileNames: '[name].mjs' } } } });
const { DOORS } = await import(pathToFileURL(`${outDir}/doors.mjs`));
const names = values.door ?? DOORS.map((d) => d.name);

/** A door that says nothing for so long hangs. */
const SILENT_MS = 10_000;
let bad = 0;
for (const name of names) {
  if (!DOORS.some((d) => d.name === name)) {
    console.error(`There is no door ${name}. There are: ${DOORS.map((d) => d.name).join(', ')}.`);
    process.exit(2);
  }
  const begin = performance.now();
  const seen = { given: 0, taken: 0, slowest: 0, wrong: 0 };
  await new Promise((end) => {
    const worker = new Worker(`./${outDir}/worker.mjs`, { workerData: { name, seed, runs } });
    let last = null;
    let alarm;
    const keep = (wrong) => {
      seen.wrong++;
      bad++;
      if (seen.wrong > 5 || !last) return;
      mkdirSync(`${outDir}/found`, { recursive: true });
      const path = `${outDir}/found/${name.replaceAll(' ', '-')}-${seed + last.lot}-${last.i}`;
      writeFileSync(path, last.bytes);
      console.log(`${name}: ${wrong.split('\n').slice(0, 4).join(' ')}\n  the input: ${path}`);
    };
    const stop = () => (clearTimeout(alarm), void worker.terminate().then(end));
    const wait = () => {
      clearTimeout(alarm);
      alarm = setTimeout(() => (keep(`no answer for ${SILENT_MS} ms`), stop()), SILENT_MS);
    };
    wait();
    worker.on('message', (m) => {
      if (m.kind === 'end') return stop();
      if (m.kind === 'given') {
        last = m;
        seen.given++;
        return wait();
      }
      if (m.taken) seen.taken++;
      seen.slowest = Math.max(seen.slowest, m.ms);
      if (m.wrong) keep(m.wrong);
    });
    worker.on('error', (e) => (keep(String(e.stack ?? e)), stop()));
  });
  console.log(`${name}: ${seen.given} inputs, ${seen.taken} taken, ${seen.wrong} wrong, slowest ${seen.slowest.toFixed(0)} ms, ${((performance.now() - begin) / 1000).toFixed(0)} s`);
}
process.exit(bad === 0 ? 0 : 1);
