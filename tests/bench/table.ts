/**
 * `rowtailor table` as a whole process, start included: wall and processor seconds and the most memory it held; the usual figures and every
 * strategy, CSV and Parquet in and out, and beside them a plain script that makes the usual table row by row. Processor seconds are those of
 * all threads: on a machine that is not busy, two cores take half of them.
 */
import { spawn } from 'node:child_process';
import { createReadStream, createWriteStream, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { once } from 'node:events';
import { availableParallelism, loadavg } from 'node:os';
import { createInterface } from 'node:readline';

const dir = '.cache/bench/table-data';
mkdirSync(dir, { recursive: true });

/** Invented canopies, no random source: the same file every time. */
async function write(file: string, lines: number): Promise<void> {
  const out = createWriteStream(file);
  out.write('block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction\n');
  for (let i = 0; i < lines; i++) {
    const u = (i * 0.6180339887498949) % 1;
    const v = (i * 0.7548776662466927) % 1;
    const line = `block-${i},${(2.5 + 4 * u).toFixed(2)},${(1.8 + 3 * v).toFixed(2)},${(0.3 + 0.5 * u).toFixed(2)},${(0.8 + 2 * v).toFixed(2)},${(0.7 + 0.3 * u).toFixed(2)},${(0.5 + 3 * v).toFixed(2)},${(0.8 + 0.2 * u).toFixed(3)}\n`;
    if (!out.write(line)) await once(out, 'drain');
  }
  out.end();
  await once(out, 'finish');
}

interface Run {
  readonly seconds: number;
  readonly processor: number;
  readonly peakMb: number;
}
/** Ticks of the processor's clock a second, as /proc counts. */
const TICKS = 100;

async function run(script: string, args: readonly string[]): Promise<Run> {
  const start = performance.now();
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...args], { stdio: ['inherit', 'inherit', 'ignore'] });
  let peakMb = NaN;
  let processor = NaN;
  const watch = setInterval(() => {
    try {
      const peak = Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1024;
      if (peak > 0) peakMb = peak;
      const stat = readFileSync(`/proc/${child.pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
      processor = (Number(stat[11]) + Number(stat[12])) / TICKS;
    } catch {
      // Not Linux, or it has just ended: the last reading stands.
    }
  }, 10);
  const [code] = (await once(child, 'exit')) as [number];
  clearInterval(watch);
  if (code !== 0) throw new Error(`${script} ended with ${code}`);
  return { seconds: (performance.now() - start) / 1000, processor, peakMb };
}

async function bench(what: string, lines: number, times: number, script: string, args: readonly string[]): Promise<void> {
  const runs: Run[] = [];
  for (let i = 0; i < times; i++) runs.push(await run(script, args));
  runs.sort((a, b) => a.seconds - b.seconds);
  const { seconds, processor } = runs[times >> 1]!;
  const peak = Math.max(...runs.map((r) => r.peakMb));
  console.log(`${what}, ${lines} lines`.padEnd(58) + `${seconds.toFixed(2)} s, processor ${processor.toFixed(2)} s, ${Math.round(lines / seconds)} lines/s, peak ${peak.toFixed(0)} MB`);
}

/** The greatest share by which a figure of one table parts from that of the other. */
async function parted(one: string, other: string): Promise<number> {
  const [a, b] = [one, other].map((file) => createInterface(createReadStream(file))[Symbol.asyncIterator]());
  let most = 0;
  for (;;) {
    const [x, y] = await Promise.all([a!.next(), b!.next()]);
    if (x.done || y.done) return x.done === y.done ? most : Infinity;
    const [u, v] = [x.value.split(','), y.value.split(',')];
    if (u.length !== v.length || u[0] !== v[0]) return Infinity;
    for (let c = 1; c < u.length; c++) if (u[c] !== v[c]) most = Math.max(most, Number.isNaN(Number(u[c])) ? Infinity : Math.abs(Number(u[c]) / Number(v[c]) - 1));
  }
}

const COMMAND = 'src/cli/main.ts';
const few = 10_000;
const many = 1_000_000;
const [fewCsv, manyCsv, manyParquet] = [`${dir}/few.csv`, `${dir}/many.csv`, `${dir}/many.parquet`];
await write(fewCsv, few);
await write(manyCsv, many);
{
  // The same canopies as Parquet, by the library that writes it.
  const { parquetWriteBuffer } = await import('hyparquet-writer');
  const [head, ...lines] = readFileSync(manyCsv, 'utf8').trimEnd().split('\n');
  const columnData = head!.split(',').map((name, c) => ({ name, data: lines.map((l) => (c === 0 ? l.split(',')[0]! : Number(l.split(',')[c]))), type: c === 0 ? ('STRING' as const) : ('DOUBLE' as const) }));
  const { writeFileSync } = await import('node:fs');
  writeFileSync(manyParquet, new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 65_536 })));
}
console.log(`${availableParallelism()} cores; load before: ${loadavg()[0]!.toFixed(1)}`);
const table = (input: string, out: string, ...options: string[]): string[] => ['table', input, '--out', `${dir}/${out}`, ...options];
await bench('table', few, 3, COMMAND, table(fewCsv, 'few.out.csv'));
await bench('table', many, 3, COMMAND, table(manyCsv, 'many.out.csv'));
await bench('table, one thread', many, 1, COMMAND, table(manyCsv, 'many.one.csv', '--threads', '1'));
await bench('table, Parquet out', many, 1, COMMAND, table(manyCsv, 'many.out.parquet'));
await bench('table --strategies', many, 1, COMMAND, table(manyCsv, 'all.out.csv', '--strategies'));
rmSync(`${dir}/all.out.csv`);
await bench('table --strategies, Parquet out', many, 1, COMMAND, table(manyCsv, 'all.out.parquet', '--strategies'));
await bench('table --strategies, Parquet in and out', many, 1, COMMAND, table(manyParquet, 'all2.out.parquet', '--strategies'));
await bench('a plain script, the usual table', many, 1, 'tests/bench/plain-table.ts', [manyCsv, `${dir}/plain.csv`]);
console.log(`the plain script's figures part from the command's by at most ${(await parted(`${dir}/many.out.csv`, `${dir}/plain.csv`)).toExponential(1)} of the value`);
console.log(`load after: ${loadavg()[0]!.toFixed(1)}`);
rmSync(dir, { recursive: true, force: true });
