/**
 * `npm run fuzz -- [--runs 100000] [--seed 1] [--door name] …`: gives every door that many inputs made from real files, on all cores. Ends with 1
 * where an input made a door throw, hang, take longer than a second, change a prototype, or refuse without a reason; the input is kept as a file.
 */
import { fork } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
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
await build({ configFile: false, logLevel: 'error', build: { ssr: true, outDir, emptyOutDir: true, target: 'node20', minify: false, rolldownOptions: { input: { child: 'tests/fuzz/child.ts', doors: 'tests/fuzz/doors.ts', lots: 'tests/fuzz/lots.ts' }, output: { entryFileNames: '[name].mjs' } } } });
const load = (name) => import(pathToFileURL(`${outDir}/${name}.mjs`));
const [{ DOORS }, { LOT }] = await Promise.all([load('doors'), load('lots')]);
const known = DOORS.map((d) => d.name);
const names = values.door ?? known;
for (const name of names)
  if (!known.includes(name)) {
    console.error(`There is no door ${name}. There are: ${known.join(', ')}.`);
    process.exit(2);
  }

/** An input that is not done for so long hangs. It is long, for a machine may be busy with other things; what one may take of the processor is looked at in `one.ts`. */
const SILENT_MS = 60_000;
const TOLD = 5;
const began = performance.now();
const seconds = (since = began) => ((performance.now() - since) / 1000).toFixed(0);
const lots = names.flatMap((door) => Array.from({ length: Math.ceil(runs / LOT) }, (_, lot) => ({ door, seed, lot, from: 0, runs })));
const all = lots.length;
const left = new Map(names.map((name) => [name, Math.ceil(runs / LOT)]));
const seen = new Map(names.map((name) => [name, { given: 0, taken: 0, wrong: 0, slowest: 0, begin: null }]));
const total = { given: 0, wrong: 0, slowest: 0 };

function note(lot, { given, taken, slowestMs, wrong }, whole) {
  const s = seen.get(lot.door);
  s.given += given;
  s.taken += taken;
  s.slowest = Math.max(s.slowest, slowestMs);
  for (const line of wrong.slice(0, Math.max(0, TOLD - s.wrong))) console.log(`${lot.door}: ${line}`);
  s.wrong += wrong.length;
  if (!whole) return;
  left.set(lot.door, left.get(lot.door) - 1);
  if (left.get(lot.door) > 0) return;
  console.log(`${lot.door}: ${s.given} inputs, ${s.taken} taken, ${s.wrong} wrong, slowest ${s.slowest.toFixed(0)} ms, ${seconds(s.begin)} s`);
  total.given += s.given;
  total.wrong += s.wrong;
  total.slowest = Math.max(total.slowest, s.slowest);
}

/** One process after another, until no lot is left: one that hangs or dies is told with its last input, and the rest of its lot goes to the next. */
async function work(core) {
  const place = `${outDir}/place-${core}`;
  for (let more = true; more; )
    more = await new Promise((end) => {
      const child = fork(`${outDir}/child.mjs`, [place, `${outDir}/found`]);
      let lot = null;
      let beat = { at: -1, since: 0 };
      const at = () => {
        try {
          return readFileSync(place).readInt32LE(0);
        } catch {
          return -1;
        }
      };
      const lost = (why) => {
        clearInterval(watch);
        child.removeAllListeners();
        child.kill('SIGKILL');
        if (lot) {
          const i = at();
          note(lot, { given: Math.max(0, i + 1 - lot.from), taken: 0, slowestMs: 0, wrong: [`${why}\n  the input: seed ${lot.seed}, lot ${lot.lot}, number ${i}`] }, false);
          lots.unshift({ ...lot, from: i + 1 });
        }
        end(true);
      };
      // Progress is an input further on, not a lot: on a busy machine a lot may take long.
      const watch = setInterval(() => {
        const now = at();
        if (now !== beat.at || !lot) beat = { at: now, since: performance.now() };
        else if (performance.now() - beat.since > SILENT_MS) lost(`no answer for ${SILENT_MS} ms`);
      }, 500);
      child.on('message', (done) => {
        if (done !== 'ready') note(lot, done, true);
        lot = lots.shift() ?? null;
        beat = { at: -1, since: performance.now() };
        if (lot) {
          seen.get(lot.door).begin ??= performance.now();
          return child.send(lot);
        }
        clearInterval(watch);
        child.removeAllListeners();
        child.send(null);
        end(false);
      });
      child.on('exit', (code, signal) => lost(`the process ended with ${signal ?? code}`));
    });
}

mkdirSync(outDir, { recursive: true });
const progress = setInterval(() => console.error(`${seconds()} s: ${(100 * (1 - lots.length / all)).toFixed(0)} % of all lots, now at ${lots[0]?.door ?? 'the last'}`), 30_000);
const cores = availableParallelism();
await Promise.all(Array.from({ length: Math.min(cores, all) }, (_, core) => work(core)));
clearInterval(progress);
console.log(`${names.length} doors, ${total.given} inputs, ${total.wrong} wrong, slowest ${total.slowest.toFixed(0)} ms, ${seconds()} s on ${cores} cores`);
process.exit(total.wrong === 0 ? 0 : 1);
